import type { Amounts } from './sheet-plan.ts';

/** A part that would like to grow, by steps, up to an amount. */
export interface Wish {
  readonly part: keyof Amounts;
  readonly upTo: number;
  readonly step?: number;
}

/**
 * Gives out the room of the page: each wish of a round takes one step in turn, as long as everything still fits; a part
 * that no longer fits rests. Later rounds have what earlier ones left.
 */
export function growWhileItFits(
  least: Amounts,
  rounds: readonly (readonly Wish[])[],
  fits: (amounts: Amounts) => boolean,
): Amounts {
  let amounts = least;
  for (const round of rounds) {
    let wishes = round;
    while (wishes.length > 0) {
      wishes = wishes.filter(({ part, upTo, step = 1 }) => {
        const more = amounts[part] + step;
        const grown = { ...amounts, [part]: more };
        if (more > upTo || !fits(grown)) return false;
        amounts = grown;
        return true;
      });
    }
  }
  return amounts;
}
