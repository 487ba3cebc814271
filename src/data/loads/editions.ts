/** The edition of the load standard that is computed here. */
export const COMPUTED_EDITION = 'ASCE 7-16';

/** Editions of the international codes and the load standard that each of them refers to (chapter 35, from memory). */
export const EDITION_BY_CODE_YEAR: Readonly<Record<string, string>> = {
  2006: 'ASCE 7-05',
  2009: 'ASCE 7-05',
  2012: 'ASCE 7-10',
  2015: 'ASCE 7-10',
  2018: 'ASCE 7-16',
  2021: 'ASCE 7-16',
  2024: 'ASCE 7-22',
};
