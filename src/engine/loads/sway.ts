import type { BraceGeometry, LineGeometry, PostGeometry, Shelter, Stick } from '../geometry/shelter.ts';
import { nominalDepth } from '../geometry/sticks.ts';
import { message } from '../message.ts';
import type { Project } from '../project/model.ts';
import { insteadOf } from '../project/instead.ts';
import { emptyLineCase, type LineArrival, type LineCase } from './cases.ts';
import { leastGablePush } from './gable-push.ts';
import { windOnGoods } from './goods.ts';
import type { SitePressures } from './site/site-pressures.ts';
import { roundDiameter, soliditySeen, widthSeen, windOnSolid } from './solid-wind.ts';

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

/** End of the line's thickest beam, by its mean diameter [ft2]. */
function beamEndArea(shelter: Shelter, line: LineGeometry): number {
  const ends = shelter.beams
    .filter((b) => b.line === line.id)
    .map(({ stick }) => (stick?.kind === 'round' ? (Math.PI * widthSeen(stick, 'side') ** 2) / 4 : faceOf(stick)));
  return Math.max(0, ...ends) / 144;
}

const faceOf = (stick: Stick | null): number => (stick?.kind === 'sawn' ? stick.breadthIn * stick.depthIn : 0);

/** Broad sides of what runs across from a post of the line: half of each tie, the whole of each brace [ft2]. */
function runningAcrossArea(shelter: Shelter, posts: readonly PostGeometry[]): number {
  const stand = (postId: string): boolean => posts.some((p) => p.id === postId);
  const ties = shelter.ties.map(
    (t) => [t.fromPostId, t.toPostId].filter(stand).length * Math.abs(t.toYIn - t.fromYIn) * widthSeen(t.stick, 'side'),
  );
  const braces = shelter.braces
    .filter((b) => b.plane === 'across' && stand(b.postId))
    .map((b) => 2 * b.lengthIn * widthSeen(b.stick, 'side'));
  return [...ties, ...braces].reduce((sum, area) => sum + area, 0) / 2 / 144;
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

/** Broad sides of all rafters and the edge of purlins, shared by the lines as the rafters' own weight is. */
function roofEdgeArea(shelter: Shelter, line: LineGeometry): number {
  return shelter.rafters.reduce((sum, r) => {
    const slopeLengthIn = r.runIn / Math.cos((r.slopeDeg * Math.PI) / 180);
    const purlin = shelter.purlins.find((p) => p.plane === r.plane);
    const edge =
      r.id === shelter.rafters.find((other) => other.plane === r.plane)!.id ? nominalDepth(purlin?.stick ?? null) : 0;
    const share = shareOfLine(r, line.id);
    return sum + (share * slopeLengthIn * (nominalDepth(r.stick) + edge)) / 144;
  }, 0);
}

/** Share of the roof that lies nearer to this line than to its neighbours. */
function shareOfRoof(shelter: Shelter, line: LineGeometry): number {
  const area = (of: (rafter: Shelter['rafters'][number]) => number): number =>
    shelter.rafters.reduce((sum, r) => sum + of(r) * r.runIn * r.tributaryWidthIn, 0);
  const whole = area(() => 1);
  return whole > 0 ? area((r) => shareOfLine(r, line.id)) / whole : 0;
}

/** Share of a rafter's run that lies nearer to this line than to its neighbours, overhang included. */
function shareOfLine(rafter: Shelter['rafters'][number], lineId: string): number {
  const i = rafter.supports.findIndex((s) => s.line === lineId);
  if (i < 0) return 0;
  const at = rafter.supports[i]!.atIn;
  const before = rafter.supports[i - 1];
  const after = rafter.supports[i + 1];
  return ((after ? (at + after.atIn) / 2 : rafter.runIn) - (before ? (at + before.atIn) / 2 : 0)) / rafter.runIn;
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

/** Notional push: one per cent of the dead load at the roof, each way. Load duration ten minutes. */
export const NOTIONAL_SHARE = 0.01;

/**
 * A share of a weight that pushes the line sideways at its seats, evenly on all posts since the beam ties them: the
 * notional push, or an earthquake. Also what posts weigh counts at the seats (safe side).
 * @source ASCE7_10 1.4.1; ASCE7 12.8 (7-16)
 */
export function inertiaCase(
  posts: readonly PostGeometry[],
  push: { readonly kind: 'notional' | 'seismic'; readonly forceLb: number; readonly verticalShare?: number },
  toward: 1 | -1,
): LineArrival {
  const direction = toward === 1 ? 'plus' : 'minus';
  const { kind, forceLb, verticalShare } = push;
  const id = `${kind}-${direction}`;
  const words = message(kind === 'notional' ? 'caseNotional' : 'caseSeismic', { direction });
  return {
    loadCase: { id, kind, words, swaysAlong: true, ...(verticalShare === undefined ? {} : { verticalShare }) },
    lineCase: {
      ...emptyLineCase(id),
      points: posts.map((p) => ({ xIn: p.xIn, downLb: 0, alongLb: (toward * forceLb) / posts.length })),
    },
    alongLb: toward * forceLb,
  };
}
