import type { FastenerKind } from '../fasteners/kind.ts';

/** Words of what a person writes down of the hardware of a joint. */
export const FASTENERS_WORDS: Readonly<Record<FastenerKind, string>> = {
  lag: 'lag screws',
  bolt: 'bolts',
  screw: 'wood screws',
  nail: 'nails',
  spike: 'spikes',
  driftPin: 'drift pins',
};

/** Which way the fasteners of a row count. */
export const ACTS_WORDS = {
  both: 'across the shank and along it',
  lateral: 'across the shank only',
  withdrawal: 'along the shank only',
} as const;

/** The steel that fasteners go through. */
export const PLATE_WORDS = {
  strap1: 'through a strap on one side',
  strap2: 'through straps on both sides',
  plate1: 'through a side plate on one side',
  plate2: 'through side plates on both sides',
} as const;

/** How the nails of a row go in. */
export const SLANT_WORDS = {
  square: 'driven square',
  slanted: 'driven slantwise',
} as const;

export const DRIVEN_WORDS = { wet: 'green wood', dry: 'dry wood' } as const;

/** Directions in which a joint is asked. */
export const PART_WORDS = {
  pull: 'pulled apart',
  push: 'pressed together',
  along: 'pushed along',
  across: 'pushed across',
} as const;

/** Under the four directions of a joint: what asks it in several of them at once, and the moment of a fixed foot. */
export const AT_ONCE_WORDS = { together: 'all directions together', turning: 'turned' } as const;

/** A direction of a joint in which no row is: nothing pushes it, or nothing of the method reaches it. */
export const NO_ROW_WORDS = { notAsked: 'not asked', notComputed: 'not computed' } as const;

/** What the person should know before the first fastener is written down. */
export const HARDWARE_ASIDES = {
  wall: 'Fasteners into the wall are computed where the wood that they end in is given with the ledger; without it only a rating counts.',
  strongest: 'Unlike rows share no load as they are strong: only the strongest of them counts.',
  slanted:
    'Slantwise: each nail starts a third of its length up the side of the upper piece and goes in at 30 degrees to it.',
  shoulder: 'A shoulder is written down for this joint, but none is cut here: it counts nothing.',
  foot: 'The base itself, and what holds it to its concrete, count by their rating.',
} as const;

/** Links of the uplift chain, from the roof to the soil. */
export const CHAIN_WORDS = {
  sheet: 'sheet screws',
  purlin: 'purlin on rafter',
  rafter: 'rafter on its line',
  strip: 'strip on beam',
  beam: 'beam on post',
  post: 'the post itself',
  foot: 'post on pier',
  pier: 'pier in the soil',
} as const;

export const CHAIN_ASIDES = {
  none: 'The chain is not known while the shelter cannot be placed.',
  eachItsOwn:
    'Each link is asked in the load that is hardest for it, those of the roof by the gusts on their own small area: what lifts one is not what lifts the one above it less the weight between. The weight that comes on at each link counts 0.6 of its lightest.',
} as const;
