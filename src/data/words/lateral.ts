/** What may hold a shelter sideways. */
export const SYSTEM_WORDS = {
  kneeBraces: 'knee braces',
  embeddedPosts: 'posts set in the ground',
  transverseFrame: 'a frame across the lines',
  building: 'the existing building',
  ratedWalls: 'walls with a rating',
  none: 'nothing',
} as const;
