import { fillIn } from '../../data/words/fill-in.ts';
import { CAUTIONS, NOT_COVERED } from '../../data/words/sheet.ts';
import type { CheckRow, Evaluation } from '../../engine/evaluation.ts';
import type { Project } from '../../engine/project/model.ts';
import type { UnitSystem } from '../units/system.ts';
import { frontsOnSheet, type FrontOnSheet } from './alike-lines.ts';
import { checkTable, rankedChecks } from './check-table.ts';
import { wrapToFit } from './fit-text.ts';
import { complaints, headline, type Complaint } from './headline.ts';
import { jointRows, jointTable } from './joint-table.ts';
import { logNotes, logTable } from './log-table.ts';
import { BESIDE, NOTE, roomOn, type SheetPaper } from './page-format.ts';
import { assumed, heldSideways, titleBlock } from './page-texts.ts';
import { pieceNames } from './piece-names.ts';
import { postTable } from './post-table.ts';
import { fitTable, type TableWith } from './sheet-table.ts';
import { siteNotes, siteTable } from './site-table.ts';

/** The site's share of its row, the texts' share beside the stamp. */
const SITE_SHARE = 0.45;
const FOOT_SHARE = 0.74;
const MANY_LINES = 40;

/** Everything that could stand on the page, each part fitted to its width. How much of it does is decided later. */
export interface PageParts {
  readonly project: Project;
  readonly evaluation: Evaluation;
  readonly paper: SheetPaper;
  readonly room: { readonly width: number; readonly height: number };
  readonly verdict: string;
  readonly complaints: readonly Complaint[];
  readonly block: ReturnType<typeof titleBlock>;
  readonly fronts: readonly FrontOnSheet[];
  readonly sideWidths: readonly [number, number];
  readonly site: TableWith;
  readonly siteNotes: readonly string[];
  readonly posts: TableWith;
  readonly sideways: readonly string[];
  readonly notCovered: readonly string[];
  readonly logs: TableWith;
  readonly logNotes: readonly string[];
  readonly checks: TableWith;
  /** most wanted first */
  readonly ranked: readonly CheckRow[];
  readonly joints: TableWith;
  readonly footWidths: readonly [number, number];
  readonly assumed: readonly string[];
  readonly cautions: readonly string[];
  /** how many rows or lines each part would have at most, and the checks that come before all others */
  readonly most: Readonly<Record<'joints' | 'logs' | 'posts' | 'firstChecks', number>>;
}

export function pageParts(project: Project, evaluation: Evaluation, paper: SheetPaper, system: UnitSystem): PageParts {
  const names = pieceNames(project, evaluation);
  const room = roomOn(paper);
  const sideWidths = inTwo(room.width, SITE_SHARE);
  const footWidths = inTwo(room.width, FOOT_SHARE);
  const note = (text: string, width: number, most = MANY_LINES) => wrapToFit(text, width, NOTE.size, most);
  const ranked = rankedChecks(evaluation, names);
  const plainJoints = jointRows(project, evaluation, names, system);
  const plainLogs = logTable(project, evaluation, names, system);
  const plainPosts = postTable(evaluation, names, system);
  return {
    project,
    evaluation,
    paper,
    room,
    verdict: headline(evaluation.counts),
    complaints: complaints(evaluation, names, system),
    block: titleBlock(project),
    fronts: frontsOnSheet(evaluation.shelter, system),
    sideWidths,
    site: fitTable(siteTable(project, evaluation, system), sideWidths[0]),
    siteNotes: siteNotes(project),
    posts: fitTable(plainPosts, sideWidths[1]),
    sideways: note(heldSideways(project, names, system), sideWidths[1], 4),
    notCovered: note(fillIn(NOT_COVERED, { earthquake: project.site.seismic ? '' : 'earthquake; ' }), sideWidths[1]),
    logs: fitTable(plainLogs, room.width),
    logNotes: logNotes(project, evaluation),
    checks: fitTable(checkTable(evaluation, ranked.rows, names, system), room.width),
    ranked: ranked.rows,
    joints: fitTable(jointTable(plainJoints, system), room.width),
    footWidths,
    assumed: note(assumed(evaluation, names).join(' '), footWidths[0]),
    cautions: note(CAUTIONS, footWidths[0]),
    most: {
      joints: plainJoints.length,
      logs: plainLogs.rows.length,
      posts: plainPosts.rows.length,
      firstChecks: ranked.must,
    },
  };
}

const inTwo = (width: number, share: number): readonly [number, number] => {
  const first = (width - BESIDE) * share;
  return [first, width - BESIDE - first];
};
