import { asOpponentId, type Opponent } from '../../src/document/index.ts';
import { asLookId } from '../../src/engine/index.ts';

const opponent = (id: string, name: string, ...shown: string[]): Opponent => ({
  id: asOpponentId(id),
  name,
  looks: shown.map(asLookId),
});

/** Two invented opponents and the looks each is known for. */
export const opponents: readonly Opponent[] = [
  opponent(
    'oxbarrow',
    'Oxbarrow Lanterns',
    'empty-00',
    'doubles-10',
    'trips-10',
    'bunch-10',
    'jet-10',
    'flexed-11',
    'tight-11',
    'trips-11',
    'trips-open-11',
    'wing-11',
    'back-out-11',
    'empty-11',
    'split-20',
  ),
  opponent(
    'brindlecote',
    'Brindlecote Millers',
    'pistol-10',
    'tight-11',
    'under-11',
    'trade-11',
    'unbalanced-11',
    'ace-12',
    'wing-12',
    'heavy-13',
    'i-21',
    'offset-21',
    'i-22',
  ),
];
