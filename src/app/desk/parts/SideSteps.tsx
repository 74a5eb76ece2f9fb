import type { ReactElement } from 'react';
import { MAX_ENTRIES } from '../../../document/index.ts';
import { DIRECTIONS, SIDES, STRENGTHS, type Role, type SideStep } from '../../../engine/index.ts';
import type { RuleWords } from '../../../report/index.ts';
import type { Change } from './change.ts';
import { OrderedList } from './OrderedList.tsx';
import { PickList, type OptionGroup } from './PickList.tsx';

interface Props {
  /** Whose steps they are, for those who hear it: "of the call side". */
  readonly of: string;
  /** Said before the first step, and before each of the others; left out where only those who hear it need it. */
  readonly leads?: readonly [first: string, then: string];
  readonly steps: readonly SideStep[];
  /** The roles whose side a step may follow: those that have one, and not the role itself. */
  readonly roles: readonly Role[];
  readonly words: RuleWords;
  readonly disabled: boolean;
  readonly onChange: Change<readonly SideStep[]>;
}

/** The steps that pick a side, in order: the first one that decides wins. */
export function SideSteps({ of, leads, steps, roles, words, disabled, onChange }: Props): ReactElement {
  const all = choices(roles);
  const groups = optionGroups(all, words);
  return (
    <OrderedList
      one="step"
      of={of}
      items={steps}
      min={1}
      max={MAX_ENTRIES.steps}
      ordered
      disabled={disabled}
      fresh={(): SideStep => ({ kind: 'fixed', side: 'right' })}
      onChange={(next) => onChange(next, null)}
    >
      {(step, index) => (
        <PickList
          label={leads?.[index === 0 ? 0 : 1] ?? `${index === 0 ? 'First' : 'Then'}, step ${index + 1} ${of}`}
          hideLabel={leads === undefined}
          value={keyOf(step)}
          ownWords={words.step(step)}
          groups={groups}
          disabled={disabled}
          onPick={(key) => {
            const picked = all.find((each) => keyOf(each) === key);
            if (picked === undefined) return;
            onChange(steps.with(index, picked), null);
          }}
        />
      )}
    </OrderedList>
  );
}

function choices(roles: readonly Role[]): readonly SideStep[] {
  return [
    ...STRENGTHS.flatMap((by) => DIRECTIONS.map((toward): SideStep => ({ kind: 'strength', by, toward }))),
    ...SIDES.map((side): SideStep => ({ kind: 'fixed', side })),
    ...roles.flatMap(({ id }) => DIRECTIONS.map((toward): SideStep => ({ kind: 'role', role: id, toward }))),
  ];
}

function keyOf(step: SideStep): string {
  switch (step.kind) {
    case 'fixed':
      return `fixed ${step.side}`;
    case 'strength':
      return `strength ${step.by} ${step.toward}`;
    case 'role':
      return `role ${step.role} ${step.toward}`;
  }
}

function optionGroups(all: readonly SideStep[], words: RuleWords): readonly OptionGroup[] {
  const group = (name: string, kind: SideStep['kind']): OptionGroup => ({
    name,
    options: all.filter((step) => step.kind === kind).map((step) => ({ value: keyOf(step), label: words.step(step) })),
  });
  return [
    group('By the offence and the field', 'strength'),
    group('Always', 'fixed'),
    group('By another man', 'role'),
  ].filter(({ options }) => options.length > 0);
}
