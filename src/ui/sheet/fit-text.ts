import { lineWidth, type Cut } from './type-width.ts';

/** The text, or as much of it as fits with an ellipsis. */
export function cutToFit(text: string, width: number, size: number, cut: Cut = 'narrow'): string {
  if (lineWidth(text, size, cut) <= width) return text;
  const characters = [...text];
  let [fits, tooMany] = [0, characters.length];
  while (tooMany - fits > 1) {
    const middle = (fits + tooMany) >> 1;
    if (lineWidth(`${characters.slice(0, middle).join('')}…`, size, cut) <= width) fits = middle;
    else tooMany = middle;
  }
  return `${characters.slice(0, fits).join('').trimEnd()}…`;
}

/**
 * The text in lines that fit; a word too long for a line is broken. What does not fit into the greatest number of lines is
 * cut off with an ellipsis.
 */
export function wrapToFit(
  text: string,
  width: number,
  size: number,
  most: number,
  cut: Cut = 'narrow',
): readonly string[] {
  const lines: string[] = [];
  let rest = text.trim().replace(/\s+/g, ' ');
  while (rest !== '' && lines.length < most) {
    if (lines.length === most - 1) {
      lines.push(cutToFit(rest, width, size, cut));
      break;
    }
    const line = firstLine(rest, width, size, cut);
    lines.push(line);
    rest = rest.slice(line.length).trimStart();
  }
  return lines;
}

function firstLine(text: string, width: number, size: number, cut: Cut): string {
  if (lineWidth(text, size, cut) <= width) return text;
  let line = '';
  for (const word of text.split(' ')) {
    const longer = line === '' ? word : `${line} ${word}`;
    if (lineWidth(longer, size, cut) > width) break;
    line = longer;
  }
  return line === '' ? brokenWord(text, width, size, cut) : line;
}

/** As many characters as fit, at least one. */
function brokenWord(text: string, width: number, size: number, cut: Cut): string {
  let line = '';
  for (const character of text) {
    if (line !== '' && lineWidth(line + character, size, cut) > width) break;
    line += character;
  }
  return line;
}
