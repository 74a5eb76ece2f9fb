import { memo, useEffect, useId, useMemo, useRef, type ReactElement } from 'react';
import { readLook, type Look, type LookId, type Place, type RuleLevel, type Verdict } from '../../engine/index.ts';
import { buildLookScene, toSvg } from '../../scene/index.ts';
import { looksShown, type AppState } from '../../store/index.ts';
import { showInRow } from '../parts/showInRow.ts';
import { VERDICT_NAMES, VerdictMark } from '../parts/VerdictMark.tsx';
import { useSession } from '../session/session.ts';
import { useTheme } from '../theme/useTheme.ts';
import { MendButton } from './MendButton.tsx';
import { useLookVerdicts } from './useLookVerdicts.ts';

/** Width of a small diagram, in CSS pixels. */
const DIAGRAM = 132;

/** Every look as a small diagram with the verdict of the call in it; choosing one stands in it. */
export function LookStrip({ state }: { readonly state: AppState }): ReactElement {
  const { store } = useSession();
  const { playbook, board, view } = state;
  const verdicts = useLookVerdicts(state);
  const looks = looksShown(state);
  const group = useId();
  return (
    <section className="look-strip" aria-labelledby={`${group}-title`}>
      <div className="strip-head">
        <h2 id={`${group}-title`}>This call in every look</h2>
        <Tally looks={looks} verdicts={verdicts} />
        <MendButton state={state} verdicts={verdicts} />
        {playbook.opponents.length > 0 && (
          <label className="strip-filter">
            Show{' '}
            <select
              value={view.opponent ?? ''}
              onChange={(event) => {
                const chosen = playbook.opponents.find(({ id }) => id === event.target.value);
                store.setView({ opponent: chosen?.id ?? null });
              }}
            >
              <option value="">all looks</option>
              {playbook.opponents.map(({ id, name }) => (
                <option key={id} value={id}>
                  looks of {name}
                </option>
              ))}
            </select>
          </label>
        )}
      </div>
      <div className="strip-row" role="radiogroup" aria-label="Looks">
        {looks.map((look) => (
          <LookCard
            key={look.id}
            look={look}
            level={playbook.team.level}
            spot={board.spot}
            turned={view.turned}
            verdict={verdicts.get(look.id) ?? null}
            chosen={look.id === board.look}
            group={group}
            onChoose={store.setBoard}
          />
        ))}
      </div>
    </section>
  );
}

interface CardProps {
  readonly look: Look;
  readonly level: RuleLevel;
  readonly spot: Place;
  readonly turned: boolean;
  readonly verdict: Verdict | null;
  readonly chosen: boolean;
  readonly group: string;
  readonly onChoose: (patch: { readonly look: LookId }) => void;
}

const LookCard = memo(function LookCard(props: CardProps): ReactElement {
  const { look, level, spot, turned, verdict, chosen, group, onChoose } = props;
  const theme = useTheme();
  const facts = useMemo(() => readLook(look, level, spot), [look, level, spot]);
  const picture = useMemo(() => {
    const svg = toSvg(buildLookScene(facts, level, spot), theme, { flip: turned, width: DIAGRAM });
    return `data:image/svg+xml;charset=utf-8,${encodeURIComponent(svg)}`;
  }, [facts, level, spot, turned, theme]);
  const card = useRef<HTMLLabelElement>(null);
  useEffect(() => {
    if (chosen && card.current !== null) showInRow(card.current);
  }, [chosen]);
  return (
    <label ref={card} className={`look-card${verdict === null ? '' : ` look-${verdict}`}`} data-look={look.id}>
      <input
        type="radio"
        className="unseen"
        name={group}
        checked={chosen}
        onChange={() => onChoose({ look: look.id })}
      />
      <span className="look-card-body">
        <img src={picture} alt="" width={DIAGRAM} draggable={false} />
        <span className="look-name">{look.name}</span>
        <span className="look-foot">
          <span className="personnel">
            {look.motion === null ? `${facts.personnel} personnel` : `${facts.personnel}, motion`}
          </span>
          {verdict === null ? (
            <span className="verdict-word quiet">…</span>
          ) : (
            <span className="verdict-word">
              <VerdictMark verdict={verdict} size={15} /> {VERDICT_NAMES[verdict]}
            </span>
          )}
        </span>
      </span>
    </label>
  );
});

interface TallyProps {
  readonly looks: readonly Look[];
  readonly verdicts: ReadonlyMap<LookId, Verdict | null>;
}

/** How many looks have which verdict. */
function Tally({ looks, verdicts }: TallyProps): ReactElement {
  const counts = ORDER.map((verdict) => ({
    verdict,
    count: looks.filter(({ id }) => verdicts.get(id) === verdict).length,
  })).filter(({ count }) => count > 0);
  return (
    <ul className="tally" aria-label="How many looks have which verdict">
      {counts.map(({ verdict, count }) => (
        <li key={verdict}>
          <VerdictMark verdict={verdict} size={15} /> {VERDICT_NAMES[verdict]}: {count}
        </li>
      ))}
    </ul>
  );
}

const ORDER: readonly Verdict[] = ['stop', 'check', 'note', 'clean', 'left-out'];
