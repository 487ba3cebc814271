import { SHEET_WORDS } from '../../data/words/sheet.ts';
import { furtherChecks } from './check-table.ts';
import { drawingCaption, drawingRows, snowHeight, snowRow } from './drawing-rows.ts';
import { wrapToFit } from './fit-text.ts';
import { BESIDE, BODY, CELL_AIR, GAP, NOTE, ROW_AIR, TITLE } from './page-format.ts';
import { pageFoot } from './page-foot.ts';
import type { PageParts } from './page-parts.ts';
import { textHeight, textsOf } from './page-text-blocks.ts';
import type { Amounts, HeadOnSheet, SheetPlan } from './sheet-plan.ts';
import { tableHeight, type FittedTable } from './sheet-table.ts';

const BLOCK_SHARE = 0.455;
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
