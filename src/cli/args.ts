import { parseArgs } from 'node:util';
import { ok, refused, type Result } from '../base/index.ts';
import { PLACES, type Place } from '../engine/index.ts';

/** How the check is called, and what its exit codes mean. */
export const USAGE = `Checks the calls of a playbook file against its looks, at every ball spot.

  check FILE [--call ID] [--look ID] [--spot left|middle|right] [--json]

  --call ID   only this call
  --look ID   only this look
  --spot S    only with the ball there: the defence's left hash, the middle, its right hash
  --json      the report as data
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
}

const FLAGS = {
  call: { type: 'string', multiple: true },
  look: { type: 'string', multiple: true },
  spot: { type: 'string', multiple: true },
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
  return ok({
    file,
    call: values.call?.[0] ?? null,
    look: values.look?.[0] ?? null,
    spots,
    json: values.json === true,
  });
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
