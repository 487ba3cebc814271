import { judge } from '../check.ts';
import type { CheckRow } from '../evaluation.ts';
import type { BraceModel, LineResponse } from '../frame/line-frame.ts';
import { quantity } from '../units.ts';
import { plainRow } from './site-of-check.ts';

/** Brace models as rows and sheets name them. */
export const MODEL_WORDS: Record<BraceModel, string> = {
  bothWays: 'braces push and pull',
  pushOnly: 'braces only push',
  idle: 'braces idle',
  noBraces: 'no braces',
};

const PUSHED_ACROSS = { pressed: 'pressed by the frame across', lifted: 'lifted by the frame across' } as const;

/** How the braces of a response work. */
export const modelWords = ({ braceModel, letGo }: Pick<LineResponse, 'braceModel' | 'letGo'>): string =>
  letGo === undefined ? MODEL_WORDS[braceModel] : `${MODEL_WORDS[braceModel]}, ${letGo} of them let go`;

/** Which of several ways of one combination a response is. */
export const scenarioOf = (r: LineResponse): string =>
  [modelWords(r), ...(r.across ? [PUSHED_ACROSS[r.across.way]] : [])].join(', ');

/** Largest unbalanced force over applied force that is rounding and nothing else. */
const BALANCED = 1e-9;

/** A frame whose reactions answer its loads. */
export const balanceRow = (ruleId: 'frame.balance' | 'sway.transverse', frameId: string, residual: number): CheckRow =>
  plainRow(ruleId, frameId, { kind: 'whole', name: '' }, judge(quantity(residual, '1'), quantity(BALANCED, '1')));
