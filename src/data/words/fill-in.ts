/** A sentence with its blanks filled; numbers are shortened to three decimals for reading. */
export const fillIn = (sentence: string, values: Readonly<Record<string, string | number>>): string =>
  sentence.replace(/\{(\w+)\}/g, (blank, name: string) => {
    const value = values[name];
    if (value === undefined) return blank;
    return typeof value === 'number' ? String(Number(value.toFixed(3))) : value;
  });
