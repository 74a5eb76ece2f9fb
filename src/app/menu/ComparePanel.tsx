import { useMemo, useRef, useState, type ReactElement } from 'react';
import { refusalText, type Playbook } from '../../document/index.ts';
import { PLACES, type CallId, type Place } from '../../engine/index.ts';
import type { Comparison, ManChange } from '../../report/index.ts';
import { openFile } from '../files/openFile.ts';
import { named, Select } from '../parts/Choice.tsx';
import { VERDICT_NAMES, VerdictMark } from '../parts/VerdictMark.tsx';
import { useApp, useSession } from '../session/session.ts';
import { BALL_WORDS } from '../session/words.ts';
import type { CompareAsked } from './compareMessages.ts';
import { useComparison } from './useComparison.ts';

/** Another version of a playbook, out of a file. What is open is not touched by it. */
interface Version {
  readonly name: string;
  readonly playbook: Playbook;
}

/** Two calls, or one call in two versions of the playbook: what each position room has to learn again. */
export function ComparePanel(): ReactElement {
  const playbook = useApp((state) => state.playbook);
  const board = useApp((state) => state.board);
  const [version, setVersion] = useState<Version | null>(null);
  const source = version?.playbook ?? playbook;
  const first = board.call ?? playbook.calls[0]?.id ?? null;
  const [chosenBefore, setBefore] = useState<CallId | null>(first);
  const [chosenAfter, setAfter] = useState<CallId | null>(first);
  const [spot, setSpot] = useState<Place>('middle');
  const before = callIn(source, chosenBefore);
  const after = callIn(playbook, chosenAfter);
  return (
    <div className="compare">
      <div className="menu-head">
        <VersionFile version={version} onVersion={setVersion} />
        <Select label="Before" value={before} options={named(source.calls)} onChoose={setBefore} />
        <Select label="Now" value={after} options={named(playbook.calls)} onChoose={setAfter} />
        <Select
          label="Ball on"
          value={spot}
          options={PLACES.map((value) => ({ value, label: BALL_WORDS[value].replace('ball ', '') }))}
          onChoose={(chosen) => setSpot(chosen ?? 'middle')}
        />
      </div>
      {before === null || after === null ? (
        <p className="menu-empty">Nothing to compare: there is no kept call.</p>
      ) : source === playbook && before === after ? (
        <p className="menu-empty">Choose two calls, or a file with an earlier version of this playbook.</p>
      ) : (
        <Compared source={source} playbook={playbook} before={before} after={after} spot={spot} />
      )}
    </div>
  );
}

/** The chosen call where this version has it, else its first. */
function callIn({ calls }: Playbook, chosen: CallId | null): CallId | null {
  return calls.find(({ id }) => id === chosen)?.id ?? calls[0]?.id ?? null;
}

interface FileProps {
  readonly version: Version | null;
  readonly onVersion: (version: Version | null) => void;
}

/** Where "before" comes from. */
function VersionFile({ version, onVersion }: FileProps): ReactElement {
  const { notices } = useSession();
  const input = useRef<HTMLInputElement>(null);
  return (
    <div className="compare-source">
      <span className="field-label">Before comes from</span>
      <span>
        {version === null ? 'this playbook' : version.name}{' '}
        {version === null ? (
          <button type="button" className="small-button" onClick={() => input.current?.click()}>
            A file…
          </button>
        ) : (
          <button type="button" className="small-button" onClick={() => onVersion(null)}>
            This playbook
          </button>
        )}
      </span>
      <input
        ref={input}
        type="file"
        className="unseen"
        tabIndex={-1}
        aria-hidden="true"
        accept=".json,application/json"
        onChange={(event) => {
          const file = event.target.files?.[0];
          event.target.value = '';
          if (file === undefined) return;
          void openFile(file).then((result) => {
            if (result.ok) onVersion({ name: file.name, playbook: result.value });
            else
              notices.say(`${file.name} cannot be compared: ${result.problem.slice(0, 1).map(refusalText).join('')}`);
          });
        }}
      />
    </div>
  );
}

interface ComparedProps {
  readonly source: Playbook;
  readonly playbook: Playbook;
  readonly before: CallId;
  readonly after: CallId;
  readonly spot: Place;
}

function Compared({ source, playbook, before, after, spot }: ComparedProps): ReactElement {
  const asked = useMemo(
    (): CompareAsked => ({ before: { playbook: source, call: before }, after: { playbook, call: after }, spot }),
    [source, playbook, before, after, spot],
  );
  const state = useComparison(asked);
  switch (state.kind) {
    case 'working':
      return <p className="menu-empty">Comparing…</p>;
    case 'failed':
      return <p className="menu-empty">The comparing has failed: {state.reason}</p>;
    case 'compared':
      return <Changes comparison={state.comparison} />;
  }
}

/** Room by room, then the looks whose verdict is another one. */
function Changes({ comparison }: { readonly comparison: Comparison }): ReactElement {
  const { rooms, verdicts, looks } = comparison;
  if (rooms.length === 0 && verdicts.length === 0) {
    return (
      <p className="menu-empty" role="status">
        Nothing changes for anybody in any of the {looks} looks.
      </p>
    );
  }
  return (
    <div className="changes">
      {rooms.map(({ room, changes }) => (
        <section key={room} className="room-changes" aria-label={room}>
          <h2>{room}</h2>
          <table>
            <thead>
              <tr>
                <th scope="col">Man</th>
                <th scope="col">Before</th>
                <th scope="col">Now</th>
                <th scope="col">In</th>
              </tr>
            </thead>
            <tbody>
              {changes.map((change) => (
                <ChangeRow key={keyOf(change)} change={change} looks={looks} />
              ))}
            </tbody>
          </table>
        </section>
      ))}
      {verdicts.length > 0 && (
        <section className="room-changes" aria-label="Verdicts">
          <h2>Verdicts</h2>
          <ul>
            {verdicts.map(({ look, before, after }) => (
              <li key={look}>
                {look}: <VerdictMark verdict={before} size={15} /> {VERDICT_NAMES[before]}, now{' '}
                <VerdictMark verdict={after} size={15} /> {VERDICT_NAMES[after]}
              </li>
            ))}
          </ul>
        </section>
      )}
    </div>
  );
}

function keyOf({ letter, name, what, before, after }: ManChange): string {
  return [letter, name, what, before, after].join('|');
}

function ChangeRow({ change, looks }: { readonly change: ManChange; readonly looks: number }): ReactElement {
  const { letter, name, what, before, after, looks: where } = change;
  return (
    <tr>
      <th scope="row">
        <strong>{letter}</strong> {name}
      </th>
      <td>
        {what === 'alignment' && 'lines up '}
        {before}
      </td>
      <td>
        {what === 'alignment' && 'lines up '}
        {after}
      </td>
      <td>{where.length === looks ? 'every look' : where.join('; ')}</td>
    </tr>
  );
}
