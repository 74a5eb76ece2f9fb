/**
 * Every command of the store with arguments drawn by chance: the table the random editing is made of. A new command gets a
 * row; what it draws need not make sense, for a command refuses what it cannot do.
 */
import type { Result } from '../../src/base/index.ts';
import type { Playbook } from '../../src/document/index.ts';
import {
  asCallId,
  BODIES,
  FORMATION_CLASSES,
  GAP_LETTERS,
  LEVERAGES,
  PLACES,
  ROOMS,
  SIDES,
  STRENGTHS,
  TURNS,
  ZONES,
  OFFENCE_KINDS,
  PERSONNEL,
  PROTECTIONS,
  RUN_CONCEPTS,
  SHAPES,
  TOLD_BASES,
  type AlignRule,
  type CheckOutAction,
  type GapRef,
  type LookTest,
  type RuleJob,
  type SideStep,
  type Spot,
  type TellCase,
  type Who,
} from '../../src/engine/index.ts';
import {
  applySuggestion,
  clearHand,
  clearHands,
  clearSomeHands,
  copyEntry,
  copyMirrored,
  deleteCall,
  deleteEntry,
  giveJob,
  handToRule,
  keepCall,
  mirrorInPlace,
  newCoverage,
  newFront,
  newLook,
  newPressure,
  newRole,
  nextCallId,
  nextIds,
  renameCall,
  renameEntry,
  renamePlaybook,
  replaceRole,
  retell,
  SECTIONS,
  setAlignRules,
  setBaseJob,
  setCallParts,
  setCallSide,
  setCases,
  setCheckOuts,
  setCoverageTells,
  setMotion,
  setNeeds,
  setPlayerKind,
  setPlayerLetter,
  setPlayerSpot,
  setPressureParts,
  setProtections,
  setRoleLetter,
  setRoleMate,
  setRoleRoom,
  setRoleSide,
  setRuns,
  takeBack,
  tellMan,
  untell,
  updateCall,
  waive,
  type CommandProblem,
  type Entry,
} from '../../src/store/index.ts';
import { moveDefender } from '../../src/store/commands/defence.ts';
import { moveOffence } from '../../src/store/commands/offence.ts';

/** Chance from a seed: the same seed draws the same. */
export interface Chance {
  /** A whole number from 0 to below `limit`. */
  readonly below: (limit: number) => number;
  /** One of a list; a list without entries is a mistake of the table. */
  readonly one: <Item>(list: readonly Item[]) => Item;
  /** Yards, to a twentieth, from -`most` to `most`. */
  readonly yards: (most: number) => number;
}

/** Chance by a linear congruential generator: the 32-bit one of "Numerical Recipes", second edition, 1992, section 7.1; from memory. */
export function chanceFrom(seed: number): Chance {
  let state = seed >>> 0;
  const below = (limit: number): number => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return Math.floor((state / 2 ** 32) * limit);
  };
  return {
    below,
    one: (list) => {
      const item = list[below(list.length)];
      if (item === undefined) throw new Error('Nothing to draw from');
      return item;
    },
    yards: (most) => (below(most * 40 + 1) - most * 20) / 20,
  };
}

type Deed = (now: Playbook, chance: Chance) => Result<Playbook, CommandProblem>;

const nameOf = (chance: Chance): string => chance.one(['', 'Heron', 'Teal', 'Rail', 'Snipe', 'Wader', 'Coot']);

function testOf(chance: Chance): LookTest {
  const side = chance.one(['mine', 'other', ...SIDES] as const);
  const count = chance.below(4);
  const compare = chance.one(['at-least', 'at-most', 'exactly'] as const);
  return chance.one<LookTest>([
    { kind: 'bodies', side, compare, count },
    { kind: 'receivers', side, compare, count },
    { kind: 'backs', compare, count },
    { kind: 'field', side },
    { kind: 'back', side },
  ]);
}

function spotOf(chance: Chance): Spot {
  const depth = 1 + chance.below(12);
  const number = 1 + chance.below(3);
  return chance.one<Spot>([
    { kind: 'technique', on: chance.one(BODIES), leverage: chance.one(LEVERAGES), depth },
    { kind: 'edge', offset: chance.yards(4), depth },
    { kind: 'receiver', number, leverage: chance.one(['inside', 'head', 'outside']), depth },
    { kind: 'apex', number, depth },
    { kind: 'ball', offset: chance.yards(9), depth },
  ]);
}

const several = <Item>(chance: Chance, most: number, draw: (chance: Chance) => Item): readonly Item[] =>
  Array.from({ length: chance.below(most + 1) }, () => draw(chance));
