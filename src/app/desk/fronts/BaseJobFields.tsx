import type { ReactElement } from 'react';
import { MAX_ENTRIES } from '../../../document/index.ts';
import type { BaseJob, FrontId } from '../../../engine/index.ts';
import type { RuleWords } from '../../../report/index.ts';
import { setBaseJob } from '../../../store/index.ts';
import { Radios, type Option } from '../../parts/Choice.tsx';
import { GapList } from '../parts/GapPicker.tsx';
import { sidesOfMan } from '../parts/SidePicker.tsx';
import { useEdit } from '../parts/useEdit.ts';
import type { FrontManOf } from './men.ts';

const STYLES: readonly Option<BaseJob['style']>[] = [
  { value: 'one-gap', label: 'one gap' },
  { value: 'two-gap', label: 'two gaps' },
];

const PASSES: readonly Option<BaseJob['pass']>[] = [
  { value: 'rush', label: 'rushes' },
  { value: 'contain', label: 'rushes, contains' },
  { value: 'none', label: 'does not rush' },
];

interface Props {
  readonly front: FrontId;
  readonly man: FrontManOf;
  readonly words: RuleWords;
  readonly disabled: boolean;
}

/** The base job of one man: the gaps he may fit in order, one or two at a time, and what he does against a pass. */
export function BaseJobFields({ front, man, words, disabled }: Props): ReactElement {
  const edit = useEdit();
  const { role, entry } = man;
  const { base } = entry;
  const put = (next: BaseJob, gesture: string | null): void => {
    edit(`changed the base job of ${role.letter} (${role.name})`, gesture, (now) =>
      setBaseJob(now, { front, role: role.id, base: next }),
    );
  };
  return (
    <details className="rule">
      <summary>{words.base(base)}</summary>
      <div className="rule-body">
        <Radios
          legend="Against a run he plays"
          value={base.style}
          options={STYLES}
          onChoose={(style) => put({ ...base, style }, null)}
        />
        <GapList
          of={`of ${role.letter}`}
          gaps={base.gaps}
          min={base.style === 'two-gap' ? 2 : 0}
          max={MAX_ENTRIES.gaps}
          none="No gap of his own: he takes what is left."
          sides={sidesOfMan(role)}
          words={words}
          disabled={disabled}
          onChange={(gaps, gesture) => put({ ...base, gaps }, gesture)}
        />
        <Radios
          legend="Against a pass he"
          value={base.pass}
          options={PASSES}
          onChoose={(pass) => put({ ...base, pass }, null)}
        />
      </div>
    </details>
  );
}
