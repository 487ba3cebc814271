/**
 * Widths of the drawing's typeface (its condensed cut, semibold, as shipped with the program) in hundredths of the text
 * size, so that labels can be placed without asking a browser. Characters that are not named count as wide ones.
 */
const WIDTHS: readonly (readonly [width: number, characters: string])[] = [
  [21, ' '],
  [25, "'ij"],
  [28, 'l.,:;'],
  [33, '()ft'],
  [37, 'r-'],
  [43, 'I/"'],
  [47, 'szcL'],
  [51, 'Jgxvyeako'],
  [55, 'FThnu0123456789EZbdpq+=×S'],
  [60, 'YCPVXBR'],
  [65, 'AKDUGOQHN'],
  [75, 'Mw½'],
  [87, 'mW%'],
];
const WIDTH_OF = new Map(WIDTHS.flatMap(([width, characters]) => [...characters].map((c) => [c, width / 100])));
const UNNAMED = 0.87;

/** Room that a line of text takes, in the same unit as its size. */
export function textWidth(text: string, size: number): number {
  let width = 0;
  for (const character of text) width += WIDTH_OF.get(character) ?? UNNAMED;
  return width * size;
}

/** Height of a line of text from its highest to its lowest stroke. */
export const textHeight = (size: number): number => size * 1.05;
