import type { ReactElement } from 'react';
import type { Playbook } from '../../document/index.ts';
import { PLACES, TURNS, type Place } from '../../engine/index.ts';
import { SPOT_WORDS } from '../../report/index.ts';
import { sameParts, standInCall, type Board } from '../../store/index.ts';
import { named, Radios, Select } from '../parts/Choice.tsx';
import { capital } from '../parts/capital.ts';
import { useApp, useSession } from '../session/session.ts';
import { CallButtons } from './CallButtons.tsx';
import { CheckOuts } from './CheckOuts.tsx';
import { DayAndTags } from './DayAndTags.tsx';
import { Together } from './Together.tsx';
import { TURN_WORDS } from './turnWords.ts';

/** What is called, and against what. */
export function CallPanel(): ReactElement {
  const { store } = useSession();
  const playbook = useApp((state) => state.playbook);
  const board = useApp((state) => state.board);
  const set = store.setBoard;
  return (
    <section className="panel call-panel" aria-labelledby="call-title">
      <h2 id="call-title">The call</h2>
      <KeptCall playbook={playbook} board={board} />
      <Select label="Front" value={board.front} options={named(playbook.fronts)} onChoose={(front) => set({ front })} />
      <Select
        label="First pressure"
        value={board.first}
        options={named(playbook.pressures)}
        onChoose={(first) => set({ first })}
      />
      <Select
        label="Second pressure"
        value={board.second}
        options={named(playbook.pressures)}
        none="None: the first alone"
        onChoose={(second) => set({ second })}
      />
      <Together playbook={playbook} board={board} onChoose={(combination) => set({ combination })} />
      <Select
        label="The second goes"
        value={board.turn}
        options={TURNS.map((value) => ({ value, label: TURN_WORDS[value] }))}
        disabled={board.second === null}
        onChoose={(turn) => set({ turn: turn ?? 'own' })}
      />
      <Rushers playbook={playbook} board={board} onChoose={(rushers) => set({ rushers })} />
      <Select
        wide
        label="Coverage behind it"
        value={board.coverage}
        options={named(playbook.coverages)}
        none={firstCoverage(playbook, board)}
        onChoose={(coverage) => set({ coverage })}
      />
      <CallButtons />
      <DayAndTags playbook={playbook} call={board.call} />
      <CheckOuts playbook={playbook} call={board.call} />
      <div className="against">
        <h2>Against</h2>
        <Select label="Look" value={board.look} options={named(playbook.looks)} onChoose={(look) => set({ look })} />
        <BallSpot spot={board.spot} onChoose={(spot) => set({ spot })} />
      </div>
    </section>
  );
}

function KeptCall({ playbook, board }: { readonly playbook: Playbook; readonly board: Board }): ReactElement {
  const { store } = useSession();
  const call = playbook.calls.find(({ id }) => id === board.call);
  const changed = call !== undefined && !sameParts(call, board);
  return (
    <Select
      label="Kept call"
      value={board.call}
      options={named(playbook.calls)}
      none="None: put together below"
      {...(changed ? { hint: 'Changed since it was kept.' } : {})}
      onChoose={(id) => {
        const chosen = playbook.calls.find((candidate) => candidate.id === id);
        store.setBoard(chosen === undefined ? { call: null } : standInCall(store.get().board, chosen));
      }}
    />
  );
}

function BallSpot({
  spot,
  onChoose,
}: {
  readonly spot: Place;
  readonly onChoose: (spot: Place) => void;
}): ReactElement {
  return (
    <Radios
      legend="Ball on"
      hint="(the defence’s left and right)"
      value={spot}
      options={PLACES.map((value) => ({ value, label: capital(SPOT_WORDS[value]) }))}
      onChoose={onChoose}
    />
  );
}

/** Numbers that can be said; a file may say any other, which is then shown too. */
const NUMBERS = [3, 4, 5, 6, 7, 8];

interface RushersProps {
  readonly playbook: Playbook;
  readonly board: Board;
  readonly onChoose: (rushers: number | null) => void;
}

/** How many the coach says come, which the check counts against. */
function Rushers({ playbook, board, onChoose }: RushersProps): ReactElement {
  const first = playbook.pressures.find(({ id }) => id === board.first);
  // A pressure called alone may say it itself.
  const own = board.second === null ? (first?.rushers ?? null) : null;
  const numbers = board.rushers === null || NUMBERS.includes(board.rushers) ? NUMBERS : [...NUMBERS, board.rushers];
  return (
    <Select
      label="How many come"
      value={board.rushers === null ? null : String(board.rushers)}
      options={numbers.map((number) => ({ value: String(number), label: String(number) }))}
      none={own === null ? 'Not said' : `${own}, as the pressure says`}
      onChoose={(value) => onChoose(value === null ? null : Number(value))}
    />
  );
}

function firstCoverage(playbook: Playbook, board: Board): string {
  const first = playbook.pressures.find(({ id }) => id === board.first);
  const coverage = playbook.coverages.find(({ id }) => id === first?.coverage);
  return coverage === undefined ? 'The first pressure’s' : `The first pressure’s: ${coverage.name}`;
}
