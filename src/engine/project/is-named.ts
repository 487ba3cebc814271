const TWO_LETTERS = /\p{L}.*\p{L}/u;

/** Somebody who answers for a value, an inspection or a wall is named: two letters are the least that names anybody (own rule). */
export const isNamed = (who: string): boolean => TWO_LETTERS.test(who);
