import { useEffect, useMemo, useState, useSyncExternalStore } from 'react';
import { walkThrough, type Against } from '../../engine/index.ts';
import { walkReport, type WalkReport } from '../../report/index.ts';
import { buildWalkScene, type WalkScene } from '../../scene/index.ts';
import type { BoardModel } from '../session/model.ts';
import { BROWSER_FRAMES, createWalkClock, type WalkClock } from './walkClock.ts';

/** The walk-through of what is on the board. */
export interface Walk {
  readonly clock: WalkClock;
  readonly scene: WalkScene;
  readonly report: WalkReport;
  readonly seconds: number;
}

/** The walk-through of what the field shows: the call, or what a suggestion would make of it. Held while a man is dragged. */
export function useWalk({ shown, state, lexicon }: BoardModel): Walk {
  const [clock] = useState(() => createWalkClock(BROWSER_FRAMES));
  const { overlay } = state.view;
  const { analysis, scene } = shown;
  const drawn = overlay?.look === analysis.setup.look.id ? overlay : null;
  const kind = drawn?.kind ?? null;
  const index = drawn?.index ?? 0;
  const still = useStill(analysis, state.preview !== null);
  const walk = useMemo(() => walkThrough(still, againstOf(kind, index)), [still, kind, index]);
  const report = useMemo(() => walkReport(walk, lexicon), [walk, lexicon]);
  const walked = useMemo(() => buildWalkScene(scene, walk), [scene, walk]);
  const { seconds } = walk;
  useEffect(() => clock.setLength(seconds), [clock, seconds]);
  useEffect(() => clock.stop, [clock]);
  return useMemo(() => ({ clock, scene: walked, report, seconds }), [clock, walked, report, seconds]);
}

function againstOf(kind: 'run' | 'protection' | null, index: number): Against {
  return kind === null ? { kind: 'pass' } : { kind, index };
}

/** The last value from before it was held. */
function useStill<Value>(value: Value, held: boolean): Value {
  const [still, setStill] = useState(value);
  if (!held && still !== value) setStill(value);
  return held ? still : value;
}

/** Whether the board shows a time after the snap; changes only when it leaves the start and when it comes back. */
export function useWalking(clock: WalkClock): boolean {
  return useSyncExternalStore(clock.subscribe, () => clock.now().t > 0 || clock.now().running);
}
