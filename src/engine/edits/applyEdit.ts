import { assertNever, gather, ok, refused, remembered, type Result } from '../../base/index.ts';
import { because, datum, fact } from '../because.ts';
import { ruleNames } from '../notation/names.ts';
import type { Because, Coverage, Front, LookTest, Pressure, Setup, TellCase, Who } from '../types/index.ts';
import type { Edit, PressureEdit, SurfaceTest } from './edit.ts';

type Edited<Part> = Result<Part, Because>;

const NO_CHANGE = fact('it is so already');

/** The same man, named the same way. */
export function sameWho(a: Who, b: Who): boolean {
  return ruleNames.who.write(a) === ruleNames.who.write(b);
}

/** Everything a pressure tells the man it names so, as one list: the first case that holds is his. */
export function casesOf(pressure: Pressure, who: Who): readonly TellCase[] {
  return gather(
    pressure.tells.filter((tell) => sameWho(tell.who, who)),
    (tell) => tell.cases,
  );
}

/** The pressure with that man's cases put in the place of the ones he had; none: he is told nothing. */
function withCases(pressure: Pressure, who: Who, cases: readonly TellCase[]): Pressure {
  const at = pressure.tells.findIndex((tell) => sameWho(tell.who, who));
  const told = cases.length === 0 ? [] : [{ who, cases }];
  if (at < 0) return { ...pressure, tells: [...pressure.tells, ...told] };
  const others = (from: number, to?: number) =>
    pressure.tells.slice(from, to).filter((tell) => !sameWho(tell.who, who));
  return { ...pressure, tells: [...others(0, at), ...told, ...others(at)] };
}

/** The surface test that holds exactly where the given one does not. */
function opposite({ side, compare, count }: SurfaceTest): LookTest {
  return compare === 'at-least'
    ? { kind: 'bodies', side, compare: 'at-most', count: count - 1 }
    : { kind: 'bodies', side, compare: 'at-least', count: count + 1 };
}

/**
 * One edit of a pressure's own rules. Refused when it changes nothing, or names a man or a case that is not there. The same edit of
 * the same pressure is the same pressure again, in every look and every set of edits that is searched.
 */
export const editPressure = remembered((pressure: Pressure, edit: PressureEdit): Edited<Pressure> => {
  if (edit.kind === 'leave-out') {
    if (pressure.notAgainst.includes(edit.look.id)) return refused(NO_CHANGE);
    return ok({ ...pressure, notAgainst: [...pressure.notAgainst, edit.look.id] });
  }
  if (edit.kind === 'tie-break') return ok({ ...pressure, callSide: [...pressure.callSide, edit.step] });
  const cases = casesOf(pressure, edit.who);
  const changed = changedCases(cases, edit);
  if (changed === null) {
    return refused(
      because('{which} does not tell {who} that', { which: datum.pressure(edit.which), who: datum.who(edit.who) }),
    );
  }
  if (JSON.stringify(changed) === JSON.stringify(cases)) return refused(NO_CHANGE);
  return ok(withCases(pressure, edit.who, changed));
});

/** A man's cases after the edit; null: it changes a case he does not have. */
function changedCases(
  cases: readonly TellCase[],
  edit: Extract<PressureEdit, { readonly who: Who }>,
): readonly TellCase[] | null {
  switch (edit.kind) {
    case 'untell':
      return cases.length === 0 ? null : [];
    case 'job': {
      if (edit.to.kind === 'other') return edit.to.cases;
      const { at, told } = edit.to;
      if (at === null) return [{ when: [], ...told }];
      if (cases[at] === undefined) return null;
      return cases.map((each, index) => (index === at ? { when: each.when, ...told } : each));
    }
    case 'surface': {
      const { told, surface } = edit;
      if (told !== null) return [{ when: [{ kind: 'bodies', ...surface }], ...told }, ...cases];
      if (cases.length === 0) return null;
      return cases.map((each) => ({ ...each, when: [...each.when, opposite(surface)] }));
    }
    default:
      return assertNever(edit);
  }
}

/** The shell with one man told that, in front of everybody it tells. */
export const editCoverage = remembered(
  (coverage: Coverage, edit: Extract<Edit, { readonly kind: 'duty' }>): Edited<Coverage> => {
    const { who, job } = edit;
    const told = { who, cases: [{ when: [], job }] };
    const tells = [told, ...coverage.tells.filter((tell) => !sameWho(tell.who, who))];
    if (JSON.stringify(tells) === JSON.stringify(coverage.tells)) return refused(NO_CHANGE);
    return ok({ ...coverage, tells });
  },
);

