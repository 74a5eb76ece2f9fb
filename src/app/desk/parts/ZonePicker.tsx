import type { ReactElement } from 'react';
import { ZONES, type SideRef, type Zone } from '../../../engine/index.ts';
import { ZONE_WORDS, type RuleWords } from '../../../report/index.ts';
import type { Change } from './change.ts';
import { PickList } from './PickList.tsx';
import { SIDES_WITH_CALL } from './SidePicker.tsx';

/** A zone and its side as a rule names them. */
export interface ZonePlace {
  readonly zone: Zone;
  readonly side: SideRef | 'middle';
}

interface Props extends ZonePlace {
  readonly label: string;
  readonly words: RuleWords;
  readonly disabled: boolean;
  readonly onChange: Change<ZonePlace>;
}

/** Zones that lie in the middle of the field by their very name. */
const MIDDLE_BY_NAME: readonly Zone[] = ['hole', 'middle'];

/** A zone of the shell, and on which side. */
export function ZonePicker({ label, zone, side, words, disabled, onChange }: Props): ReactElement {
  const fixed = MIDDLE_BY_NAME.includes(zone);
  return (
    <div className="gap-picker">
      <PickList
        label={label}
        hideLabel
        value={zone}
        groups={[{ name: '', options: ZONES.map((value) => ({ value, label: ZONE_WORDS[value] })) }]}
        disabled={disabled}
        onPick={(value) => {
          const picked = ZONES.find((each) => each === value);
          if (picked === undefined) return;
          const inMiddle = MIDDLE_BY_NAME.includes(picked);
          onChange({ zone: picked, side: inMiddle ? 'middle' : fixed ? 'call' : side }, null);
        }}
      />
      {!fixed && (
        <PickList
          label={`Side of: ${label}`}
          hideLabel
          value={side}
          groups={[
            {
              name: '',
              options: [
                { value: 'middle', label: 'middle' },
                ...SIDES_WITH_CALL.map((each) => ({ value: each, label: words.side(each) })),
              ],
            },
          ]}
          disabled={disabled}
          onPick={(value) => {
            const picked = SIDES_WITH_CALL.find((each) => each === value) ?? 'middle';
            onChange({ zone, side: picked }, null);
          }}
        />
      )}
    </div>
  );
}
