import type { ReactElement } from 'react';
import type { BoardModel } from '../session/model.ts';
import type { Hand } from './useHand.ts';

/** Whole teams at a press, and the way to put copied spots down, whoever is picked. */
export function PickButtons({ model, hand }: { readonly model: BoardModel; readonly hand: Hand }): ReactElement {
  const { clip } = model.state.view;
  const { look, front } = model.analysis.setup;
  const anybodyByHand = front.byHand.some((hands) => hands.look === look.id);
  return (
    <div className="button-row pick-row">
      <button type="button" onClick={() => hand.pick('defender')}>
        Pick the defence
      </button>
      <button type="button" onClick={() => hand.pick('offence')}>
        Pick the offence
      </button>
      {anybodyByHand && (
        <button type="button" onClick={() => hand.pick('by-hand')}>
          Pick all set by hand
        </button>
      )}
      {clip.length > 0 && (
        <button type="button" disabled={model.state.readOnly} onClick={hand.paste}>
          Put the {clip.length === 1 ? 'copied spot' : `${clip.length} copied spots`} here
        </button>
      )}
    </div>
  );
}
