import { remembered } from '../base/index.ts';
import { because, datum } from './because.ts';
import { runChecks } from './checks/runChecks.ts';
import type { Draft } from './checks/defineCheck.ts';
import { applyWaivers } from './waivers.ts';
import { work, type Worked } from './work.ts';
import type { Analysis, Look, MotionEffect, RoleId, Setup } from './types/index.ts';
import { printAssignment } from './notation/eleven.ts';
import { worstOf } from './verdict.ts';

/**
 * One call in one look at one ball spot, from what was drawn to the verdict: the stages of the engine in order, each
 * stage's answer kept, as the ball is snapped. Pure: the same setup gives the same analysis to the byte.
 */
export function analyse(setup: Setup): Analysis {
  const { motion } = setup.look;
  if (motion === null) return judge({ ...work(setup), motion: null });
  const atSnap = work({ ...setup, look: afterMotion(setup.look) });
  const before = work(setup);
  return judge({ ...atSnap, setup, choice: choiceAfter(before, atSnap), motion: effectOf(before, atSnap) });
}

/** The look as the ball is snapped, the man in motion where it has brought him. */
export const afterMotion = remembered((look: Look): Look => {
  const { motion } = look;
  if (motion === null) return look;
  return { ...look, players: look.players.map((man) => (man.id === motion.player ? { ...man, ...motion.to } : man)) };
});

/** The choice of an either-or call as the ball is snapped; where the motion makes it another half, that is a reason of it. */
function choiceAfter({ choice: before }: Worked, { choice }: Worked): Analysis['choice'] {
  if (before === null || choice === null || before.ran === choice.ran) return choice;
  const turned = because('before the motion it is {which}', { which: datum.pressure(before.ran) });
  return { ...choice, because: { ...choice.because, because: [...choice.because.because, turned] } };
}

/** The findings of all checks, the waived ones marked; what they could not judge; and the worst of it. */
function judge(draft: Draft): Analysis {
  const judgement = runChecks(draft);
  const findings = applyWaivers(judgement.findings, draft.setup);
  const { undetermined } = judgement;
  const standing = findings.filter((finding) => finding.waived === null);
  return { ...draft, findings, undetermined, verdict: worstOf(draft, [{ found: standing, doubts: undetermined }]) };
}

/** What changes between the look as it is set and the look as the ball is snapped. */
function effectOf(before: Worked, after: Worked): MotionEffect {
  const told = new Map<RoleId, string>(
    before.assignments.map((man) => [man.aligned.role.id, `${spotOf(man)} ${printAssignment(man)}`]),
  );
  return {
    first: before.first.side,
    second: before.second?.side ?? null,
    moved: after.assignments
      .filter((man) => told.get(man.aligned.role.id) !== `${spotOf(man)} ${printAssignment(man)}`)
      .map((man) => man.aligned.role.id),
  };
}

function spotOf({ aligned }: Worked['assignments'][number]): string {
  return `${aligned.x.toFixed(2)} ${aligned.y.toFixed(2)}`;
}
