import type { RafterGeometry } from '../geometry/shelter.ts';
import type { Givens } from '../givens.ts';
import { emptyLineCase, type DeadPiece, type LineCase, type LoadCase, type SlopeLoad } from '../loads/cases.ts';
import { atEnds, levelPart, squareLoads, type PartPressure } from '../loads/rafter-reactions.ts';
import { even, type AtEnds, type RafterPart, type RafterRun } from '../loads/rafter-run.ts';
import type { RoofCase } from '../loads/roof-cases.ts';
import { rafterOwnWeight, surfaceWeight } from '../loads/roof-weights.ts';
import type { TwoWeights } from '../loads/weights.ts';

/** What comes down on the rafter of a row, case by case, as the main frame is loaded. */
export interface RoofOnRafter {
  readonly dead: DeadPiece;
  readonly cases: readonly LineCase[];
  /** level part of a wind case on this rafter, toward +y [lb] */
  readonly levelOf: (caseId: string) => number;
}

/**
 * Roof on the rafter of a row: plumb loads by its level projection, wind square to it. What a line has as partial snow or as
 * reduced roof live load lies whole on it (safe side).
 * @param cases  load cases of the lines, whose ids these keep
 */
export function roofOnRafter(givens: Givens, rafter: RafterGeometry, cases: readonly LoadCase[]): RoofOnRafter {
  const run = givens.runOf(rafter);
  const pressureOf = pressures(givens);
  const arriving = cases.flatMap(({ id }): readonly LineCase[] => {
    const pressure = pressureOf(id);
    return pressure
      ? [{ ...emptyLineCase(id), onSlope: slopeLoads(rafter, run, (part) => pressure(rafter, part)) }]
      : [];
  });
  return {
    dead: deadOnRafter(givens, rafter, run),
    cases: arriving,
    levelOf: (caseId) => {
      const pressure = pressureOf(caseId);
      if (!pressure) return 0;
      const square = (part: number): PartPressure => pressure(rafter, run.parts[part]!);
      return -rafter.downY * levelPart(run, squareLoads(run, rafter.tributaryWidthIn, square, 'squarePsf'));
    },
  };
}

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
