import { assertNever } from '../../base/index.ts';
import { because, datum, fact } from '../because.ts';
import type { Because, PreSnap, SideStep, Yards } from '../types/index.ts';
import { describeJob } from './describeJob.ts';
import type { Edit, JobChange, SurfaceTest } from './edit.ts';

/** An edit in words: what is to be changed, and below it what that means. Names and words are made at the edge. */
export function describeEdit(edit: Edit): Because {
  switch (edit.kind) {
    case 'turn':
      return describeTurn(edit.turn);
    case 'swap':
      return fact('let first and second change places');
    case 'coverage':
      return because('play {shell} behind it', { shell: datum.word(edit.coverage.name) });
    case 'rushers':
      return because('say that {n} come', { n: datum.number(edit.count) });
    case 'leave-out':
      return because('do not run {which} against {look}', {
        which: datum.pressure(edit.which),
        look: datum.word(edit.look.name),
      });
    case 'tie-break':
      return describeTieBreak(edit.which, edit.step);
    case 'stand':
      return because(
        'stand {who} by hand against {look}',
        { who: datum.role(edit.role), look: datum.word(edit.look.name) },
        describeSpot(edit.x, edit.y),
      );
    case 'duty': {
      const data = { shell: datum.word(edit.coverage.name), who: datum.who(edit.who) };
      return because('in {shell} tell {who} another job', data, describeJob(edit.job));
    }
    default:
      return describeTelling(edit);
  }
}

function describeSpot(x: Yards, y: Yards): Because {
  const deep = { y: datum.number(y) };
  if (x === 0) return because('over the ball, {y} deep', deep);
  return because('{x} yards from the ball to the {side}, {y} deep', {
    ...deep,
    x: datum.number(Math.abs(x)),
    side: datum.side(x < 0 ? 'left' : 'right'),
  });
}

function describeTurn(turn: Extract<Edit, { readonly kind: 'turn' }>['turn']): Because {
  const which = { which: datum.pressure('second') };
  switch (turn) {
    case 'same':
      return because('turn {which} to the side of the first', which);
    case 'opposite':
      return because('turn {which} opposite the first', which);
    case 'own':
      return because('let {which} go by its own rule', which);
  }
}

function describeTieBreak(which: 'first' | 'second', step: SideStep): Because {
  const data = { which: datum.pressure(which) };
  switch (step.kind) {
    case 'fixed':
      return because('where nothing decides its side, let {which} go {side}', { ...data, side: datum.side(step.side) });
    case 'strength': {
      const by = { ...data, by: datum.word(STRENGTH_WORDS[step.by]) };
      return step.toward === 'to'
        ? because('where nothing decides its side, let {which} go to {by}', by)
        : because('where nothing decides its side, let {which} go away from {by}', by);
    }
    case 'role': {
      const who = { ...data, who: datum.role(step.role) };
      return step.toward === 'to'
        ? because('where nothing decides its side, let {which} go to the side of {who}', who)
        : because('where nothing decides its side, let {which} go away from {who}', who);
    }
  }
}

const STRENGTH_WORDS = {
  'tight-end': 'the tight end',
  receivers: 'the receivers',
  back: 'the back',
  field: 'the field',
} as const;

/** An edit of what one pressure tells one man. */
function describeTelling(edit: Extract<Edit, { readonly kind: 'job' | 'untell' | 'surface' }>): Because {
  const data = { which: datum.pressure(edit.which), who: datum.who(edit.who) };
  switch (edit.kind) {
    case 'untell':
      return because('in {which} tell {who} nothing', data);
    case 'job':
      return describeChange(data, edit.to);
    case 'surface': {
      const where = describeSurface(edit.surface);
      return edit.told === null
        ? because('in {which} tell {who} nothing on one surface', data, where)
        : because('in {which} tell {who} another job on one surface', data, where, describeJob(edit.told.job));
    }
    default:
      return assertNever(edit);
  }
}

function describeChange(
  data: { readonly which: ReturnType<typeof datum.pressure>; readonly who: ReturnType<typeof datum.who> },
  to: JobChange,
): Because {
  if (to.kind === 'other') {
    const jobs = to.cases.map((each) => describeJob(each.job));
    return because('in {which} tell {who} what the other pressure tells him', data, ...jobs);
  }
  const { job, preSnap } = to.told;
  const told = [describeJob(job), ...(preSnap === null ? [] : [describePreSnap(preSnap)])];
  return to.at === null
    ? because('in {which} tell {who} another job', data, ...told)
    : because('in {which} tell {who} another job in his rule {n}', { ...data, n: datum.number(to.at + 1) }, ...told);
}

function describePreSnap(preSnap: PreSnap): Because {
  return preSnap.kind === 'heels'
    ? because('before the snap he stands on the heels of {who}', { who: datum.who(preSnap.of) })
    : because('before the snap he stands {y} yards deep', { y: datum.number(preSnap.depth) });
}

function describeSurface({ side, compare, count }: SurfaceTest): Because {
  const data = { n: datum.number(count), side: datum.word(side === 'mine' ? 'on his side' : 'on the call side') };
  return compare === 'at-least'
    ? because('{n} or more men are attached {side}', data)
    : because('no more than {n} men are attached {side}', data);
}
