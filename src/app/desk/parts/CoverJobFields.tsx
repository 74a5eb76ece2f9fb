import type { ReactElement } from 'react';
import { MAX_ENTRIES } from '../../../document/index.ts';
import {
  MANNERS,
  SUPPORTS,
  type DropJob,
  type FitJob,
  type GapRef,
  type ManJob,
  type ReceiverRef,
  type RuleJob,
  type RuleNames,
  type RunSupport,
  type SideRef,
  type SpyJob,
} from '../../../engine/index.ts';
import { SUPPORT_WORDS, type RuleWords } from '../../../report/index.ts';
import { Radios, Select, type Option } from '../../parts/Choice.tsx';
import type { Change } from './change.ts';
import { GapList } from './GapPicker.tsx';
import { PickList } from './PickList.tsx';
import { ZonePicker } from './ZonePicker.tsx';

/** Jobs of a man who does not rush. */
export type CoverJob = DropJob<RuleNames> | ManJob<RuleNames> | SpyJob<RuleNames> | FitJob<RuleNames>;

const KINDS: readonly Option<CoverJob['kind']>[] = [
  { value: 'drop', label: 'Zone' },
  { value: 'man', label: 'Man' },
  { value: 'spy', label: 'Spy' },
  { value: 'fit', label: 'Run only' },
];

const NO_RUN: RunSupport<GapRef> = { fits: [], firm: false, support: null };

interface Props {
  /** Whose job it is, for those who hear it: "of the call-side SS". */
  readonly of: string;
  readonly job: RuleJob;
  /** The sides that can be spoken of here. */
  readonly sides: readonly SideRef[];
  readonly words: RuleWords;
  readonly disabled: boolean;
  readonly onChange: Change<RuleJob>;
}

/** The job of a man in coverage: his zone or his man, and what he has against the run. */
export function CoverJobFields({ of, job, sides, words, disabled, onChange }: Props): ReactElement {
  const first = sides[0] ?? 'left';
  return (
    <div className="job-fields">
      <Radios
        legend="Against a pass"
        value={job.kind}
        // A man who rushes is the pressure's business; a file may say it here, and then it can be said otherwise.
        options={KINDS.some(({ value }) => value === job.kind) ? KINDS : [...KINDS, { value: job.kind, label: 'Rush' }]}
        onChoose={(kind) => {
          if (kind !== job.kind) onChange(freshJob(kind, first, runOf(job)) ?? job, null);
        }}
      />
      {job.kind === 'drop' && (
        <ZonePicker
          label={`Zone ${of}`}
          zone={job.zone}
          side={job.side}
          words={words}
          disabled={disabled}
          onChange={(place, gesture) => onChange({ ...job, ...place }, gesture)}
        />
      )}
      {job.kind === 'man' && (
        <ReceiverPicker
          of={of}
          receiver={job.receiver}
          sides={sides}
          words={words}
          disabled={disabled}
          onChange={(receiver, gesture) => onChange({ ...job, receiver }, gesture)}
        />
      )}
      {(job.kind === 'drop' || job.kind === 'man' || job.kind === 'spy') && (
        <RunFields
          of={of}
          run={job.run}
          sides={sides}
          words={words}
          disabled={disabled}
          onChange={(run, gesture) => onChange({ ...job, run }, gesture)}
        />
      )}
      {job.kind === 'fit' && (
        <>
          <Select
            label="How"
            value={job.manner}
            options={MANNERS.filter((manner) => manner === 'read' || manner === 'penetrate').map((value) => ({
              value,
              label: value === 'read' ? 'after his read' : 'at once',
            }))}
            disabled={disabled}
            onChoose={(manner) => {
              if (manner !== null) onChange({ ...job, manner, gaps: job.gaps.slice(0, 1) }, null);
            }}
          />
          <GapList
            of={of}
            gaps={job.gaps}
            min={1}
            max={job.manner === 'two-gap' ? 2 : 1}
            sides={sides}
            words={words}
            disabled={disabled}
            onChange={(gaps, gesture) => onChange({ ...job, gaps }, gesture)}
          />
        </>
      )}
    </div>
  );
}

