import { ok, refused, type Result } from '../../base/index.ts';
import { EDGE_PLAYS, MANNERS, PASSINGS, SUPPORTS, ZONES } from '../vocabulary.ts';
import type { Job, JobOf, Names, Order, RuleJob, RunSupport, Track } from '../types/index.ts';
import { lookNames, ruleNames, type NameCodec } from './names.ts';
import { wordOf, type NotationProblem } from './problem.ts';

type Read<Value> = Result<Value, NotationProblem>;

/** The words of one job, taken from the front; a reader takes what it knows and leaves the rest. */
class Words {
  private at = 0;
  private readonly words: readonly string[];

  constructor(text: string) {
    this.words = text.split(/\s+/).filter((word) => word !== '');
  }

  /** The next word if `read` understands it, else null and the word stays. */
  take<Value>(read: (word: string) => Value | null): Value | null {
    const word = this.words[this.at];
    const value = word === undefined ? null : read(word);
    if (value !== null) this.at += 1;
    return value;
  }

  /** Whatever is left over or missing, as a problem. */
  problem(expected: string): { readonly ok: false; readonly problem: NotationProblem } {
    return refused({ found: this.words[this.at] ?? 'the end', expected });
  }

  get done(): boolean {
    return this.at === this.words.length;
  }
}

function gapList<N extends Names>(word: string, names: NameCodec<N>): readonly N['gap'][] | null {
  const gaps = word.split('+').map((each) => names.gap.read(each));
  return gaps.some((gap) => gap === null) ? null : gaps;
}

function trackOf<N extends Names>(word: string, names: NameCodec<N>): Track<N['who']> | null {
  const colon = word.indexOf(':');
  const how = wordOf(PASSINGS, word.slice(0, Math.max(colon, 0)));
  const neighbour = how === null ? null : names.who.read(word.slice(colon + 1));
  return how === null || neighbour === null ? null : { kind: 'past', how, neighbour };
}

function orderOf<N extends Names>(word: string, names: NameCodec<N>): Order<N['who']> | null {
  const [head = '', ...rest] = word.split(':');
  const turn = wordOf(['first', 'second'] as const, head);
  const neighbour = turn === null ? null : names.who.read(rest.join(':'));
  return turn === null || neighbour === null ? null : { turn, neighbour };
}

/** `own A-left`, `may D-right+C-right`, and a support word; nothing at all is no run duty. */
function runOf<N extends Names>(words: Words, names: NameCodec<N>): Read<RunSupport<N['gap']>> {
  const firm = words.take((word) => (word === 'own' ? true : word === 'may' ? false : null));
  const fits = firm === null ? [] : words.take((word) => gapList(word, names));
  if (fits === null) return words.problem(names.gap.expected);
  return ok({ fits, firm: firm ?? false, support: words.take((word) => wordOf(SUPPORTS, word)) });
}

function zoneOf<N extends Names>(
  word: string,
  names: NameCodec<N>,
): Pick<JobOf<N> & { kind: 'drop' }, 'zone' | 'side'> | null {
  const zone = ZONES.find((each) => word === each || word.startsWith(`${each}-`));
  if (zone === undefined) return null;
  const side = names.side.read(word === zone ? 'middle' : word.slice(zone.length + 1));
  return side === null ? null : { zone, side };
}

function parseJobOf<N extends Names>(text: string, names: NameCodec<N>): Read<JobOf<N>> {
  const words = new Words(text);
  const kind = words.take((word) => wordOf(['rush', 'contain', 'fit', 'drop', 'man', 'spy'] as const, word));
  if (kind === null) return words.problem('rush, contain, fit, drop, man or spy');
  const job = parseRest(kind, words, names);
  return job.ok && !words.done ? words.problem('the end of the job') : job;
}

function parseRest<N extends Names>(kind: JobOf<N>['kind'], words: Words, names: NameCodec<N>): Read<JobOf<N>> {
  if (kind === 'rush' || kind === 'contain' || kind === 'fit') {
    const gaps = words.take((word) => gapList(word, names));
    if (gaps === null) return words.problem(names.gap.expected);
    const manner = words.take((word) => wordOf(MANNERS, word)) ?? (kind === 'fit' ? 'read' : 'penetrate');
    if (kind === 'fit') return ok({ kind, gaps, manner, support: words.take((word) => wordOf(SUPPORTS, word)) });
    const track = words.take((word) => trackOf(word, names)) ?? { kind: 'straight' };
    const order = words.take((word) => orderOf(word, names));
    const edge = words.take((word) => wordOf(EDGE_PLAYS, word));
    return ok({ kind, gaps, manner, track, order, edge, peel: words.take((word) => word === 'peel' || null) ?? false });
  }
  if (kind === 'drop') {
    const zone = words.take((word) => zoneOf(word, names));
    if (zone === null) return words.problem('a zone such as seam-left or middle');
    const run = runOf(words, names);
    return run.ok ? ok({ kind, ...zone, run: run.value }) : run;
  }
  if (kind === 'man') {
    const receiver = words.take(names.receiver.read);
    if (receiver === null) return words.problem(names.receiver.expected);
    const run = runOf(words, names);
    return run.ok ? ok({ kind, receiver, run: run.value }) : run;
  }
  const run = runOf(words, names);
  return run.ok ? ok({ kind, run: run.value }) : run;
}

function printJobOf<N extends Names>(job: JobOf<N>, names: NameCodec<N>): string {
  const gaps = (list: readonly N['gap'][]): string => list.map(names.gap.write).join('+');
  const run = (each: RunSupport<N['gap']>): readonly (string | null)[] => [
    each.fits.length === 0 ? null : `${each.firm ? 'own' : 'may'} ${gaps(each.fits)}`,
    each.support,
  ];
  const join = (...parts: readonly (string | null)[]): string => parts.filter((part) => part !== null).join(' ');
  switch (job.kind) {
    case 'rush':
    case 'contain': {
      const track = job.track.kind === 'straight' ? null : `${job.track.how}:${names.who.write(job.track.neighbour)}`;
      const order = job.order === null ? null : `${job.order.turn}:${names.who.write(job.order.neighbour)}`;
      const manner = job.manner === 'penetrate' ? null : job.manner;
      return join(job.kind, gaps(job.gaps), manner, track, order, job.edge, job.peel ? 'peel' : null);
    }
    case 'fit':
      return join('fit', gaps(job.gaps), job.manner === 'read' ? null : job.manner, job.support);
    case 'drop': {
      const side = names.side.write(job.side);
      return join('drop', side === 'middle' ? job.zone : `${job.zone}-${side}`, ...run(job.run));
    }
    case 'man':
      return join('man', names.receiver.write(job.receiver), ...run(job.run));
    case 'spy':
      return join('spy', ...run(job.run));
  }
}

/** A job in one look in one line: `rush A-left slant under:E`, `drop seam-right may D-right force`, `man Z`. */
export function parseJob(text: string): Read<Job> {
  return parseJobOf(text, lookNames);
}

/** The line of a job; `parseJob` reads it back. */
export function printJob(job: Job): string {
  return printJobOf(job, lookNames);
}

/** A job as a rule tells it: `rush B-call inside-hip:end-call`, `drop seam-away may edge-away force`, `man #2-call`. */
export function parseRuleJob(text: string): Read<RuleJob> {
  return parseJobOf(text, ruleNames);
}

/** The line of a rule's job; `parseRuleJob` reads it back. */
export function printRuleJob(job: RuleJob): string {
  return printJobOf(job, ruleNames);
}
