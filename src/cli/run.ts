import { compareBy, ok, refused, type Result } from '../base/index.ts';
import { openDocument, refusalText, toSetup, type Playbook, type Refusal } from '../document/index.ts';
import { analyse, type Call, type Look } from '../engine/index.ts';
import { buildReport, reportJson, toText, type ReportEntry } from '../report/index.ts';
import { readArgs, USAGE, type GridOptions, type Options } from './args.ts';
import { gridKind, writeGrid } from './grid.ts';

/** The world the check runs in: one file to read, and two streams to write to. */
export interface Io {
  /** The bytes of a file, or in words why they cannot be had. */
  readonly readFile: (path: string) => Result<Uint8Array, string>;
  readonly out: (text: string) => void;
  readonly err: (text: string) => void;
}

const NOTHING_AT_STOP = 0;
const STOP = 1;
const REFUSED = 2;

/** The headless check. Returns the exit code; see USAGE. */
export function run(argv: readonly string[], io: Io): number {
  const options = readArgs(argv);
  if (!options.ok) {
    io.err(`${options.problem}\n\n${USAGE}`);
    return REFUSED;
  }
  if (options.value === 'help') {
    io.out(USAGE);
    return NOTHING_AT_STOP;
  }
  const chosen = open(options.value, io);
  if (!chosen.ok) {
    io.err([`${options.value.file} is refused:`, ...chosen.problem, ''].join('\n'));
    return REFUSED;
  }
  const { grid } = options.value;
  return grid === null ? check(chosen.value, options.value, io) : checkGrid(chosen.value, grid, options.value, io);
}

/** The verdicts of a grid, line by line. */
function checkGrid(chosen: Chosen, asked: GridOptions, { spots, json }: Options, io: Io): number {
  const kind = gridKind(chosen.playbook, asked);
  if (!kind.ok) {
    io.err(`${refusalText(kind.problem)}\n`);
    return REFUSED;
  }
  return writeGrid({ ...chosen, kind: kind.value, spots, json }, io.out) ? STOP : NOTHING_AT_STOP;
}

/** A playbook, and the calls and looks of it that are asked for. */
interface Chosen {
  readonly playbook: Playbook;
  readonly calls: readonly Call[];
  readonly looks: readonly Look[];
}

function open(options: Options, io: Io): Result<Chosen, readonly string[]> {
  const file = io.readFile(options.file);
  if (!file.ok) return refused([file.problem]);
  const opened = openDocument(file.value);
  if (!opened.ok) return refused(opened.problem.map(refusalText));
  const playbook = opened.value;
  const calls = choose(playbook.calls, options.call, '--call');
  if (!calls.ok) return refused([refusalText(calls.problem)]);
  const looks = choose(playbook.looks, options.look, '--look');
  if (!looks.ok) return refused([refusalText(looks.problem)]);
  return ok({ playbook, calls: calls.value, looks: looks.value });
}

function choose<Item extends { readonly id: string }>(
  items: readonly Item[],
  id: string | null,
  flag: string,
): Result<readonly Item[], Refusal> {
  if (id === null) return ok([...items].sort(compareBy((item) => item.id)));
  const item = items.find((each) => each.id === id);
  if (item !== undefined) return ok([item]);
  const known = items.map((each) => each.id).sort();
  const expected = known.length === 0 ? 'nothing: the playbook has none' : `one of ${known.join(', ')}`;
  return refused({ path: flag, found: JSON.stringify(id), expected });
}

/** Call by call, so that a season of them needs no more memory than one. */
function check(chosen: Chosen, options: Options, io: Io): number {
  const { calls, looks } = chosen;
  if (calls.length === 0 || looks.length === 0) {
    io.err(`Nothing is checked: the playbook has no ${calls.length === 0 ? 'calls' : 'looks'}.\n`);
  }
  let worst = NOTHING_AT_STOP;
  const reported = calls.flatMap((call) => {
    const entries = entriesOf(call, chosen, options);
    if (entries.some(({ report }) => report.verdict === 'stop')) worst = STOP;
    if (options.json) return reportJson(entries).calls;
    io.out(`${toText(entries)}\n`);
    return [];
  });
  if (options.json) io.out(`${JSON.stringify({ ...reportJson([]), calls: reported }, null, 2)}\n`);
  return worst;
}

function entriesOf(call: Call, { playbook, looks }: Chosen, { spots }: Options): readonly ReportEntry[] {
  return looks.flatMap((look) =>
    spots.map((spot) => {
      const setup = toSetup(playbook, { call, look: look.id, spot });
      // An opened playbook names nothing it does not have.
      if (!setup.ok) throw new Error(refusalText(setup.problem));
      const analysis = analyse(setup.value);
      return { call, analysis, report: buildReport(analysis, playbook.words) };
    }),
  );
}
