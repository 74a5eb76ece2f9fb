import { refusalText, toSetup } from '../../document/index.ts';
import { analyse, type LookId, type Place } from '../../engine/index.ts';
import { buildReport, compareReports, type Report } from '../../report/index.ts';
import type { CallOf, CompareAsked, CompareTold } from './compareMessages.ts';

self.addEventListener('message', ({ data }: MessageEvent<CompareAsked>) => {
  try {
    tell({ kind: 'compared', comparison: compare(data) });
  } catch (error) {
    tell({ kind: 'failed', reason: error instanceof Error ? error.message : String(error) });
  }
});

function compare({ before, after, spot }: CompareAsked): ReturnType<typeof compareReports> {
  const known = new Set(before.playbook.looks.map(({ id }) => id));
  return compareReports(
    after.playbook.looks
      .filter(({ id }) => known.has(id))
      .map(({ id, name }) => ({ look: name, before: reportOf(before, id, spot), after: reportOf(after, id, spot) })),
  );
}

function reportOf({ playbook, call: id }: CallOf, look: LookId, spot: Place): Report {
  const call = playbook.calls.find((each) => each.id === id);
  if (call === undefined) throw new Error(`The playbook has no call ${id}`);
  const setup = toSetup(playbook, { call, look, spot });
  // An opened playbook names nothing it does not have.
  if (!setup.ok) throw new Error(refusalText(setup.problem));
  return buildReport(analyse(setup.value), playbook.words);
}

function tell(message: CompareTold): void {
  self.postMessage(message);
}
