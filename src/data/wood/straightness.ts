/**
 * How far a log may stray from the straight line between the middles of its ends.
 * @source OWN: a beam up to 1 in. in 10 ft is taken as it is, a more crooked one is said to be so; past the limit of piles
 *   (D25: 1 in. in 100, at most 3 in., from memory) it is outside the method
 */
export const STRAY = { saidFrom: 1 / 120, limit: 1 / 100, limitIn: 3 } as const;

/** A log that nobody has looked at counts as crooked to the side by as much as is taken without a word (own rule). */
export const UNSEEN_STRAY = STRAY.saidFrom;
