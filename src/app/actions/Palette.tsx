import type { ReactElement } from 'react';
import {
  Autocomplete,
  Header,
  Input,
  Keyboard,
  Label,
  Menu,
  MenuItem,
  MenuSection,
  SearchField,
  Text,
  useFilter,
} from 'react-aria-components';
import { Dialog } from '../parts/Dialog.tsx';
import { ACTION_GROUPS, chordText, type Action } from './actions.ts';
import { onMac } from './onMac.ts';

interface Props {
  readonly actions: readonly Action[];
  readonly onClose: () => void;
}

/** Everything that can be done, found by typing a few letters of it. */
export function Palette({ actions, onClose }: Props): ReactElement {
  const { contains } = useFilter({ sensitivity: 'base' });
  const groups = ACTION_GROUPS.map((group) => ({
    group,
    members: actions.filter((action) => action.group === group && action.id !== 'palette'),
  })).filter(({ members }) => members.length > 0);
  return (
    <Dialog title="What do you want to do?" onClose={onClose}>
      <Autocomplete filter={contains}>
        <SearchField className="palette-search" autoFocus>
          <Label className="unseen">A few letters of it</Label>
          <Input placeholder="A few letters of it: a look, a call, print…" />
        </SearchField>
        <Menu
          className="palette"
          aria-label="Everything there is to do"
          disabledKeys={actions.filter(({ disabled }) => disabled).map(({ id }) => id)}
          renderEmptyState={() => <p className="hint">Nothing here is called that.</p>}
          onAction={(key) => {
            onClose();
            // What it opens must find the page as it was before: the dialog gives the focus back first.
            const chosen = actions.find(({ id }) => id === key);
            if (chosen !== undefined) queueMicrotask(chosen.run);
          }}
        >
          {groups.map(({ group, members }) => (
            <MenuSection key={group}>
              <Header className="palette-group">{group}</Header>
              {members.map(({ id, title, keys: [chord] }) => (
                <MenuItem key={id} id={id} textValue={title}>
                  <Text slot="label">{title}</Text>
                  {chord !== undefined && <Keyboard>{chordText(chord, onMac())}</Keyboard>}
                </MenuItem>
              ))}
            </MenuSection>
          ))}
        </Menu>
      </Autocomplete>
    </Dialog>
  );
}
