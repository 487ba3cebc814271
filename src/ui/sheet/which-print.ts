import { useSyncExternalStore } from 'react';
import { listenToAddress } from '../places/place.ts';

/**
 * What can be printed at the check sheet, by the words that choose it and the title of its file. The address carries
 * which, behind the place.
 */
export const PRINTS = [
  { id: 'one-page', words: 'The one page', title: 'check sheet' },
  { id: 'calculation', words: 'The calculation', title: 'calculation' },
  { id: 'before-you-start', words: 'Before you start', title: 'before you start' },
] as const;
export type PrintId = (typeof PRINTS)[number]['id'];

export const addressOf = (id: PrintId): string => (id === 'one-page' ? '#check-sheet' : `#check-sheet/${id}`);

const printInAddress = (): PrintId => PRINTS.find(({ id }) => location.hash === addressOf(id))?.id ?? 'one-page';

export const usePrint = (): PrintId => useSyncExternalStore(listenToAddress, printInAddress);
