import { useEffect, type ReactElement } from 'react';
import type { Playbook } from '../../../document/index.ts';
import type { Pressure, PressureId, Who } from '../../../engine/index.ts';
import { setCallSide } from '../../../store/index.ts';
import { useApp, useSession } from '../../session/session.ts';
import { SideSteps } from '../parts/SideSteps.tsx';
import { useEdit } from '../parts/useEdit.ts';
import { useRuleWords } from '../parts/useRuleWords.ts';
import { Beside } from './Beside.tsx';
import { roleNow } from './roleNow.ts';
import { ToldMen } from './ToldMen.tsx';
import { shownName } from '../../parts/shownName.ts';

/** A pressure as it can be read and changed: its call side, who is told what, and what is behind it. */
export function PressureDesk({ id }: { readonly id: PressureId }): ReactElement | null {
  const { store, analyst } = useSession();
  const playbook = useApp((state) => state.playbook);
  const disabled = useApp((state) => state.readOnly);
  const words = useRuleWords();
  const edit = useEdit();
  useEffect(() => () => store.setView({ picking: null }), [store, id]);
  const pressure = playbook.pressures.find((each) => each.id === id);
  if (pressure === undefined) return null;
  const { roles } = playbook;
  const pick = (who: Who | null): void => {
    const { board } = store.get();
    // What is picked is seen: the pressure must be on the board.
    if (board.first !== id && board.second !== id) store.setBoard({ first: id, second: null, call: null });
    const shown = analyst.onBoard(store.get());
    const man = who === null || !shown.ok ? null : roleNow(shown.value, id, who);
    store.setView({ picking: { pressure: id, man, place: null } });
  };
  const last = pressure.callSide.at(-1);
  return (
    <section className="editor" aria-labelledby="pressure-title" key={id}>
      <h3 id="pressure-title">{shownName(pressure.name)}</h3>
      <ul className="said-list">
        <li>{words.callSide(pressure.callSide)}.</li>
        <li>{behind(pressure, playbook)}.</li>
        <NotAgainst pressure={pressure} playbook={playbook} />
      </ul>
      <h3 className="part-title">Who is told what</h3>
      <ToldMen pressure={pressure} roles={roles} words={words} disabled={disabled} onPick={pick} />
      <h3 className="part-title">Call side</h3>
      <SideSteps
        of="of the call side"
        leads={['The call goes', 'If that is a tie, then']}
        steps={pressure.callSide}
        roles={roles}
        words={words}
        disabled={disabled}
        onChange={(steps) =>
          edit(`changed the call side of ${pressure.name}`, null, (now) => setCallSide(now, { pressure: id, steps }))
        }
      />
      {last?.kind !== 'fixed' && (
        <p className="hint">
          Where every step is a tie the call has no side. A last step to the left or right always decides.
        </p>
      )}
      <h3 className="part-title">Besides the rush</h3>
      <Beside pressure={pressure} playbook={playbook} disabled={disabled} />
    </section>
  );
}

function behind(pressure: Pressure, { coverages }: Playbook): string {
  const name = coverages.find(({ id }) => id === pressure.coverage)?.name ?? '';
  const coverage = `Behind it: ${name === '' ? 'a coverage without a name' : name}`;
  const come = pressure.rushers === null ? '' : `; ${pressure.rushers} come`;
  return `${coverage}${come}${pressure.installDay === null ? '' : `; put in on day ${pressure.installDay}`}`;
}

function NotAgainst({
  pressure,
  playbook,
}: {
  readonly pressure: Pressure;
  readonly playbook: Playbook;
}): ReactElement | null {
  const names = playbook.looks.filter(({ id }) => pressure.notAgainst.includes(id)).map(({ name }) => name);
  return names.length === 0 ? null : <li>Not run against {names.join(', ')}.</li>;
}