const ruleOf = (chance: Chance): AlignRule => ({ when: several(chance, 2, testOf), spot: spotOf(chance) });
const gapOf = (chance: Chance): GapRef => ({
  kind: 'letter',
  side: chance.one(['mine', 'other', ...SIDES] as const),
  letter: chance.one(GAP_LETTERS),
});
const whoOf = (now: Playbook, chance: Chance): Who => {
  const role = chance.one(now.roles);
  return chance.one<Who>([
    { kind: 'role', role: role.id },
    { kind: 'group', group: role.group, side: chance.one(['call', 'away']) },
  ]);
};
const stepOf = (now: Playbook, chance: Chance): SideStep =>
  chance.one<SideStep>([
    { kind: 'fixed', side: chance.one(SIDES) },
    { kind: 'strength', by: chance.one(STRENGTHS), toward: chance.one(['to', 'away']) },
    { kind: 'role', role: chance.one(now.roles).id, toward: chance.one(['to', 'away']) },
  ]);
const jobOf = (chance: Chance): RuleJob => {
  const run = { fits: several(chance, 3, gapOf), firm: chance.below(2) === 0, support: null };
  const side = chance.one(['call', 'away', 'middle'] as const);
  return chance.one<RuleJob>([
    { kind: 'drop', zone: chance.one(ZONES), side, run },
    { kind: 'man', receiver: { kind: 'number', side: 'call', number: 1 + chance.below(3) }, run },
    { kind: 'spy', run },
  ]);
};
function entryOf(now: Playbook, chance: Chance): Entry {
  const section = chance.one(SECTIONS);
  switch (section) {
    case 'pressures':
      return { section, id: chance.one(now.pressures).id };
    case 'looks':
      return { section, id: chance.one(now.looks).id };
    case 'fronts':
      return { section, id: chance.one(now.fronts).id };
    case 'coverages':
      return { section, id: chance.one(now.coverages).id };
    case 'roles':
      return { section, id: chance.one(now.roles).id };
  }
}
const manOf = (now: Playbook, chance: Chance) => {
  const front = chance.one(now.fronts);
  return { front: front.id, role: chance.one(front.roles).role };
};
const playerOf = (now: Playbook, chance: Chance) => {
  const look = chance.one(now.looks);
  return { look: look.id, player: chance.one(look.players).id };
};
const callOf = (now: Playbook, chance: Chance) => chance.one([...now.calls.map(({ id }) => id), asCallId('none')]);

const toldOf = (chance: Chance): TellCase => ({
  when: several(chance, 2, testOf),
  basis: chance.one(TOLD_BASES),
  job: jobOf(chance),
  preSnap: chance.one([null, { kind: 'depth', depth: 1 + chance.below(8) }]),
});
/** A man a pressure tells, or any other. */
const toldManOf = (now: Playbook, chance: Chance) => {
  const pressure = chance.one(now.pressures);
  return { pressure: pressure.id, who: chance.one([...pressure.tells.map(({ who }) => who), whoOf(now, chance)]) };
};
const partsOf = (now: Playbook, chance: Chance) => ({
  front: chance.one(now.fronts).id,
  first: chance.one(now.pressures).id,
  second: chance.one([null, chance.one(now.pressures).id]),
  turn: chance.one(TURNS),
  combination: { kind: 'together' } as const,
  coverage: chance.one([null, chance.one(now.coverages).id]),
  rushers: chance.one([null, chance.below(12)]),
});
const tagsOf = (chance: Chance): readonly string[] =>
  several(chance, 3, () => chance.one(['edge', ' edge', 'field', '']));
const dayOf = (chance: Chance): number | null => chance.one([null, 1 + chance.below(60)]);
const actionOf = (now: Playbook, chance: Chance): CheckOutAction =>
  chance.one<CheckOutAction>([
    { kind: chance.one(['run', 'turn', 'swap'] as const) },
    { kind: 'coverage', coverage: chance.one(now.coverages).id },
    { kind: 'check-to', call: callOf(now, chance) },
  ]);

