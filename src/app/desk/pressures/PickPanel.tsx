import { useEffect, useId, useMemo, useRef, useState, type ReactElement } from 'react';
import { pickChoices, pickGround, pickStep, type PickEvent } from '../../../editor/index.ts';
import type { Pressure, RoleId, RuleJob, TellCase } from '../../../engine/index.ts';
import { giveJob, type Picking, type PickPlace } from '../../../store/index.ts';
import { Radios, Select } from '../../parts/Choice.tsx';
import type { BoardModel } from '../../session/model.ts';
import { useApp, useSession } from '../../session/session.ts';
import { PickList, type OptionGroup } from '../parts/PickList.tsx';
import { useEdit } from '../parts/useEdit.ts';
import { useRuleWords } from '../parts/useRuleWords.ts';
import type { RuleWords } from '../../../report/index.ts';
import { caseFor, isByLetter, isPlain, listener, placeName, type Listener } from './picked.ts';

/** Picking a job, said in words beside the field: the same steps by lists, and what was picked as a sentence to confirm. */
export function PickPanel({ model }: { readonly model: BoardModel }): ReactElement | null {
  const { store } = useSession();
  const { picking } = model.state.view;
  const pressure = model.state.playbook.pressures.find(({ id }) => id === picking?.pressure);
  const box = useRef<HTMLElement>(null);
  const send = (event: PickEvent): void => {
    const { view } = store.get();
    if (view.picking !== null) store.setView({ picking: pickStep(view.picking, event) });
  };
  useEscape(() => send({ kind: 'back' }));
  useEffect(() => {
    // Whoever works by keys goes on here; on a narrow page the field and this come into sight together.
    box.current?.querySelector('select')?.focus();
    box.current?.scrollIntoView({ block: 'nearest' });
  }, []);
  if (picking === null || pressure === undefined) return null;
  return (
    <section className="pick-panel" aria-labelledby="pick-title" ref={box}>
      <div className="pick-head">
        <h3 id="pick-title">Pick a job for {pressure.name}</h3>
        <button type="button" onClick={() => store.setView({ picking: null })}>
          Stop picking
        </button>
      </div>
      <p className="hint" aria-live="polite">
        {hintOf(picking)}
      </p>
      <div className="pick-lists">
        <ManList model={model} picking={picking} onMan={(role) => send({ kind: 'man', role })} />
        <PlaceList model={model} picking={picking} onPlace={(place) => send({ kind: 'place', place })} />
      </div>
      <Picked
        key={`${picking.man ?? ''} ${JSON.stringify(picking.place)}`}
        model={model}
        picking={picking}
        pressure={pressure}
        onDone={() => {
          store.setView({ picking: { pressure: pressure.id, man: null, place: null } });
          box.current?.querySelector('select')?.focus();
        }}
        onBack={() => send({ kind: 'back' })}
      />
    </section>
  );
}

function hintOf({ man, place }: Picking): string {
  if (man === null) return 'Click a defender, or choose him here.';
  if (place === null) return 'Click a gap, a receiver, the passer or the grass of a zone, or choose it here.';
  return 'Say what he does there, and how it is told.';
}

function useEscape(act: () => void): void {
  const last = useRef(act);
  useEffect(() => {
    last.current = act;
  });
  useEffect(() => {
    const press = (event: KeyboardEvent): void => {
      if (event.key === 'Escape' && document.querySelector('dialog[open]') === null) last.current();
    };
    window.addEventListener('keydown', press);
    return () => window.removeEventListener('keydown', press);
  }, []);
}

interface ManListProps {
  readonly model: BoardModel;
  readonly picking: Picking;
  readonly onMan: (role: RoleId) => void;
}

function ManList({ model, picking, onMan }: ManListProps): ReactElement {
  const men = model.analysis.assignments.map(({ aligned }) => aligned.role);
  return (
    <Select
      label="Man"
      value={picking.man}
      options={men.map(({ id, letter, name }) => ({ value: id, label: `${letter} (${name})` }))}
      {...(picking.man === null ? { none: 'Choose a man' } : {})}
      onChoose={(role) => {
        if (role !== null) onMan(role);
      }}
    />
  );
}

