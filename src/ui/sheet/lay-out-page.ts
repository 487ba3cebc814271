import { SHEET_WORDS } from '../../data/words/sheet.ts';
import { furtherChecks } from './check-table.ts';
import { cutToFit, wrapToFit } from './fit-text.ts';
import { BESIDE, BODY, CAPTION, CELL_AIR, GAP, NOTE, ROW_AIR, TITLE } from './page-format.ts';
import { pageFoot } from './page-foot.ts';
import type { PageParts } from './page-parts.ts';
import type { Amounts, DrawingOnSheet, HeadOnSheet, SheetPlan, TextBlock } from './sheet-plan.ts';
import { tableHeight, type FittedTable } from './sheet-table.ts';
import { lineWidth } from './type-width.ts';

const BLOCK_SHARE = 0.43;
/** Room for the word that is asked in the title block, and for a complaint's number. */
export const ASKED_WIDTH = 66;
export const NUMBER_WIDTH = 11;
/** A seal is up to two inches across; on all but the fullest page the texts beside it leave more. */
const LEAST_STAMP = 84;

/** The page with so much of each part, and how high it comes out. */
export function layOutPage(parts: PageParts, amounts: Amounts): SheetPlan {
  const { evaluation, room } = parts;
  const head = headOf(parts, amounts.complaints);
  const first = (n: number) => (_: unknown, index: number) => index < n;
  const chosen = new Set(parts.ranked.slice(0, amounts.checks).map((row) => row.key));
  const site = parts.site(() => true, parts.siteNotes);
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
  const sideways: TextBlock = { caption: 'What holds it sideways', lines: parts.sideways };
  const notCovered: TextBlock = { caption: 'Not covered', lines: parts.notCovered };
  const assumed: TextBlock = { caption: 'Assumed', lines: shortened(parts.assumed, amounts.assumed, parts) };
  const cautions: TextBlock = { caption: 'Cautions', lines: parts.cautions };
  const blocks = [
    headHeight(head),
    drawings.length * (CAPTION.line + amounts.drawing),
    Math.max(tableHeight(site), tableHeight(posts) + GAP + textHeight(sideways) + GAP + textHeight(notCovered)),
    tableHeight(logs),
    tableHeight(checksWithNote),
    tableHeight(joints),
    Math.max(textHeight(assumed) + GAP + textHeight(cautions), LEAST_STAMP),
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
    sideways,
    notCovered,
    logs,
    checks: checksWithNote,
    joints,
    footWidths: parts.footWidths,
    assumed,
    cautions,
    footer: pageFoot(parts.project, evaluation, room.width, { at: 1, of: 1 }),
    height: blocks.reduce((sum, height) => sum + height, 0) + (blocks.length - 1) * GAP,
  };
}

const printedChecks = (table: FittedTable): readonly string[] =>
  table.rows.flatMap((row) => (row.checkKey === null ? [] : [row.checkKey]));

const textHeight = ({ lines }: TextBlock): number => CAPTION.line + lines.length * NOTE.line;

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
    complaints: shown.map((c) => wrapToFit(c.words, width - NUMBER_WIDTH, BODY.size, 2)),
    more: left > 0 ? `and ${left} more` : null,
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
function drawingRows({ fronts, room }: PageParts): SheetPlan['drawings'] {
  const views = fronts.slice(0, 3).map((f) => ({ view: 'front' as const, lineId: f.lineId, words: f.words }));
  const section = { view: 'section' as const, lineId: '', words: 'Section' };
  const plan = { view: 'plan' as const, lineId: '', words: 'Plan' };
  const row = (
    cells: readonly { readonly view: DrawingOnSheet['view']; readonly lineId: string; readonly words: string }[],
    shares: readonly number[],
  ): readonly DrawingOnSheet[] => {
    const width = room.width - (cells.length - 1) * BESIDE;
    const whole = shares.reduce((a, b) => a + b, 0);
    return cells.map(({ view, lineId, words }, i) => {
      const own = (width * shares[i]!) / whole;
      return { view, lineId, width: own, caption: cutToFit(words, own, CAPTION.size, 'caption') };
    });
  };
  if (views.length > 2)
    return [
      row(
        views,
        views.map(() => 1),
      ),
      row([section, plan], [2, 3]),
    ];
  return [row([...views, section, plan], views.length > 1 ? [27, 27, 18, 28] : [42, 24, 34])];
}

/** Assumptions run on; what finds no room is said to be on screen. */
function shortened(lines: readonly string[], count: number, { footWidths }: PageParts): readonly string[] {
  if (lines.length <= count) return lines;
  const last = lines[count - 1] ?? '';
  const more = ' … more on screen.';
  const kept = cutToFit(last, footWidths[0] - lineWidth(more, NOTE.size), NOTE.size).replace(/\s+\S*…$/, '');
  return [...lines.slice(0, count - 1), `${kept.trimEnd()}${more}`];
}
