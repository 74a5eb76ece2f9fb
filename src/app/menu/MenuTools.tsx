import { useMemo, type ReactElement } from 'react';
import { PLACES, SEVERITIES, standardChecks, type Place, type Severity } from '../../engine/index.ts';
import type { MenuFilter } from '../../menu/index.ts';
import { Select, type Option } from '../parts/Choice.tsx';
import { useApp } from '../session/session.ts';
import { BALL_WORDS } from '../session/words.ts';
import { usePersonnel } from './useMenu.ts';

const SEVERITY_WORDS: Readonly<Record<Severity, string>> = {
  stop: 'stops only',
  check: 'stops and checks',
  note: 'everything',
};

const RULES: readonly Option<string>[] = standardChecks
  .map(({ id, title }) => ({ value: id, label: title }))
  .sort((a, b) => (a.label < b.label ? -1 : 1));

interface Props {
  readonly filter: MenuFilter;
  readonly onFilter: (filter: MenuFilter) => void;
}

/** What of the answers is looked at. */
export function MenuTools({ filter, onFilter }: Props): ReactElement {
  const playbook = useApp((state) => state.playbook);
  const personnelOf = usePersonnel(playbook);
  const personnel = useMemo(
    () => [...new Set(playbook.looks.flatMap(({ id }) => personnelOf(id) ?? []))].sort(),
    [playbook.looks, personnelOf],
  );
  const set = (patch: Partial<MenuFilter>): void => onFilter({ ...filter, ...patch });
  return (
    <>
      <Select
        label="Ball on"
        value={filter.spot}
        options={PLACES.map((value): Option<Place> => ({ value, label: BALL_WORDS[value].replace('ball ', '') }))}
        none="all three spots"
        onChoose={(spot) => set({ spot })}
      />
      <Select
        label="Personnel"
        value={filter.personnel}
        options={personnel.map((value) => ({ value, label: `${value} personnel` }))}
        none="every look"
        onChoose={(chosen) => set({ personnel: chosen })}
      />
      <Select
        label="How grave"
        value={filter.severity ?? 'note'}
        options={SEVERITIES.map((value) => ({ value, label: SEVERITY_WORDS[value] }))}
        onChoose={(severity) => set({ severity: severity === 'note' ? null : severity })}
      />
      <Select label="Check" value={filter.rule} options={RULES} none="all checks" onChoose={(rule) => set({ rule })} />
    </>
  );
}
