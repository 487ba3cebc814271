import { useSyncExternalStore } from 'react';

/** Drawings on a narrow screen: a phone with some air beside them [px]. */
export const PHONE_WIDTH = 358;
export const PHONE_HEIGHT = 320;

/** Narrower than the paper: the sheet is then read as one column. The style sheet asks the same. */
const query = (): MediaQueryList | null => ('matchMedia' in window ? window.matchMedia('(width < 54rem)') : null);

const listen = (changed: () => void): (() => void) => {
  const media = query();
  media?.addEventListener('change', changed);
  return () => media?.removeEventListener('change', changed);
};

export const useNarrowScreen = (): boolean => useSyncExternalStore(listen, () => query()?.matches ?? false);
