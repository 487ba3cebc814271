import { handCuts } from '../geometry/beams.ts';
import { depthOf, rafterAxisZ, runFromEave } from '../geometry/rafter-axis.ts';
import type { RowGeometry } from '../geometry/rows.ts';
import type { BeamGeometry, BraceGeometry, CutGeometry, PostGeometry, RafterGeometry } from '../geometry/shelter.ts';
import { ownPatches } from '../loads/own-on-rafters.ts';
import type { Givens } from '../givens.ts';
import { message, type Message } from '../message.ts';
import { radiansFromDegrees } from '../units.ts';

/** The rafter of a row whose braces run to it; null where they run to tie logs, or there are none. */
export const bracedRafter = ({ rafters }: RowGeometry): RafterGeometry | null => rafters[0] ?? null;

/**
 * Why a row whose braces run to a rafter is not computed as a frame; null where it is, or has no such braces. Computed is one
 * rafter over two posts, each under one beam, in the plane of both.
 */
export function whyRafterNotComputed({ project, shelter }: Givens, row: RowGeometry): Message | null {
  const rafter = bracedRafter(row);
  if (!rafter) return null;
  const words = { row: row.label, rafter: rafter.label };
  if (row.ties.length > 0) return message('rowOfTiesAndRafters', words);
  const isOverAll =
    row.posts.length === 2 &&
    rafter.supports.length === 2 &&
    row.posts.every((post) => rafter.supports.some((s) => s.line === post.line));
  if (row.rafters.length > 1 || shelter.planes.length > 1 || !isOverAll) return message('rafterNotOnRow', words);
  if (row.posts.some((post) => post.seats.length !== 1)) return message('rafterOverSplice', words);
  const beside = row.braces.find((b) =>
    row.posts.some((p) => Math.abs(p.xIn - rafter.xIn) > thicknessOf(b) / 2 + 1e-6),
  );
  if (beside) return message('rafterBesideRow', { ...words, brace: beside.label });
  const letIn = row.braces.find((b) => b.ends.top.kind !== 'coped');
  if (letIn) return message('braceLetIntoRafter', { ...words, brace: letIn.label });
  if (rafter.stick?.kind === 'typed') return message('bracedRafterTyped', words);
  if (ownPatches(shelter, rafter, project.ownLoads).length > 0) return message('ownOnBracedRafter', words);
  return handCuts(project, rafter.id).length > 0 ? message('bracedRafterCut', words) : null;
}

/** Least thickness of a brace along the lines [in]. */
function thicknessOf({ stick }: BraceGeometry): number {
  if (stick?.kind === 'round') return Math.min(...stick.profile.map((p) => p.diameterIn));
  return stick?.kind === 'sawn' ? Math.min(stick.breadthIn, stick.depthIn) : 0;
}

/** A rafter in the plane of its row, where y runs as x does on a line: a beam on a slope. Its seat cuts take of its underside. */
export function rafterAsBeam(row: RowGeometry, rafter: RafterGeometry): BeamGeometry {
  const cos = Math.cos(radiansFromDegrees(rafter.slopeDeg));
  const ends = [rafter.eaveYIn, rafter.eaveYIn - rafter.downY * rafter.runIn].toSorted((a, b) => a - b);
  const [fromXIn, toXIn] = [ends[0]!, ends[1]!];
  const measured =
    rafter.stick?.kind === 'round' ? rafter.stick.profile.map((p) => rafter.eaveYIn - rafter.downY * p.atIn * cos) : [];
  const places = [fromXIn, ...measured.filter((y) => y > fromXIn && y < toXIn), toXIn].toSorted((a, b) => a - b);
  return {
    id: rafter.id,
    line: row.id,
    label: rafter.label,
    fromXIn,
    toXIn,
    stick: rafter.stick,
    slope: { cos, eaveXIn: rafter.eaveYIn, downX: rafter.downY },
    stations: [...new Set(places)].map((xIn) => stationOf(rafter, cos, xIn)),
    cuts: rafter.supports.flatMap((s) => seatCut(rafter, cos, s)),
  };
}

function stationOf(rafter: RafterGeometry, cos: number, xIn: number): BeamGeometry['stations'][number] {
  const diameterIn = depthOf(rafter.stick, runFromEave(rafter, xIn) / cos);
  const axisZIn = rafterAxisZ(rafter, xIn)!;
  const halfIn = diameterIn / 2 / cos;
  return { xIn, diameterIn, axisZIn, topZIn: axisZIn + halfIn, undersideZIn: axisZIn - halfIn, shimIn: 0 };
}

/** As deep as it is square to the rafter, over its line alone: the rows of the rafter itself ask how deep it may be. */
function seatCut(
  { id, seatCutIn }: RafterGeometry,
  cos: number,
  { line, yIn }: RafterGeometry['supports'][number],
): readonly CutGeometry[] {
  if (!(seatCutIn > 0)) return [];
  const made = { kind: 'notch', madeBy: 'seat', angleDeg: 180 } as const;
  return [{ ...made, id: `seat-${id}-${line}`, atXIn: yIn, lengthIn: 1 / 8, depthIn: seatCutIn * cos }];
}

/**
 * A post that stands on up to the axis of the rafter over it: what lies between counts as a stiff length of it, so that the
 * push between rafter and post turns all of it.
 */
export const upToRafter = (post: PostGeometry, rafter: RafterGeometry): PostGeometry => ({
  ...post,
  axisZIn: rafterAxisZ(rafter, post.yIn)!,
});
