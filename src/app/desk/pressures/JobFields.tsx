import type { ReactElement } from 'react';
import { MAX_ENTRIES } from '../../../document/index.ts';
import {
  EDGE_PLAYS,
  MANNERS,
  PASSINGS,
  SUPPORTS,
  type GapRef,
  type Passing,
  type Role,
  type RuleJob,
  type RunSupport,
  type Who,
} from '../../../engine/index.ts';
import type { RuleWords } from '../../../report/index.ts';
import { GapList, GapPicker } from '../parts/GapPicker.tsx';
import { OneOf } from '../parts/OneOf.tsx';
import { SidePicker, SIDES_WITH_CALL } from '../parts/SidePicker.tsx';
import { WhoPicker } from '../parts/WhoPicker.tsx';
import { ZonePicker } from '../parts/ZonePicker.tsx';
import { jobAs, JOB_KINDS, KIND_LABELS, MANNER_LABELS, withManner, type GapJob } from './jobForms.ts';

/** What a job form needs besides the job. */
export interface FormParts {
  /** Whose job it is, for those who hear it: "of the call-side E". */
  readonly of: string;
  readonly roles: readonly Role[];
  /** The man a new neighbour is at first. */
  readonly mate: Who | null;
  readonly words: RuleWords;
  readonly disabled: boolean;
}

interface Props<Job extends RuleJob = RuleJob> extends FormParts {
  readonly job: Job;
  readonly onChange: (job: RuleJob) => void;
}

/** A job as a form: its kind, and only what that kind needs. Whatever is chosen, the job is whole. */
export function JobFields(props: Props): ReactElement {
  const { job, of, words, disabled, onChange } = props;
  return (
    <div className="rule-fields">
      <OneOf
        wide
        label="What he does"
        value={job.kind}
        items={JOB_KINDS}
        say={(kind) => KIND_LABELS[kind]}
        disabled={disabled}
        onChoose={(kind) => onChange(jobAs(kind, job))}
      />
      {(job.kind === 'rush' || job.kind === 'contain' || job.kind === 'fit') && <GapJobFields {...props} job={job} />}
      {job.kind === 'drop' && (
        <div className="form-wide">
          <p className="part-label">Where to</p>
          <ZonePicker
            label={`Zone ${of}`}
            zone={job.zone}
            side={job.side}
            words={words}
            disabled={disabled}
            onChange={(place) => onChange({ ...job, ...place })}
          />
        </div>
      )}
      {job.kind === 'man' && <ReceiverFields {...props} job={job} />}
      {'run' in job && <RunFields {...props} run={job.run} onRun={(run) => onChange({ ...job, run })} />}
    </div>
  );
}

function GapJobFields(props: Props<GapJob>): ReactElement {
  const { job, of, words, disabled, onChange } = props;
  const many = job.gaps.length > 1;
  return (
    <>
      <OneOf
        wide
        label="How he plays it"
        value={job.manner}
        items={MANNERS}
        say={(manner) => MANNER_LABELS[manner]}
        disabled={disabled}
        onChoose={(manner) => onChange(withManner(job, manner))}
      />
      <div className="form-wide">
        <p className="part-label">{many ? 'His two gaps' : 'His gap'}</p>
        {job.gaps.map((gap, index) => (
          // One gap, or the two of a man who two-gaps: they have no id.
          <GapPicker
            key={index}
            label={many ? `Gap ${index + 1} ${of}` : `Gap ${of}`}
            gap={gap}
            sides={SIDES_WITH_CALL}
            words={words}
            disabled={disabled}
            onChange={(next) => onChange({ ...job, gaps: job.gaps.with(index, next) })}
          />
        ))}
      </div>
      {job.kind === 'fit' ? (
        <SupportField value={job.support} disabled={disabled} onChange={(support) => onChange({ ...job, support })} />
      ) : (
        <WayFields {...props} job={job} />
      )}
    </>
  );
}

const PASSING_LABELS: Readonly<Record<Passing, string>> = {
  under: 'under',
  over: 'over',
  'inside-hip': 'off the inside hip of',
  'outside-hip': 'off the outside hip of',
};

