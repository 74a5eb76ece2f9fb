import { gather } from '../../base/index.ts';
import { because, datum, fact } from '../because.ts';
import { BASES } from '../vocabulary.ts';
import type { Combined, Role, Telling } from '../types/index.ts';
import { compareJobs } from './compareJobs.ts';

type Told = Extract<Telling, { readonly kind: 'told' }>;

/** The two tellings of a man compared; what else is to be known of what stands follows from it. */
type Compared = Omit<Combined, 'torn' | 'sure' | 'byShell'>;

/**
 * Stage 5 for one man: the two tellings side by side. A lineman never yields in silence, whatever a pressure tells him he
 * was taught; anybody else's weaker telling gives way (explicit path, line movement, consequence, shell), and two of a
 * kind that differ are a conflict. From memory, reasoned from J. Bellace, 3-3 stack clinic,
 * Glazier Clinics; docs/decisions/0001.
 */
export function combineMan(role: Role, first: Telling | null, second: Telling | null): Combined {
  return settle(compare(role, first, second));
}

/** What stands once the tellings are compared. */
function settle(compared: Compared): Combined {
  const { first, second, from, status } = compared;
  const standing = from === 'first' ? first : from === 'second' ? second : null;
  return {
    ...compared,
    torn: status === 'conflict' ? gather([first, second], (each) => (each?.kind === 'told' ? [each.job] : [])) : [],
    sure: status !== 'conflict' && status !== 'unresolved',
    byShell: standing?.kind === 'told' && standing.basis === 'coverage',
  };
}

function compare(role: Role, first: Telling | null, second: Telling | null): Compared {
  if (first?.kind === 'unresolved' || second?.kind === 'unresolved') return unresolved(role, first, second);
  if (first === null && second === null) {
    return {
      role,
      first,
      second,
      status: 'untold',
      job: null,
      from: null,
      because: fact('neither pressure tells him anything'),
    };
  }
  if (first === null || second === null) return toldOnce(role, first, second);
  return toldTwice(role, first, second);
}

function unresolved(role: Role, first: Telling | null, second: Telling | null): Compared {
  const reasons = gather([first, second], (each) => (each?.kind === 'unresolved' ? [each.because] : []));
  const told = [first, second].find((each): each is Told => each?.kind === 'told');
  return {
    role,
    first,
    second,
    status: 'unresolved',
    job: told?.job ?? null,
    from: told === undefined ? null : told === first ? 'first' : 'second',
    because: fact('what he is told points at somebody who is not there', ...reasons),
  };
}

function toldOnce(role: Role, first: Told | null, second: Told | null): Compared {
  const told = first ?? second;
  if (told === null) throw new Error('Told once by nobody');
  const which = first === null ? 'second' : 'first';
  return {
    role,
    first,
    second,
    status: 'one',
    job: told.job,
    from: which,
    because: because(
      '{which} tells him: {job}',
      { which: datum.pressure(which), job: datum.job(told.job) },
      told.because,
    ),
  };
}

function toldTwice(role: Role, first: Told, second: Told): Compared {
  const sayFirst = because('the first says: {job}', { job: datum.job(first.job) }, first.because);
  const saySecond = because('the second says: {job}', { job: datum.job(second.job) }, second.because);
  const shared = { role, first, second };
  const difference = compareJobs(first.job, second.job);
  if (difference === 'same') {
    const why = fact('both tell him the same', sayFirst, saySecond);
    return { ...shared, status: 'same', job: first.job, from: 'both', because: why };
  }
  if (role.room === 'line') {
    return difference === 'manner'
      ? {
          ...shared,
          status: 'two-manners',
          job: first.job,
          from: 'first',
          because: fact('the same gap, taught two ways', sayFirst, saySecond),
        }
      : {
          ...shared,
          status: 'conflict',
          job: first.job,
          from: 'first',
          because: fact('a lineman is told two things', sayFirst, saySecond),
        };
  }
  return toldTwiceOffTheLine(shared, difference, fact('the first is the stronger telling', sayFirst, saySecond));
}

/** A linebacker or a back: the weaker telling yields; two of a kind that cannot both be done are a conflict. */
function toldTwiceOffTheLine(
  shared: { readonly role: Role; readonly first: Told; readonly second: Told },
  difference: 'manner' | 'different',
  sayBoth: Combined['because'],
): Compared {
  const [a, b] = [BASES.indexOf(shared.first.basis), BASES.indexOf(shared.second.basis)];
  const says = sayBoth.because;
  if (a > b) return { ...shared, status: 'yields', job: shared.first.job, from: 'first', because: sayBoth };
  if (b > a) {
    const why = fact('the second is the stronger telling', ...says);
    return { ...shared, status: 'yields', job: shared.second.job, from: 'second', because: why };
  }
  if (difference === 'manner') {
    // Rush and contain one gap: he who contains does both.
    if (shared.second.job.kind === 'contain' && shared.first.job.kind !== 'contain') {
      const why = fact('the same job in two ways; the second one also contains, so it stands', ...says);
      return { ...shared, status: 'yields', job: shared.second.job, from: 'second', because: why };
    }
    const why = fact('the same job in two ways; the first one stands', ...says);
    return { ...shared, status: 'yields', job: shared.first.job, from: 'first', because: why };
  }
  const why = fact('he is told two things of the same weight that cannot both be done', ...says);
  return { ...shared, status: 'conflict', job: shared.first.job, from: 'first', because: why };
}

/** An either-or call for one man: he plays the half that is run; whether the halves differ for him is the status. */
export function eitherMan(
  role: Role,
  first: Telling | null,
  second: Telling | null,
  ran: 'first' | 'second',
): Combined {
  const alone = ran === 'first' ? combineMan(role, first, null) : combineMan(role, null, second);
  const both = first?.kind === 'told' && second?.kind === 'told' ? compareJobs(first.job, second.job) : 'different';
  if (first === null && second === null) return { ...alone, first, second };
  const status = alone.status === 'unresolved' ? 'unresolved' : both === 'same' ? 'same' : 'either';
  return { ...alone, first, second, status };
}
