import type { GridWorker, ShareAsked } from './messages.ts';
import { shareOut, workersFor } from './shareOut.ts';

/** Whoever judges the menu, away from the screen, on as many cores as may be taken. The program for it is loaded only now. */
export function startGridWorkers(): GridWorker {
  return shareOut(workersFor(navigator.hardwareConcurrency), startOne);
}

function startOne(): GridWorker<ShareAsked> {
  return new Worker(new URL('./worker.ts', import.meta.url), { type: 'module', name: 'menu' });
}
