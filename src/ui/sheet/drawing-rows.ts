import { SHEET_WORDS } from '../../data/words/sheet.ts';
import { cutToFit, wrapToFit } from './fit-text.ts';
import { BESIDE, CAPTION, NOTE } from './page-format.ts';
import type { PageParts } from './page-parts.ts';
import type { DrawingOnSheet, SheetPlan, SnowRow } from './sheet-plan.ts';

/** Up to two front views stand beside section and plan; more of them take a row of their own. */
export function drawingRows({ fronts, under, room }: PageParts): SheetPlan['drawings'] {
  type Cell = Pick<DrawingOnSheet, 'view' | 'lineId' | 'caption'> & { readonly words: string };
  const views = fronts
    .slice(0, 3)
    .map(({ lineId, words }): Cell => ({ view: 'front', lineId, caption: words, words: under.front(lineId) }));
  const across: Cell = { view: 'section', lineId: '', caption: 'Section', words: under.section };
  const plan: Cell = { view: 'plan', lineId: '', caption: 'Plan', words: SHEET_WORDS.betweenAxes };
  const row = (cells: readonly Cell[], shares: readonly number[]): readonly DrawingOnSheet[] => {
    const width = room.width - (cells.length - 1) * BESIDE;
    const whole = shares.reduce((a, b) => a + b, 0);
    return cells.map(({ view, lineId, caption, words }, i) => {
      const own = (width * shares[i]!) / whole;
      return {
        view,
        lineId,
        width: own,
        caption: cutToFit(caption, own, CAPTION.size, 'caption'),
        says: wrapToFit(words, own, NOTE.size, 2),
      };
    });
  };
  if (views.length > 2)
    return [
      row(
        views,
        views.map(() => 1),
      ),
      row([across, plan], [2, 3]),
    ];
  return [row([...views, across, plan], views.length > 1 ? [27, 27, 18, 28] : [42, 24, 34])];
}

/** Height of the names of a row's drawings and what stands under them. */
export const drawingCaption = (row: readonly DrawingOnSheet[]): number =>
  CAPTION.line + Math.max(...row.map(({ says }) => says.length)) * NOTE.line;

/** Height of a drawn case of snow: a roof and the arrows on it. */
const SNOW_HIGH = 80;

export function snowRow({ snow, sideWidths }: PageParts): SnowRow {
  const count = Math.max(2, snow.length);
  const width = (sideWidths[1] - (count - 1) * BESIDE) / count;
  return {
    cases: snow.map((each) => ({ ...each, caption: cutToFit(each.caption, width, NOTE.size) })),
    width,
    height: SNOW_HIGH,
  };
}

export const snowHeight = ({ cases, height }: SnowRow): readonly number[] =>
  cases.length === 0 ? [] : [CAPTION.line + NOTE.line + height];
