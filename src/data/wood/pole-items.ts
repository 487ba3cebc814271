/** What an inspection asks, as the file stores it when it is ticked. */
export const POLE_ITEMS = [
  'soundTree',
  'evenTaper',
  'straightness',
  'knots',
  'knotsInAFoot',
  'twist',
  'rings',
  'splits',
  'decay',
  'conditioning',
] as const;
export type PoleItem = (typeof POLE_ITEMS)[number];

/** Knots: widest of a log and sum in one foot, by girth where they sit. */
export const POLE_KNOTS = { widestIn: 4, widestGirthShare: 1 / 6, sumGirthShare: 1 / 3 } as const;
/** Grain may turn half round in this length. */
export const POLE_TWIST = { turn: 1 / 2, inIn: 240 } as const;
export const POLE_RINGS_PER_IN = 6;
