import { useSyncExternalStore } from 'react';

/** Narrower than the paper: the sheet is then read as one column. The style sheet asks the same. */
const query = (): MediaQueryList | null => ('matchMedia' in window ? window.matchMedia('(width < 54rem)') : null);

const listen = (changed: () => void): (() => void) => {
  const media = query();
  media?.addEventListener('change', changed);
  return () => media?.removeEventListener('change', changed);
};

export const useNarrowScreen = (): boolean => useSyncExternalStore(listen, () => query()?.matches ?? false);
