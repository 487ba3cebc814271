/** A name at the start of a sentence, a sentence inside another. */
export const sentenceCase = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1);
export const lowerCase = (words: string): string => words.charAt(0).toLowerCase() + words.slice(1);
