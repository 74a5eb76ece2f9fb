import { afterMotion, analyse } from '../analyse.ts';
import { accountOf } from '../checks/account.ts';
import { tieOf } from '../checks/defineCheck.ts';
import { choiceOf } from '../eitherOr.ts';
import { play } from '../play.ts';
import { halfRun, inOrder, leaningSide, shellInForce, sidesOf, tellBoth, type Sides } from '../tell.ts';
import type { Setup, SideDecision, ToldCall } from '../types/index.ts';
import { worstOf } from '../verdict.ts';
import { isWaived } from '../waivers.ts';
import { inBrief, sayOfPlay, sayOfTelling } from './say.ts';
import { matchupOf, type JudgedPlay, type Matchup } from './matchup.ts';
import type { Brief, Said } from './types.ts';

/**
 * What all checks say of one call in one look at one ball spot, without words: the stages and the checks of `analyse`, but a play
 * that has been judged before is not judged again, whichever pressures came to it. `tests/menu/remembered.test.ts` holds the two equal.
 */
export function briefOf(setup: Setup): Brief {
  const { look } = setup;
  const matchup = matchupFor(setup, look.motion === null ? look : afterMotion(look));
  const sides = sidesOf(setup, matchup.sideOf);
  if (look.motion === null) return judge(setup, matchup, sides, null);
  const before = sidesOf(setup, matchupFor(setup, look).sideOf);
  // Who moves with a call that the motion turns takes a second analysis to tell; few do.
  if (isTurned(before.first, sides.first) || isTurned(before.second, sides.second)) return inBrief(analyse(setup));
  return judge(setup, matchup, sides, { ...before, moved: [] });
}

function matchupFor({ front, roles, level, spot }: Setup, look: Setup['look']): Matchup {
  return matchupOf(look, front, roles, level, spot);
}

function isTurned(before: SideDecision | null, after: SideDecision | null): boolean {
  return (
    before?.kind !== after?.kind ||
    (before?.kind === 'decided' && after?.kind === 'decided' && before.side !== after.side)
  );
}

function judge(setup: Setup, matchup: Matchup, sides: Sides, motion: ToldCall['motion']): Brief {
  const { facts } = matchup.ground;
  const ran = halfRun(setup, sides.first, facts);
  const { first, second } = tellBoth(setup, sides, ran, matchup.hear);
  const atRule = matchup.menOf(first, second, ran);
  const known = atRule.some(({ told }) => told.aligned.by === 'pressure')
    ? atRule.toSorted((a, b) => inOrder(a.told, b.told))
    : atRule;
  const men = known.map(({ told }) => told);
  const roles = men.map(({ aligned }) => aligned.role);
  const told: ToldCall = {
    setup,
    facts,
    first: first.resolved,
    second: second?.resolved ?? null,
    choice: ran === null || second === null ? null : choiceOf(ran, roles, first.resolved, second.resolved),
    motion,
    assignments: men,
  };
  const tie = tieOf(told);
  const shell = shellInForce(setup, ran, sides);
  const lean = leaningSide(sides.first, facts);
  const numbers = atRule.map(({ number }) => number).join();
  const name = `${shell.side} ${lean} ${tie !== null} ${numbers}`;
  const judged = matchup.playOf(shell.coverage, name, (): JudgedPlay => {
    const eleven = known.map(({ playing }) => playing);
    const played = play(eleven, matchup.ground, shell, lean);
    return { said: sayOfPlay(played, tie !== null), account: accountOf(played) };
  });
  return sumUp(told, judged.said, sayOfTelling(told, judged.account, tie));
}

function sumUp(told: ToldCall, play: Said, telling: Said): Brief {
  const { setup } = told;
  const [ofPlay, ofTelling] =
    setup.waivers.length === 0 ? [play, telling] : [standing(play, setup), standing(telling, setup)];
  return { verdict: worstOf(told, [ofPlay, ofTelling]), play: ofPlay, telling: ofTelling };
}

function standing({ found, doubts }: Said, setup: Setup): Said {
  return { found: found.filter((each) => !isWaived(each, setup)), doubts };
}
