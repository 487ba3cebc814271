/** Halvings of the search: a log of 60 in. comes out to a millionth of an inch. */
const HALVINGS = 26;
/** Left over the flat and the cuts, so that there is a section at all [in]. */
export const LEAST_LEFT_IN = 0.1;
/** Thicker than this no log is asked for [in]. */
const THICKEST_IN = 60;

/**
 * The least diameter at which the worst of all responses is at most 1. Another response may be worst at that diameter:
 * then it is asked too.
 * @param takenIn  depth of flat and cuts, held while the log grows [in]
 * @param ratioAt  asked over allowed at a diameter; falls as the diameter grows
 * @returns [in]; Infinity where no log in reach passes
 */
export function leastAt<R extends object>(
  takenIn: number,
  responses: readonly R[],
  ratioAt: (diameterIn: number) => (r: R) => number,
): number {
  const asked = new Set<R>();
  let least = takenIn + LEAST_LEFT_IN;
  while (least < THICKEST_IN) {
    const worst = worstOf(responses, ratioAt(least));
    if (asked.has(worst)) return least;
    asked.add(worst);
    least = justPassing(least, (diameterIn) => ratioAt(diameterIn)(worst));
  }
  return Infinity;
}

function worstOf<R extends object>(responses: readonly R[], ratio: (r: R) => number): R {
  let worst = responses[0]!;
  let most = -Infinity;
  for (const r of responses) {
    const here = ratio(r);
    if (here > most) [worst, most] = [r, here];
  }
  return worst;
}

/** The smallest diameter from `low` up at which a ratio that falls with it is at most 1. */
function justPassing(low: number, ratio: (diameterIn: number) => number): number {
  if (ratio(low) <= 1) return low;
  if (!(ratio(THICKEST_IN) <= 1)) return Infinity;
  let [thin, thick] = [low, THICKEST_IN];
  for (let i = 0; i < HALVINGS; i++) {
    const d = (thin + thick) / 2;
    if (ratio(d) <= 1) thick = d;
    else thin = d;
  }
  return thick;
}
