import type { Shelter, Stick } from '../geometry/shelter.ts';
import { nominalDepth } from '../geometry/sticks.ts';
import type { SitePressures } from './site/site-pressures.ts';
import { roundDiameter, soliditySeen, widthSeen, windOnSolid } from './solid-wind.ts';

/** Something solid as the wind across the lines meets it, and the line that it leans on. */
export interface SolidAcross {
  readonly line: string;
  /** the post, where the wind is spread over one; null for what meets the line at its beam */
  readonly postId: string | null;
  readonly areaFt2: number;
  /** strength level [lb] */
  readonly forceLb: number;
}

/**
 * Everything solid as the wind across the lines sees it: beams, posts above ground, braces, eave edges (on the high line of
 * their slope). No part shelters another.
 * @source ASCE7 29.4, 27.1.5 (7-16)
 */
export function solidsAcross(shelter: Shelter, site: SitePressures): readonly SolidAcross[] {
  const solidity = soliditySeen(shelter, 'side');
  const solid = (line: string, postId: string | null, areaFt2: number, diameterIn: number | null): SolidAcross => ({
    line,
    postId,
    areaFt2,
    forceLb: areaFt2 * windOnSolid(site, solidity, diameterIn),
  });
  const of = (line: string, postId: string | null, stick: Stick | null, lengthIn: number): SolidAcross =>
    solid(line, postId, (lengthIn * widthSeen(stick, 'side')) / 144, roundDiameter(stick));
  const lineOf = (postId: string): string => shelter.posts.find((p) => p.id === postId)!.line;
  return [
    ...shelter.beams.map((b) => of(b.line, null, b.stick, b.toXIn - b.fromXIn)),
    ...shelter.posts.map((p) => of(p.line, p.id, p.stick, p.seatZIn - Math.max(p.footZIn, p.gradeZIn))),
    ...shelter.braces.map((b) =>
      // a brace across is met end on: by its height
      of(lineOf(b.postId), null, b.stick, b.plane === 'along' ? b.lengthIn : b.topPoint.zIn - b.postPoint.zIn),
    ),
    ...shelter.planes.map((plane) => {
      const rafter = shelter.rafters.find((r) => r.plane === plane.id);
      const purlin = shelter.purlins.find((p) => p.plane === plane.id);
      const edgeIn = nominalDepth(rafter?.stick ?? null) + nominalDepth(purlin?.stick ?? null);
      return solid(plane.onLines[0]!, null, ((plane.toXIn - plane.fromXIn) * edgeIn) / 144, null);
    }),
  ];
}
