/** The four words that say how a check ended, on screen and on the sheet. */
export const STATUS_WORDS = {
  pass: 'passes',
  fail: 'fails',
  notGiven: 'not given',
  outside: 'outside the method',
} as const;
