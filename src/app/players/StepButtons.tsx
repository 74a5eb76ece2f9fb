import type { ReactElement } from 'react';
import { BIG_NUDGE, NUDGE } from '../../editor/index.ts';
import { Radios } from '../parts/Choice.tsx';
import type { Hand } from './useHand.ts';
import { useState } from 'react';

const STEPS = [
  { key: 'ArrowLeft', sign: '←', words: 'left' },
  { key: 'ArrowUp', sign: '↑', words: 'up' },
  { key: 'ArrowDown', sign: '↓', words: 'down' },
  { key: 'ArrowRight', sign: '→', words: 'right' },
] as const;

/** The arrow keys as buttons, for a hand that neither drags nor types; they go by the picture. */
export function StepButtons({ hand, disabled }: { readonly hand: Hand; readonly disabled: boolean }): ReactElement {
  const [big, setBig] = useState(false);
  return (
    <div className="step-row">
      <div className="button-row" role="group" aria-label="Move by a step">
        {STEPS.map(({ key, sign, words }) => (
          <button
            key={key}
            type="button"
            className="step-button"
            disabled={disabled}
            aria-label={`Move ${words} ${big ? '1 yard' : '¼ yard'}`}
            onClick={() => hand.nudge(key, big, null)}
          >
            {sign}
          </button>
        ))}
      </div>
      <Radios
        legend="Length of a step"
        hideLegend
        value={big ? 'big' : 'small'}
        options={[
          { value: 'small', label: `${NUDGE === 0.25 ? '¼' : NUDGE} yd` },
          { value: 'big', label: `${BIG_NUDGE} yd` },
        ]}
        onChoose={(value) => setBig(value === 'big')}
      />
    </div>
  );
}
