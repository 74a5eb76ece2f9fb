import type { ReactElement } from 'react';
import { MAX_ENTRIES } from '../../../document/index.ts';
import {
  PROTECTIONS,
  RUN_CONCEPT_WORDS,
  RUN_CONCEPTS,
  SIDES,
  type KnownProtection,
  type KnownRun,
  type Look,
  type Side,
} from '../../../engine/index.ts';
import { setProtections, setRuns } from '../../../store/index.ts';
import { useApp } from '../../session/session.ts';
import { OrderedList } from '../parts/OrderedList.tsx';
import { PickList } from '../parts/PickList.tsx';
import { useLookEdit } from './useLookEdit.ts';

/** The runs and the protections the look is known for; the call is checked against each. */
export function KnownPlays({ look }: { readonly look: Look }): ReactElement {
  const edit = useLookEdit(look.id);
  const readOnly = useApp((state) => state.readOnly);
  const { id, name, runs, protections } = look;
  const putRuns = (next: readonly KnownRun[]): void => {
    edit(`changed the runs of ${name}`, null, (now) => setRuns(now, { look: id, runs: next }));
  };
  const putProtections = (next: readonly KnownProtection[]): void => {
    edit(`changed the protections of ${name}`, null, (now) => setProtections(now, { look: id, protections: next }));
  };
  const freshRun = firstFree(ALL_RUNS, runs, runKey);
  const freshProtection = firstFree(ALL_PROTECTIONS, protections, protectionKey);
  return (
    <>
      <div className="editor-part">
        <h3 className="part-title">Runs it is known for</h3>
        <OrderedList
          one="run"
          of=""
          items={runs}
          min={0}
          max={MAX_ENTRIES.runs}
          ordered={false}
          disabled={readOnly}
          none="None: the call is not checked against any run here."
          fresh={freshRun === null ? null : () => freshRun}
          onChange={putRuns}
        >
          {(run, index) => (
            <RunRow
              run={run}
              number={index + 1}
              disabled={readOnly}
              onChange={(next) => putRuns(runs.with(index, next))}
            />
          )}
        </OrderedList>
      </div>
      <div className="editor-part">
        <h3 className="part-title">Protections it is known for</h3>
        <OrderedList
          one="protection"
          of=""
          items={protections}
          min={0}
          max={MAX_ENTRIES.protections}
          ordered={false}
          disabled={readOnly}
          none="None: nobody can tell who comes free here."
          fresh={freshProtection === null ? null : () => freshProtection}
          onChange={putProtections}
        >
          {(known, index) => (
            <ProtectionRow
              known={known}
              number={index + 1}
              disabled={readOnly}
              onChange={(next) => putProtections(protections.with(index, next))}
            />
          )}
        </OrderedList>
      </div>
    </>
  );
}

const ALL_RUNS: readonly KnownRun[] = RUN_CONCEPTS.flatMap((concept) =>
  SIDES.map((side) => ({ concept, side, passOption: false })),
);
const ALL_PROTECTIONS: readonly KnownProtection[] = PROTECTIONS.flatMap(({ id }) =>
  SIDES.map((slideSide) => ({ protection: id, slideSide })),
);

function runKey({ concept, side, passOption }: KnownRun): string {
  return `${concept} ${side} ${passOption}`;
}

function protectionKey({ protection, slideSide }: KnownProtection): string {
  return `${protection} ${slideSide}`;
}

/** The first that is not in the list yet. */
function firstFree<Item>(all: readonly Item[], taken: readonly Item[], key: (item: Item) => string): Item | null {
  const keys = new Set(taken.map(key));
  return all.find((item) => !keys.has(key(item))) ?? null;
}

interface RunProps {
  readonly run: KnownRun;
  readonly number: number;
  readonly disabled: boolean;
  readonly onChange: (run: KnownRun) => void;
}

function RunRow({ run, number, disabled, onChange }: RunProps): ReactElement {
  return (
    <div className="play-row">
      <PickList
        label={`Run ${number}`}
        hideLabel
        value={run.concept}
        groups={[{ name: '', options: RUN_CONCEPTS.map((value) => ({ value, label: RUN_CONCEPT_WORDS[value] })) }]}
        disabled={disabled}
        onPick={(value) => {
          const concept = RUN_CONCEPTS.find((each) => each === value);
          if (concept !== undefined) onChange({ ...run, concept });
        }}
      />
      <SideList
        label={`Side of run ${number}`}
        words={(side) => `to the ${side}`}
        side={run.side}
        disabled={disabled}
        onPick={(side) => onChange({ ...run, side })}
      />
      <label className="throws">
        <input
          type="checkbox"
          checked={run.passOption}
          disabled={disabled}
          onChange={(event) => onChange({ ...run, passOption: event.target.checked })}
        />{' '}
        with a pass to throw instead<span className="unseen">, run {number}</span>
      </label>
    </div>
  );
}

interface ProtectionProps {
  readonly known: KnownProtection;
  readonly number: number;
  readonly disabled: boolean;
  readonly onChange: (known: KnownProtection) => void;
}

function ProtectionRow({ known, number, disabled, onChange }: ProtectionProps): ReactElement {
  return (
    <div className="play-row">
      <PickList
        label={`Protection ${number}`}
        hideLabel
        value={known.protection}
        groups={[{ name: '', options: PROTECTIONS.map(({ id, name }) => ({ value: id, label: name })) }]}
        disabled={disabled}
        onPick={(value) => {
          const found = PROTECTIONS.find(({ id }) => id === value);
          if (found !== undefined) onChange({ ...known, protection: found.id });
        }}
      />
      <SideList
        label={`Side of protection ${number}`}
        words={(side) => `turned ${side}`}
        side={known.slideSide}
        disabled={disabled}
        onPick={(slideSide) => onChange({ ...known, slideSide })}
      />
    </div>
  );
}

interface SideProps {
  readonly label: string;
  readonly words: (side: Side) => string;
  readonly side: Side;
  readonly disabled: boolean;
  readonly onPick: (side: Side) => void;
}

function SideList({ label, words, side, disabled, onPick }: SideProps): ReactElement {
  return (
    <PickList
      label={label}
      hideLabel
      value={side}
      groups={[{ name: '', options: SIDES.map((value) => ({ value, label: words(value) })) }]}
      disabled={disabled}
      onPick={(value) => {
        const picked = SIDES.find((each) => each === value);
        if (picked !== undefined) onPick(picked);
      }}
    />
  );
}
