import type { ReactElement } from 'react';
import type { Role, SideRef } from '../../../engine/index.ts';
import type { RuleWords } from '../../../report/index.ts';
import { PickList } from './PickList.tsx';

/** Sides a front's rule of that role can speak of: there is no call yet, and a man in the middle has none of his own. */
export function sidesOfMan({ side }: Role): readonly SideRef[] {
  return side.kind === 'middle' ? ['left', 'right'] : ['mine', 'other', 'left', 'right'];
}

/** Sides a pressure or a coverage can speak of. */
export const SIDES_WITH_CALL: readonly SideRef[] = ['call', 'away', 'mine', 'other', 'left', 'right'];

interface Props {
  readonly label: string;
  readonly side: SideRef;
  readonly sides: readonly SideRef[];
  readonly words: RuleWords;
  readonly disabled: boolean;
  readonly onPick: (side: SideRef) => void;
}

/** Which side a rule speaks of; its label is only heard. */
export function SidePicker({ label, side, sides, words, disabled, onPick }: Props): ReactElement {
  return (
    <PickList
      label={label}
      hideLabel
      value={side}
      ownWords={words.side(side)}
      groups={[{ name: '', options: sides.map((each) => ({ value: each, label: words.side(each) })) }]}
      disabled={disabled}
      onPick={(value) => {
        const picked = sides.find((each) => each === value);
        if (picked !== undefined) onPick(picked);
      }}
    />
  );
}
