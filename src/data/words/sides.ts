/** Sides of the shelter as somebody sees them who stands before its front: x runs to the right, y to the front. */
export const SIDE_WORDS = {
  yPlus: 'the front',
  yMinus: 'the back',
  xMinus: 'the left end',
  xPlus: 'the right end',
} as const;
