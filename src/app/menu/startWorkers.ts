import type { GridWorker, ShareAsked } from './messages.ts';
import { shareOut, workersFor } from './shareOut.ts';

/** Whoever judges the menu, away from the screen, on as many cores as may be taken. The program for it is loaded only now. */
export function startGridWorkers(): GridWorker {
  return shareOut(workersFor(navigator.hardwareConcurrency), startOne);
}

/** One worker. That its program cannot be loaded, or stops, it tells as any other failure of what it was asked. */
function startOne(): GridWorker<ShareAsked> {
  const worker = new Worker(new URL('./worker.ts', import.meta.url), { type: 'module', name: 'menu' });
  let asked = 0;
  return {
    postMessage: (message) => {
      if (message.kind === 'grid') asked = message.number;
      worker.postMessage(message);
    },
    addEventListener: (type, listener) => {
      worker.addEventListener(type, listener);
      worker.addEventListener('error', (event) => {
        // A program that is not there brings no message.
        const said = event instanceof ErrorEvent ? event.message : '';
        const reason = said === '' ? 'its program could not be loaded' : said;
        listener({ data: { kind: 'failed', number: asked, reason } });
      });
    },
  };
}
