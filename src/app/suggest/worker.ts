import { analyse, mend, mendingEdits, suggestionsFor, type MendBudget } from '../../engine/index.ts';
import { letNewerIn } from '../parts/letNewerIn.ts';
import type { Asked, Told } from './messages.ts';

/** Analyses one finding may cost. Each takes a few milliseconds, away from the screen. */
const BUDGET = 80;

/** Analyses a whole call may cost: about half a minute on a slow machine. Two changes at once are enough to teach. */
const CALL_BUDGET: MendBudget = { analyses: 3_000, edits: 2, sets: 4 };

let newest = 0;

/** Searches until something newer is asked. */
self.addEventListener('message', ({ data }: MessageEvent<Asked>) => {
  newest = data.number;
  void search(data).catch((error: unknown) => {
    tell({ kind: 'failed', number: data.number, reason: error instanceof Error ? error.message : String(error) });
  });
});

function search(asked: Asked): Promise<void> {
  return asked.kind === 'look' ? searchLook(asked) : searchCall(asked);
}

/** What would mend each finding of one look, one after the other. */
async function searchLook({ number, setup, library }: Extract<Asked, { kind: 'look' }>): Promise<void> {
  const analysis = analyse(setup);
  for (const [index, finding] of analysis.findings.entries()) {
    if (finding.waived !== null) continue;
    tell({ kind: 'found', number, index, suggestions: suggestionsFor(finding, analysis, library, BUDGET) });
    await letNewerIn();
    if (newest !== number) return;
  }
}

/** What would mend a call everywhere: of all that mends it somewhere, the fewest changes that leave no stop. */
async function searchCall({ number, setups, library }: Extract<Asked, { kind: 'call' }>): Promise<void> {
  await letNewerIn();
  const edits = mendingEdits(
    setups.map((setup) => analyse(setup)),
    library,
  );
  tell({ kind: 'mended', number, mending: mend(setups, edits, CALL_BUDGET) });
}

function tell(message: Told): void {
  self.postMessage(message);
}
