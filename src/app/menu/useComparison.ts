import { useEffect, useState } from 'react';
import type { CompareAsked, CompareTold } from './compareMessages.ts';

/** A comparison that is being made, or what came of it. */
export type ComparisonState = { readonly kind: 'working' } | CompareTold;

/** Compares away from the screen; another question, or leaving the screen, drops the one before. */
export function useComparison(asked: CompareAsked): ComparisonState {
  const [answer, setAnswer] = useState<{ readonly to: CompareAsked; readonly told: CompareTold } | null>(null);
  useEffect(() => {
    const worker = new Worker(new URL('./compareWorker.ts', import.meta.url), { type: 'module' });
    worker.addEventListener('message', ({ data }: MessageEvent<CompareTold>) => setAnswer({ to: asked, told: data }));
    worker.postMessage(asked);
    return () => worker.terminate();
  }, [asked]);
  return answer?.to === asked ? answer.told : { kind: 'working' };
}
