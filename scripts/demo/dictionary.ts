/** The staff dictionary. Words of our own; one of them has got two meanings, as such words do. */
import type { StaffWord } from '../../src/engine/index.ts';

export const dictionary: readonly StaffWord[] = [
  { word: 'Bank', meaning: 'the man who sets the edge and turns the ball back in' },
  { word: 'Coracle', meaning: 'the deep middle, when one safety has it alone' },
  { word: 'Ferry', meaning: 'a call of two halves: the look says which one is run' },
  { word: 'Heft', meaning: 'nose and ends hold their base gaps, whatever comes behind them' },
  { word: 'Lode', meaning: 'the second receiver goes straight up the seam' },
  { word: 'Otter', meaning: 'a tight end or a wing who trades sides before the snap' },
  { word: 'Pinfold', meaning: 'both ends one gap inside' },
  { word: 'Rill', meaning: 'the third safety comes down over the second receiver' },
  { word: 'Rill', meaning: 'the back goes out wide before the snap' },
  { word: 'Staunch', meaning: 'stay in the rush where the call would have you drop' },
  { word: 'Tarn', meaning: 'nobody left in the backfield but the passer' },
];
