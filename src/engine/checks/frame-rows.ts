import { judge } from '../check.ts';
import type { CheckRow } from '../evaluation.ts';
import type { BraceModel } from '../frame/line-frame.ts';
import { quantity } from '../units.ts';
import { plainRow } from './site-of-check.ts';

/** Brace models as rows and sheets name them. */
export const MODEL_WORDS: Record<BraceModel, string> = {
  bothWays: 'braces push and pull',
  pushOnly: 'braces only push',
  idle: 'braces idle',
  noBraces: 'no braces',
};

/** Largest unbalanced force over applied force that is rounding and nothing else. */
const BALANCED = 1e-9;

/** A frame whose reactions answer its loads. */
export const balanceRow = (ruleId: 'frame.balance' | 'sway.transverse', frameId: string, residual: number): CheckRow =>
  plainRow(ruleId, frameId, { kind: 'whole', name: '' }, judge(quantity(residual, '1'), quantity(BALANCED, '1')));
