import { useState, type ReactElement } from 'react';
import type { Playbook } from '../../document/index.ts';
import type { Edit, Library, Mending, Setup } from '../../engine/index.ts';
import { fill, makeLexicon, type Lexicon } from '../../report/index.ts';
import type { AppState } from '../../store/index.ts';
import { Dialog } from '../parts/Dialog.tsx';
import { BALL_WORDS } from '../session/words.ts';
import { sentenceOf } from './sentences.ts';
import { useApply } from './useApply.ts';
import { useMending } from './useMending.ts';

interface Props {
  readonly state: AppState;
  /** The call in each look in which it is run as itself; at least one. */
  readonly setups: readonly [Setup, ...Setup[]];
  readonly onClose: () => void;
}

/** What would take the stops away in every look at once: searched for, shown as sentences, done as one step. */
export function MendDialog({ state, setups, onClose }: Props): ReactElement {
  // What was asked stays asked, whatever changes behind the dialog.
  const [asked] = useState<{ readonly setups: Props['setups']; readonly library: Library }>(() => ({
    setups,
    library: { coverages: state.playbook.coverages },
  }));
  // Words for the call as it is called, where there is such a look.
  const base = asked.setups.find(({ checkOut }) => checkOut === null) ?? asked.setups[0];
  const search = useMending(asked.setups, asked.library);
  return (
    <Dialog title="What would mend this call in every look" onClose={onClose} wide>
      <div role="status">
        {search.kind === 'searching' && <p>Looking through {looksText(asked.setups.length)}…</p>}
        {search.kind === 'failed' && <p>The search has failed: {search.reason}</p>}
        {search.kind === 'done' && <p>{headline(search.mending)}</p>}
      </div>
      {search.kind === 'done' && search.mending.kind === 'found' && (
        <Sets state={state} setup={base} sets={search.mending.sets} onClose={onClose} />
      )}
      {search.kind === 'done' && search.mending.kind === 'none' && (
        <Proof state={state} setup={base} mending={search.mending} />
      )}
      <div className="button-row">
        <button type="button" onClick={onClose}>
          {search.kind === 'searching' ? 'Give up' : 'Close'}
        </button>
      </div>
    </Dialog>
  );
}

function headline(mending: Mending): string {
  switch (mending.kind) {
    case 'found': {
      const [first] = mending.sets;
      if (first === undefined || first.length === 0) return 'There is no stop in any of these looks.';
      const number = first.length === 1 ? 'One change is' : `${first.length} changes together are`;
      const choice =
        mending.sets.length === 1
          ? ''
          : ` There are ${mending.complete ? '' : 'at least '}${mending.sets.length} ways.`;
      return `${number} enough: no stop is left, and no stop or check comes in.${choice}`;
    }
    case 'none':
      return mending.within === 0
        ? 'No change that mends one of these findings is known.'
        : `Not with ${mending.within === 1 ? 'one change' : `up to ${mending.within} changes`}. Whichever is made, one of these stands:`;
    case 'out-of-budget':
      return 'The search has taken too long, and has not found anything yet.';
  }
}

interface SetsProps {
  readonly state: AppState;
  readonly setup: Setup;
  readonly sets: readonly (readonly Edit[])[];
  readonly onClose: () => void;
}

function Sets({ state, setup, sets, onClose }: SetsProps): ReactElement {
  const { playbook, board } = state;
  const apply = useApply(state);
  const say = (edit: Edit) => sentenceOf(edit, wordsFor(edit, setup, playbook), playbook);
  const doIt = (edits: readonly Edit[]): void => {
    const label = edits.map((edit) => say(edit).text).join('; ');
    if (apply({ edits, label, look: board.look, front: setup.front.id })) onClose();
  };
  return (
    <>
      {/* A long list can be scrolled by keyboard only if it can be reached. */}
      <ol className="mend-sets" tabIndex={0} aria-label="Ways to mend the call">
        {sets.map((edits, index) => (
          <li key={index}>
            <div className="mend-set">
              <ul className="plain-rows">
                {edits.map((edit, at) => {
                  const { text, reach } = say(edit);
                  return (
                    <li key={at}>
                      {text}
                      <span className="hint">{reach}</span>
                    </li>
                  );
                })}
              </ul>
              {edits.length > 0 && (
                <button type="button" disabled={state.readOnly} onClick={() => doIt(edits)}>
                  Do it<span className="unseen">: way {index + 1}</span>
                </button>
              )}
            </div>
          </li>
        ))}
      </ol>
    </>
  );
}

function looksText(count: number): string {
  return count === 1 ? '1 look' : `${count} looks`;
}

/** Words for an edit made in any look. A table may have let the two change places there, so it brings its own pressure. */
function wordsFor(edit: Edit, setup: Setup, playbook: Playbook): Lexicon {
  const own = 'pressure' in edit ? playbook.pressures.find(({ id }) => id === edit.pressure) : undefined;
  const named = own === undefined || !('which' in edit) ? setup : { ...setup, [edit.which]: own };
  return makeLexicon(named, playbook.words);
}

interface ProofProps {
  readonly state: AppState;
  readonly setup: Setup;
  readonly mending: Extract<Mending, { readonly kind: 'none' }>;
}

/** Findings of which one stands whatever is changed. */
function Proof({ state, setup, mending }: ProofProps): ReactElement {
  return (
    <ul className="plain-rows">
      {mending.proof.map(({ look, spot, finding }, index) => {
        const there = state.playbook.looks.find(({ id }) => id === look.id) ?? setup.look;
        const lexicon = makeLexicon({ ...setup, look: there }, state.playbook.words);
        return (
          <li key={index}>
            <strong>{look.name}</strong>, {BALL_WORDS[spot]}: {fill(finding.because, lexicon).text}
          </li>
        );
      })}
    </ul>
  );
}
