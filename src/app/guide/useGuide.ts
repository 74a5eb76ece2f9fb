import { useCallback, useState } from 'react';
import { readDevice, writeDevice } from '../parts/device.ts';
import { useSession } from '../session/session.ts';

const NAME = 'first-steps';

/** Whether the first steps are shown: on the first visit until they are over or skipped, and whenever they are asked for. */
export function useGuide(): { readonly shown: boolean; readonly begin: () => void; readonly end: () => void } {
  const { firstVisit } = useSession();
  const [shown, setShown] = useState(() => firstVisit && readDevice(NAME) === null);
  const begin = useCallback(() => setShown(true), []);
  const end = useCallback(() => {
    // Where nothing can be kept they come again with the next visit, which is a first one too.
    writeDevice(NAME, 'over');
    setShown(false);
  }, []);
  return { shown, begin, end };
}
