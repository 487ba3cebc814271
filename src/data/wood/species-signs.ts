/** By what somebody told the species of a log: a fixed list, kept apart from its words because the file format needs it alone. */
export const SPECIES_SIGNS = [
  'leavesOrNeedles',
  'conesOrFruit',
  'bark',
  'wood',
  'forester',
  'laboratory',
  'otherwise',
] as const;
export type SpeciesSign = (typeof SPECIES_SIGNS)[number];
