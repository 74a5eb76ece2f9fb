import { ROOMS, type Role, type Room, type Severity } from '../../engine/index.ts';
import type { FindingRow } from '../../report/index.ts';

/** Whom a finding is about: a room of the defence, or the offence. */
export const KINDS = [...ROOMS, 'offence'] as const;
export type Kind = Room | 'offence';

/** What the coach wants to see of the findings. */
export interface FindingFilter {
  readonly hidden: readonly Severity[];
  /** Null: about whomever. */
  readonly kind: Kind | null;
  /** Only what was not there before the last change. */
  readonly onlyNew: boolean;
}

/** Everything. */
export const EVERYTHING: FindingFilter = { hidden: [], kind: null, onlyNew: false };

/** The findings that are shown, in the order they have. */
export function filtered(
  findings: readonly FindingRow[],
  { hidden, kind, onlyNew }: FindingFilter,
  roles: readonly Role[],
  fresh: ReadonlySet<string>,
): readonly FindingRow[] {
  return findings.filter(
    (row) =>
      !hidden.includes(row.severity) &&
      (kind === null || kindsOf(row, roles).includes(kind)) &&
      (!onlyNew || fresh.has(row.key)),
  );
}

/** Whom a finding is about, in the order of the kinds; none when it is about gaps alone. */
export function kindsOf({ who, players }: FindingRow, roles: readonly Role[]): readonly Kind[] {
  const rooms = new Set(roles.filter(({ id }) => who.includes(id)).map(({ room }) => room));
  return KINDS.filter((kind) => (kind === 'offence' ? players.length > 0 : rooms.has(kind)));
}
