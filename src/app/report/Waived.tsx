import type { ReactElement } from 'react';
import { standardChecks, type Waiver } from '../../engine/index.ts';
import type { WaivedRow } from '../../report/index.ts';
import { aboutOf, lapsedWaivers, takeBack, waiverHome, type Waived } from '../../store/index.ts';
import { VERDICT_NAMES } from '../parts/VerdictMark.tsx';
import type { BoardModel } from '../session/model.ts';
import { useCommit, useSession } from '../session/session.ts';
import { lightProps } from './lighting.ts';
import { Section } from './Section.tsx';

/** What the coach lives with in this look and why; and what he said he would, though it is no longer there. */
export function WaivedSection({ model }: { readonly model: BoardModel }): ReactElement | null {
  const { waived } = model.report;
  const lapsed = lapsedWaivers(model.analysis);
  if (waived.length === 0 && lapsed.length === 0) return null;
  return (
    <Section
      title="You live with"
      count={waived.length}
      {...(lapsed.length > 0 ? { note: `${lapsed.length} lapsed`, open: true } : {})}
    >
      <ul className="plain-rows">
        {waived.map((row) => (
          <WaivedItem key={row.key} row={row} model={model} />
        ))}
        {lapsed.map((waiver) => (
          <LapsedItem key={`${waiver.rule} ${waiver.evidence}`} waiver={waiver} model={model} />
        ))}
      </ul>
    </Section>
  );
}

function WaivedItem({ row, model }: { readonly row: WaivedRow; readonly model: BoardModel }): ReactElement {
  const { store } = useSession();
  return (
    <li data-rule={row.rule} {...lightProps(row.key, row, (lit) => store.setView({ lit }))}>
      <p>
        <strong>{row.title}</strong> ({VERDICT_NAMES[row.severity].toLowerCase()}): {row.text}
      </p>
      <p className="reason">Because: {row.reason}</p>
      <TakeBack model={model} about={aboutOf(model.analysis, row)} title={row.title} words="Take back" />
    </li>
  );
}

function LapsedItem({ waiver, model }: { readonly waiver: Waiver; readonly model: BoardModel }): ReactElement {
  // A newer program may have written it: then its id is all there is.
  const title = standardChecks.find(({ id }) => id === waiver.rule)?.title ?? waiver.rule;
  return (
    <li data-rule={waiver.rule} className="is-lapsed">
      <p>
        <strong>Lapsed: {title}.</strong> Other men or gaps are in it now, or it is gone.
      </p>
      <p className="reason">You lived with it because: {waiver.reason}</p>
      <TakeBack model={model} about={waiver} title={title} words="Remove" />
    </li>
  );
}

interface TakeBackProps {
  readonly model: BoardModel;
  readonly about: Waived;
  readonly title: string;
  readonly words: string;
}

function TakeBack({ model, about, title, words }: TakeBackProps): ReactElement | null {
  const commit = useCommit();
  const home = waiverHome(model.state, model.analysis);
  if (home.kind === 'not-kept') return null;
  const { call } = home;
  return (
    <button
      type="button"
      className="link-button"
      disabled={model.state.readOnly}
      onClick={() =>
        commit({
          label: `no longer lives with “${title}” on ${call.name}`,
          look: about.look,
          gesture: null,
          change: (playbook) => takeBack(playbook, { call: call.id, about }),
        })
      }
    >
      {words}
      <span className="unseen">: {title}</span>
    </button>
  );
}
