/** The shells behind the rush. A shell tells only men whom the rush leaves free, so each names more men than it needs. */
import { asCoverageId, type Coverage, type LookTest, type RuleJob, type Who } from '../../src/engine/index.ts';
import {
  awayMan,
  backs,
  bodies,
  callMan,
  cover,
  drop,
  edgeGap,
  gap,
  ifFree,
  receiver,
  receivers,
  THE_BACK,
} from './words.ts';

interface Told {
  readonly who: Who;
  readonly cases: readonly { readonly when: readonly LookTest[]; readonly job: RuleJob }[];
}
const tells = (who: Who, job: RuleJob): Told => ({ who, cases: [{ when: [], job }] });
const tellsBy = (who: Who, ...cases: (readonly [readonly LookTest[], RuleJob])[]): Told => ({
  who,
  cases: cases.map(([when, job]) => ({ when, job })),
});

const shell = (id: string, name: string, ...told: Told[]): Coverage => ({ id: asCoverageId(id), name, tells: told });

/** The backer who forces is never sent inside a tight end: he would leave the edge he sets. */
const edgeForce = (side: 'call' | 'away') => ifFree('force', edgeGap(side), gap('D', side));
/** A man who forces, and where nobody else has them the gaps from the outside in. */
const force = (side: 'call' | 'away') => ifFree('force', edgeGap(side), gap('D', side), gap('C', side));
/** The backer on the edge when somebody else forces. */
const edge = (side: 'call' | 'away') => ifFree(null, edgeGap(side), gap('D', side), gap('C', side));
/** An inside backer: his own side from the inside out, then back across the ball. */
const inside = (side: 'call' | 'away') =>
  ifFree('cutback', gap('A', side), gap('B', side), gap('C', side), gap('A', side === 'call' ? 'away' : 'call'));

const HOOK = (side: 'call' | 'away') => drop('hook', 'middle', inside(side));

/** The deep middle. Against a tight end on his side the gap outside that man can be one too many: he has the alley there. */
const POST = tellsBy(
  awayMan('safeties'),
  [
    [bodies('away', 'at-least', 3)],
    drop('middle', 'middle', ifFree('alley', gap('D', 'away'), edgeGap('away'), gap('C', 'away'))),
  ],
  [[], drop('middle', 'middle')],
);

/** A corner with nobody outside a wing stands close and sets the edge when nobody else does. */
const closeCorner = (who: 'call' | 'away', zone: 'third' | 'quarter') =>
  tellsBy(
    who === 'call' ? callMan('corners') : awayMan('corners'),
    [
      [bodies(who, 'at-least', 4), receivers(who, 'at-most', 2)],
      drop(zone, who, ifFree(null, edgeGap(who), gap('D', who))),
    ],
    [[], drop(zone, who)],
  );
const THIRDS = [closeCorner('call', 'third'), closeCorner('away', 'third')];

/** The call-side safety comes down for whoever left that side, the other safety to the middle. */
const rolled = shell(
  'three-deep-roll',
  'Three deep, call safety down',
  tells(callMan('safeties'), drop('seam', 'call', force('call'))),
  tells(awayMan('outside-backers'), drop('seam', 'away', edgeForce('away'))),
  tells(callMan('inside-backers'), HOOK('call')),
  tells(awayMan('inside-backers'), HOOK('away')),
  POST,
  ...THIRDS,
  tells(callMan('outside-backers'), drop('seam', 'call', edge('call'))),
);

/** Both outside backers have the seams, a safety takes the hook that two inside backers left. */
const inside3 = shell(
  'three-deep-hook',
  'Three deep, call safety in the hook',
  tells(callMan('safeties'), drop('hook', 'middle', ifFree('cutback', gap('D', 'call'), gap('C', 'call')))),
  tells(callMan('outside-backers'), drop('seam', 'call', edgeForce('call'))),
  tells(awayMan('outside-backers'), drop('seam', 'away', edgeForce('away'))),
  tells(callMan('inside-backers'), HOOK('call')),
  tells(awayMan('inside-backers'), HOOK('away')),
  POST,
  ...THIRDS,
);