/** The way to the gap, who goes first, how a kick-out block is taken, and whether he leaves with the back. */
function WayFields({
  job,
  roles,
  mate,
  words,
  disabled,
  onChange,
}: Props<Exclude<GapJob, { kind: 'fit' }>>): ReactElement {
  const { track, order } = job;
  return (
    <>
      <OneOf
        label="His way"
        value={track.kind === 'straight' ? null : track.how}
        items={[null, ...PASSINGS]}
        say={(how) => (how === null ? 'straight' : `${PASSING_LABELS[how]} …`)}
        disabled={disabled || mate === null}
        onChoose={(how) => {
          const neighbour = track.kind === 'past' ? track.neighbour : mate;
          if (how === null) onChange({ ...job, track: { kind: 'straight' } });
          else if (neighbour !== null) onChange({ ...job, track: { kind: 'past', how, neighbour } });
        }}
      />
      {track.kind === 'past' && (
        <WhoPicker
          label={`… ${PASSING_LABELS[track.how]} whom`}
          who={track.neighbour}
          roles={roles}
          words={words}
          disabled={disabled}
          onChange={(neighbour) => onChange({ ...job, track: { ...track, neighbour } })}
        />
      )}
      <OneOf
        label="He goes"
        value={order?.turn ?? null}
        items={[null, 'first', 'second'] as const}
        say={(turn) => (turn === null ? 'at the snap' : turn === 'first' ? 'first, before …' : 'second, after …')}
        disabled={disabled || mate === null}
        onChoose={(turn) => {
          const neighbour = order?.neighbour ?? mate;
          if (turn === null) onChange({ ...job, order: null });
          else if (neighbour !== null) onChange({ ...job, order: { turn, neighbour } });
        }}
      />
      {order !== null && (
        <WhoPicker
          label={order.turn === 'first' ? '… before whom' : '… after whom'}
          who={order.neighbour}
          roles={roles}
          words={words}
          disabled={disabled}
          onChange={(neighbour) => onChange({ ...job, order: { ...order, neighbour } })}
        />
      )}
      <OneOf
        label="A kick-out block he"
        value={job.edge}
        items={[null, ...EDGE_PLAYS]}
        say={(edge) => (edge === null ? 'not said' : edge === 'spill' ? 'spills' : 'boxes')}
        disabled={disabled}
        onChoose={(edge) => onChange({ ...job, edge })}
      />
      <label className="tick">
        <input
          type="checkbox"
          checked={job.peel}
          disabled={disabled}
          onChange={(event) => onChange({ ...job, peel: event.target.checked })}
        />
        Leaves with the back if he flares
      </label>
    </>
  );
}

const RECEIVERS = [
  ...[1, 2, 3, 4].map((number) => ({ kind: 'number' as const, number })),
  ...[1, 2, 3].map((number) => ({ kind: 'back' as const, number })),
];

function ReceiverFields({
  job,
  of,
  words,
  disabled,
  onChange,
}: Props<Extract<RuleJob, { kind: 'man' }>>): ReactElement {
  const { receiver } = job;
  return (
    <div className="form-wide">
      <p className="part-label">On whom</p>
      <div className="gap-picker">
        <OneOf
          label={`Receiver ${of}`}
          hideLabel
          value={{ kind: receiver.kind, number: receiver.number }}
          items={RECEIVERS}
          say={({ kind, number }) => {
            if (kind === 'number') return `#${number} from the sideline`;
            return number === 1 ? 'the back' : `back ${number} from his side`;
          }}
          same={(a, b) => a.kind === b.kind && a.number === b.number}
          disabled={disabled}
          onChoose={({ kind, number }) => {
            const side = receiver.kind === 'number' ? receiver.side : 'mine';
            onChange({ ...job, receiver: kind === 'back' ? { kind, number } : { kind, number, side } });
          }}
        />
        {receiver.kind === 'number' && (
          <SidePicker
            label={`Side of the receiver ${of}`}
            side={receiver.side}
            sides={SIDES_WITH_CALL}
            words={words}
            disabled={disabled}
            onPick={(side) => onChange({ ...job, receiver: { ...receiver, side } })}
          />
        )}
      </div>
    </div>
  );
}

interface SupportProps {
  readonly value: RunSupport<GapRef>['support'];
  readonly disabled: boolean;
  readonly onChange: (support: RunSupport<GapRef>['support']) => void;
}

function SupportField({ value, disabled, onChange }: SupportProps): ReactElement {
  return (
    <OneOf
      label="Against a run he has"
      value={value}
      items={[null, ...SUPPORTS]}
      say={(support) => (support === null ? 'no support of his own' : support)}
      disabled={disabled}
      wide
      onChoose={onChange}
    />
  );
}

interface RunProps extends FormParts {
  readonly run: RunSupport<GapRef>;
  readonly onRun: (run: RunSupport<GapRef>) => void;
}

/** What a man in coverage has against the run. */
function RunFields({ run, of, words, disabled, onRun }: RunProps): ReactElement {
  return (
    <>
      <SupportField value={run.support} disabled={disabled} onChange={(support) => onRun({ ...run, support })} />
      <div className="form-wide">
        <p className="part-label">Run gaps</p>
        <GapList
          of={of}
          gaps={run.fits}
          min={0}
          max={MAX_ENTRIES.gaps}
          none="None: he comes late."
          sides={SIDES_WITH_CALL}
          words={words}
          disabled={disabled}
          onChange={(fits) => onRun({ ...run, fits })}
        />
      </div>
      {run.fits.length > 0 && (
        <OneOf
          wide
          label="Of these he takes"
          value={run.firm}
          items={[false, true]}
          say={(firm) => (firm ? 'all: they are his own' : 'one, if nobody has it')}
          disabled={disabled}
          onChoose={(firm) => onRun({ ...run, firm })}
        />
      )}
    </>
  );
}
