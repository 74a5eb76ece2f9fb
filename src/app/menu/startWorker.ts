import type { GridWorker } from './messages.ts';

/** Starts the worker that judges the menu, away from the screen. The program for it is loaded only now. */
export function startGridWorker(): GridWorker {
  return new Worker(new URL('./worker.ts', import.meta.url), { type: 'module' });
}
