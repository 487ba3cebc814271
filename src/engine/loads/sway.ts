import type { BraceGeometry, LineGeometry, PostGeometry, Shelter, Stick } from '../geometry/shelter.ts';
import { nominalDepth } from '../geometry/sticks.ts';
import { message } from '../message.ts';
import type { Project } from '../project/model.ts';
import { insteadOf } from '../project/instead.ts';
import { emptyLineCase, type LineCase, type LoadCase } from './cases.ts';
import type { SitePressures } from './site/site-pressures.ts';
import { roundDiameter, soliditySeen, widthSeen, windOnSolid } from './solid-wind.ts';

/** One share of a structure as the wind along the lines sees it. */
export interface SwayPart {
  readonly name: 'roofEdge' | 'posts' | 'braces' | 'typed';
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
 * edge, its posts and its braces, each by its force coefficient and never under the least pressure of an open building.
 * No sheltering is counted (safe side); no diaphragm shares the force between lines.
 * @source ASCE7 29.4 and 27.1.5
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
    return forces([{ name: 'typed', areaFt2: typedArea.value, psf, forceLb: typedArea.value * psf }], posts, [], []);
  }
  const roofAreaFt2 = roofEdgeArea(shelter, line);
  const roofPsf = typedPsf?.value ?? pressure(null);
  const perPost = posts.map((p) =>
    partOf(p.axisZIn - Math.max(p.footZIn, p.gradeZIn), p.stick, typedPsf?.value, pressure),
  );
  const perBrace = braces.map((b) => partOf(b.topPoint.zIn - b.postPoint.zIn, b.stick, typedPsf?.value, pressure));
  return forces(
    [{ name: 'roofEdge', areaFt2: roofAreaFt2, psf: roofPsf, forceLb: roofAreaFt2 * roofPsf }],
    posts,
    perPost,
    braces.map((b, i) => ({ ...perBrace[i]!, id: b.id })),
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
): SwayForces {
  const atTop = roof.reduce((sum, p) => sum + p.forceLb, 0);
  const group = (name: SwayPart['name'], uprights: readonly Upright[]): SwayPart => {
    const areaFt2 = uprights.reduce((s, u) => s + u.areaFt2, 0);
    const forceLb = uprights.reduce((s, u) => s + u.areaFt2 * u.psf, 0);
    return { name, areaFt2, psf: areaFt2 > 0 ? forceLb / areaFt2 : 0, forceLb };
  };
  const parts = [...roof, group('posts', perPost), group('braces', perBrace)];
  return {
    parts,
    totalLb: parts.reduce((sum, p) => sum + p.forceLb, 0),
    atSeats: (toward) => posts.map((p) => ({ xIn: p.xIn, downLb: 0, alongLb: (toward * atTop) / posts.length })),
    onPosts: (toward) =>
      posts.flatMap((p, i) => {
        const u = perPost[i];
        return u && u.lengthIn > 0
          ? [
              {
                postId: p.id,
                footDownLbPerIn: 0,
                topDownLbPerIn: 0,
                alongLbPerIn: (toward * u.areaFt2 * u.psf) / (p.axisZIn - p.footZIn),
              },
            ]
          : [];
      }),
    onBraces: (toward) => perBrace.map((u) => ({ braceId: u.id, downLb: 0, alongLb: toward * u.areaFt2 * u.psf })),
  };
}

/** Notional push: one per cent of the dead load at the roof, each way. Load duration ten minutes. */
const NOTIONAL_SHARE = 0.01;

export function notionalCase(
  posts: readonly PostGeometry[],
  heavyLb: number,
  toward: 1 | -1,
): { readonly loadCase: LoadCase; readonly lineCase: LineCase; readonly forceLb: number } {
  const direction = toward === 1 ? 'plus' : 'minus';
  const id = `notional-${direction}`;
  const forceLb = NOTIONAL_SHARE * heavyLb;
  return {
    loadCase: { id, kind: 'notional', words: message('caseNotional', { direction }), swaysAlong: true },
    lineCase: {
      ...emptyLineCase(id),
      points: posts.map((p) => ({ xIn: p.xIn, downLb: 0, alongLb: (toward * forceLb) / posts.length })),
    },
    forceLb,
  };
}