interface PlaceListProps {
  readonly model: BoardModel;
  readonly picking: Picking;
  readonly onPlace: (place: PickPlace) => void;
}

/** Every place the field offers, as a list. */
function PlaceList({ model, picking, onPlace }: PlaceListProps): ReactElement {
  const { lexicon, analysis, shown } = model;
  const groups = useMemo(() => placesOf(model, picking.man), [model, picking.man]);
  const places = groups.flatMap((group) => group.places);
  const keyed: readonly OptionGroup[] = groups.map(({ name, places: all }) => ({
    name,
    options: all.map((place) => ({ value: JSON.stringify(place), label: placeName(place, lexicon) })),
  }));
  const nothing: OptionGroup = { name: '', options: [{ value: '', label: 'Choose a place' }] };
  const value = picking.place === null ? '' : JSON.stringify(picking.place);
  return (
    <PickList
      label={shown.analysis === analysis ? 'Place' : 'Place, as the suggestion would have it'}
      value={value}
      groups={picking.place === null ? [nothing, ...keyed] : keyed}
      disabled={picking.man === null}
      onPick={(key) => {
        const place = places.find((each) => JSON.stringify(each) === key);
        if (place !== undefined) onPlace(place);
      }}
    />
  );
}

interface PlaceGroup {
  readonly name: string;
  readonly places: readonly PickPlace[];
}

function placesOf({ shown }: BoardModel, man: RoleId | null): readonly PlaceGroup[] {
  const { gaps, receivers, passer, zones } = pickGround(shown.analysis, shown.scene, man);
  const rings = zones.filter(
    ({ zone, side }, at) => zones.findIndex((each) => each.zone === zone && each.side === side) === at,
  );
  return [
    { name: 'Gaps', places: gaps.map(({ gap }) => ({ kind: 'gap', gap })) },
    { name: 'Receivers', places: receivers.map(({ player }) => ({ kind: 'receiver', player })) },
    { name: 'Passer', places: passer === null ? [] : [{ kind: 'passer' }] },
    { name: 'Zones', places: rings.map(({ zone, side }) => ({ kind: 'zone', zone, side })) },
  ];
}

interface PickedProps {
  readonly model: BoardModel;
  readonly picking: Picking;
  readonly pressure: Pressure;
  readonly onDone: () => void;
  readonly onBack: () => void;
}

/** What was picked, as sentences to choose from; nothing is changed before it is confirmed. */
function Picked({ model, picking, pressure, onDone, onBack }: PickedProps): ReactElement | null {
  const { man, place } = picking;
  const heard = man === null ? null : listener(model.analysis, pressure, man);
  if (heard === null || place === null) return null;
  const { facts } = model.analysis;
  const choices = pickChoices(place, { aligned: heard.aligned, facts, callSide: heard.callSide });
  if (choices.length === 0) return <p className="hint">No job can be told by that place.</p>;
  return <Confirm choices={choices} heard={heard} pressure={pressure} onDone={onDone} onBack={onBack} />;
}

interface ConfirmProps {
  readonly choices: ReturnType<typeof pickChoices>;
  readonly heard: Listener;
  readonly pressure: Pressure;
  readonly onDone: () => void;
  readonly onBack: () => void;
}