/** Every command by its name. */
export const DEEDS: Readonly<Record<string, Deed>> = {
  renamePlaybook: (now, chance) => renamePlaybook(now, { name: nameOf(chance) }),
  renameEntry: (now, chance) => renameEntry(now, { entry: entryOf(now, chance), name: nameOf(chance) }),
  copyEntry: (now, chance) => copyEntry(now, { entry: entryOf(now, chance), name: nameOf(chance) }),
  // The last of a section stays, so that there is always something to draw from.
  deleteEntry: (now, chance) => {
    const entry = entryOf(now, chance);
    return now[entry.section].length > 1 ? deleteEntry(now, { entry }) : { ok: false, problem: { kind: 'no-longer' } };
  },
  renameCall: (now, chance) => renameCall(now, { call: callOf(now, chance), name: nameOf(chance) }),
  deleteCall: (now, chance) => deleteCall(now, { call: callOf(now, chance) }),
  updateCall: (now, chance) =>
    updateCall(now, {
      call: callOf(now, chance),
      parts: partsOf(now, chance),
    }),
  setCheckOuts: (now, chance) =>
    setCheckOuts(now, {
      call: callOf(now, chance),
      rows: several(chance, 2, () => ({ formation: chance.one(FORMATION_CLASSES), action: actionOf(now, chance) })),
    }),
  waive: (now, chance) =>
    waive(now, {
      call: callOf(now, chance),
      about: { rule: 'gap.open', look: chance.one(now.looks).id, evidence: chance.one(['', 'nose', 'A-left']) },
      reason: chance.one(['short', 'We see it once a season and live with it.']),
    }),
  moveDefender: (now, chance) =>
    moveDefender(now, {
      ...manOf(now, chance),
      look: chance.one(now.looks).id,
      at: { x: chance.yards(20), y: 1 + chance.below(12) },
    }),
  clearHand: (now, chance) => clearHand(now, { ...manOf(now, chance), look: chance.one(now.looks).id }),
  moveOffence: (now, chance) => {
    const look = chance.one(now.looks);
    return moveOffence(now, {
      look: look.id,
      player: chance.one(look.players).id,
      at: { x: chance.yards(20), y: -1 - chance.below(6) },
    });
  },
  newFront: (now, chance) => newFront(now, { name: nameOf(chance), roles: now.roles.slice(0, 11).map(({ id }) => id) }),
  replaceRole: (now, chance) => replaceRole(now, { ...manOf(now, chance), by: chance.one(now.roles).id }),
  setAlignRules: (now, chance) => setAlignRules(now, { ...manOf(now, chance), rules: several(chance, 3, ruleOf) }),
  setBaseJob: (now, chance) =>
    setBaseJob(now, {
      ...manOf(now, chance),
      base: {
        gaps: several(chance, 3, gapOf),
        style: chance.one(['one-gap', 'two-gap']),
        pass: chance.one(['rush', 'contain', 'none']),
      },
    }),
  clearHands: (now, chance) =>
    clearHands(now, { front: chance.one(now.fronts).id, look: chance.one([null, chance.one(now.looks).id]) }),
  handToRule: (now, chance) => {
    const hands = now.fronts.flatMap(({ id, byHand }) => byHand.map(({ look, role }) => ({ front: id, look, role })));
    const none = { ...manOf(now, chance), look: chance.one(now.looks).id };
    return handToRule(now, { ...(hands.length === 0 ? none : chance.one(hands)), spot: chance.one(PLACES) });
  },
  setPlayerLetter: (now, chance) =>
    setPlayerLetter(now, { ...playerOf(now, chance), letter: chance.one(['K', 'XX', '', 'XYZ']) }),
  setPlayerSpot: (now, chance) =>
    setPlayerSpot(now, { ...playerOf(now, chance), at: { x: chance.yards(20), y: -1 - chance.below(6) } }),
  mirrorInPlace: (now, chance) => mirrorInPlace(now, { look: chance.one(now.looks).id }),
  keepCall: (now, chance) =>
    keepCall(now, {
      id: nextCallId(now),
      name: nameOf(chance),
      parts: partsOf(now, chance),
      from: chance.one([null, callOf(now, chance)]),
    }),
  setCallParts: (now, chance) =>
    setCallParts(now, { call: callOf(now, chance), parts: { tags: tagsOf(chance), installDay: dayOf(chance) } }),
  takeBack: (now, chance) => {
    const lived = now.calls.flatMap(({ id, waivers }) => waivers.map((about) => ({ call: id, about })));
    const none = {
      call: callOf(now, chance),
      about: { rule: 'gap.open', look: chance.one(now.looks).id, evidence: '' },
    };
    return takeBack(now, lived.length === 0 ? none : chance.one(lived));
  },
  clearSomeHands: (now, chance) => {
    const front = chance.one(now.fronts);
    const roles = front.roles.slice(0, 1 + chance.below(3)).map(({ role }) => role);
    return clearSomeHands(now, { front: front.id, look: chance.one(now.looks).id, roles });
  },
  applySuggestion: (now, chance) =>
    applySuggestion(now, {
      call: callOf(now, chance),
      front: chance.one(now.fronts).id,
      edit: chance.one([
        { kind: 'turn', turn: chance.one(TURNS) } as const,
        { kind: 'swap' } as const,
        { kind: 'rushers', count: chance.below(12) } as const,
        { kind: 'coverage', coverage: chance.one(now.coverages) } as const,
      ]),
    }),
  newLook: (now, chance) =>
    newLook(now, {
      name: nameOf(chance),
      who: chance.one(PERSONNEL),
      shape: chance.one(SHAPES),
      strong: chance.one(SIDES),
    }),
  copyMirrored: (now, chance) => copyMirrored(now, { look: chance.one(now.looks).id, name: nameOf(chance) }),
  setPlayerKind: (now, chance) => setPlayerKind(now, { ...playerOf(now, chance), kind: chance.one(OFFENCE_KINDS) }),
  setMotion: (now, chance) => {
    const { look, player } = playerOf(now, chance);
    const to = { x: chance.yards(20), y: -1 - chance.below(6) };
    return setMotion(now, { look, motion: chance.one([null, { player, to }]) });
  },
  setRuns: (now, chance) =>
    setRuns(now, {
      look: chance.one(now.looks).id,
      runs: several(chance, 3, () => ({
        concept: chance.one(RUN_CONCEPTS),
        side: chance.one(SIDES),
        passOption: chance.below(2) === 0,
      })),
    }),
  setProtections: (now, chance) =>
    setProtections(now, {
      look: chance.one(now.looks).id,
      protections: several(chance, 3, () => ({
        protection: chance.one(PROTECTIONS).id,
        slideSide: chance.one(SIDES),
      })),
    }),
  newPressure: (now, chance) =>
    newPressure(now, {
      id: nextIds.pressure(now),
      name: nameOf(chance),
      coverage: chance.one([null, chance.one(now.coverages).id]),
    }),
  setPressureParts: (now, chance) =>
    setPressureParts(now, {
      pressure: chance.one(now.pressures).id,
      parts: {
        coverage: chance.one(now.coverages).id,
        tags: tagsOf(chance),
        installDay: dayOf(chance),
        rushers: chance.one([null, chance.below(12)]),
        notAgainst: chance.one([[], [chance.one(now.looks).id]]),
      },
    }),
  tellMan: (now, chance) =>
    tellMan(now, { pressure: chance.one(now.pressures).id, who: whoOf(now, chance), told: toldOf(chance) }),
  setCases: (now, chance) => setCases(now, { ...toldManOf(now, chance), cases: several(chance, 3, toldOf) }),
  giveJob: (now, chance) =>
    giveJob(now, { ...toldManOf(now, chance), at: chance.one([null, chance.below(3)]), told: toldOf(chance) }),
  retell: (now, chance) => retell(now, { ...toldManOf(now, chance), to: whoOf(now, chance) }),
  setCallSide: (now, chance) =>
    setCallSide(now, { pressure: chance.one(now.pressures).id, steps: several(chance, 3, () => stepOf(now, chance)) }),
  untell: (now, chance) => {
    const pressure = chance.one(now.pressures);
    const told = [...pressure.tells.map(({ who }) => who), whoOf(now, chance)];
    return untell(now, { pressure: pressure.id, who: chance.one(told) });
  },
  newCoverage: (now, chance) => newCoverage(now, { name: nameOf(chance) }),
  setNeeds: (now, chance) =>
    setNeeds(now, {
      coverage: chance.one(now.coverages).id,
      needs: several(chance, 3, () => ({
        when: several(chance, 2, testOf),
        zone: chance.one(ZONES),
        side: chance.one(['call', 'away', 'middle'] as const),
        takers: several(chance, 2, () => whoOf(now, chance)),
      })),
    }),
  setCoverageTells: (now, chance) =>
    setCoverageTells(now, {
      coverage: chance.one(now.coverages).id,
      tells: several(chance, 4, () => ({
        who: whoOf(now, chance),
        cases: [{ when: several(chance, 2, testOf), job: jobOf(chance) }],
      })),
    }),
  newRole: (now, chance) =>
    newRole(now, { name: nameOf(chance), letter: chance.one(['K', 'XX', '', 'XYZ']), room: chance.one(ROOMS) }),
  setRoleLetter: (now, chance) =>
    setRoleLetter(now, { role: chance.one(now.roles).id, letter: chance.one(['K', 'XX', '', 'XYZ']) }),
  setRoleRoom: (now, chance) => setRoleRoom(now, { role: chance.one(now.roles).id, room: chance.one(ROOMS) }),
  setRoleMate: (now, chance) =>
    setRoleMate(now, { role: chance.one(now.roles).id, mate: chance.one([null, chance.one(now.roles).id]) }),
  setRoleSide: (now, chance) =>
    setRoleSide(now, {
      role: chance.one(now.roles).id,
      side: chance.one([
        { kind: 'middle' } as const,
        { kind: 'steps', steps: [stepOf(now, chance), stepOf(now, chance)] } as const,
      ]),
    }),
};
