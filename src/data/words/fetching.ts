/** What is said while something is on its way, or when it did not come. Apart, for these are needed before all others. */
export const FETCHING_MESSAGES = {
  fieldWaits: '“{got}” will be read in a moment: a part of this program is still on its way.',
  programNotFetched:
    'A part of this program could not be fetched ({detail}). Look whether you are off-line, then try again.',
  exampleNotFetched:
    'The example could not be fetched ({detail}). Look whether you are off-line, then choose it again.',
  shelfHasNot: 'This project is no longer on this device. Open it from a file you saved.',
} as const;
