import { useState } from 'react';
import { useNotice } from './session.ts';

/** Whether something that was offered was refused, and why. */
export interface Refusal {
  /** What the notice has said of it since; empty: it was taken, or not offered yet. */
  readonly problem: string;
  /** Says whether what was just offered was taken. */
  readonly settle: (isTaken: boolean) => void;
}

/** A refusal is told in the page's notice; here it is said again beside what was refused, until that is taken. */
export function useRefusal(): Refusal {
  const notice = useNotice();
  const [refusedAt, setRefusedAt] = useState<number | null>(null);
  return {
    problem: refusedAt !== null && notice.number > refusedAt ? notice.text : '',
    settle: (isTaken) => setRefusedAt(isTaken ? null : notice.number),
  };
}
