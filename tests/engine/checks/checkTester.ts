import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { analyse, type Because, type Check, type Finding, type Severity } from '../../../src/engine/index.ts';
import { frozen, gapText, say, setup } from '../book.ts';

/** A call in a look, as the test book makes it. */
export type Case = { readonly name: string } & Parameters<typeof setup>[0];

/** One finding a row expects: its sentence and the reasons right below it, and everybody and everything it is about. */
export interface Expected {
  readonly says: readonly string[];
  readonly who?: string;
  readonly gaps?: string;
  readonly players?: string;
  /** Only where it is not the check's own. */
  readonly severity?: Severity;
}

export type Failing = Case & { readonly finds: readonly Expected[] };

function judged({ name: _name, ...parts }: Case, check: Check): readonly Finding[] {
  const frozenSetup = frozen(setup(parts));
  const { findings } = analyse(frozenSetup);
  // The same input, the same bytes.
  expect(JSON.stringify(analyse(frozenSetup).findings)).toBe(JSON.stringify(findings));
  return findings.filter(({ rule }) => rule === check.id);
}

const told = ({ because, who, gaps, players }: Finding): Required<Omit<Expected, 'severity'>> => ({
  says: [say(because), ...because.because.map(say)],
  who: who.join(' '),
  gaps: gaps.map(gapText).join(' '),
  players: players.join(' '),
});

const templates = (because: Because): readonly string[] => [because.template, ...because.because.flatMap(templates)];

/** Every sentence a source file of the engine's checks can say, read from its text. */
function sentencesIn(file: string): readonly string[] {
  const text = readFileSync(new URL(`../../../src/engine/checks/${file}.ts`, import.meta.url), 'utf8');
  return [...text.matchAll(/(?:because|fact)\(\s*'([^']+)'/g)].flatMap(([, sentence]) => sentence ?? []);
}

/**
 * Tests one check: what it must find, in words and with exactly whom and what; the lawful neighbours it must leave alone, at
 * least as many; and that the rows show every sentence of its source files.
 */
export function testCheck(
  check: Check,
  files: readonly string[],
  failing: readonly Failing[],
  passing: readonly Case[],
): void {
  describe(check.id, () => {
    it.each(failing)('finds: $name', ({ finds, ...row }) => {
      const found = judged(row, check);
      const said = finds.map(({ severity: _severity, ...each }) => ({ who: '', gaps: '', players: '', ...each }));
      expect(found.map(told)).toEqual(said);
      for (const [index, finding] of found.entries()) {
        expect(finding.severity).toBe(finds[index]?.severity ?? check.severity);
        const { who, gaps, players, where } = finding;
        expect(where).toHaveLength(who.length + gaps.length + players.length);
      }
    });

    it.each(passing)('leaves alone: $name', (row) => {
      expect(judged(row, check)).toEqual([]);
    });

    it('has a lawful neighbour for every case', () => {
      expect(failing.length).toBeGreaterThan(0);
      expect(passing.length).toBeGreaterThanOrEqual(failing.length);
    });

    it('every sentence is shown by a row', () => {
      const sentences = files.flatMap(sentencesIn);
      expect(sentences.length).toBeGreaterThan(0);
      const shown = new Set(
        failing.flatMap(({ finds: _finds, ...row }) => judged(row, check).flatMap(({ because }) => templates(because))),
      );
      expect(sentences.filter((sentence) => !shown.has(sentence))).toEqual([]);
    });
  });
}
