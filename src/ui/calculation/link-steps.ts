import type { Put, Step } from '../../engine/note.ts';
import type { Quantity } from '../../engine/units.ts';

/** A step of one table with the steps that its numbers come from, each by its key; none where that cannot be told. */
export interface LinkedStep {
  readonly key: string;
  readonly step: Step;
  /** told by the check itself, not only behind one of its numbers */
  readonly isOwn: boolean;
  /** number by number */
  readonly from: readonly (string | undefined)[];
}

/**
 * The steps of one check, what a number comes from before it, none twice. A step that was told before does not bring what
 * stands behind it again.
 */
export function linkSteps(steps: readonly Step[], isTold: (key: string) => boolean): readonly LinkedStep[] {
  const linked: LinkedStep[] = [];
  const known = new Set<string>();
  const add = (step: Step, isOwn: boolean): string => {
    const key = JSON.stringify(step);
    if (known.has(key)) return key;
    const isAgain = isTold(key);
    const from = step.put.map((each) => {
      const behind = each.from?.map((one) => (isAgain ? JSON.stringify(one) : add(one, false)));
      return behind?.at(-1) ?? sourceOf(each, linked);
    });
    known.add(key);
    linked.push({ key, step, isOwn, from });
    return key;
  };
  for (const step of steps) add(step, true);
  return linked;
}

/**
 * The one step above that told this number under this symbol; of what a ratio is made of, which has no symbol of its own,
 * the one that nothing else was made from. Where two are alike, neither is named: a wrong step is worse than none.
 */
function sourceOf(each: Put, above: readonly LinkedStep[]): string | undefined {
  const alike = above.filter(({ step }) => isAmount(each, step.result));
  const isOfRatio = each.symbol === 'demand' || each.symbol === 'capacity';
  const found = isOfRatio
    ? alike.filter((self) => self.isOwn && each.unit !== '1' && isLast(self, above))
    : theSame(each, alike);
  return found.length === 1 ? found[0]!.key : undefined;
}

/** By symbol, `P` for `P(Im)` too; where several bear it, by its words. */
function theSame({ symbol, words }: Put, alike: readonly LinkedStep[]): readonly LinkedStep[] {
  const bySymbol = alike.filter(({ step }) => step.symbol === symbol);
  if (bySymbol.length === 0) return alike.filter(({ step }) => step.symbol.startsWith(`${symbol}(`));
  return bySymbol.length === 1 ? bySymbol : bySymbol.filter(({ step }) => step.words === words);
}

/** No step after it has this amount put in. */
const isLast = (self: LinkedStep, above: readonly LinkedStep[]): boolean =>
  above.slice(above.indexOf(self) + 1).every(({ step }) => step.put.every((each) => !isAmount(each, self.step.result)));

const isAmount = (a: Quantity, b: Quantity): boolean => a.value === b.value && a.unit === b.unit;
