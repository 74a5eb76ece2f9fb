import fc from 'fast-check';
import {
  EDGE_PLAYS,
  FORMATION_CLASSES,
  GAP_LETTERS,
  MANNERS,
  PASSINGS,
  PLACES,
  PROTECTIONS,
  RULE_LEVELS,
  RUN_CONCEPTS,
  SUPPORTS,
  TOLD_BASES,
  TURNS,
  ZONES,
  type CheckOutAction,
  type GapRef,
  type KnownProtection,
  type KnownRun,
  type LookTest,
  type Pressure,
  type ReceiverRef,
  type RuleJob,
  type RunSupport,
  type Setup,
  type SideRef,
  type Tell,
  type Who,
} from '../../src/engine/index.ts';
import {
  ACROSS,
  ANVIL,
  CALL,
  FRONT,
  NEEDY_SHELL,
  NOSE,
  ofGroup,
  ROLES,
  setupOf,
  SPREAD,
  TIGHT,
  TONGS,
} from './fixtures.ts';

const side = fc.constantFrom<SideRef>('call', 'away', 'mine', 'other', 'left', 'right');

const gap: fc.Arbitrary<GapRef> = fc.oneof(
  fc.record({ kind: fc.constant('letter' as const), side, letter: fc.constantFrom(...GAP_LETTERS.slice(0, 4)) }),
  fc.record({ kind: fc.constant('edge' as const), side }),
  fc.record({ kind: fc.constant('outside' as const), side, body: fc.constantFrom('guard', 'end', 'last') }),
);

const who: fc.Arbitrary<Who> = fc.oneof(
  fc.constantFrom(...ROLES).map((role): Who => ({ kind: 'role', role: role.id })),
  fc
    .tuple(
      fc.constantFrom('ends', 'insiders', 'outsiders', 'corners', 'noses'),
      fc.constantFrom<'call' | 'away'>('call', 'away'),
    )
    .map(([group, where]) => ofGroup(group, where)),
);

const run: fc.Arbitrary<RunSupport<GapRef>> = fc.record({
  fits: fc.array(gap, { maxLength: 2 }),
  firm: fc.boolean(),
  support: fc.option(fc.constantFrom(...SUPPORTS)),
});

const receiver: fc.Arbitrary<ReceiverRef> = fc.oneof(
  fc.record({ kind: fc.constant('number' as const), side, number: fc.integer({ min: 1, max: 3 }) }),
  fc.integer({ min: 1, max: 2 }).map((number): ReceiverRef => ({ kind: 'back', number })),
);

const toGap = {
  gaps: fc.array(gap, { minLength: 1, maxLength: 2 }),
  manner: fc.constantFrom(...MANNERS),
};
const rusher = {
  ...toGap,
  track: fc.oneof(
    fc.constant({ kind: 'straight' as const }),
    fc.record({ kind: fc.constant('past' as const), how: fc.constantFrom(...PASSINGS), neighbour: who }),
  ),
  edge: fc.option(fc.constantFrom(...EDGE_PLAYS)),
  peel: fc.boolean(),
  order: fc.option(fc.record({ turn: fc.constantFrom('first' as const, 'second' as const), neighbour: who })),
};

const job: fc.Arbitrary<RuleJob> = fc.oneof(
  fc.record({ kind: fc.constant('rush' as const), ...rusher }),
  fc.record({ kind: fc.constant('contain' as const), ...rusher }),
  fc.record({ kind: fc.constant('fit' as const), ...toGap, support: fc.option(fc.constantFrom(...SUPPORTS)) }),
  fc.record({
    kind: fc.constant('drop' as const),
    zone: fc.constantFrom(...ZONES),
    side: fc.oneof(side, fc.constant('middle' as const)),
    run,
  }),
  fc.record({ kind: fc.constant('man' as const), receiver, run }),
  fc.record({ kind: fc.constant('spy' as const), run }),
);

