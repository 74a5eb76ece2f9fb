import { because, datum, fact } from '../because.ts';
import type { Because, GapRef, ReceiverRef, RuleJob, SideRef } from '../types/index.ts';

/** A thing on a side, as it is said on the field: "call-side A gap", "A gap on his side". */
function onSide(thing: string, side: SideRef): string {
  switch (side) {
    case 'call':
      return `call-side ${thing}`;
    case 'away':
      return `away-side ${thing}`;
    case 'mine':
      return `${thing} on his side`;
    case 'other':
      return `${thing} on the other side`;
    case 'left':
    case 'right':
      return `${thing} ${side}`;
  }
}

function gapWords(gap: GapRef): string {
  switch (gap.kind) {
    case 'letter':
      return onSide(`${gap.letter} gap`, gap.side);
    case 'edge':
      return onSide('edge gap', gap.side);
    case 'outside':
      return `gap outside the ${onSide(gap.body === 'last' ? 'last man' : gap.body, gap.side)}`;
  }
}

const gapsDatum = (gaps: readonly GapRef[]) => datum.word(gaps.map(gapWords).join(' and the '));

function receiverBecause(receiver: ReceiverRef): Because {
  const n = datum.number(receiver.number);
  return receiver.kind === 'back'
    ? because('he has back number {n} from his side', { n })
    : because('he has the {number}', {
        number: datum.word(onSide(`number ${String(receiver.number)}`, receiver.side)),
      });
}

/** What a job adds to its first sentence: the edge, the peel, the run duty of a man who covers. */
function besides(job: RuleJob): readonly Because[] {
  switch (job.kind) {
    case 'rush':
    case 'contain':
      return [
        because('he plays it as: {manner}', { manner: datum.word(job.manner.replace('-', ' ')) }),
        ...(job.edge === null ? [] : [because('on the edge: {play}', { play: datum.word(job.edge) })]),
        ...(job.track.kind === 'past' ? [because('past {who}', { who: datum.who(job.track.neighbour) })] : []),
        ...(job.order === null
          ? []
          : [
              because('he goes {turn}, with {who}', {
                turn: datum.word(job.order.turn),
                who: datum.who(job.order.neighbour),
              }),
            ]),
        ...(job.peel ? [fact('he leaves with the back if the back flares')] : []),
      ];
    case 'fit':
      return job.support === null ? [] : [because('he is {support}', { support: datum.word(job.support) })];
    case 'drop':
    case 'man':
    case 'spy': {
      const { fits, firm, support } = job.run;
      const gaps = { gaps: gapsDatum(fits) };
      return [
        ...(support === null ? [] : [because('he is {support}', { support: datum.word(support) })]),
        ...(fits.length === 0
          ? []
          : [firm ? because('against the run he owns the {gaps}', gaps) : because('he may fit the {gaps}', gaps)]),
      ];
    }
  }
}

/** A job as a rule tells it, as a fact: the job, and below it how he plays it. Sides stay the rule's: call side, his side. */
export function describeJob(job: RuleJob): Because {
  const rest = besides(job);
  switch (job.kind) {
    case 'rush':
      return because('he rushes the {gaps}', { gaps: gapsDatum(job.gaps) }, ...rest);
    case 'contain':
      return because('he rushes the {gaps} and contains', { gaps: gapsDatum(job.gaps) }, ...rest);
    case 'fit':
      return because('he fits the {gaps}', { gaps: gapsDatum(job.gaps) }, ...rest);
    case 'drop': {
      const zone = { zone: datum.word(job.zone) };
      if (job.side === 'middle') return because('he drops to the {zone}', zone, ...rest);
      return because('he drops to the {zone}', { zone: datum.word(onSide(job.zone, job.side)) }, ...rest);
    }
    case 'man':
      return { ...receiverBecause(job.receiver), because: rest };
    case 'spy':
      return fact('he spies the passer', ...rest);
  }
}
