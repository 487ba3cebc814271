import { CAUTIONS, SHEET_WORDS, TEXT_HEADS } from '../../data/words/sheet.ts';
import { furtherChecks } from './check-table.ts';
import { cutToFit, wrapToFit } from './fit-text.ts';
import { BESIDE, BODY, CAPTION, CELL_AIR, GAP, NOTE, ROW_AIR, TITLE } from './page-format.ts';
import { pageFoot } from './page-foot.ts';
import type { PageParts } from './page-parts.ts';
import type { Amounts, DrawingOnSheet, HeadOnSheet, SheetPlan, SnowRow, TextBlock } from './sheet-plan.ts';
import { tableHeight, type FittedTable } from './sheet-table.ts';
import { lineWidth } from './type-width.ts';

const BLOCK_SHARE = 0.455;
/** Room for the word that is asked in the title block, and for a complaint's number. */
export const ASKED_WIDTH = 66;
export const NUMBER_WIDTH = 11;
const MANY_LINES = 60;
/** A seal is up to two inches across; on all but the fullest page the texts beside it leave more. */
const LEAST_STAMP = 84;

/** The page with so much of each part, and how high it comes out. */
export function layOutPage(parts: PageParts, amounts: Amounts): SheetPlan {
  const { evaluation, room } = parts;
  const head = headOf(parts, amounts.complaints);
  const first = (n: number) => (_: unknown, index: number) => index < n;
  const chosen = new Set(parts.ranked.slice(0, amounts.checks).map((row) => row.key));
  const site = parts.site(first(amounts.site));
  const posts = parts.posts(first(amounts.posts));
  const joints = parts.joints(first(amounts.joints));
  const logs = parts.logs(first(amounts.logs), parts.logNotes);
  const checks = parts.checks(({ checkKey }) => checkKey !== undefined && chosen.has(checkKey));
  const printed = new Set([
    ...parts.complaints.slice(0, amounts.complaints).flatMap((c) => c.keys),
    ...[checks, joints, posts].flatMap(printedChecks),
  ]);
  const checksWithNote: FittedTable = {
    ...checks,
    notes: wrapToFit(furtherChecks(evaluation, printed), room.width, NOTE.size, 2),
  };
  const drawings = drawingRows(parts);
  const snow = snowRow(parts);
  const { side: sideTexts, foot: footTexts } = textsOf(parts, amounts.assumed);
  const blocks = [
    headHeight(head),
    drawings.reduce((sum, row) => sum + drawingCaption(row) + amounts.drawing, 0),
    Math.max(tableHeight(site), stackHeight([tableHeight(posts), ...snowHeight(snow), ...sideTexts.map(textHeight)])),
    tableHeight(logs),
    tableHeight(checksWithNote),
    tableHeight(joints),
    Math.max(stackHeight(footTexts.map(textHeight)), LEAST_STAMP),
    NOTE.line + 2,
  ];
  return {
    paper: parts.paper,
    head,
    drawingHeight: amounts.drawing,
    drawings,
    sideWidths: parts.sideWidths,
    site,
    posts,
    snow,
    sideTexts,
    logs,
    checks: checksWithNote,
    joints,
    footWidths: parts.footWidths,
    footTexts,
    footer: pageFoot(parts.project, evaluation, room.width, { at: 1, of: 1 }),
    height: stackHeight(blocks),
  };
}

const printedChecks = (table: FittedTable): readonly string[] =>
  table.rows.flatMap((row) => (row.checkKey === null ? [] : [row.checkKey]));

const stackHeight = (heights: readonly number[]): number =>
  heights.reduce((sum, height) => sum + height, 0) + Math.max(0, heights.length - 1) * GAP;

const textHeight = ({ lines }: TextBlock): number => lines.length * NOTE.line;

function headOf(parts: PageParts, count: number): HeadOnSheet {
  const blockWidth = (parts.room.width - BESIDE) * BLOCK_SHARE;
  const width = parts.room.width - BESIDE - blockWidth;
  const large = (text: string) => wrapToFit(text, width, TITLE.size, 2, 'title');
  const shown = parts.complaints.slice(0, count);
  const left = parts.complaints.slice(count).reduce((sum, c) => sum + c.keys.length, 0);
  return {
    width,
    title: large(`${SHEET_WORDS.title}: ${parts.project.title.name}`),
    verdict: large(parts.verdict),
    complaints: shown.map((c) => wrapToFit(c.words, width - NUMBER_WIDTH, BODY.size, 3)),
    more: left > 0 ? `and ${left} more in the calculation` : null,
    blockWidth,
    prepared: wrapToFit(SHEET_WORDS.prepared, blockWidth, NOTE.size, 3),
    block: parts.block.map(([asked, answer]) => ({
      asked,
      answer: wrapToFit(answer, blockWidth - ASKED_WIDTH - CELL_AIR, BODY.size, 2),
    })),
  };
}

function headHeight({ title, verdict, complaints, more, block, prepared }: HeadOnSheet): number {
  const said = complaints.reduce((sum, lines) => sum + lines.length, more === null ? 0 : 1);
  const left = (title.length + verdict.length) * TITLE.line + said * BODY.line;
  const right = block.reduce((sum, { answer }) => sum + Math.max(1, answer.length) * BODY.line + ROW_AIR, 0);
  return Math.max(left, right + prepared.length * NOTE.line);
}

/** Up to two front views stand beside section and plan; more of them take a row of their own. */
function drawingRows({ fronts, under, room }: PageParts): SheetPlan['drawings'] {
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

const drawingCaption = (row: readonly DrawingOnSheet[]): number =>
  CAPTION.line + Math.max(...row.map(({ says }) => says.length)) * NOTE.line;

/** Height of a drawn case of snow: a roof and the arrows on it. */
const SNOW_HIGH = 80;

function snowRow({ snow, sideWidths }: PageParts): SnowRow {
  const count = Math.max(2, snow.length);
  const width = (sideWidths[1] - (count - 1) * BESIDE) / count;
  return {
    cases: snow.map((each) => ({ ...each, caption: cutToFit(each.caption, width, NOTE.size) })),
    width,
    height: SNOW_HIGH,
  };
}

const snowHeight = ({ cases, height }: SnowRow): readonly number[] =>
  cases.length === 0 ? [] : [CAPTION.line + NOTE.line + height];

/** Texts of the page: those on what it stands by are under the posts, unless snow is drawn there. */
function textsOf(
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
