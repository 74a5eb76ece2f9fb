import type { ReactElement } from 'react';
import type { Playbook } from '../../document/index.ts';
import { FORMATION_CLASSES, type Call, type CheckOutAction, type CheckOutRow } from '../../engine/index.ts';
import { checkOutSentence, checkOutWords, FORMATION_WORDS, type CheckOutNames } from '../../report/index.ts';
import { setCheckOuts } from '../../store/index.ts';
import { OneOf } from '../desk/parts/OneOf.tsx';
import { OrderedList } from '../desk/parts/OrderedList.tsx';
import { PickList } from '../desk/parts/PickList.tsx';
import { useEdit } from '../desk/parts/useEdit.ts';
import { named } from '../parts/Choice.tsx';
import { useApp } from '../session/session.ts';

interface Props {
  readonly playbook: Playbook;
  readonly call: Call;
  readonly rows: readonly CheckOutRow[];
}

/** What a call becomes against classes of formations: each row a sentence that opens. */
export function CheckOutRows({ playbook, call, rows }: Props): ReactElement {
  const readOnly = useApp((state) => state.readOnly);
  const edit = useEdit();
  const set = (next: readonly CheckOutRow[]): void => {
    edit(`changed when to check out of the call ${call.name}`, null, (now) =>
      setCheckOuts(now, { call: call.id, rows: next }),
    );
  };
  const free = FORMATION_CLASSES.filter((each) => rows.every(({ formation }) => formation !== each));
  const names = namesIn(playbook, call);
  const fresh = free[0];
  return (
    <>
      <OrderedList
        one="formation"
        of="to check out of"
        large
        items={rows}
        min={0}
        max={FORMATION_CLASSES.length}
        ordered={false}
        disabled={readOnly}
        none="Run as called against everything."
        fresh={fresh === undefined ? null : (): CheckOutRow => ({ formation: fresh, action: { kind: 'run' } })}
        onChange={set}
      >
        {(row, index) => (
          <details className="rule">
            <summary>{checkOutSentence(row, names)}</summary>
            <div className="rule-body">
              <OneOf
                label="Against"
                value={row.formation}
                items={FORMATION_CLASSES.filter((each) => each === row.formation || free.includes(each))}
                say={(each) => FORMATION_WORDS[each]}
                disabled={readOnly}
                onChoose={(formation) => set(rows.with(index, { ...row, formation }))}
              />
              <ActionPicker
                action={row.action}
                playbook={playbook}
                call={call}
                names={names}
                disabled={readOnly}
                onPick={(action) => set(rows.with(index, { ...row, action }))}
              />
            </div>
          </details>
        )}
      </OrderedList>
      <p className="hint">
        A look that counts as several goes by the most special one. A call that is checked to is run as it is, without
        its own table.
      </p>
    </>
  );
}

function namesIn({ pressures, coverages, calls }: Playbook, call: Call): CheckOutNames {
  const nameOf = <Id extends string>(list: readonly { readonly id: Id; readonly name: string }[], id: Id): string =>
    named(list).find(({ value }) => value === id)?.label ?? '';
  const second = call.second === null ? null : nameOf(pressures, call.second);
  return {
    turned: second,
    nowFirst: second,
    coverage: (id) => nameOf(coverages, id),
    call: (id) => nameOf(calls, id),
  };
}

interface PickerProps {
  readonly action: CheckOutAction;
  readonly playbook: Playbook;
  readonly call: Call;
  readonly names: CheckOutNames;
  readonly disabled: boolean;
  readonly onPick: (action: CheckOutAction) => void;
}

/** What is done then: a change of the call, another coverage, or another call. A call is not offered to itself. */
function ActionPicker({ action, playbook, call, names, disabled, onPick }: PickerProps): ReactElement {
  const changes: readonly CheckOutAction[] =
    call.second === null ? [{ kind: 'run' }] : [{ kind: 'run' }, { kind: 'turn' }, { kind: 'swap' }];
  const coverages = playbook.coverages.map(({ id }): CheckOutAction => ({ kind: 'coverage', coverage: id }));
  const calls = playbook.calls.flatMap(({ id }): readonly CheckOutAction[] =>
    id === call.id ? [] : [{ kind: 'check-to', call: id }],
  );
  const group = (name: string, actions: readonly CheckOutAction[]) => ({
    name,
    options: actions.map((each) => ({ value: keyOf(each), label: checkOutWords(each, names) })),
  });
  return (
    <PickList
      label="What is run then"
      value={keyOf(action)}
      ownWords={checkOutWords(action, names)}
      groups={[
        group('This call', changes),
        group('This call, another coverage', coverages),
        group('Another call', calls),
      ].filter(({ options }) => options.length > 0)}
      disabled={disabled}
      onPick={(key) => {
        const picked = [...changes, ...coverages, ...calls].find((each) => keyOf(each) === key);
        if (picked !== undefined) onPick(picked);
      }}
    />
  );
}

function keyOf(action: CheckOutAction): string {
  if (action.kind === 'coverage') return `coverage ${action.coverage}`;
  return action.kind === 'check-to' ? `call ${action.call}` : action.kind;
}
