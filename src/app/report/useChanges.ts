import { useMemo, useState } from 'react';
import type { BoardModel } from '../session/model.ts';
import { changesOf, follow, type Changes } from './followed.ts';

/** What the last change of the call or the playbook did to the findings of this look. */
export function useChanges({ report, analysis, state }: BoardModel): Changes {
  const held = state.preview !== null;
  const { look, spot } = analysis.setup;
  const place = `${look.id} ${spot}`;
  const keys = useMemo(() => report.findings.map(({ key }) => key), [report]);
  const [memory, setMemory] = useState(() => follow(null, place, keys));
  const next = held ? memory : follow(memory, place, keys);
  if (next !== memory) setMemory(next);
  return useMemo(() => changesOf(next, keys, held), [next, keys, held]);
}
