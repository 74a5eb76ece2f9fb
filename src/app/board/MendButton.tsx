import { lazy, Suspense, useState, type ReactElement } from 'react';
import type { LookId, Setup, Verdict } from '../../engine/index.ts';
import { looksShown, type AppState } from '../../store/index.ts';
import { useSession } from '../session/session.ts';

/** Loaded when it is first asked for. */
const MendDialog = lazy(async () => ({ default: (await import('../suggest/MendDialog.tsx')).MendDialog }));

interface Props {
  readonly state: AppState;
  readonly verdicts: ReadonlyMap<LookId, Verdict | null>;
}

/** Where some look says stop: a search for what would mend them all. */
export function MendButton({ state, verdicts }: Props): ReactElement | null {
  const { analyst } = useSession();
  const [asked, setAsked] = useState<readonly [Setup, ...Setup[]] | null>(null);
  const looks = looksShown(state);
  const ask = (): void => {
    const setups = looks.flatMap(({ id }) => {
      const result = analyst.inLook(state, id);
      return result.ok ? [result.value.setup] : [];
    });
    // Where it is checked to another call, it is the other one that would have to be mended.
    const [first, ...others] = setups.filter(({ checkOut }) => checkOut?.action.kind !== 'check-to');
    if (first !== undefined) setAsked([first, ...others]);
  };
  if (!looks.some(({ id }) => verdicts.get(id) === 'stop')) return null;
  return (
    <>
      <button type="button" className="small-button" onClick={ask}>
        Mend it…<span className="unseen"> in every look</span>
      </button>
      {asked !== null && (
        <Suspense fallback={null}>
          <MendDialog state={state} setups={asked} onClose={() => setAsked(null)} />
        </Suspense>
      )}
    </>
  );
}
