import type { ReactElement } from 'react';
import type { CheckOutNote, ChoiceNote, MotionNote } from '../../report/index.ts';
import { WhyTree } from '../parts/Why.tsx';
import { useSession } from '../session/session.ts';
import { lightProps } from './lighting.ts';
import { Section } from './Section.tsx';

/** An either-or call: which half is run here, and who must hear it. */
export function ChoiceSection({ note }: { readonly note: ChoiceNote }): ReactElement {
  const { store } = useSession();
  const about = { who: note.who, players: [], gaps: [] };
  return (
    <Section title="Which half runs" note={`${note.text}; ${note.hear}`}>
      <div {...lightProps('choice', about, (lit) => store.setView({ lit }))}>
        <p>{note.key}.</p>
        <p>{note.hear}.</p>
        <WhyTree reasons={[note.why]} />
      </div>
    </Section>
  );
}

/** What the check-out table of the call makes of it against this formation. */
export function CheckOutSection({ note }: { readonly note: CheckOutNote }): ReactElement {
  return (
    <Section title="Check-out" note={note.text}>
      <WhyTree reasons={[note.why]} />
    </Section>
  );
}

/** What the motion of this look does to the call. Everything else on the screen is as the ball is snapped. */
export function MotionSection({ note }: { readonly note: MotionNote }): ReactElement {
  const { store } = useSession();
  const turns = note.sides.some((side) => side.turns);
  const about = { who: note.who, players: note.players, gaps: [] };
  return (
    <Section title="Motion" note={turns ? 'it turns the call' : 'the call side stays'} open={turns}>
      <div {...lightProps('motion', about, (lit) => store.setView({ lit }))}>
        <p>{note.text}.</p>
        <ul className="plain-rows">
          {note.sides.map(({ text, turns: flips }) => (
            <li key={text} className={flips ? 'is-open' : undefined}>
              {text}
            </li>
          ))}
        </ul>
        <p>{note.moves}.</p>
        <p className="hint">The board shows him where he is at the snap, and everything as the ball is snapped.</p>
      </div>
    </Section>
  );
}
