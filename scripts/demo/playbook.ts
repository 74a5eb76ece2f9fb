/** The document as a whole, and its text. */
import { asSheetId, saveDocument, type Playbook, type Sheet } from '../../src/document/index.ts';
import { calls } from './calls.ts';
import { checkOuts } from './checkOuts.ts';
import { coverages } from './coverages/index.ts';
import { dictionary } from './dictionary.ts';
import { fronts } from './fronts/index.ts';
import { looks } from './looks/index.ts';
import { opponents } from './opponents.ts';
import { pressures } from './pressures/index.ts';
import { roles } from './roles.ts';

const sheet = (id: string, name: string, room: Sheet['room']): Sheet => ({
  id: asSheetId(id),
  name,
  room,
  paper: 'letter',
});

/** The invented team's playbook. */
export const playbook: Playbook = {
  format: 'gapwright-playbook',
  version: 3,
  team: { name: 'Alderfen Herons', level: 'high-school', season: '2026' },
  roles,
  fronts,
  coverages,
  looks,
  pressures,
  calls,
  opponents,
  sheets: [
    sheet('staff', 'Staff: everybody', 'all'),
    sheet('line', 'Line room', 'line'),
    sheet('linebackers', 'Linebacker room', 'linebackers'),
    sheet('secondary', 'Secondary room', 'secondary'),
  ],
  checkOuts,
  dictionary,
  words: { techniques: [] },
};

/** The file's text, as the program itself would save it. */
export function playbookText(): string {
  return saveDocument(playbook);
}