/** A corner comes: the safety of his side goes over the top of him, and the backer may squeeze inside him. */
const overTheTop = shell(
  'three-deep-over',
  'Three deep, call safety over the corner',
  tells(callMan('safeties'), drop('third', 'call')),
  tells(callMan('outside-backers'), drop('seam', 'call', force('call'))),
  tells(awayMan('outside-backers'), drop('seam', 'away', edgeForce('away'))),
  tells(callMan('inside-backers'), HOOK('call')),
  tells(awayMan('inside-backers'), HOOK('away')),
  POST,
  closeCorner('away', 'third'),
);

/** Both outside backers come: the away inside backer runs out to the seam they left. */
const bothEdges = shell(
  'three-deep-edges',
  'Three deep, both edges gone',
  tells(callMan('safeties'), drop('seam', 'call', force('call'))),
  tells(
    awayMan('inside-backers'),
    drop('seam', 'away', ifFree('force', gap('A', 'away'), gap('C', 'away'), gap('B', 'away'))),
  ),
  tells(callMan('inside-backers'), HOOK('call')),
  POST,
  ...THIRDS,
);

/** Six come: two under with their eyes on the passer, three deep. */
const hot = shell(
  'three-deep-hot',
  'Three deep, two hot',
  tells(callMan('safeties'), drop('hot', 'call', force('call'))),
  tells(
    awayMan('inside-backers'),
    drop('hot', 'away', ifFree('force', edgeGap('away'), gap('D', 'away'), gap('C', 'away'), gap('A', 'away'))),
  ),
  POST,
  ...THIRDS,
);

/** Four deep, the safeties force; the ends and an inside backer are the three under. */
const quarters = shell(
  'four-deep',
  'Four deep, three under',
  closeCorner('call', 'quarter'),
  closeCorner('away', 'quarter'),
  tells(callMan('safeties'), drop('quarter', 'call', force('call'))),
  tells(awayMan('safeties'), drop('quarter', 'away', force('away'))),
  tells(callMan('inside-backers'), drop('hole', 'middle', inside('call'))),
  tells(awayMan('inside-backers'), drop('hole', 'middle', inside('away'))),
  tells(callMan('outside-backers'), drop('curl-flat', 'call', edge('call'))),
  tells(awayMan('outside-backers'), drop('curl-flat', 'away', edge('away'))),
);

const tightEnd = (side: 'call' | 'away') => [bodies(side, 'at-least', 3)];
const trips = (side: 'call' | 'away') => [receivers(side, 'at-least', 3)];
const slot = (side: 'call' | 'away') => [receivers(side, 'at-least', 2)];
const aBack = [backs('at-least', 1)];

/** Man, the call safety free. Of two backs the away inside backer has the nearer one, his mate the other from the hook. */
const manFree = shell(
  'man-free',
  'Man, call safety free',
  tells(callMan('corners'), cover(receiver('call', 1))),
  tells(awayMan('corners'), cover(receiver('away', 1))),
  tellsBy(
    callMan('safeties'),
    [tightEnd('call'), drop('middle', 'middle', ifFree('alley', gap('D', 'call'), edgeGap('call'), gap('C', 'call')))],
    [[], drop('middle', 'middle')],
  ),
  tellsBy(
    callMan('outside-backers'),
    [slot('call'), cover(receiver('call', 2), force('call'))],
    [[], drop('hole', 'middle', force('call'))],
  ),
  tellsBy(
    awayMan('safeties'),
    [slot('away'), cover(receiver('away', 2), force('away'))],
    [[], drop('hole', 'middle', force('away'))],
  ),
  tellsBy(
    awayMan('inside-backers'),
    [trips('away'), cover(receiver('away', 3), inside('away'))],
    [aBack, cover(THE_BACK, inside('away'))],
    [[], drop('hook', 'middle', inside('away'))],
  ),
  tellsBy(
    callMan('inside-backers'),
    [trips('call'), cover(receiver('call', 3), inside('call'))],
    [[...trips('away'), ...aBack], cover(THE_BACK, inside('call'))],
    [[], drop('hook', 'middle', inside('call'))],
  ),
  tells(awayMan('outside-backers'), drop('curl-flat', 'away', edge('away'))),
);

export const coverages: readonly Coverage[] = [rolled, inside3, overTheTop, bothEdges, hot, quarters, manFree];
