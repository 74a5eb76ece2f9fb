import type { ReactElement } from 'react';
import type { Playbook } from '../../../document/index.ts';
import type { Pressure } from '../../../engine/index.ts';
import { setPressureParts, type PressureParts } from '../../../store/index.ts';
import { named, Select } from '../../parts/Choice.tsx';
import { CountField } from '../../parts/CountField.tsx';
import { TagsField } from '../../parts/TagsField.tsx';
import { useEdit } from '../parts/useEdit.ts';
import { shownName } from '../../parts/shownName.ts';

interface Props {
  readonly pressure: Pressure;
  readonly playbook: Playbook;
  readonly disabled: boolean;
}

/** What a pressure says besides its rush: coverage, how many come, day of camp, tags, looks it is not run against. */
export function Beside({ pressure, playbook, disabled }: Props): ReactElement {
  const edit = useEdit();
  const set = (what: string, parts: Partial<PressureParts>): void => {
    edit(`changed ${what} of ${pressure.name}`, null, (now) => setPressureParts(now, { pressure: pressure.id, parts }));
  };
  const out = pressure.notAgainst.length;
  return (
    <div className="rule-fields">
      <Select
        wide
        label="Coverage behind it"
        value={pressure.coverage}
        options={named(playbook.coverages)}
        disabled={disabled}
        hint="Another coverage changes nothing in the rush."
        onChoose={(coverage) => {
          if (coverage !== null) set('the coverage', { coverage });
        }}
      />
      <CountField
        label="How many come"
        value={pressure.rushers}
        min={0}
        max={11}
        disabled={disabled}
        onChange={(rushers) => set('how many come', { rushers })}
      />
      <CountField
        label="Put in on day"
        unit="of camp"
        value={pressure.installDay}
        min={1}
        max={60}
        disabled={disabled}
        onChange={(installDay) => set('the day', { installDay })}
      />
      <TagsField tags={pressure.tags} disabled={disabled} onTags={(tags) => set('the tags', { tags })} />
      <details className="rule form-wide">
        <summary>
          {out === 0 ? 'Run against every look' : `Not run against ${out === 1 ? '1 look' : `${out} looks`}`}
        </summary>
        <fieldset className="ticks">
          <legend>Not run against</legend>
          {playbook.looks.map(({ id, name }) => (
            <label className="tick" key={id}>
              <input
                type="checkbox"
                checked={pressure.notAgainst.includes(id)}
                disabled={disabled}
                onChange={(event) =>
                  set('the looks', {
                    notAgainst: event.target.checked
                      ? [...pressure.notAgainst, id]
                      : pressure.notAgainst.filter((each) => each !== id),
                  })
                }
              />
              {shownName(name)}
            </label>
          ))}
        </fieldset>
      </details>
    </div>
  );
}