function runOf(job: RuleJob): RunSupport<GapRef> {
  return job.kind === 'drop' || job.kind === 'man' || job.kind === 'spy' ? job.run : NO_RUN;
}

/** Another kind of job, with what he had against the run; null for a rush. */
function freshJob(kind: RuleJob['kind'], side: SideRef, run: RunSupport<GapRef>): CoverJob | null {
  switch (kind) {
    case 'drop':
      return { kind, zone: 'hook', side: 'middle', run };
    case 'man':
      return { kind, receiver: { kind: 'number', side, number: 1 }, run };
    case 'spy':
      return { kind, run };
    case 'fit':
      return {
        kind,
        gaps: [run.fits[0] ?? { kind: 'letter', side, letter: 'A' }],
        manner: 'read',
        support: run.support,
      };
    case 'rush':
    case 'contain':
      return null;
  }
}

interface ReceiverProps {
  readonly of: string;
  readonly receiver: ReceiverRef;
  readonly sides: readonly SideRef[];
  readonly words: RuleWords;
  readonly disabled: boolean;
  readonly onChange: Change<ReceiverRef>;
}

/** Receivers there can be on one side, and backs in the backfield. */
const NUMBERS = [1, 2, 3, 4, 5] as const;
const BACKS = [1, 2, 3] as const;

function ReceiverPicker({ of, receiver, sides, words, disabled, onChange }: ReceiverProps): ReactElement {
  const onSides = sides.map((side) => ({
    name: words.side(side),
    refs: NUMBERS.map((number): ReceiverRef => ({ kind: 'number', side, number })),
  }));
  const backs = { name: 'Backfield', refs: BACKS.map((number): ReceiverRef => ({ kind: 'back', number })) };
  const all = [...onSides, backs];
  return (
    <PickList
      label={`Receiver ${of}`}
      hideLabel
      value={words.receiver(receiver)}
      groups={all.map(({ name, refs }) => ({
        name,
        options: refs.map((ref) => ({ value: words.receiver(ref), label: words.receiver(ref) })),
      }))}
      disabled={disabled}
      ownWords={words.receiver(receiver)}
      onPick={(value) => {
        const picked = all.flatMap(({ refs }) => refs).find((ref) => words.receiver(ref) === value);
        if (picked !== undefined) onChange(picked, null);
      }}
    />
  );
}

interface RunProps {
  readonly of: string;
  readonly run: RunSupport<GapRef>;
  readonly sides: readonly SideRef[];
  readonly words: RuleWords;
  readonly disabled: boolean;
  readonly onChange: Change<RunSupport<GapRef>>;
}

const FIRMNESS: readonly Option<'if-free' | 'firm'>[] = [
  { value: 'if-free', label: 'one, if nobody has it' },
  { value: 'firm', label: 'all, his own' },
];

function RunFields({ of, run, sides, words, disabled, onChange }: RunProps): ReactElement {
  return (
    <>
      <Select
        label="Against a run"
        value={run.support}
        none="no support of his own"
        options={SUPPORTS.map((value) => ({ value, label: SUPPORT_WORDS[value] }))}
        disabled={disabled}
        onChoose={(support) => onChange({ ...run, support }, null)}
      />
      <GapList
        of={of}
        gaps={run.fits}
        min={0}
        max={MAX_ENTRIES.gaps}
        none="No gap: he comes late."
        sides={sides}
        words={words}
        disabled={disabled}
        onChange={(fits, gesture) => onChange({ ...run, fits }, gesture)}
      />
      {run.fits.length > 0 && (
        <Radios
          legend="Of these he takes"
          value={run.firm ? 'firm' : 'if-free'}
          options={FIRMNESS}
          onChoose={(value) => onChange({ ...run, firm: value === 'firm' }, null)}
        />
      )}
    </>
  );
}
