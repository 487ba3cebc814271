import type { LineGeometry, Shelter, Stick } from '../geometry/shelter.ts';
import { meanDiameter, nominalDepth } from '../geometry/sticks.ts';
import type { Message } from '../message.ts';
import type { Note } from '../note.ts';
import { harshestForceCoefficient, openFramePressure } from './site/open-frame.ts';
import type { SitePressures } from './site/site-pressures.ts';

/** The way the wind looks at the shelter: along the lines at its end, across them at its long side. */
export type SeenFrom = 'end' | 'side';

/**
 * Level wind on a part of the frame, strength level, on its projected area; none without wind.
 * @param solidity  of the frame as the wind sees it, see `soliditySeen`
 * @param diameterIn  of a round part; null for one with flat sides
 * @returns p [psf]
 * @source ASCE7 29.4, 27.1.5 (7-16)
 */
export function windOnSolid(
  { figures, gustFactor }: SitePressures,
  solidity: number,
  diameterIn: number | null,
  note?: Note,
): number {
  const velocityPressurePsf = figures.velocityPressure.value ?? 0;
  if (velocityPressurePsf <= 0) return 0;
  const { coefficient } = harshestForceCoefficient(
    diameterIn === null ? { kind: 'flat' } : { kind: 'round', diameterFt: diameterIn / 12, velocityPressurePsf },
    solidity,
  );
  return openFramePressure({ velocityPressurePsf, gustFactor, coefficient }, note);
}

/** Mean diameter of a round stick; null for any other, whose sides are flat [in]. */
export const roundDiameter = (stick: Stick | null): number | null =>
  stick?.kind === 'round' ? meanDiameter(stick) : null;

/** Width of an upright stick as the wind sees it; a typed section has none [in]. */
export function widthSeen(stick: Stick | null, from: SeenFrom): number {
  if (!stick || stick.kind === 'typed') return 0;
  if (stick.kind === 'round') return meanDiameter(stick);
  return from === 'end' ? stick.breadthIn : stick.depthIn;
}

/**
 * Solid over outline of the frame that the wind meets: the end of the shelter (what stands behind something alike is not
 * counted twice), or the most solid of its lines from the long side. The outline ends at the highest ground (safe side).
 * @returns 0 to 1
 * @source ASCE7 29.4, Table 29.4-2 (ratio of solid to gross area)
 */
export function soliditySeen(shelter: Shelter, from: SeenFrom): number {
  const groundZIn = Math.max(shelter.lowestGradeZIn, ...shelter.posts.map((p) => p.gradeZIn));
  if (from === 'end') return endSolidity(shelter, groundZIn);
  const lines = shelter.lines.filter((line) => line.kind === 'frame');
  return Math.max(0, ...lines.map((line) => lineSolidity(shelter, line, groundZIn)));
}

/** Why the table of open frames does not reach: a frame more solid than its last row; null where it does. */
export function solidityBeyondTable(shelter: Shelter): Message | null {
  const solidity = Math.max(soliditySeen(shelter, 'end'), soliditySeen(shelter, 'side'));
  return harshestForceCoefficient({ kind: 'flat' }, solidity).beyond;
}

const heightOfPost = (post: Shelter['posts'][number], topZIn: number): number =>
  Math.max(0, topZIn - Math.max(post.footZIn, post.gradeZIn));

/** One rafter and purlin edge of each slope, the widest post of each line, everything that runs across. */
function endSolidity(shelter: Shelter, groundZIn: number): number {
  const sum = (areas: readonly number[]): number => areas.reduce((a, b) => a + b, 0);
  const outline = sum(shelter.planes.map((p) => p.runIn * ((p.highZIn + p.lowZIn) / 2 - groundZIn)));
  const roof = shelter.planes.map((p) => {
    const rafter = shelter.rafters.find((r) => r.plane === p.id);
    const purlin = shelter.purlins.find((r) => r.plane === p.id);
    const slopeLengthIn = p.runIn / Math.cos((p.slopeDeg * Math.PI) / 180);
    return slopeLengthIn * (nominalDepth(rafter?.stick ?? null) + nominalDepth(purlin?.stick ?? null));
  });
  const posts = shelter.lines.map((line) =>
    Math.max(
      0,
      ...shelter.posts
        .filter((p) => p.line === line.id)
        .map((p) => widthSeen(p.stick, 'end') * heightOfPost(p, p.axisZIn)),
    ),
  );
  const ties = shelter.ties.map((t) => Math.abs(t.toYIn - t.fromYIn) * widthSeen(t.stick, 'side'));
  const across = shelter.braces.filter((b) => b.plane === 'across');
  return ratio(
    sum([...roof, ...posts, ...ties, ...across.map((b) => b.lengthIn * widthSeen(b.stick, 'side'))]),
    outline,
  );
}

/** Beams, posts and braces of one line over its length and the height of its bearing. */
function lineSolidity(shelter: Shelter, line: LineGeometry, groundZIn: number): number {
  const posts = shelter.posts.filter((p) => p.line === line.id);
  const braces = shelter.braces.filter((b) => b.plane === 'along' && posts.some((p) => p.id === b.postId));
  const solid = [
    ...shelter.beams.filter((b) => b.line === line.id).map((b) => (b.toXIn - b.fromXIn) * widthSeen(b.stick, 'side')),
    ...posts.map((p) => heightOfPost(p, p.seatZIn) * widthSeen(p.stick, 'side')),
    ...braces.map((b) => b.lengthIn * widthSeen(b.stick, 'side')),
  ].reduce((a, b) => a + b, 0);
  return ratio(solid, (line.toXIn - line.fromXIn) * (line.bearingZIn - groundZIn));
}

const ratio = (solid: number, outline: number): number => (outline > 0 ? Math.min(1, solid / outline) : 1);
