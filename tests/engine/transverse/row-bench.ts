import { analysedLine, type AnalysedLine } from '../../../src/engine/analysed-line.ts';
import { analyseLine, type LineFrame, type LineResponse } from '../../../src/engine/frame/line-frame.ts';
import type { LineMembers } from '../../../src/engine/frame/line-mesh.ts';
import { rowsAcross } from '../../../src/engine/geometry/rows.ts';
import { placeShelter } from '../../../src/engine/geometry/place-shelter.ts';
import { givensOf, type Prepared } from '../../../src/engine/givens.ts';
import { emptyLineCase, type LineCase } from '../../../src/engine/loads/cases.ts';
import type { Project } from '../../../src/engine/project/model.ts';
import { framesAcrossOf, type FramesAcross } from '../../../src/engine/transverse/frames-across.ts';
import type { RowFrame } from '../../../src/engine/transverse/row-frame.ts';
import { turnedRow } from '../../../src/engine/transverse/turned-row.ts';
import { WOOD } from '../../support/plain-shed.ts';
import { combination, lineLoadsOf } from '../frame/hand-line.ts';

/** The members of the first row of a sound project, turned into its plane. */
function rowMembers(project: Project): LineMembers {
  const { shelter, faults } = placeShelter(project);
  if (faults.length > 0) throw new Error(JSON.stringify(faults));
  return turnedRow(project, rowsAcross(shelter)[0]!);
}

/** Level pushes at the tops of the posts of a row, or so far below, in the order of the posts [lb]. */
const pushedAtTops = ({ posts }: LineMembers, pushesLb: readonly number[], belowIn: number): LineCase => ({
  ...emptyLineCase('push'),
  atPosts: posts.map((p, i) => ({ postId: p.id, zIn: p.axisZIn - belowIn, downLb: 0, alongLb: pushesLb[i] ?? 0 })),
});

/** A row under pushes drawn by hand, with braces both ways. */
export function pushedRow(
  project: Project,
  pushesLb: readonly number[],
  pullGiven = true,
  belowIn = 0,
): { readonly members: LineMembers; readonly frame: LineFrame; readonly response: LineResponse } {
  const members = rowMembers(project);
  const sway = combination({ push: 1 }, { swaysAlong: true });
  const answer = analyseLine(members, lineLoadsOf([pushedAtTops(members, pushesLb, belowIn)]), [sway], () => WOOD.E, {
    pullGiven,
    holdsItself: true,
  });
  if (!answer.ok) throw new Error(answer.reason.code);
  return { members, frame: answer.frame, response: answer.frame.responses[0]! };
}

interface AcrossBench {
  readonly givens: Prepared;
  readonly lines: readonly AnalysedLine[];
  readonly frames: FramesAcross;
}

/** Frames across of a sound project, as the evaluation makes them. */
export function acrossBench(project: Project): AcrossBench {
  const givens = givensOf(project);
  if ('faults' in givens) throw new Error(JSON.stringify(givens.faults));
  const lines = givens.shelter.lines.filter((l) => l.kind === 'frame').map((line) => analysedLine(givens, line));
  return { givens, lines, frames: framesAcrossOf(givens, lines) };
}

/** The analysed rows. */
export const framesOf = ({ frames }: AcrossBench): readonly RowFrame[] =>
  frames.rows.flatMap((answer) => (answer.ok ? [answer.frame] : []));
