/** What holds of suggestions whatever the call: on the demonstration playbook, and on every example of the checks. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { openDocument, toSetup, type Playbook } from '../../../src/document/index.ts';
import {
  analyse,
  evidenceOf,
  mirrorSetup,
  PLACES,
  type Analysis,
  type Finding,
  type Setup,
} from '../../../src/engine/index.ts';
import { applyEdit, suggestionsFor, type Edit, type Library } from '../../../src/engine/edits/index.ts';
import { ALL_EXAMPLES } from '../checks/examples/index.ts';
import { frozen, read, setup, THREE_DEEP } from '../book.ts';
import { CASES } from './cases.ts';
import { printEdit } from './editNotation.ts';
import { mirrorEdit, mirrorShells } from './mirrored.ts';

const BUDGET = 60;
const playbook: Playbook = frozen(
  read(openDocument(readFileSync(new URL('../../../demo-data/playbook.json', import.meta.url)))),
);

const key = (finding: Finding): string => `${finding.rule} ${evidenceOf(finding)}`;

function offered(finding: Finding, analysis: Analysis, library: Library): readonly Edit[] {
  const suggestions = suggestionsFor(finding, analysis, library, BUDGET);
  return suggestions.kind === 'none' ? [] : suggestions.edits;
}

/** Every edit offered, applied: fewer findings like this one, and no stop that was not there. How many were offered. */
function holdToPromise(analysis: Analysis, finding: Finding, library: Library): number {
  const edits = offered(finding, analysis, library);
  const before = analysis.findings.map(key);
  for (const edit of edits) {
    const edited = applyEdit(analysis.setup, frozen(edit));
    if (!edited.ok) throw new Error(`${printEdit(edit)} is offered and cannot be applied`);
    const after = analyse(edited.value);
    if (after.verdict === 'left-out') continue;
    const like = (keys: readonly string[]): number => keys.filter((each) => each === key(finding)).length;
    const where = `${analysis.setup.first.id} ${analysis.setup.look.id} ${key(finding)}: ${printEdit(edit)}`;
    expect([where, like(after.findings.map(key)) < like(before)]).toEqual([where, true]);
    const stops = after.findings.filter(({ severity, waived }) => severity === 'stop' && waived === null).map(key);
    expect([where, stops.filter((stop) => !before.includes(stop))]).toEqual([where, []]);
  }
  return edits.length;
}

describe('the demonstration playbook', () => {
  const library: Library = { coverages: playbook.coverages };

  it.each(playbook.calls.map((call, index) => [call.name, call, index] as const))(
    '%s: what is offered, applied, removes its finding',
    (_, call, index) => {
      // Each rule of a call in the first look it is found in, the ball spot changing from call to call.
      const spot = PLACES[index % PLACES.length] ?? 'middle';
      const seen = new Set<string>();
      for (const look of playbook.looks) {
        const analysis = frozen(analyse(frozen(read(toSetup(playbook, { call, look: look.id, spot })))));
        if (analysis.verdict === 'left-out') continue;
        for (const finding of analysis.findings.filter(({ rule }) => !seen.has(rule))) {
          seen.add(finding.rule);
          holdToPromise(analysis, finding, library);
        }
      }
    },
  );
});

interface Shown {
  readonly rule: string;
  readonly made: Setup;
}
const EXAMPLES: readonly (readonly [name: string, shown: Shown])[] = ALL_EXAMPLES.flatMap(({ check, found }) =>
  // The first two of a check show what it is about; the others, how it counts and words.
  found.slice(0, 2).map(({ name, finds: _finds, ...parts }) => {
    const shown: Shown = { rule: check.id, made: frozen(setup(parts)) };
    return [`${check.id}: ${name}`, shown] as const;
  }),
);
const OWN: typeof EXAMPLES = CASES.map(
  ({ name, rule, index: _index, shells: _shells, offers: _offers, keeps: _keeps, ...parts }) => [
    `${rule}: ${name}`,
    { rule, made: frozen(setup(parts)) },
  ],
);

const shells = frozen([THREE_DEEP]);

describe('the examples of the checks', () => {
  it.each(EXAMPLES)('%s', (_, { rule, made }) => {
    const analysis = frozen(analyse(made));
    const [finding] = analysis.findings.filter((each) => each.rule === rule);
    if (finding === undefined) throw new Error('The example finds nothing');
    holdToPromise(analysis, finding, { coverages: shells });
  });
});

describe('the mirrored call gets the mirrored suggestions', () => {
  const lines = (edits: readonly Edit[]): readonly string[] => edits.map((edit) => JSON.stringify(edit));
  const both = (made: Setup): { readonly here: Analysis; readonly there: Analysis; readonly library: Library } => ({
    here: analyse(made),
    there: analyse(mirrorSetup(made)),
    library: { coverages: mirrorShells(shells, made) },
  });
  /** The finding about the same people, gaps flipped; evidence names gaps, so it is flipped as text. */
  const flip = (text: string): string => text.replace(/left|right/g, (side) => (side === 'left' ? 'right' : 'left'));
  const evidence = (finding: Finding, turn: (text: string) => string): string =>
    `${finding.rule} ${[finding.who, finding.gaps.map(({ side, letter }) => turn(`${letter} ${side}`)), finding.players]
      .map((list) => [...list].sort().join(' '))
      .join('|')}`;

  it.each([...EXAMPLES, ...OWN])('%s', (_, { rule, made }) => {
    const { here, there, library } = both(made);
    const same = (text: string): string => text;
    for (const finding of here.findings.filter((each) => each.rule === rule)) {
      const twins = there.findings.filter((each) => evidence(each, flip) === evidence(finding, same));
      const alike = here.findings.filter((each) => evidence(each, same) === evidence(finding, same));
      expect([key(finding), twins.length]).toEqual([key(finding), alike.length]);
      const twin = twins[alike.indexOf(finding)];
      if (twin === undefined || finding.rule === 'side.undecided') continue;
      const mirrored = offered(finding, here, { coverages: shells }).map((edit) => mirrorEdit(edit, made));
      expect([key(finding), lines(offered(twin, there, library))]).toEqual([key(finding), lines(mirrored)]);
    }
  });

  it('a tie leans to neither side: the same edits, right first in both', () => {
    for (const [, { made }] of [...EXAMPLES, ...OWN].filter(([, { rule }]) => rule === 'side.undecided')) {
      const { here, there, library } = both(made);
      const ties = [here, there].map((each) => each.findings.filter(({ rule }) => rule === 'side.undecided'));
      const [mine = [], theirs = []] = ties;
      expect(theirs.length).toBe(mine.length);
      mine.forEach((finding, index) => {
        const twin = theirs[index];
        if (twin === undefined) throw new Error('The tie has no twin');
        const mirrored = offered(finding, here, { coverages: shells }).map((edit) => mirrorEdit(edit, made));
        expect([...lines(offered(twin, there, library))].sort()).toEqual([...lines(mirrored)].sort());
      });
    }
  });
});
