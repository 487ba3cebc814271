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

/** Calls when the address names another place, or another part of one. */
export const listenToAddress = (changed: () => void): (() => void) => {
  addEventListener('hashchange', changed);
  return () => removeEventListener('hashchange', changed);
};

/** A place may have parts: `#check-sheet/calculation` is at the check sheet. */
const placeInAddress = (): PlaceId => PLACES.find(({ id }) => location.hash.split('/')[0] === `#${id}`)?.id ?? 'frame';

export const usePlace = (): PlaceId => useSyncExternalStore(listenToAddress, placeInAddress);
