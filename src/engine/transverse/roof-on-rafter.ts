import type { RowGeometry } from '../geometry/rows.ts';
import type { RafterGeometry } from '../geometry/shelter.ts';
import type { Givens } from '../givens.ts';
import { emptyLineCase, type DeadPiece, type LineCase, type LoadCase, type SlopeLoad } from '../loads/cases.ts';
import { atEnds, levelPart, squareLoads, type PartPressure } from '../loads/rafter-reactions.ts';
import { even, type AtEnds, type RafterPart, type RafterRun } from '../loads/rafter-run.ts';
import type { RoofCase } from '../loads/roof-cases.ts';
import { rafterOwnWeight, surfaceWeight } from '../loads/roof-weights.ts';
import type { TwoWeights } from '../loads/weights.ts';
import { inPlaceId } from './case-ids.ts';
import type { PushAcross } from './push-across.ts';

/** What comes down on the rafter of a row, case by case, as the main frame is loaded. */
export interface RoofOnRafter {
  readonly dead: DeadPiece;
  readonly cases: readonly LineCase[];
  /** for a push across that has the level part of the roof at a post: what of it blows on this rafter, moved there */
  readonly inPlace: (push: PushAcross) => LineCase | null;
}

/**
 * Roof on the rafter of a row: plumb loads by its level projection, wind square to it. The level part of wind across the lines
 * comes with its push, at the post that holds it: `inPlace` moves the rafter's own to the rafter and adds nothing, so that a push
 * alone still turns the whole row as the lines have it. What a line has as partial snow or as reduced roof live load lies whole
 * on it (safe side).
 * @param cases  load cases of the lines, whose ids these keep
 */
export function roofOnRafter(
  givens: Givens,
  row: RowGeometry,
  rafter: RafterGeometry,
  cases: readonly LoadCase[],
): RoofOnRafter {
  const run = givens.runOf(rafter);
  const pressureOf = pressures(givens);
  const loadsOf = (pressure: RoofCase['pressure']) => slopeLoads(rafter, run, (part) => pressure(rafter, part));
  return {
    dead: deadOnRafter(givens, rafter, run),
    cases: cases.flatMap(({ id, pushAcross }): readonly LineCase[] => {
      const pressure = pressureOf(id);
      if (!pressure) return [];
      const loads = loadsOf(pressure);
      return [{ ...emptyLineCase(id), onSlope: pushAcross ? loads.map(plumbOnly) : loads }];
    }),
    inPlace: ({ id, comesWith, holder }) => {
      const pressure = pressureOf(comesWith);
      if (!pressure) return null;
      const square = (part: number): PartPressure => pressure(rafter, run.parts[part]!);
      const levelLb = -rafter.downY * levelPart(run, squareLoads(run, rafter.tributaryWidthIn, square, 'squarePsf'));
      const post = row.posts.find((p) => p.line === holder) ?? row.posts[0]!;
      return {
        ...emptyLineCase(inPlaceId(id)),
        onSlope: loadsOf(pressure).map(levelOnly),
        atPosts: [{ postId: post.id, zIn: post.axisZIn, downLb: 0, alongLb: -levelLb }],
      };
    },
  };
}

/** A part with its plumb load alone, and with its level load alone. */
const plumbOnly = ({ from, to }: SlopeLoad): SlopeLoad => ({
  from: { ...from, alongLbPerIn: 0 },
  to: { ...to, alongLbPerIn: 0 },
});
const levelOnly = ({ from, to }: SlopeLoad): SlopeLoad => ({
  from: { ...from, downLbPerIn: 0 },
  to: { ...to, downLbPerIn: 0 },
});

/** Pressures of a case of a line by its id; null for one that is not of the roof. */
function pressures({ roof, site }: Givens): (caseId: string) => RoofCase['pressure'] | null {
  const livePsf = site.figures.unreducedRoofLive.value ?? 0;
  const byId = new Map(roof.map((c) => [c.id, c.pressure]));
  const balancedSnow = roof.find((c) => c.spansPattern === 'snow')?.pressure ?? null;
  return (caseId) => {
    const known = byId.get(caseId.replace(/-opposed$/, ''));
    if (known) return known;
    if (caseId.startsWith('roof-live')) return () => ({ plumbPsf: livePsf, squarePsf: 0 });
    return caseId.startsWith('snow-along-') ? balancedSnow : null;
  };
}

function deadOnRafter({ project, shelter, weights }: Givens, rafter: RafterGeometry, run: RafterRun): DeadPiece {
  const plane = shelter.planes.find((p) => p.id === rafter.plane)!;
  const surface = surfaceWeight(project, plane, shelter.purlins, weights);
  const own = rafterOwnWeight(project, rafter, run, weights);
  const side = (weight: keyof TwoWeights): LineCase => ({
    ...emptyLineCase(`dead-${weight}-${rafter.label}`),
    onSlope: run.parts.map((part, i) => {
      const downLbPerIn = (surface[weight] * rafter.tributaryWidthIn) / 144 + own[i]![weight];
      return slopeLoad(rafter, run, part, { plumb: even(downLbPerIn), square: even(0) });
    }),
  });
  return { piece: rafter.label, heavy: side('heavy'), light: side('light') };
}

const slopeLoads = (
  rafter: RafterGeometry,
  run: RafterRun,
  pressure: (part: RafterPart) => PartPressure,
): readonly SlopeLoad[] =>
  run.parts.map((part) => {
    const { plumbPsf, squarePsf } = pressure(part);
    const perSlopeIn = rafter.tributaryWidthIn / 144;
    return slopeLoad(rafter, run, part, {
      plumb: times(atEnds(plumbPsf), perSlopeIn * run.cos),
      square: times(atEnds(squarePsf), perSlopeIn),
    });
  });

const times = ({ low, high }: AtEnds, by: number): AtEnds => ({ low: low * by, high: high * by });

/** Loads on a part, given per inch of slope plumb and square to it, in the plane of the row: what presses pushes to the high side. */
function slopeLoad(
  { eaveYIn, downY }: RafterGeometry,
  run: RafterRun,
  { fromIn, toIn }: RafterPart,
  { plumb, square }: { readonly plumb: AtEnds; readonly square: AtEnds },
): SlopeLoad {
  const at = (end: keyof AtEnds, slopeIn: number): SlopeLoad['from'] => ({
    xIn: eaveYIn - downY * slopeIn * run.cos,
    downLbPerIn: plumb[end] / run.cos + square[end],
    alongLbPerIn: (-downY * square[end] * run.sin) / run.cos,
  });
  const [low, high] = [at('low', fromIn), at('high', toIn)];
  return downY === 1 ? { from: high, to: low } : { from: low, to: high };
}
