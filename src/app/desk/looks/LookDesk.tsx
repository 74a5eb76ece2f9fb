import { useState, type ReactElement } from 'react';
import type { LookId } from '../../../engine/index.ts';
import { copyMirrored, mirroredName, mirrorInPlace, nextEntry } from '../../../store/index.ts';
import { NameDialog } from '../../dialogs/NameDialog.tsx';
import { useApp, useSession } from '../../session/session.ts';
import { Eleven } from './Eleven.tsx';
import { KnownPlays } from './KnownPlays.tsx';
import { Legality } from './Legality.tsx';
import { MotionFields } from './MotionFields.tsx';
import { useLookEdit } from './useLookEdit.ts';
import { shownName } from '../../parts/shownName.ts';

/** A look of the offence: whether it is legal, its eleven, who moves, and what it is known for. */
export function LookDesk({ id }: { readonly id: LookId }): ReactElement | null {
  const look = useApp((state) => state.playbook.looks.find((each) => each.id === id) ?? null);
  if (look === null) return null;
  return (
    <section className="editor" aria-label={`The look ${shownName(look.name)}`} key={id}>
      <Legality look={look} />
      <Eleven look={look} />
      <p className="hint">Across: yards from the ball, minus is the defence’s left. Or drag a man on the board.</p>
      <MirrorButtons id={id} name={look.name} />
      <MotionFields look={look} />
      <KnownPlays look={look} />
    </section>
  );
}

function MirrorButtons({ id, name }: { readonly id: LookId; readonly name: string }): ReactElement {
  const { store } = useSession();
  const readOnly = useApp((state) => state.readOnly);
  const edit = useLookEdit(id);
  const [naming, setNaming] = useState(false);
  return (
    <div className="button-row">
      <button
        type="button"
        disabled={readOnly}
        onClick={() => edit(`mirrored the look ${name}`, null, (now) => mirrorInPlace(now, { look: id }))}
      >
        Mirror it
      </button>
      <button type="button" disabled={readOnly} onClick={() => setNaming(true)}>
        Mirrored copy…
      </button>
      {naming && (
        <NameDialog
          title={`A mirrored copy of ${name}`}
          label="Name of the copy"
          start={mirroredName(name) === name ? `${name} mirrored` : mirroredName(name)}
          action="Copy"
          onName={(text) => {
            const made = nextEntry(store.get().playbook, 'looks');
            const done = edit(`copied the look ${name} mirrored`, null, (now) =>
              copyMirrored(now, { look: id, name: text }),
            );
            if (done && made.section === 'looks') store.setBoard({ look: made.id });
            return done;
          }}
          onClose={() => setNaming(false)}
        />
      )}
    </div>
  );
}
