import type { FastenerKind } from '../fasteners/kind.ts';

/** Fasteners as they are called in a sentence. */
export const FASTENER_WORDS: Readonly<Record<FastenerKind, string>> = {
  lag: 'lag screw',
  screw: 'wood screw',
  nail: 'nail',
  spike: 'spike',
  bolt: 'bolt',
  driftPin: 'drift pin',
};

/** Why a fastener is not taken against pull, or does not fit where it is to go. */
export const FASTENER_PULL_MESSAGES = {
  pulledLagNotListed:
    'No thread and tip are listed for a lag screw {diameterIn} in thick and {lengthIn} in long. Choose one of the listed diameters ({listed}), at least {leastIn} in long.',
  pulledFromEndGrain:
    'A {fastener} holds nothing against pull along the grain. Drive it square to the grain, or use a lag screw, a bolt through both sticks or a strap.',
  pulledWoodTooLight:
    'What wood holds against pull is printed from a specific gravity of {least} on; this one has {gravity}. Use a bolt through both sticks or a strap.',
  toedOnlyNails:
    'A {fastener} driven slantwise has no factor of its own in the standard. Drive it square to the grain, or use nails.',
  toedNeedsSawn:
    'Slanted nails are computed through the side of a sawn stick, without a plate. Drive them square, or fasten this joint otherwise.',
  toedTooLong:
    'A slanted nail {lengthIn} in long starts a third of its length, {startIn} in, up the upper piece, which is {thicknessIn} in there. Take a shorter one.',
  headNotKnown:
    'How hard the head of this {fastener} goes through the stick under it is printed for flat round heads only. Put a washer under the head, or choose one with such a head.',
  washerNeedsFlat:
    'A washer or head {washerIn} in across lies on the wood whole only on a flat square to the fastener, {leastIn} in deep along it; here it is {flatIn} in. Cut it deeper, or choose a smaller washer.',
  washerOverEdge:
    'A washer or head {washerIn} in across reaches over the edge of the wood under it. Choose a smaller washer, or set the fastener nearer to the middle.',
  shankMissesStick:
    'The fastener passes beside the {stick}: it has no wood there. Set it nearer to the middle of the stick.',
  shankEndsEarly:
    'The fastener is {lengthIn} in long and ends before the second stick, which begins {beginsIn} in from its head. Choose a longer one.',
  shanksMeet:
    'Through plates on both sides a fastener {lengthIn} in long meets the one from the other side: at most {mostIn} in have room. Choose a shorter one, or a bolt.',
  shankComesOut:
    'The fastener is {lengthIn} in long, and from its head to the far side of the wood that holds its point there are {roomIn} in: its tip would come out. Choose a shorter one.',
} as const;
