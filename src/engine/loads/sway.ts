import type { BraceGeometry, LineGeometry, PostGeometry, Shelter, Stick } from '../geometry/shelter.ts';
import type { Project } from '../project/model.ts';
import { insteadOf } from '../project/instead.ts';
import type { LineCase } from './cases.ts';
import { leastGablePush } from './gable-push.ts';
import { windOnGoods } from './goods.ts';
import type { SitePressures } from './site/site-pressures.ts';
import { roundDiameter, soliditySeen, widthSeen, windOnSolid } from './solid-wind.ts';
import { beamEndArea, roofEdgeArea, runningAcrossArea, shareOfRoof } from './sway-areas.ts';

/** One share of a structure as the wind along the lines sees it. */
export interface SwayPart {
  readonly name: 'roofEdge' | 'beam' | 'posts' | 'braces' | 'ties' | 'gable' | 'goods' | 'typed';
  readonly areaFt2: number;
  readonly psf: number;
  readonly forceLb: number;
}

export interface SwayForces {
  readonly parts: readonly SwayPart[];
  readonly totalLb: number;
  readonly atSeats: (toward: 1 | -1) => LineCase['points'];
  readonly onPosts: (toward: 1 | -1) => LineCase['onPosts'];
  readonly onBraces: (toward: 1 | -1) => LineCase['onBraces'];
}

/**
 * Wind along the lines on one line's solid parts, strength level: its share of every rafter's broad side and the roof
 * edge, its beam's end, posts and braces, its part of ties and braces that run across from it, and goods that lean on
 * it, each by its force coefficient and never under the least pressure of an open building; on a gable no less than the
 * line's share of roof takes of the push on frames across a ridge.
 * No sheltering is counted (safe side); no diaphragm shares the force between lines.
 * @source ASCE7 29.4, 27.1.5 and, from memory, 28.3.5
 */
export function alongForces(
  project: Project,
  shelter: Shelter,
  line: LineGeometry,
  posts: readonly PostGeometry[],
  braces: readonly BraceGeometry[],
  site: SitePressures,
): SwayForces {
  const solidity = soliditySeen(shelter, 'end');
  const pressure = (diameterIn: number | null): number => windOnSolid(site, solidity, diameterIn);
  const typedArea = insteadOf(project, 'swayAreaFt2', line.id);
  const typedPsf = insteadOf(project, 'swayPsf', line.id);
  if (typedArea) {
    const psf = typedPsf?.value ?? pressure(null);
    return forces([{ name: 'typed', areaFt2: typedArea.value, psf, forceLb: typedArea.value * psf }], posts, [], [], 0);
  }
  const flatPsf = typedPsf?.value ?? pressure(null);
  const flat = (name: SwayPart['name'], areaFt2: number): SwayPart => ({
    name,
    areaFt2,
    psf: flatPsf,
    forceLb: areaFt2 * flatPsf,
  });
  const perPost = posts.map((p) =>
    partOf(p.axisZIn - Math.max(p.footZIn, p.gradeZIn), p.stick, typedPsf?.value, pressure),
  );
  const perBrace = braces.map((b) => partOf(b.topPoint.zIn - b.postPoint.zIn, b.stick, typedPsf?.value, pressure));
  const roof = [
    flat('roofEdge', roofEdgeArea(shelter, line)),
    flat('beam', beamEndArea(shelter, line)),
    flat('ties', runningAcrossArea(shelter, posts)),
  ];
  const upright = [...perPost, ...perBrace].reduce((sum, u) => sum + u.areaFt2 * u.psf, 0);
  const dragLb = roof.reduce((sum, p) => sum + p.forceLb, upright);
  const leastLb = typedPsf ? 0 : shareOfRoof(shelter, line) * leastGablePush(project, shelter, site);
  const missing: SwayPart = { name: 'gable', areaFt2: 0, psf: 0, forceLb: Math.max(0, leastLb - dragLb) };
  return forces(
    missing.forceLb > 0 ? [...roof, missing] : roof,
    posts,
    perPost,
    braces.map((b, i) => ({ ...perBrace[i]!, id: b.id })),
    windOnGoods(project, shelter, site, 'end', line.id),
  );
}

interface Upright {
  readonly areaFt2: number;
  readonly psf: number;
  readonly lengthIn: number;
}

function partOf(
  lengthIn: number,
  stick: Stick | null,
  typedPsf: number | undefined,
  pressure: (diameterIn: number | null) => number,
): Upright {
  const widthIn = widthSeen(stick, 'end');
  const psf = typedPsf ?? pressure(roundDiameter(stick));
  return { areaFt2: (lengthIn * widthIn) / 144, psf, lengthIn };
}

function forces(
  roof: readonly SwayPart[],
  posts: readonly PostGeometry[],
  perPost: readonly Upright[],
  perBrace: readonly (Upright & { readonly id: string })[],
  goodsLb: number,
): SwayForces {
  const atTop = roof.reduce((sum, p) => sum + p.forceLb, 0);
  const group = (name: SwayPart['name'], uprights: readonly Upright[]): SwayPart => {
    const areaFt2 = uprights.reduce((s, u) => s + u.areaFt2, 0);
    const forceLb = uprights.reduce((s, u) => s + u.areaFt2 * u.psf, 0);
    return { name, areaFt2, psf: areaFt2 > 0 ? forceLb / areaFt2 : 0, forceLb };
  };
  const goods: SwayPart = { name: 'goods', areaFt2: 0, psf: 0, forceLb: goodsLb };
  const parts = [...roof, group('posts', perPost), group('braces', perBrace), goods];
  return {
    parts,
    totalLb: parts.reduce((sum, p) => sum + p.forceLb, 0),
    atSeats: (toward) => posts.map((p) => ({ xIn: p.xIn, downLb: 0, alongLb: (toward * atTop) / posts.length })),
    onPosts: (toward) =>
      posts.flatMap((p, i) => {
        const u = perPost[i];
        if (!u || !(u.lengthIn > 0)) return [];
        // goods press on the lower part of a post; spread over all of it they push higher (safe side)
        const forceLb = u.areaFt2 * u.psf + goodsLb / posts.length;
        const alongLbPerIn = (toward * forceLb) / (p.axisZIn - p.footZIn);
        return [{ postId: p.id, footDownLbPerIn: 0, topDownLbPerIn: 0, alongLbPerIn }];
      }),
    onBraces: (toward) => perBrace.map((u) => ({ braceId: u.id, downLb: 0, alongLb: toward * u.areaFt2 * u.psf })),
  };
}
