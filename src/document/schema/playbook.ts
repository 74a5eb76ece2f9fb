import * as z from 'zod/mini';
import { brander, type Brand } from '../../base/index.ts';
import { ROOMS, RULE_LEVELS } from '../../engine/index.ts';
import { MAX_ENTRIES } from '../limits.ts';
import { body, front, leverage, lookId, role } from './defence.ts';
import { id, list, name, tag } from './leaves.ts';
import { look } from './look.ts';
import { call, checkOut, coverage, pressure } from './menu.ts';

/** What the first entry of every playbook file says. */
export const FORMAT = 'gapwright-playbook';

/** The version this program writes, and the newest it reads. */
export const VERSION = 3;

/** An opponent of the season. */
export type OpponentId = Brand<string, 'OpponentId'>;

/** Makes the id of an opponent from text that has the form of one. */
export const asOpponentId = brander<string, 'OpponentId'>();

/** A preset of what to print. */
export type SheetId = Brand<string, 'SheetId'>;

/** Makes the id of a sheet from text that has the form of one. */
export const asSheetId = brander<string, 'SheetId'>();

/** Paper sizes a sheet can be printed on. */
export const PAPERS = ['letter', 'a4'] as const;

const opponent = z
  .strictObject({
    id: id(asOpponentId).check(z.meta({ id: 'OpponentId' })),
    name,
    looks: list(lookId, 0, MAX_ENTRIES.looks),
  })
  .check(z.meta({ id: 'Opponent', description: 'An opponent and the looks he shows.' }));

const sheet = z
  .strictObject({
    id: id(asSheetId).check(z.meta({ id: 'SheetId' })),
    name,
    room: z.enum(['all', ...ROOMS]),
    paper: z.enum(PAPERS),
  })
  .check(z.meta({ id: 'Sheet', description: 'A preset of what to print: for which position room, on which paper.' }));

const techniqueWord = z
  .strictObject({ on: body, leverage, label: tag })
  .check(z.meta({ id: 'TechniqueWord', description: "The staff's own number or word for a technique." }));

const staffWord = z
  .strictObject({ word: tag, meaning: name })
  .check(z.meta({ id: 'StaffWord', description: 'A word of the staff and the one thing it means.' }));

/**
 * The one description of a playbook file: the types and the published JSON Schema come from it. What it cannot say about
 * two places at once (ids that must exist, rules that must decide) stands in crossChecks.
 */
export const playbookSchema = z
  .strictObject({
    format: z.literal(FORMAT),
    version: z.literal(VERSION),
    team: z.strictObject({ name, level: z.enum(RULE_LEVELS), season: name }),
    roles: list(role, 0, MAX_ENTRIES.roles),
    fronts: list(front, 0, MAX_ENTRIES.fronts),
    coverages: list(coverage, 0, MAX_ENTRIES.coverages),
    looks: list(look, 0, MAX_ENTRIES.looks),
    pressures: list(pressure, 0, MAX_ENTRIES.pressures),
    calls: list(call, 0, MAX_ENTRIES.calls),
    opponents: list(opponent, 0, MAX_ENTRIES.opponents),
    sheets: list(sheet, 0, MAX_ENTRIES.sheets),
    checkOuts: list(checkOut, 0, MAX_ENTRIES.calls),
    dictionary: list(staffWord, 0, MAX_ENTRIES.dictionary),
    words: z.strictObject({ techniques: list(techniqueWord, 0, MAX_ENTRIES.techniques) }),
  })
  .check(
    z.meta({
      title: 'Gapwright playbook',
      description: 'Yards from the ball; x to the right of the defence, y into its backfield.',
    }),
  );

/** The same shape with every list and entry readonly. */
export type DeepReadonly<Value> = Value extends string | number | boolean | null
  ? Value
  : Value extends readonly (infer Item)[]
    ? readonly DeepReadonly<Item>[]
    : { readonly [Key in keyof Value]: DeepReadonly<Value[Key]> };

/** A whole playbook. Its roles, fronts, coverages, looks, pressures, calls, check-outs and dictionary are the engine's types. */
export type Playbook = DeepReadonly<z.output<typeof playbookSchema>>;

/** An opponent and the looks he shows. */
export type Opponent = Playbook['opponents'][number];

/** A preset of what to print. */
export type Sheet = Playbook['sheets'][number];

/** The staff's own words, where they differ from the common ones. */
export type StaffWords = Playbook['words'];
