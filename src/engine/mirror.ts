import type {
  Coverage,
  Front,
  GapRef,
  Look,
  LookTest,
  Pressure,
  Role,
  RuleJob,
  Setup,
  SideRef,
  SideStep,
} from './types/index.ts';
import type { Place, Side } from './vocabulary.ts';

/** The other side. */
export function mirrorSide(side: Side): Side {
  return side === 'left' ? 'right' : 'left';
}

/** The other side, the middle staying the middle. */
export function mirrorPlace(place: Place): Place {
  return place === 'middle' ? place : mirrorSide(place);
}

function mirrorRef(ref: SideRef): SideRef {
  return ref === 'left' || ref === 'right' ? mirrorSide(ref) : ref;
}

/** A point on the other side of the ball. Zero has no mirror: -0 would print and compare differently. */
export function mirrorX<At extends { readonly x: number }>(at: At): At {
  return { ...at, x: at.x === 0 ? 0 : -at.x };
}

function mirrorGap(ref: GapRef): GapRef {
  return { ...ref, side: mirrorRef(ref.side) };
}

function mirrorTests(tests: readonly LookTest[]): readonly LookTest[] {
  return tests.map((test) => (test.kind === 'backs' ? test : { ...test, side: mirrorRef(test.side) }));
}

function mirrorSteps(steps: readonly SideStep[]): readonly SideStep[] {
  return steps.map((step) => (step.kind === 'fixed' ? { ...step, side: mirrorSide(step.side) } : step));
}

function mirrorJob(job: RuleJob): RuleJob {
  switch (job.kind) {
    case 'rush':
    case 'contain':
    case 'fit':
      return { ...job, gaps: job.gaps.map(mirrorGap) };
    case 'drop': {
      const side = job.side === 'middle' ? job.side : mirrorRef(job.side);
      return { ...job, side, run: { ...job.run, fits: job.run.fits.map(mirrorGap) } };
    }
    case 'man': {
      const receiver =
        job.receiver.kind === 'back' ? job.receiver : { ...job.receiver, side: mirrorRef(job.receiver.side) };
      return { ...job, receiver, run: { ...job.run, fits: job.run.fits.map(mirrorGap) } };
    }
    case 'spy':
      return { ...job, run: { ...job.run, fits: job.run.fits.map(mirrorGap) } };
  }
}

function mirrorRole(role: Role): Role {
  return role.side.kind === 'middle' ? role : { ...role, side: { ...role.side, steps: mirrorSteps(role.side.steps) } };
}

function mirrorFront(front: Front): Front {
  return {
    ...front,
    roles: front.roles.map((entry) => ({
      ...entry,
      rules: entry.rules.map((rule) => ({ ...rule, when: mirrorTests(rule.when) })),
      base: { ...entry.base, gaps: entry.base.gaps.map(mirrorGap) },
    })),
    byHand: front.byHand.map(mirrorX),
  };
}

/** A look with everybody on the other side, its runs and protections with them; only its id and name stay. */
export function mirrorLook(look: Look): Look {
  return {
    ...look,
    players: look.players.map(mirrorX),
    motion: look.motion === null ? null : { ...look.motion, to: mirrorX(look.motion.to) },
    runs: look.runs.map((run) => ({ ...run, side: mirrorSide(run.side) })),
    protections: look.protections.map((each) => ({ ...each, slideSide: mirrorSide(each.slideSide) })),
  };
}

function mirrorPressure(pressure: Pressure): Pressure {
  return {
    ...pressure,
    callSide: mirrorSteps(pressure.callSide),
    tells: pressure.tells.map((tell) => ({
      ...tell,
      cases: tell.cases.map((each) => ({ ...each, when: mirrorTests(each.when), job: mirrorJob(each.job) })),
    })),
  };
}

function mirrorCoverage(coverage: Coverage): Coverage {
  return {
    ...coverage,
    needs: coverage.needs.map((need) => ({
      ...need,
      when: mirrorTests(need.when),
      side: need.side === 'middle' ? need.side : mirrorRef(need.side),
    })),
    tells: coverage.tells.map((tell) => ({
      ...tell,
      cases: tell.cases.map((each) => ({ ...each, when: mirrorTests(each.when), job: mirrorJob(each.job) })),
    })),
  };
}

/**
 * Everything flipped left to right: the look, the ball spot, and every fixed left or right a rule names. Flipping twice
 * gives the first setup back. Analysing the flipped setup must give the flipped analysis: the tests hold the engine to it.
 */
export function mirrorSetup(setup: Setup): Setup {
  return {
    ...setup,
    spot: mirrorPlace(setup.spot),
    roles: setup.roles.map(mirrorRole),
    front: mirrorFront(setup.front),
    look: mirrorLook(setup.look),
    first: mirrorPressure(setup.first),
    second: setup.second === null ? null : mirrorPressure(setup.second),
    combination:
      setup.combination.kind === 'together'
        ? setup.combination
        : { ...setup.combination, key: mirrorTests(setup.combination.key) },
    coverage: mirrorCoverage(setup.coverage),
    secondCoverage: setup.secondCoverage === null ? null : mirrorCoverage(setup.secondCoverage),
  };
}