function Confirm({ choices, heard, pressure, onDone, onBack }: ConfirmProps): ReactElement {
  const words = useRuleWords();
  const edit = useEdit();
  const disabled = useApp((state) => state.readOnly);
  const buttons = useRef<HTMLDivElement>(null);
  // On a low screen what confirms the pick would lie below the edge.
  useEffect(() => {
    // Newer browsers give back a promise here, which an effect may not hand on: it would be called to clean up.
    buttons.current?.scrollIntoView({ block: 'nearest' });
  }, []);
  const [kind, setKind] = useState(choices[0]?.kind ?? 'rush');
  const [said, setSaid] = useState(0);
  const [named, setNamed] = useState(0);
  const jobs = (choices.find((choice) => choice.kind === kind) ?? choices[0])?.jobs ?? [];
  const job = jobs[said] ?? jobs[0];
  const who = heard.names[named] ?? heard.names[0];
  if (job === undefined || who === undefined) throw new Error('A choice without a job, or a man without a name');
  const told = caseFor(job, heard);
  const give = (): void => {
    const done = edit(`picked a job for ${words.who(who)} in ${pressure.name}`, null, (now) =>
      giveJob(now, { pressure: pressure.id, who, at: heard.now?.at ?? null, told }),
    );
    if (done) onDone();
  };
  return (
    <div className="pick-confirm">
      <div className="pick-lists">
        {choices.length > 1 && (
          <Radios
            legend="What he does"
            value={kind}
            options={choices.map((choice) => ({ value: choice.kind, label: PICK_LABELS[choice.kind] }))}
            onChoose={(next) => {
              setKind(next);
              setSaid(0);
            }}
          />
        )}
        {heard.names.length > 1 && (
          <Radios
            legend="Told to"
            value={String(named)}
            options={heard.names.map((name, at) => ({ value: String(at), label: words.who(name) }))}
            onChoose={(at) => setNamed(Number(at))}
          />
        )}
      </div>
      {jobs.length > 1 && <Sayings jobs={jobs} said={said} say={words.job} onSay={setSaid} />}
      <div className="pick-said" aria-live="polite">
        <p>{words.tell({ who, cases: [{ ...told, when: [] }] })}</p>
        {heard.now !== null && <p className="hint">{insteadOf(heard.now.told, words)}</p>}
      </div>
      <div className="button-row" ref={buttons}>
        <button type="button" className="is-main" disabled={disabled} onClick={give}>
          Tell him
        </button>
        <button type="button" onClick={onBack}>
          Another place
        </button>
      </div>
    </div>
  );
}

/** What the man is told here now, and when: only that case of his is changed. */
function insteadOf({ when, job }: TellCase, words: RuleWords): string {
  const here = when.length === 0 ? '' : ` Only where this holds: ${words.when(when)}.`;
  return `Instead of: ${words.job(job)}.${here}`;
}

/** Kinds of jobs in a word or two: they stand side by side. */
const PICK_LABELS: Readonly<Record<RuleJob['kind'], string>> = {
  rush: 'Rush',
  contain: 'Rush, contain',
  fit: 'Fit',
  drop: 'Drop',
  man: 'Man',
  spy: 'Spy',
};

interface SayingsProps {
  readonly jobs: readonly RuleJob[];
  readonly said: number;
  readonly say: (job: RuleJob) => string;
  readonly onSay: (at: number) => void;
}

/** The ways to say one job: all the same in this look, and apart in others. */
function Sayings({ jobs, said, say, onSay }: SayingsProps): ReactElement {
  const name = useId();
  const line = (job: RuleJob, at: number): ReactElement => (
    <label key={at} className="tick">
      <input type="radio" name={name} checked={at === said} onChange={() => onSay(at)} />
      {say(job)}
      {isPlain(job) ? ', whatever the call' : ''}
    </label>
  );
  const rows = jobs.map((job, at) => ({ job, at }));
  const others = rows.filter(({ job }) => !isByLetter(job));
  return (
    <fieldset className="pick-sayings">
      <legend>Say it as</legend>
      {rows.filter(({ job }) => isByLetter(job)).map(({ job, at }) => line(job, at))}
      {others.length > 0 && others.length < jobs.length ? (
        <details>
          <summary>By the edge, or by a man of the line</summary>
          {others.map(({ job, at }) => line(job, at))}
        </details>
      ) : (
        others.map(({ job, at }) => line(job, at))
      )}
    </fieldset>
  );
}
