import type { SpeciesSign } from '../wood/species-signs.ts';

/** Behind `species told by`, on the screen and on the sheet. */
export const SIGN_WORDS: Readonly<Record<SpeciesSign, string>> = {
  leavesOrNeedles: 'leaves or needles',
  conesOrFruit: 'cones or fruit',
  bark: 'bark',
  wood: 'the wood itself',
  forester: 'a forester’s word',
  laboratory: 'a laboratory',
  otherwise: 'otherwise',
};
