import { lazy, Suspense, useCallback, useMemo, useState, type ReactElement } from 'react';
import type { Action } from './actions.ts';
import { useActions, type PageDoors } from './useActions.ts';
import { useKeys } from './useKeys.ts';

/** Loaded when it is first asked for. */
const Palette = lazy(async () => ({ default: (await import('./Palette.tsx')).Palette }));
const KeysSheet = lazy(async () => ({ default: (await import('./KeysSheet.tsx')).KeysSheet }));

interface Dialogs {
  readonly actions: readonly Action[];
  readonly asked: 'palette' | 'keys' | null;
  readonly onMore: () => void;
  readonly onClose: () => void;
}

/** The list of actions, its keys at work, and whether one of its two dialogs is open. */
export function useActionDialogs(page: Omit<PageDoors, 'onPalette' | 'onKeys'>): Dialogs {
  const [asked, setAsked] = useState<Dialogs['asked']>(null);
  const { files, screen, onScreen, onPrint, onGuide } = page;
  const onMore = useCallback(() => setAsked('palette'), []);
  const onClose = useCallback(() => setAsked(null), []);
  const doors = useMemo(
    () => ({ files, screen, onScreen, onPrint, onGuide, onPalette: onMore, onKeys: () => setAsked('keys') }),
    [files, screen, onScreen, onPrint, onGuide, onMore],
  );
  const actions = useActions(doors);
  useKeys(actions);
  return { actions, asked, onMore, onClose };
}

/** Whichever of the two is asked for. */
export function ActionDialogs({ actions, asked, onClose }: Dialogs): ReactElement | null {
  if (asked === null) return null;
  const Asked = asked === 'palette' ? Palette : KeysSheet;
  return (
    <Suspense fallback={null}>
      <Asked actions={actions} onClose={onClose} />
    </Suspense>
  );
}
