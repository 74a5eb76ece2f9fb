import { brander, type Brand } from '../../base/index.ts';

/** A defensive role of the playbook (stable text). */
export type RoleId = Brand<string, 'RoleId'>;
export const asRoleId = brander<string, 'RoleId'>();

/** A group of roles that a pressure names by side: the ends, the outside backers, the safeties. */
export type GroupId = Brand<string, 'GroupId'>;
export const asGroupId = brander<string, 'GroupId'>();

/** A player of an offensive look, unique in that look. */
export type PlayerId = Brand<string, 'PlayerId'>;
export const asPlayerId = brander<string, 'PlayerId'>();

export type LookId = Brand<string, 'LookId'>;
export const asLookId = brander<string, 'LookId'>();

export type FrontId = Brand<string, 'FrontId'>;
export const asFrontId = brander<string, 'FrontId'>();

export type CoverageId = Brand<string, 'CoverageId'>;
export const asCoverageId = brander<string, 'CoverageId'>();

export type PressureId = Brand<string, 'PressureId'>;
export const asPressureId = brander<string, 'PressureId'>();

export type CallId = Brand<string, 'CallId'>;
export const asCallId = brander<string, 'CallId'>();