const when: fc.Arbitrary<readonly LookTest[]> = fc.oneof(
  fc.constant([]),
  fc.constant<readonly LookTest[]>([{ kind: 'bodies', side: 'call', compare: 'at-least', count: 3 }]),
);

const tell: fc.Arbitrary<Tell> = fc.record({
  who,
  cases: fc.array(
    fc.record({
      when,
      basis: fc.constantFrom(...TOLD_BASES),
      job,
      preSnap: fc.option(
        fc.oneof(
          fc.record({ kind: fc.constant('heels' as const), of: who }),
          fc.record({ kind: fc.constant('depth' as const), depth: fc.constantFrom(0, 1, 4.5) }),
        ),
      ),
    }),
    { minLength: 1, maxLength: 2 },
  ),
});

/** A pressure nobody would install: random jobs for random men, with a side rule that may not decide. */
function pressureLike(base: Pressure): fc.Arbitrary<Pressure> {
  return fc.record({
    id: fc.constant(base.id),
    name: fc.constant(base.name),
    tags: fc.constant(base.tags),
    callSide: fc.constantFrom<Pressure['callSide']>(base.callSide, [], [{ kind: 'role', role: NOSE, toward: 'to' }]),
    tells: fc.array(tell, { maxLength: 8 }),
    coverage: fc.constant(base.coverage),
    rushers: fc.option(fc.integer({ min: 3, max: 7 })),
    notAgainst: fc.constantFrom([], [], [], [SPREAD.id]),
    installDay: fc.constant(null),
  });
}

const knownRun: fc.Arbitrary<KnownRun> = fc.record({
  concept: fc.constantFrom(...RUN_CONCEPTS),
  side: fc.constantFrom('left' as const, 'right' as const),
  passOption: fc.boolean(),
});
const knownProtection: fc.Arbitrary<KnownProtection> = fc.record({
  protection: fc.constantFrom(...PROTECTIONS.map((each) => each.id)),
  slideSide: fc.constantFrom('left' as const, 'right' as const),
});

/** Setups of the fixture world, most of them unsound: everything the engine can say, it should get to say. */
export const anySetup: fc.Arbitrary<Setup> = fc
  .record({
    level: fc.constantFrom(...RULE_LEVELS),
    spot: fc.constantFrom(...PLACES),
    look: fc.constantFrom(SPREAD, TIGHT),
    shift: fc.constantFrom(0, 0, 1, -1),
    first: pressureLike(ANVIL),
    second: fc.option(pressureLike(TONGS)),
    turn: fc.constantFrom(...TURNS),
    combination: fc.constantFrom<Setup['combination']>(
      { kind: 'together' },
      { kind: 'either-or', key: [] },
      { kind: 'either-or', key: [{ kind: 'bodies', side: 'call', compare: 'at-least', count: 3 }] },
    ),
    coverage: fc.constantFrom(setupOf().coverage, NEEDY_SHELL),
    checkOut: fc.option(
      fc.record({
        formation: fc.constantFrom(...FORMATION_CLASSES),
        action: fc.constantFrom<CheckOutAction>(
          { kind: 'run' },
          { kind: 'turn' },
          { kind: 'swap' },
          { kind: 'coverage', coverage: NEEDY_SHELL.id },
          { kind: 'check-to', call: CALL.id },
        ),
      }),
    ),
    rushers: fc.option(fc.integer({ min: 3, max: 7 })),
    motion: fc.constantFrom(null, null, ACROSS),
    known: fc.record({
      runs: fc.array(knownRun, { maxLength: 3 }),
      protections: fc.array(knownProtection, { maxLength: 3 }),
    }),
    without: fc.option(fc.constantFrom(...ROLES)),
  })
  .map(({ shift, without, look, motion, known, ...parts }) =>
    setupOf({
      ...parts,
      look: {
        ...look,
        ...known,
        motion,
        players: look.players.map((man) => (man.kind === 'back' ? { ...man, x: man.x + shift } : man)),
      },
      front: { ...FRONT, roles: FRONT.roles.filter((entry) => entry.role !== without?.id) },
    }),
  );
