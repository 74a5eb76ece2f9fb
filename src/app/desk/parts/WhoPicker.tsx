import type { ReactElement } from 'react';
import type { Role, Who } from '../../../engine/index.ts';
import type { RuleWords } from '../../../report/index.ts';
import type { Change } from './change.ts';
import { PickList, type OptionGroup } from './PickList.tsx';

interface Props {
  /** Who it is that is picked: "Taker 1 of the flat". */
  readonly label: string;
  readonly hideLabel?: boolean;
  readonly who: Who;
  readonly roles: readonly Role[];
  readonly words: RuleWords;
  readonly disabled: boolean;
  readonly onChange: Change<Who>;
}

/** A defender as a rule names him: one man, or the one of a group on the call side or away from it. */
export function WhoPicker({ label, hideLabel = false, who, roles, words, disabled, onChange }: Props): ReactElement {
  const all = everyWho(roles);
  return (
    <PickList
      label={label}
      hideLabel={hideLabel}
      value={whoKey(who)}
      ownWords={words.who(who)}
      groups={optionGroups(all, roles, words)}
      disabled={disabled}
      onPick={(key) => {
        const picked = all.find((each) => whoKey(each) === key);
        if (picked !== undefined) onChange(picked, null);
      }}
    />
  );
}

/** Everybody a rule can name; a man who is alone in his group only by himself. */
export function everyWho(roles: readonly Role[]): readonly Who[] {
  const groups = [...new Set(roles.map(({ group }) => group))].filter(
    (group) => roles.filter((role) => role.group === group).length > 1,
  );
  return [
    ...roles.map(({ id }): Who => ({ kind: 'role', role: id })),
    ...groups.flatMap((group): readonly Who[] => [
      { kind: 'group', group, side: 'call' },
      { kind: 'group', group, side: 'away' },
    ]),
  ];
}

/** A text that tells one from another. */
export function whoKey(who: Who): string {
  return who.kind === 'role' ? `role ${who.role}` : `group ${who.group} ${who.side}`;
}

function optionGroups(all: readonly Who[], roles: readonly Role[], words: RuleWords): readonly OptionGroup[] {
  const label = (who: Who): string => {
    const role = who.kind === 'role' ? roles.find(({ id }) => id === who.role) : undefined;
    return role === undefined ? words.who(who) : `${role.letter} (${role.name})`;
  };
  const group = (name: string, kind: Who['kind']): OptionGroup => ({
    name,
    options: all.filter((who) => who.kind === kind).map((who) => ({ value: whoKey(who), label: label(who) })),
  });
  return [group('By the call', 'group'), group('One man', 'role')].filter(({ options }) => options.length > 0);
}
