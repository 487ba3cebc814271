import { fillIn } from '../../data/words/fill-in.ts';
import { RAISING_WORDS } from '../../data/words/raising-stages.ts';
import { NOT_COVERED } from '../../data/words/sheet.ts';
import type { CheckRow, Evaluation } from '../../engine/evaluation.ts';
import type { Project } from '../../engine/project/model.ts';
import { namesOf } from '../cord/places.ts';
import { loadSentences } from '../loads/load-sentences.ts';
import type { UnitSystem } from '../units/system.ts';
import { frontsOnSheet, type FrontOnSheet } from './alike-lines.ts';
import { checkTable, rankedChecks } from './check-table.ts';
import { complaints, headline, type Complaint } from './headline.ts';
import { jointRows, jointTable } from './joint-table.ts';
import { logNotes, logTable } from './log-table.ts';
import { BESIDE, roomOn, type SheetPaper, type Type } from './page-format.ts';
import { assumed, heldSideways, titleBlock, underFront, underSection } from './page-texts.ts';
import { pieceNames, type PieceNames } from './piece-names.ts';
import { postTable } from './post-table.ts';
import { fitTable, type TableWith } from './sheet-table.ts';
import type { SnowOnSheet } from './sheet-plan.ts';
import { siteTable } from './site-table.ts';
import { unevenSnowCases } from './snow-cases.ts';

/** The site's share of its row, the texts' share beside the stamp. */
const SITE_SHARE = 0.45;
const FOOT_SHARE = 0.74;

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
  /** what stands under the drawings */
  readonly under: { readonly front: (lineId: string) => string; readonly section: string };
  readonly sideWidths: readonly [number, number];
  readonly site: TableWith;
  readonly snow: readonly SnowOnSheet[];
  readonly posts: TableWith;
  /** what holds it sideways, and what is not covered */
  readonly sideways: string;
  readonly notCovered: string;
  readonly logs: TableWith;
  readonly logNotes: readonly string[];
  readonly checks: TableWith;
  /** most wanted first */
  readonly ranked: readonly CheckRow[];
  readonly joints: TableWith;
  readonly footWidths: readonly [number, number];
  readonly assumed: readonly string[];
  /** how many rows or lines each part would have at most, and the checks that come before all others */
  readonly most: Readonly<Record<'site' | 'joints' | 'logs' | 'posts' | 'firstChecks', number>>;
}

export function pageParts(
  project: Project,
  evaluation: Evaluation,
  paper: SheetPaper,
  system: UnitSystem,
  tableType: Type,
): PageParts {
  const names = pieceNames(project, evaluation, system);
  const room = roomOn(paper);
  const sideWidths = inTwo(room.width, SITE_SHARE);
  const footWidths = inTwo(room.width, FOOT_SHARE);
  const ranked = rankedChecks(evaluation, names);
  const plainJoints = jointRows(project, evaluation, names, system);
  const plainSite = siteTable(project, evaluation, system);
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
    under: {
      front: (lineId) => underFront(project, evaluation.shelter, lineId, names, system),
      section: underSection(project, names, system),
    },
    sideWidths,
    site: fitTable(plainSite, sideWidths[0], tableType),
    snow: snowOnSheet(project, evaluation, names, system),
    posts: fitTable(plainPosts, sideWidths[1], tableType),
    sideways: `${heldSideways(project, names, system)} ${RAISING_WORDS.temporary}`,
    notCovered: fillIn(NOT_COVERED, { earthquake: project.site.seismic ? '' : 'earthquake; ' }),
    logs: fitTable(plainLogs, room.width, tableType),
    logNotes: logNotes(project, evaluation, names),
    checks: fitTable(checkTable(evaluation, ranked.rows, names, system), room.width, tableType),
    ranked: ranked.rows,
    joints: fitTable(jointTable(plainJoints, system), room.width, tableType),
    footWidths,
    assumed: assumed(evaluation, names),
    most: {
      site: plainSite.rows.length,
      joints: plainJoints.length,
      logs: plainLogs.rows.length,
      posts: plainPosts.rows.length,
      firstChecks: ranked.must,
    },
  };
}

/** Cases of uneven snow with their words. */
function snowOnSheet(
  project: Project,
  evaluation: Evaluation,
  names: PieceNames,
  system: UnitSystem,
): readonly SnowOnSheet[] {
  const told = { shelter: evaluation.shelter, names: namesOf(evaluation), system };
  return unevenSnowCases(project).map(({ name, picture }) => ({
    picture,
    caption: name,
    title: names.sayOf(picture.words),
    description: loadSentences(picture, told).join(' '),
  }));
}

const inTwo = (width: number, share: number): readonly [number, number] => {
  const first = (width - BESIDE) * share;
  return [first, width - BESIDE - first];
};
