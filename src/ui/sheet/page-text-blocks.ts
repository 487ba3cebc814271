import { CAUTIONS, SHEET_WORDS, TEXT_HEADS } from '../../data/words/sheet.ts';
import { wrapToFit } from './fit-text.ts';
import { NOTE } from './page-format.ts';
import type { PageParts } from './page-parts.ts';
import type { TextBlock } from './sheet-plan.ts';
import { lineWidth } from './type-width.ts';

const MANY_LINES = 60;

export const textHeight = ({ lines }: TextBlock): number => lines.length * NOTE.line;

/** Texts of the page: those on what it stands by are under the posts, unless snow is drawn there. */
export function textsOf(
  parts: PageParts,
  assumed: number,
): { readonly side: readonly TextBlock[]; readonly foot: readonly TextBlock[] } {
  const { snow, sideWidths, footWidths } = parts;
  const isAtFoot = snow.length > 0;
  const width = isAtFoot ? footWidths[0] : sideWidths[1];
  const others = [
    runIn(TEXT_HEADS.sideways, parts.sideways, width),
    runIn(TEXT_HEADS.notCovered, parts.notCovered, width),
  ];
  const own = [
    runIn(TEXT_HEADS.assumed, firstFew(parts.assumed, assumed), footWidths[0]),
    runIn(TEXT_HEADS.cautions, CAUTIONS, footWidths[0]),
  ];
  return isAtFoot ? { side: [], foot: [...others, ...own] } : { side: others, foot: own };
}

/** A text behind its heading. */
function runIn(heading: string, text: string, width: number): TextBlock {
  const caption = `${heading}.`;
  const indent = lineWidth(`${caption} `, NOTE.size, 'caption');
  const [first = '', ...rest] = wrapToFit(text, width - indent, NOTE.size, 2);
  const left = text.slice(first.length).trim();
  return {
    caption,
    indent,
    lines: rest.length === 0 ? [first] : [first, ...wrapToFit(left, width, NOTE.size, MANY_LINES)],
  };
}

/** The first assumptions whole; how many found no room is said. */
function firstFew(sentences: readonly string[], count: number): string {
  const left = sentences.length - count;
  const more = left > 0 ? [`${left} more ${SHEET_WORDS.inCalculation}`] : [];
  return [...sentences.slice(0, count), ...more].join(' ');
}
