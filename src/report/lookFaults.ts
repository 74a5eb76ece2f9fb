import type { Datum, Look, LookFault } from '../engine/index.ts';
import { fill } from './fill.ts';
import { numberText } from './words/lists.ts';
import { playerWords } from './words/offence.ts';

/** What makes a look illegal as drawn, a sentence for each fault, without any call against it. */
export function lookFaultTexts(look: Look, faults: readonly LookFault[]): readonly string[] {
  const words = playerWords(look.players);
  const datum = (value: Datum): string => {
    if (value.kind === 'number') return numberText(value.value);
    const man = value.kind === 'player' ? words.get(value.player) : undefined;
    if (man === undefined) throw new Error(`A fault of a look speaks of a ${value.kind} that is none of its own`);
    return man.spoken;
  };
  return faults.map((fault) => fill(fault.because, { datum }).text);
}
