import { parseArgs } from 'node:util';
import { ok, refused, type Result } from '../base/index.ts';
import { PLACES, TURNS, type Place, type Turn } from '../engine/index.ts';

/** How the check is called, and what its exit codes mean. */
export const USAGE = `Checks the calls of a playbook file against its looks, at every ball spot.

  check FILE [--call ID] [--look ID] [--spot left|middle|right] [--json]
  check FILE --grid calls [--call ID] [--look ID] [--spot S] [--json]
  check FILE --grid pairs [--front ID] [--turn own|same|opposite] [--look ID] [--spot S] [--json]

  --call ID   only this call
  --look ID   only this look
  --spot S    only with the ball there: the defence's left hash, the middle, its right hash
  --json      the report as data
  --grid G    the verdicts only, a line of CSV for every case: of all calls, or of all pairs of pressures
  --front ID  the front the pairs are run out of; the playbook's first front when left out
  --turn T    how the second pressure of a pair is turned; by its own rule when left out
  --help      this text

Exit code 0: nothing at "stop"; 1: at least one; 2: the file is refused, or it was called wrongly; 3: a fault of the program.
`;

/** What is to be checked; null means all of them. */
export interface Options {
  readonly file: string;
  readonly call: string | null;
  readonly look: string | null;
  readonly spots: readonly Place[];
  readonly json: boolean;
  /** Null: the whole report, not the verdicts alone. */
  readonly grid: GridOptions | null;
}

/** Which grid of verdicts; front null: the first of the playbook. */
export type GridOptions =
  { readonly kind: 'calls' } | { readonly kind: 'pairs'; readonly front: string | null; readonly turn: Turn };

const FLAGS = {
  call: { type: 'string', multiple: true },
  look: { type: 'string', multiple: true },
  spot: { type: 'string', multiple: true },
  grid: { type: 'string', multiple: true },
  front: { type: 'string', multiple: true },
  turn: { type: 'string', multiple: true },
  json: { type: 'boolean' },
  help: { type: 'boolean' },
} as const;

/** Reads the arguments after the program's name; refused in one line that says what is wrong with them. */
export function readArgs(argv: readonly string[]): Result<Options | 'help', string> {
  const parsed = parse(argv);
  if (!parsed.ok) return parsed;
  const { values, positionals } = parsed.value;
  if (values.help === true) return ok('help');
  const [file, ...others] = positionals;
  if (file === undefined) return refused('No file is named.');
  if (others.length > 0) return refused('More than one file is named.');
  for (const [flag, given] of Object.entries(values)) {
    if (Array.isArray(given) && given.length > 1) return refused(`--${flag} is given more than once.`);
  }
  const spot = values.spot?.[0];
  const spots = spot === undefined ? PLACES : PLACES.filter((place) => place === spot);
  if (spots.length === 0) return refused('--spot takes left, middle or right.');
  const grid = gridOptions(values.grid?.[0], values.front?.[0], values.turn?.[0]);
  if (!grid.ok) return grid;
  if (grid.value?.kind === 'pairs' && values.call !== undefined)
    return refused('--call says nothing of a grid of pairs.');
  return ok({
    file,
    grid: grid.value,
    call: values.call?.[0] ?? null,
    look: values.look?.[0] ?? null,
    spots,
    json: values.json === true,
  });
}

function gridOptions(
  kind: string | undefined,
  front: string | undefined,
  turn: string | undefined,
): Result<GridOptions | null, string> {
  if (kind !== 'pairs' && (front !== undefined || turn !== undefined)) {
    return refused('--front and --turn go with --grid pairs.');
  }
  if (kind === undefined) return ok(null);
  if (kind === 'calls') return ok({ kind });
  if (kind !== 'pairs') return refused('--grid takes calls or pairs.');
  const turned = turn === undefined ? 'own' : TURNS.find((each) => each === turn);
  return turned === undefined
    ? refused('--turn takes own, same or opposite.')
    : ok({ kind, front: front ?? null, turn: turned });
}

function parse(argv: readonly string[]) {
  try {
    return ok(parseArgs({ args: [...argv], options: FLAGS, allowPositionals: true, strict: true }));
  } catch (error) {
    // The only way Node has to say that a flag is unknown or lacks its value.
    if (error instanceof TypeError) return refused(error.message);
    throw error;
  }
}
