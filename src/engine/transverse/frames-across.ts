import type { AnalysedLine } from '../analysed-line.ts';
import { footIndex } from '../frame/read-response.ts';
import { rowsAcross, type RowGeometry } from '../geometry/rows.ts';
import type { PostGeometry } from '../geometry/shelter.ts';
import type { Givens } from '../givens.ts';
import { message } from '../message.ts';
import { isFrame } from '../project/lateral.ts';
import type { Lateral } from '../project/model.ts';
import { pushesAcross } from './push-across.ts';
import { analyseRow, type FromLines, type RowAnswer } from './row-frame.ts';
import { sharesOfLines } from './row-loads.ts';
import { ruleOf, seatsOnPosts } from './seats-on-posts.ts';

/** What is known of the frames that hold the shelter across. */
export interface FramesAcross {
  readonly rows: readonly RowAnswer[];
  /** posts beside those of a frame on their line, which stand in none themselves */
  readonly loose: readonly PostGeometry[];
}

/**
 * Every row that is said to hold the shelter across, analysed under what its posts' lines bring. Each takes the push of every
 * line by length, half way to the next rows: no sheet shares it.
 */
export function framesAcrossOf(givens: Givens, lines: readonly AnalysedLine[]): FramesAcross {
  const named = givens.project.lateral.across.filter(isFrame);
  const rows = rowsAcross(givens.shelter).filter((row) => named.some((system) => holds(system, row)));
  if (rows.length === 0) return { rows: [], loose: [] };
  const inRows = new Set(rows.flatMap((row) => row.posts));
  const isShared = givens.project.lateral.across.some((system) => system.by !== null && !isFrame(system));
  const inFrames = [...new Set(rows.flatMap((row) => row.posts.map((p) => p.line)))];
  const loose = isShared ? [] : givens.shelter.posts.filter((p) => inFrames.includes(p.line) && !inRows.has(p));
  const unknown = lines.find((l) => !l.answer.ok);
  if (unknown) {
    const reason = message('acrossNotKnown', { line: unknown.members.line.label });
    return { rows: rows.map((row) => ({ ok: false, row, blocked: { status: 'notGiven', reason } })), loose };
  }
  const across = pushesAcross(givens, inFrames, {
    kind: givens.earthquake ? 'seismic' : 'notional',
    byLine: new Map(lines.map((l) => [l.members.line.id, l.inertiaLb])),
  });
  const shareOf = sharesOfLines(givens.shelter, rows);
  const from = fromLines(givens, lines);
  return { rows: rows.map((row) => analyseRow(givens, row, from, across, shareOf)), loose };
}

/** A system holds the rows that it names by a post or a line, all where it names none, so far as they are of its kind. */
function holds({ by, lines = [], posts = [] }: Lateral, row: RowGeometry): boolean {
  const isNamed =
    lines.length + posts.length === 0 || row.posts.some((p) => lines.includes(p.line) || posts.includes(p.id));
  const isOfKind =
    by === 'embeddedPosts'
      ? row.posts.some((p) => p.foot.fixity.across !== 'pinned')
      : row.ties.length + row.rafters.length > 0;
  return isNamed && isOfKind;
}

function fromLines({ project }: Givens, lines: readonly AnalysedLine[]): FromLines {
  const combinations = new Map(lines.flatMap((l) => l.combinations.map((c) => [c.id, c] as const)));
  const cases = new Map(lines.flatMap((l) => l.cases.map((c) => [c.id, c] as const)));
  const pressed = new Map(lines.flatMap(pressedPosts));
  const frames = lines.flatMap(({ answer }) => (answer.ok ? [answer.frame] : []));
  return {
    combinations: [...combinations.values()],
    cases: [...cases.values()],
    pressOn: ({ id }, combinationId) => {
      const byId = pressed.get(id);
      return byId?.get(combinationId) ?? byId?.get(ruleOf(combinationId)) ?? 0;
    },
    seatOn: seatsOnPosts(project, frames),
  };
}

/**
 * Greatest push on every foot by combination, and by rule: a line whose spans are laid out otherwise has no combination of that
 * name, then the hardest of the same rule stands for it (safe side).
 */
function pressedPosts({ answer }: AnalysedLine): readonly (readonly [string, ReadonlyMap<string, number>])[] {
  if (!answer.ok) return [];
  const { layout, mesh, responses } = answer.frame;
  const strength = responses.filter((r) => r.combination.purpose === 'strength');
  return mesh.posts.map((post) => {
    const down = footIndex(layout, post) + 1;
    const most = new Map<string, number>();
    for (const { combination, values } of strength) {
      for (const name of new Set([combination.id, ruleOf(combination.id)]))
        most.set(name, Math.max(most.get(name) ?? -Infinity, values[down]!));
    }
    return [post.memberId, most] as const;
  });
}
