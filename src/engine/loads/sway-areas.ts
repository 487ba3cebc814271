import type { LineGeometry, PostGeometry, Shelter, Stick } from '../geometry/shelter.ts';
import { nominalDepth } from '../geometry/sticks.ts';
import { widthSeen } from './solid-wind.ts';

/** End of the line's thickest beam, by its mean diameter [ft2]. */
export function beamEndArea(shelter: Shelter, line: LineGeometry): number {
  const ends = shelter.beams
    .filter((b) => b.line === line.id)
    .map(({ stick }) => (stick?.kind === 'round' ? (Math.PI * widthSeen(stick, 'side') ** 2) / 4 : faceOf(stick)));
  return Math.max(0, ...ends) / 144;
}

const faceOf = (stick: Stick | null): number => (stick?.kind === 'sawn' ? stick.breadthIn * stick.depthIn : 0);

/** Broad sides of what runs across from a post of the line: half of each tie, the whole of each brace [ft2]. */
export function runningAcrossArea(shelter: Shelter, posts: readonly PostGeometry[]): number {
  const stand = (postId: string): boolean => posts.some((p) => p.id === postId);
  const ties = shelter.ties.map(
    (t) => [t.fromPostId, t.toPostId].filter(stand).length * Math.abs(t.toYIn - t.fromYIn) * widthSeen(t.stick, 'side'),
  );
  const braces = shelter.braces
    .filter((b) => b.plane === 'across' && stand(b.postId))
    .map((b) => 2 * b.lengthIn * widthSeen(b.stick, 'side'));
  return [...ties, ...braces].reduce((sum, area) => sum + area, 0) / 2 / 144;
}

/** Broad sides of all rafters and the edge of purlins, shared by the lines as the rafters' own weight is. */
export function roofEdgeArea(shelter: Shelter, line: LineGeometry): number {
  return shelter.rafters.reduce((sum, r) => {
    const purlin = shelter.purlins.find((p) => p.plane === r.plane);
    const isFirst = r.id === shelter.rafters.find((other) => other.plane === r.plane)!.id;
    return sum + broadSide(r, line.id) + (isFirst ? faceOnLine(r, line.id, nominalDepth(purlin?.stick ?? null)) : 0);
  }, 0);
}

/** Share of a rafter among the broad sides of all that rest on a line; equal shares where none has a depth. */
export function shareOfEdge(shelter: Shelter, line: LineGeometry, rafter: Shelter['rafters'][number]): number {
  const onLine = shelter.rafters.filter((r) => r.supports.some((s) => s.line === line.id));
  const whole = onLine.reduce((sum, r) => sum + broadSide(r, line.id), 0);
  return whole > 0 ? broadSide(rafter, line.id) / whole : 1 / onLine.length;
}

const broadSide = (rafter: Shelter['rafters'][number], lineId: string): number =>
  faceOnLine(rafter, lineId, nominalDepth(rafter.stick));

/** A face as long as a rafter, of which a line has its share [ft2]. */
function faceOnLine(rafter: Shelter['rafters'][number], lineId: string, depthIn: number): number {
  const slopeLengthIn = rafter.runIn / Math.cos((rafter.slopeDeg * Math.PI) / 180);
  return (shareOfLine(rafter, lineId) * slopeLengthIn * depthIn) / 144;
}

/** Share of the roof that lies nearer to this line than to its neighbours. */
export function shareOfRoof(shelter: Shelter, line: LineGeometry): number {
  const area = (of: (rafter: Shelter['rafters'][number]) => number): number =>
    shelter.rafters.reduce((sum, r) => sum + of(r) * r.runIn * r.tributaryWidthIn, 0);
  const whole = area(() => 1);
  return whole > 0 ? area((r) => shareOfLine(r, line.id)) / whole : 0;
}

/** Share of a rafter's run that lies nearer to this line than to its neighbours, overhang included. */
export function shareOfLine(rafter: Shelter['rafters'][number], lineId: string): number {
  const i = rafter.supports.findIndex((s) => s.line === lineId);
  if (i < 0) return 0;
  const at = rafter.supports[i]!.atIn;
  const before = rafter.supports[i - 1];
  const after = rafter.supports[i + 1];
  return ((after ? (at + after.atIn) / 2 : rafter.runIn) - (before ? (at + before.atIn) / 2 : 0)) / rafter.runIn;
}
