import { useSyncExternalStore } from 'react';

/** Where a person can be. The address carries it, so that back and reload keep it. */
export const PLACES = [
  { id: 'frame', words: 'Frame' },
  { id: 'try-outs', words: 'Try-outs' },
  { id: 'woodlot', words: 'Woodlot' },
  { id: 'cut-sheets', words: 'Cut sheets' },
  { id: 'check-sheet', words: 'Check sheet' },
] as const;
export type PlaceId = (typeof PLACES)[number]['id'];

const listen = (changed: () => void): (() => void) => {
  addEventListener('hashchange', changed);
  return () => removeEventListener('hashchange', changed);
};

const placeInAddress = (): PlaceId => PLACES.find(({ id }) => location.hash === `#${id}`)?.id ?? 'frame';

export const usePlace = (): PlaceId => useSyncExternalStore(listen, placeInAddress);
