import { useState, type ReactElement } from 'react';
import type { Playbook } from '../../document/index.ts';
import { ROOMS, type CallId, type Room } from '../../engine/index.ts';
import type { QuizPlan } from '../../quiz/index.ts';
import { ROOM_WORDS } from '../../report/index.ts';
import { looksShown } from '../../store/index.ts';
import { named, Radios, Select } from '../parts/Choice.tsx';
import { useApp } from '../session/session.ts';
import { KeptResults } from './KeptResults.tsx';
import { shownName } from '../parts/shownName.ts';

const ROOM_OPTIONS = ROOMS.map((room) => ({ value: room, label: ROOM_WORDS[room] }));

const COUNTS = ['5', '10', '20'] as const;
const COUNT_OPTIONS = COUNTS.map((value) => ({ value, label: value }));

interface Props {
  readonly playbook: Playbook;
  readonly onBegin: (plan: Omit<QuizPlan, 'seed'>) => void;
}

/** For which room, out of which calls, against whose looks. */
export function QuizPlanner({ playbook, onBegin }: Props): ReactElement {
  const shown = useApp((state) => state.view.opponent);
  const [room, setRoom] = useState<Room>('line');
  const [count, setCount] = useState<(typeof COUNTS)[number]>('10');
  const [calls, setCalls] = useState<ReadonlySet<CallId>>(new Set(playbook.calls.map(({ id }) => id)));
  const [opponent, setOpponent] = useState(shown);
  const picked = playbook.calls.filter(({ id }) => calls.has(id)).map(({ id }) => id);
  const looks = looksShown({ playbook, view: { opponent } }).map(({ id }) => id);
  const nothing = playbook.calls.length === 0 || playbook.looks.length === 0;
  return (
    <div className="quiz-plan">
      <h2>Quiz a room</h2>
      <p>
        A player sees a call against a look and points to his gap, his zone or his receiver. He is told whether it is
        right, and why.
      </p>
      {nothing && <p>This playbook has no kept call, or no look, to ask about yet. Keep a call on the board first.</p>}
      <Radios legend="Room" value={room} options={ROOM_OPTIONS} onChoose={setRoom} />
      <Radios legend="Questions" value={count} options={COUNT_OPTIONS} onChoose={setCount} />
      <Select
        label="Against the looks of"
        value={opponent}
        options={named(playbook.opponents)}
        none="Everybody"
        onChoose={setOpponent}
      />
      <fieldset className="quiz-calls">
        <legend>Calls</legend>
        {playbook.calls.map(({ id, name }) => (
          <label key={id}>
            <input type="checkbox" checked={calls.has(id)} onChange={() => setCalls(toggled(calls, id))} />
            {shownName(name)}
          </label>
        ))}
      </fieldset>
      <div className="button-row">
        <button
          type="button"
          className="is-main"
          disabled={picked.length === 0 || looks.length === 0}
          onClick={() => onBegin({ room, calls: picked, looks, count: Number(count) })}
        >
          Begin
        </button>
      </div>
      <KeptResults />
    </div>
  );
}

function toggled(calls: ReadonlySet<CallId>, id: CallId): ReadonlySet<CallId> {
  const others = [...calls].filter((each) => each !== id);
  return new Set(others.length === calls.size ? [...others, id] : others);
}
