import type { Combination } from '../loads/combination.ts';
import type { LineMesh } from './line-mesh.ts';
import type { Superposition } from './superposition.ts';

/** No steady state after this many rounds counts as no brace holding (own rule). */
const ROUNDS = 10;
const PULL_LB = 1e-6;
const CLOSES_IN = 1e-9;

/**
 * Which braces push in a combination when joints cannot pull: take out braces that pull, put back those whose ends
 * come closer, until nothing changes. Where taking out all that pull leaves nothing that holds the line, only the
 * hardest pulled goes: under a lift both braces of a bent may pull at first, and one of them still press alone.
 * @returns the braces that push; null when the free line becomes a mechanism or no steady state is found
 */
export function pushOnly(
  mesh: LineMesh,
  layout: Superposition,
  combination: Combination,
  free: boolean,
): readonly boolean[] | null {
  let working: readonly boolean[] = mesh.braces.map(() => true);
  for (let round = 0; round < ROUNDS; round++) {
    const forces = layout.braceForces(combination, working, free);
    if (!forces) return null;
    const next = working.map((on, j) => (on ? forces.push[j]! >= -PULL_LB : forces.opening[j]! < -CLOSES_IN));
    if (next.every((on, j) => on === working[j])) return working;
    working = layout.braceForces(combination, next, free) ? next : withoutHardestPulled(working, forces.push);
  }
  return null;
}

/** Braces pulled alike go together, so that a shelter and its mirror image are judged alike. */
function withoutHardestPulled(working: readonly boolean[], push: Float64Array): readonly boolean[] {
  const hardest = working.reduce((least, on, j) => (on ? Math.min(least, push[j]!) : least), 0);
  return working.map((on, j) => on && push[j]! > hardest * (1 - 1e-9));
}
