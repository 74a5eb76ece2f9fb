import { useEffect, useRef, useSyncExternalStore, type ReactElement } from 'react';
import { secondsText, type MomentRow } from '../../report/index.ts';
import { lightProps } from '../report/lighting.ts';
import { showInRow } from '../parts/showInRow.ts';
import { useSettled } from '../parts/useSettled.ts';
import { useSession } from '../session/session.ts';
import { STEP, type Playing } from './playing.ts';
import type { Walk } from './useWalk.ts';
import type { WalkClock } from './walkClock.ts';

/** What the snap brings: a slider over the time after it, and every moment as a button that goes there. */
export function WalkBar({ walk }: { readonly walk: Walk }): ReactElement {
  const { clock, seconds, report } = walk;
  const playing = useSyncExternalStore(clock.subscribe, clock.now);
  const { t } = playing;
  const shown = Math.round(t / STEP) * STEP;
  return (
    <section className="walk" aria-labelledby="walk-title">
      <h3 id="walk-title" className="unseen">
        The snap, walked through
      </h3>
      <div className="walk-line">
        <Controls clock={clock} playing={playing} />
        <input
          type="range"
          className="walk-slider"
          aria-label="Time after the snap"
          aria-valuetext={t === 0 ? 'before the snap' : `${shown.toFixed(1)} seconds after the snap`}
          min={0}
          max={seconds}
          step={STEP}
          value={shown}
          onChange={(event) => clock.goTo(event.target.valueAsNumber)}
        />
        <output className="walk-clock" aria-hidden="true">
          {secondsText(t)}
        </output>
        <details className="walk-notes">
          <summary>by estimate</summary>
          <ul className="plain-rows">
            <li>Men can be moved at the start only, before the snap.</li>
            {report.notes.map((note) => (
              <li key={note}>{note}</li>
            ))}
          </ul>
        </details>
      </div>
      <Moments moments={report.moments} t={t} onGo={clock.goTo} />
      <Spoken moments={report.moments} playing={playing} />
    </section>
  );
}

interface ControlProps {
  readonly clock: WalkClock;
  readonly playing: Playing;
}

function Controls({ clock, playing }: ControlProps): ReactElement {
  const { running, half } = playing;
  return (
    <div className="walk-buttons" role="group" aria-label="Walk-through">
      <button type="button" onClick={() => clock.goTo(0)}>
        To the start
      </button>
      <button type="button" aria-label="Back a tenth of a second" onClick={() => clock.step(-1)}>
        −0.1
      </button>
      <button type="button" className="walk-play" onClick={clock.toggle}>
        {running ? 'Pause' : 'Play'}
      </button>
      <button type="button" aria-label="On a tenth of a second" onClick={() => clock.step(1)}>
        +0.1
      </button>
      <button type="button" aria-pressed={half} onClick={() => clock.setHalf(!half)}>
        Half speed
      </button>
    </div>
  );
}

interface MomentProps {
  readonly moments: readonly MomentRow[];
  readonly t: number;
  readonly onGo: (t: number) => void;
}

/** What happens when. What has happened at the time shown is marked, the last of it as where we are. */
function Moments({ moments, t, onGo }: MomentProps): ReactElement {
  const { store } = useSession();
  const last = lastOf(moments, t);
  const list = useRef<HTMLOListElement>(null);
  useEffect(() => {
    const now = list.current?.querySelector('[aria-current]');
    if (now instanceof HTMLElement) showInRow(now, list.current);
  }, [last]);
  return (
    <ol className="moments" ref={list} aria-label="What happens when, by estimate">
      {moments.map((row) => (
        <li key={row.key}>
          <button
            type="button"
            className={row.t <= t ? 'moment is-past' : 'moment'}
            aria-current={row === last ? 'step' : undefined}
            onClick={() => onGo(row.t)}
            {...lightProps(`moment ${row.key}`, row, (lit) => store.setView({ lit }))}
          >
            <span className="moment-time">{row.time}</span>
            <span className="unseen">:</span> {row.text}
          </button>
        </li>
      ))}
    </ol>
  );
}

/** The last moment at or before a time; null: nothing has happened yet. */
function lastOf(moments: readonly MomentRow[], t: number): MomentRow | null {
  return moments.findLast((row) => t > 0 && row.t <= t) ?? null;
}

/** Says where it has come to once it stands still, and nothing while it runs. */
function Spoken({
  moments,
  playing,
}: {
  readonly moments: readonly MomentRow[];
  readonly playing: Playing;
}): ReactElement {
  const { t, running } = playing;
  const last = lastOf(moments, t);
  const words = running || t === 0 ? '' : `${secondsText(t)}${last === null ? '' : `. ${last.text}`}`;
  return (
    <p className="unseen" role="status">
      {useSettled(words)}
    </p>
  );
}
