/** Names of what the pictures of loads show beside the cases that the loads name themselves. */
export const LOAD_PICTURE_MESSAGES = {
  caseDead: 'Dead load, all that is always there',
  caseAcross: 'Push across the lines on the whole shelter',
} as const;