/** The front with one man stood on a spot by hand against one look. Refused when he is not in that front. */
export const editFront = remembered((front: Front, edit: Extract<Edit, { readonly kind: 'stand' }>): Edited<Front> => {
  const { look, role, x, y } = edit;
  if (!front.roles.some((entry) => entry.role === role)) {
    return refused(because('{who} is not in this front', { who: datum.role(role) }));
  }
  const others = front.byHand.filter((each) => each.look !== look.id || each.role !== role);
  return ok({ ...front, byHand: [...others, { look: look.id, role, x, y }] });
});

/**
 * The setup with one thing changed, or why the change does not reach it: the call has no second pressure, the pressure or
 * shell is not part of it, the check-out table decides it in this look, or it is so already. A pressure that is both halves
 * of the call changes in both. Pure; never throws.
 */
export function applyEdit(setup: Setup, edit: Edit): Edited<Setup> {
  switch (edit.kind) {
    case 'turn':
    case 'swap':
    case 'coverage':
    case 'rushers': {
      const decided = decidedByTable(setup, edit.kind);
      return decided === null ? editCall(setup, edit) : refused(decided);
    }
    case 'duty':
      return inShells(setup, edit);
    case 'stand': {
      const front = editFront(setup.front, edit);
      return front.ok ? ok({ ...setup, front: front.value }) : front;
    }
    default:
      return inPressures(setup, edit);
  }
}

type CallEdit = Extract<Edit, { readonly kind: 'turn' | 'swap' | 'coverage' | 'rushers' }>;

/** What the check-out table has already decided in this look, so that a change of the call does not reach it; else null. */
function decidedByTable({ checkOut }: Setup, kind: CallEdit['kind']): Because | null {
  const action = checkOut?.action.kind ?? 'run';
  if (action === 'check-to') return fact('against this look the call is checked to another one');
  if (action === 'turn' && kind === 'turn') return fact('the check-out table turns it against this look');
  if (action === 'coverage' && kind === 'coverage')
    return fact('the check-out table picks the shell against this look');
  return null;
}

function editCall(setup: Setup, edit: CallEdit): Edited<Setup> {
  switch (edit.kind) {
    case 'coverage': {
      const secondCoverage = setup.second === null ? null : edit.coverage;
      const same = [setup.coverage, setup.secondCoverage].every(
        (each) => each === null || each.id === edit.coverage.id,
      );
      return same ? refused(NO_CHANGE) : ok({ ...setup, coverage: edit.coverage, secondCoverage });
    }
    case 'rushers':
      return setup.rushers === edit.count ? refused(NO_CHANGE) : ok({ ...setup, rushers: edit.count });
    case 'turn':
      if (setup.second === null) return refused(fact('the call has no second pressure'));
      return setup.turn === edit.turn ? refused(NO_CHANGE) : ok({ ...setup, turn: edit.turn });
    case 'swap': {
      if (setup.second === null) return refused(fact('the call has no second pressure'));
      const coverage = setup.secondCoverage ?? setup.coverage;
      return ok({ ...setup, first: setup.second, second: setup.first, coverage, secondCoverage: setup.coverage });
    }
    default:
      return assertNever(edit);
  }
}

function inPressures(setup: Setup, edit: PressureEdit): Edited<Setup> {
  const halves = [setup.first, setup.second];
  if (!halves.some((pressure) => pressure?.id === edit.pressure)) {
    return refused(fact('that pressure is not part of the call here'));
  }
  let { first, second } = setup;
  if (first.id === edit.pressure) {
    const edited = editPressure(first, edit);
    if (!edited.ok) return edited;
    first = edited.value;
  }
  if (second?.id === edit.pressure) {
    const edited = editPressure(second, edit);
    if (!edited.ok) return edited;
    second = edited.value;
  }
  return ok({ ...setup, first, second });
}

function inShells(setup: Setup, edit: Extract<Edit, { readonly kind: 'duty' }>): Edited<Setup> {
  let { coverage, secondCoverage } = setup;
  if (coverage.id !== edit.coverage.id && secondCoverage?.id !== edit.coverage.id) {
    return refused(fact('that shell is not played here'));
  }
  if (coverage.id === edit.coverage.id) {
    const edited = editCoverage(coverage, edit);
    if (!edited.ok) return edited;
    coverage = edited.value;
  }
  if (secondCoverage?.id === edit.coverage.id) {
    const edited = editCoverage(secondCoverage, edit);
    if (!edited.ok) return edited;
    secondCoverage = edited.value;
  }
  return ok({ ...setup, coverage, secondCoverage });
}
