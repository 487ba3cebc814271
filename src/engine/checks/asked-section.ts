import type { RuleId } from '../../data/rules.ts';
import { leastAt, LEAST_LEFT_IN } from './least-at.ts';

/** What one rule asks of a section, over what it allows. */
export interface Term<R> {
  readonly ruleId: RuleId;
  readonly ratio: (r: R) => number;
}

/** How thick a place must be for a rule of size alone, as that of the depth of a cut; Infinity where nothing helps [in]. */
export interface OfSize {
  readonly ruleId: RuleId;
  readonly leastIn: number;
}

/** All that is asked of the wood at one place of a log, whatever its thickness: forces, cuts and design values held. */
export interface AskedSection {
  /** diameter of the wood that stands [in] */
  readonly hasIn: number;
  /** the least diameter that would do; Infinity where no log in reach passes [in] */
  readonly leastIn: () => number;
  /** the rule that refuses it however thick, as a cut on the wrong side; null where none does */
  readonly refusedBy: RuleId | null;
  /** the hardest of all else that is asked there of another diameter */
  readonly hardestAt: (diameterIn: number) => { readonly ruleId: RuleId; readonly ratio: number };
}

interface Asked<R> {
  readonly hasIn: number;
  /** depth of flat and cuts, held while the log grows or thins [in] */
  readonly takenIn: number;
  readonly ofSize: readonly OfSize[];
  readonly responses: readonly R[];
  /** every rule that the section is asked by, at a diameter; each falls as the diameter grows */
  readonly termsAt: (diameterIn: number) => readonly Term<R>[];
}

/** A section with the rules that it is asked by; null where nothing is asked. @source own rule: forces held */
export function askedSection<R extends object>(asked: Asked<R>): AskedSection | null {
  const { hasIn, takenIn, ofSize, responses, termsAt } = asked;
  if (responses.length === 0) return null;
  return {
    hasIn,
    refusedBy: ofSize.find(({ leastIn }) => leastIn === Infinity)?.ruleId ?? null,
    leastIn: () => {
      const bySize = Math.max(0, ...ofSize.map(({ leastIn }) => leastIn));
      const byForce = leastAt(takenIn, responses, (diameterIn) => {
        const terms = termsAt(diameterIn);
        return (r) => terms.reduce((most, { ratio }) => Math.max(most, ratio(r)), 0);
      });
      return Math.max(bySize, byForce);
    },
    hardestAt: (diameterIn) => {
      const left = takenIn + LEAST_LEFT_IN;
      const terms = termsAt(Math.max(diameterIn, left));
      const parts = [
        ...ofSize
          .filter(({ leastIn }) => leastIn < Infinity)
          .map(({ ruleId, leastIn }) => ({ ruleId, ratio: leastIn / diameterIn })),
        ...terms.map(({ ruleId, ratio }) => ({
          ruleId,
          ratio: diameterIn < left ? Infinity : responses.reduce((most, r) => Math.max(most, ratio(r)), 0),
        })),
      ];
      return parts.reduce((a, b) => (Number.isNaN(b.ratio) || b.ratio > a.ratio ? b : a));
    },
  };
}
