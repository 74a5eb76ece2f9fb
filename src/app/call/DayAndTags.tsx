import type { ReactElement } from 'react';
import type { Playbook } from '../../document/index.ts';
import type { CallId } from '../../engine/index.ts';
import { setCallParts } from '../../store/index.ts';
import { CountField } from '../parts/CountField.tsx';
import { TagsField } from '../parts/TagsField.tsx';
import { useApp, useCommit } from '../session/session.ts';

/** The last day of camp a file takes. */
const LAST_DAY = 60;

interface Props {
  readonly playbook: Playbook;
  readonly call: CallId | null;
}

/** When a kept call is put in, and what it is tagged with; folded away, since it changes nothing on the field. */
export function DayAndTags({ playbook, call: id }: Props): ReactElement | null {
  const commit = useCommit();
  const readOnly = useApp((state) => state.readOnly);
  const call = playbook.calls.find((each) => each.id === id);
  if (call === undefined) return null;
  const set = (what: string, parts: Parameters<typeof setCallParts>[1]['parts']): void => {
    commit({
      label: `changed ${what} of the call ${call.name}`,
      look: null,
      gesture: null,
      change: (now) => setCallParts(now, { call: call.id, parts }),
    });
  };
  const day = call.installDay === null ? 'Day of camp and tags' : `Put in on day ${call.installDay}`;
  return (
    <details className="day-tags" key={call.id}>
      <summary>{[day, ...call.tags].join(', ')}</summary>
      <div className="rule-fields">
        <CountField
          label="Put in on day"
          unit="of camp"
          value={call.installDay}
          min={1}
          max={LAST_DAY}
          disabled={readOnly}
          onChange={(installDay) => set('the day', { installDay })}
        />
        <TagsField tags={call.tags} disabled={readOnly} onTags={(tags) => set('the tags', { tags })} />
      </div>
    </details>
  );
}
