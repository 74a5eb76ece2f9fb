import type { ReactElement } from 'react';
import { ARRANGEMENTS, type Arrangement } from '../../editor/index.ts';
import { useSettled } from '../parts/useSettled.ts';
import type { BoardModel } from '../session/model.ts';
import { manLetter } from './manName.ts';
import { StepButtons } from './StepButtons.tsx';
import type { Hand } from './useHand.ts';

/** Several men who are picked: who they are, and what can be done with all of them at once. */
export function GroupCard({ model, hand }: { readonly model: BoardModel; readonly hand: Hand }): ReactElement {
  const { picked, byHand } = hand;
  const letters = picked.map(({ man }) => manLetter(man, model.lexicon));
  const { readOnly } = model.state;
  const [first] = letters;
  const words: Readonly<Record<Arrangement, string>> = {
    'same-depth': `Same depth as ${first ?? ''}`,
    'same-width': `Same width as ${first ?? ''}`,
    spread: 'Spread evenly',
    mirror: 'Mirror left to right',
  };
  return (
    <div className="man-card">
      <h3>{picked.length} men picked</h3>
      <p className="man-aligns">{letters.join(', ')}</p>
      <p className="unseen" role="status">
        {useSettled(`${picked.length} men picked: ${letters.join(', ')}`)}
      </p>
      <StepButtons hand={hand} disabled={readOnly} />
      <div className="button-row">
        {ARRANGEMENTS.map((how) => (
          <button
            key={how}
            type="button"
            disabled={readOnly || (how === 'spread' && picked.length < 3)}
            onClick={() => hand.arrange(how)}
          >
            {words[how]}
          </button>
        ))}
        <button type="button" onClick={hand.copy}>
          Copy their spots
        </button>
        {byHand.length > 0 && (
          <button type="button" disabled={readOnly} onClick={hand.backToRule}>
            Back to the rule
          </button>
        )}
      </div>
    </div>
  );
}
