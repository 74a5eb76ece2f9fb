import type { ReactElement, ReactNode } from 'react';
import { BY_RULE, type DutyRow, type ProtectionRow, type RunRow } from '../../report/index.ts';
import type { Overlay } from '../../store/index.ts';
import { WhyFold, WhyTree } from '../parts/Why.tsx';
import type { BoardModel } from '../session/model.ts';
import { useSession } from '../session/session.ts';
import { lightProps } from './lighting.ts';
import { Section } from './Section.tsx';

/** The runs this look is known for against the call. */
export function RunsSection({ model }: { readonly model: BoardModel }): ReactElement | null {
  const { runs } = model.report;
  if (runs.length === 0) return null;
  const open = runs.filter((run) => run.open).length;
  return (
    <Section title="Runs of this look" count={runs.length} note={openText(open, 'open')} open={open > 0}>
      <p className="hint">{BY_RULE}.</p>
      <ul className="play-list">
        {runs.map((run, index) => (
          <Play key={index} model={model} kind="run" index={index} row={run}>
            <RunDetails run={run} index={index} />
          </Play>
        ))}
      </ul>
    </Section>
  );
}

/** The protections this look is known for against the rush. */
export function ProtectionsSection({ model }: { readonly model: BoardModel }): ReactElement | null {
  const { protections } = model.report;
  if (protections.length === 0) return null;
  const free = protections.filter((protection) => protection.free.length > 0).length;
  return (
    <Section
      title="Protections of this look"
      count={protections.length}
      note={free === 0 ? 'nobody comes free' : `somebody comes free in ${free}`}
    >
      <p className="hint">{BY_RULE}.</p>
      <ul className="play-list">
        {protections.map((protection, index) => (
          <Play key={index} model={model} kind="protection" index={index} row={{ ...protection, open: false }}>
            <ProtectionDetails protection={protection} index={index} />
          </Play>
        ))}
      </ul>
    </Section>
  );
}

function openText(count: number, word: string): string {
  return count === 0 ? 'all answered' : `${count} ${word}`;
}

interface PlayProps {
  readonly model: BoardModel;
  readonly kind: Overlay['kind'];
  readonly index: number;
  readonly row: Pick<RunRow, 'name' | 'here' | 'headline' | 'open'> & Partial<Pick<RunRow, 'passOption'>>;
  readonly children: ReactNode;
}

/** One run or protection: what it comes down to, a switch that draws it on the field, and the rest folded. */
function Play({ model, kind, index, row, children }: PlayProps): ReactElement {
  const { store } = useSession();
  const { overlay } = model.state.view;
  const { look } = model.state.board;
  const drawn = overlay !== null && overlay.kind === kind && overlay.index === index && overlay.look === look;
  return (
    <li className={drawn ? 'play is-drawn' : 'play'}>
      <div className="play-head">
        <h4>
          {row.name}
          {row.passOption === true && <span className="hint"> with a pass off it</span>}
        </h4>
        {row.here && look !== null && (
          <button
            type="button"
            className="small-button"
            aria-pressed={drawn}
            onClick={() => store.setView({ overlay: drawn ? null : { kind, look, index } })}
          >
            Draw it<span className="unseen">: {row.name}</span>
          </button>
        )}
      </div>
      <p className={row.open ? 'is-open' : undefined}>{row.headline}.</p>
      {row.here && (
        <details className="why">
          <summary>
            Who does what<span className="unseen">: {row.name}</span>
          </summary>
          {children}
        </details>
      )}
    </li>
  );
}

function RunDetails({ run, index }: { readonly run: RunRow; readonly index: number }): ReactElement {
  return (
    <>
      <ul className="duties">
        {run.duties.map((duty, at) => (
          <Duty key={at} duty={duty} name={`run ${index} ${at}`} />
        ))}
      </ul>
      <ul className="plain-rows">
        {run.notes.map((note) => (
          <li key={note}>{note}</li>
        ))}
      </ul>
      <WhyTree reasons={run.why} />
    </>
  );
}

function Duty({ duty, name }: { readonly duty: DutyRow; readonly name: string }): ReactElement {
  const { store } = useSession();
  return (
    <li className={duty.open ? 'is-open' : undefined} {...lightProps(name, duty, (lit) => store.setView({ lit }))}>
      {duty.what}: <strong>{duty.by}</strong>
    </li>
  );
}

interface ProtectionProps {
  readonly protection: ProtectionRow;
  readonly index: number;
}

function ProtectionDetails({ protection, index }: ProtectionProps): ReactElement {
  const { free, blocks, idle, notes, hot } = protection;
  const { store } = useSession();
  const light = (name: string, about: Parameters<typeof lightProps>[1]) =>
    lightProps(`protection ${index} ${name}`, about, (lit) => store.setView({ lit }));
  return (
    <ul className="duties">
      {free.map((row) => (
        <li key={`free ${row.rusher}`} {...light(`free ${row.rusher}`, row)}>
          <strong>{row.rusher} comes free</strong> through {row.through}
          <WhyFold of={`${row.rusher} comes free`} reasons={[row.why]} />
        </li>
      ))}
      {hot !== null && (
        <li>
          The passer must throw {hot.text}
          <WhyFold of={hot.text} reasons={[hot.why]} />
        </li>
      )}
      {blocks.map((row) => (
        <li key={`${row.blocker} ${row.rusher}`} {...light(`${row.blocker} ${row.rusher}`, row)}>
          {row.blocker} has <strong>{row.rusher}</strong>, {row.how}
          <WhyFold of={`${row.blocker} has ${row.rusher}`} reasons={[row.why]} />
        </li>
      ))}
      {idle.map((row) => (
        <li key={`idle ${row.blocker}`} {...light(row.blocker, { who: [], players: row.players, gaps: [] })}>
          {row.blocker} has nobody to block
        </li>
      ))}
      {notes.map((note) => (
        <li key={note.text}>
          {note.text}
          <WhyTree reasons={note.because} />
        </li>
      ))}
    </ul>
  );
}
