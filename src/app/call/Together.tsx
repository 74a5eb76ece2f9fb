import { useMemo, type ReactElement } from 'react';
import type { Playbook } from '../../document/index.ts';
import type { Combination } from '../../engine/index.ts';
import { makeRuleWords } from '../../report/index.ts';
import type { Board } from '../../store/index.ts';
import { Radios, Select } from '../parts/Choice.tsx';
import { findKey, keysToChoose, SIMPLE_KEYS, type Key } from './keys.ts';

const KIND_OPTIONS = [
  { value: 'together', label: 'Both at once' },
  { value: 'either-or', label: 'One of the two' },
] as const;

interface Props {
  readonly playbook: Playbook;
  readonly board: Board;
  readonly onChoose: (combination: Combination) => void;
}

/** How two pressures make one call: both at once, or one of the two by a key. Nothing to choose without a second. */
export function Together({ playbook, board, onChoose }: Props): ReactElement | null {
  const { combination } = board;
  const kept = playbook.calls.find(({ id }) => id === board.call)?.combination;
  const keys = useMemo(() => {
    const others = [kept, combination].flatMap((each) => (each?.kind === 'either-or' ? [each.key] : []));
    return keysToChoose(others, makeRuleWords(playbook.roles, playbook.words));
  }, [kept, combination, playbook.roles, playbook.words]);
  if (board.second === null) return null;
  const byKey = (key: Key): void => onChoose({ kind: 'either-or', key });
  return (
    <>
      <Radios
        legend="How the two go together"
        value={combination.kind}
        options={KIND_OPTIONS}
        onChoose={(kind) => {
          if (kind === 'together') onChoose({ kind });
          // Back to the key the call was kept with, so that a look at "both at once" loses nothing.
          else byKey(kept?.kind === 'either-or' ? kept.key : SIMPLE_KEYS[0].key);
        }}
      />
      {combination.kind === 'either-or' && (
        <Select
          wide
          label={`${nameOf(playbook, board.first)} is run if`}
          value={findKey(keys, combination.key)?.id ?? null}
          options={keys.map(({ id, label }) => ({ value: id, label }))}
          hint={`Otherwise ${nameOf(playbook, board.second)}.`}
          onChoose={(id) => {
            const chosen = keys.find((each) => each.id === id);
            if (chosen !== undefined) byKey(chosen.key);
          }}
        />
      )}
    </>
  );
}

function nameOf(playbook: Playbook, id: Board['first']): string {
  const name = playbook.pressures.find((pressure) => pressure.id === id)?.name ?? '';
  return name === '' ? 'the pressure without a name' : name;
}
