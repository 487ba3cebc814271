export type Side = 'left' | 'right';

/** Rows of cells under one another, each column as wide as its widest cell; no blanks at the end of a line. */
export function columns(rows: readonly (readonly string[])[], sides: readonly Side[] = []): readonly string[] {
  const widths = rows.reduce<readonly number[]>(
    (widest, row) =>
      Array.from({ length: Math.max(widest.length, row.length) }, (_, i) =>
        Math.max(widest[i] ?? 0, row[i]?.length ?? 0),
      ),
    [],
  );
  const cell = (text: string, i: number): string =>
    sides[i] === 'right' ? text.padStart(widths[i] ?? 0) : text.padEnd(widths[i] ?? 0);
  return rows.map((row) => row.map(cell).join('  ').trimEnd());
}

/** A sentence broken between words into lines of at most `width` characters, each begun with the same blanks. */
export function wrapped(sentence: string, indent: number, width = 110): readonly string[] {
  const margin = ' '.repeat(indent);
  return sentence.split(' ').reduce<readonly string[]>((lines, word) => {
    const last = lines.at(-1);
    return last === undefined || last.length + 1 + word.length > width
      ? [...lines, margin + word]
      : [...lines.slice(0, -1), `${last} ${word}`];
  }, []);
}
