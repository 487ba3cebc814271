import type { Combination } from '../loads/combination.ts';
import type { Superposition } from './superposition.ts';
import type { WorkingSet } from './working-set.ts';

/** No steady state after this many rounds counts as no brace holding (own rule). */
const ROUNDS = 10;
/** A pull below this is the rounding of the analysis [lb]. */
export const PULL_LB = 1e-6;
const CLOSES_IN = 1e-9;

/**
 * Which braces push in a combination when joints cannot pull: take out braces that pull, put back those whose ends
 * come closer, until nothing changes. Where taking out all that pull leaves nothing that holds the line, only the
 * hardest pulled goes: under a lift both braces of a bent may pull at first, and one of them still press alone.
 * @param all  every brace of the line, working
 * @param swayTimes  how often the sway of a free line counts (second order)
 * @returns the set of those that push; null when the free line becomes a mechanism or no steady state is found
 */
export function pushOnly(
  layout: Superposition,
  combination: Combination,
  all: readonly boolean[],
  free: boolean,
  swayTimes = 1,
): WorkingSet | null {
  let set = layout.with(all, free);
  for (let round = 0; set && round < ROUNDS; round++) {
    const { working } = set;
    const values = set.braceValues(combination, layout.swayOf(working, swayTimes));
    const push = values.subarray(0, working.length);
    const opening = values.subarray(working.length);
    const next = working.map((on, j) => (on ? push[j]! >= -PULL_LB : opening[j]! < -CLOSES_IN));
    if (next.every((on, j) => on === working[j])) return set;
    set = layout.with(next, free) ?? layout.with(withoutHardestPulled(working, push), free);
  }
  return null;
}

/** Braces pulled alike go together, so that a shelter and its mirror image are judged alike. */
function withoutHardestPulled(working: readonly boolean[], push: Float64Array): readonly boolean[] {
  const hardest = working.reduce((least, on, j) => (on ? Math.min(least, push[j]!) : least), 0);
  return working.map((on, j) => on && push[j]! > hardest * (1 - 1e-9));
}
