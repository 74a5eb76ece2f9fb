import {
  analyse,
  asCoverageId,
  asFrontId,
  asGroupId,
  asPressureId,
  asRoleId,
  parseLook,
  type AlignRule,
  type Analysis,
  type Coverage,
  type Front,
  type Look,
  type Place,
  type PreSnap,
  type Pressure,
  type Role,
  type Setup,
  type Side,
  type SideStep,
  type Spot,
  type Tell,
} from '../../../src/engine/index.ts';
import { read, ruleJob, who } from '../book.ts';
import { LOOKS, type LookName } from './looks.ts';
import { other, type FrontMan, type Row, type Way } from './row.ts';
import { SPOTS, type SpotName } from './spots.ts';

/** From a table to what the engine is asked. */

function stepsOf(goes: Row['goes'], call: Side): readonly SideStep[] {
  switch (goes) {
    case 'fixed':
      return [{ kind: 'fixed', side: call }];
    case 'field':
      return [{ kind: 'strength', by: 'field', toward: 'to' }];
    case 'boundary':
      return [{ kind: 'strength', by: 'field', toward: 'away' }];
    case 'receivers':
      return [{ kind: 'strength', by: 'receivers', toward: 'to' }];
  }
}

/** The ball on the hash that makes the call side the one the rule says. */
function spotOf(goes: Row['goes'], call: Side): Place {
  if (goes === 'field') return other(call);
  return goes === 'boundary' ? call : 'middle';
}

function roleOf(man: FrontMan, call: Side): Role {
  const steps = (): readonly SideStep[] => {
    if (man.side === 'field' || man.side === 'boundary') {
      return [
        { kind: 'strength', by: 'field', toward: man.side === 'field' ? 'to' : 'away' },
        { kind: 'fixed', side: 'right' },
      ];
    }
    return [{ kind: 'fixed', side: man.side === 'call' ? call : other(call) }];
  };
  return {
    id: asRoleId(man.id),
    letter: man.id,
    name: man.id,
    room: man.room,
    group: asGroupId(man.group),
    side: man.side === 'middle' ? { kind: 'middle' } : { kind: 'steps', steps: steps() },
  };
}

export function frontOf(men: readonly FrontMan[], stands: (man: string) => Spot): Front {
  const rule = (man: FrontMan): AlignRule => ({ when: [], spot: stands(man.id) });
  return {
    id: asFrontId('front'),
    name: 'front',
    roles: men.map((man) => ({ role: asRoleId(man.id), rules: [rule(man)], base: man.base })),
    byHand: [],
  };
}

/** The look with the call on its right, turned to the call side and with the back where he is wanted. */
export function lookOf(name: LookName, { call, back }: Way): Look {
  const drawn = read(parseLook(LOOKS[name]));
  const sign = call === 'right' ? 1 : -1;
  const turn = (x: number): number => (x === 0 ? 0 : x * sign);
  return {
    ...drawn,
    players: drawn.players.map((man) => {
      const x = man.letter === 'R' ? Math.abs(man.x) * (back === 'call' ? 1 : -1) : man.x;
      return { ...man, x: turn(x) };
    }),
  };
}

function spotName(row: Row, man: string, stand: number): SpotName {
  const stands = row.men.find((each) => each.man === man)?.stands ?? [];
  const name = stands[Math.min(stand, stands.length - 1)];
  if (name === undefined) throw new Error(`${row.id} does not say where ${man} stands`);
  return name;
}

const namedIn = (row: Row, man: string): string => {
  const found = row.front.find((each) => each.id === man);
  if (found === undefined) throw new Error(`${row.id} has no ${man}`);
  return found.named;
};

/** What the rush tells, and for a merge of told jobs also what the shell gives, as jobs of the pressure. */
export function tellsOf(row: Row, withShell: boolean): readonly Tell[] {
  return row.men
    .filter(({ part }) => part !== 'base' && (withShell || part !== 'shell'))
    .map(({ man, part, job }): Tell => {
      const depth = row.creeps[man];
      const preSnap: PreSnap | null = depth === undefined ? null : { kind: 'depth', depth };
      const basis = part === 'shell' || part === 'base' ? 'path' : part;
      return { who: who(namedIn(row, man)), cases: [{ when: [], basis, job: ruleJob(job), preSnap }] };
    });
}

export function shellOf(row: Row): Coverage {
  return {
    id: asCoverageId(`${row.id}-shell`),
    name: row.id,
    needs: row.needs,
    tells: row.men
      .filter(({ part }) => part === 'shell')
      .map(({ man, job }) => ({ who: who(namedIn(row, man)), cases: [{ when: [], job: ruleJob(job) }] })),
  };
}

export function pressureOf(row: Row, call: Side, withShell = false): Pressure {
  return {
    id: asPressureId(row.id),
    name: row.id,
    tags: [],
    callSide: stepsOf(row.goes, call),
    tells: tellsOf(row, withShell),
    coverage: asCoverageId(`${row.id}-shell`),
    rushers: row.counts.rush,
    notAgainst: [],
    installDay: null,
  };
}

/** Everything the engine needs to run a row one way. */
export function setupOf(row: Row, way: Way): Setup {
  return {
    level: 'high-school',
    spot: spotOf(row.goes, way.call),
    roles: row.front.map((man) => roleOf(man, way.call)),
    front: frontOf(row.front, (man) => SPOTS[spotName(row, man, way.stand)]),
    look: lookOf(row.look, way),
    first: pressureOf(row, way.call),
    second: null,
    turn: 'own',
    combination: { kind: 'together' },
    coverage: shellOf(row),
    secondCoverage: null,
    waivers: [],
    dictionary: [],
    checkOut: null,
    rushers: row.counts.rush,
  };
}

export const run = (row: Row, way: Way): Analysis => analyse(setupOf(row, way));
