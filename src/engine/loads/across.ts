import { clause } from '../../data/sources.ts';
import type { PlaneGeometry, Shelter } from '../geometry/shelter.ts';
import { put, type Note } from '../note.ts';
import type { Project } from '../project/model.ts';
import { quantity } from '../units.ts';
import { goodsFace, windOnGoods } from './goods.ts';
import type { RoofCase, RunOf } from './roof-cases.ts';
import { levelPart, squareLoads } from './rafter-reactions.ts';
import type { SitePressures } from './site/site-pressures.ts';
import { solidsAcross } from './solids-across.ts';

/** Least level wind on an open building's projected area, strength level [psf]. @source ASCE7 27.1.5, from memory */
const LEAST_PSF = 16;

interface AcrossParts {
  /** strength level, from the level part of the roof's wind [lb] */
  readonly roofLb: number;
  /** drag of beams, posts, braces, eave edges and goods that lean on a line [lb] */
  readonly dragLb: number;
  /** least force on the projected area, roof's rise included [lb] */
  readonly leastLb: number;
  /** one per cent of all dead load, or the earthquake where one is run, strength level [lb] */
  readonly inertiaLb: number;
}

export interface AcrossForce extends AcrossParts {
  /**
   * as `roofLb`, but only of the slopes that push the same way: of a gable the line that holds one slope may not be the one
   * that holds the other, so that what they push against one another helps neither [lb]
   */
  readonly oneWayLb: number;
  /** allowable-stress level, see `acrossPush` [lb] */
  readonly asdLb: number;
}

/**
 * Push across at allowable-stress level.
 * @returns force [lb]
 * @source ASCE7 2.4.1, 2.4.5, 27.1.5 (from memory), 1.4.1
 */
export function acrossPush({ roofLb, dragLb, leastLb, inertiaLb }: AcrossParts, note?: Note): number {
  const push = Math.max(0.6 * Math.max(roofLb + dragLb, leastLb), 0.7 * inertiaLb);
  note?.({
    symbol: 'W',
    words: 'greatest push across the lines on the whole shelter',
    formula: 'max(0.6 × max(R + D, L), 0.7 × G)',
    put: [
      put('R', roofLb, 'lb', 'level part of the wind on the roof, strength level'),
      put('D', dragLb, 'lb', 'wind on all that is solid, strength level'),
      put('L', leastLb, 'lb', 'least wind on the projected area, strength level'),
      put('G', inertiaLb, 'lb', 'one per cent of the dead load, or the earthquake'),
    ],
    result: quantity(push, 'lb'),
    clause: clause('ASCE7', '2.4.1, 12.8, 27.3.2, 29.4'),
  });
  return push;
}

/**
 * Greatest push across the lines on the whole shelter: the level part of the roof's wind with the drag of everything
 * solid, never under the least force on the projected area nor under one per cent of the dead load, or the earthquake
 * where one is run. No sheltering.
 * @param inertiaLb  one per cent of all dead load, or the earthquake on all that it shakes [lb]
 * @source ASCE7 27.3.2, 29.4, 27.1.5, 1.4.1
 */
export function acrossForce(
  project: Project,
  shelter: Shelter,
  site: SitePressures,
  roof: readonly RoofCase[],
  runOf: RunOf,
  inertiaLb: number,
): AcrossForce {
  const q = site.figures.velocityPressure.value ?? 0;
  const levels = roof
    .filter((c) => c.kind === 'wind' && c.windAlong === 0)
    .map((c) => shelter.planes.map((plane) => levelAcross(shelter, plane, c, runOf)));
  const roofLb = Math.max(0, ...levels.map((slopes) => Math.abs(sum(slopes))));
  const oneWayLb = Math.max(
    0,
    ...levels.flatMap((slopes) => [1, -1].map((way) => sum(slopes.map((level) => Math.max(0, way * level))))),
  );
  const solids = solidsAcross(shelter, site);
  const typedDrag = project.instead.find((i) => i.what === 'acrossDragLb');
  const typedArea = project.instead.find((i) => i.what === 'acrossMinAreaFt2');
  // a heap leans on the shelter once, on whichever line
  const goodsLb = Math.max(0, ...shelter.lines.map((l) => windOnGoods(project, shelter, site, 'side', l.id)));
  const dragLb = typedDrag ? typedDrag.value : goodsLb + sum(solids.map((s) => s.forceLb));
  const goodsFt2 = goodsLb > 0 ? goodsFace(project, shelter, 'side') : 0;
  const areaFt2 = typedArea ? typedArea.value : sum(solids.map((s) => s.areaFt2)) + riseOf(shelter) + goodsFt2;
  const leastLb = q > 0 ? LEAST_PSF * areaFt2 : 0;
  const parts = { roofLb, dragLb, leastLb, inertiaLb };
  return { ...parts, oneWayLb, asdLb: acrossPush(parts) };
}

const sum = (values: readonly number[]): number => values.reduce((a, b) => a + b, 0);

/** Level part of a wind case on one slope, toward +y [lb]. */
export function levelAcross(shelter: Shelter, plane: PlaneGeometry, roofCase: RoofCase, runOf: RunOf): number {
  const rafters = shelter.rafters.filter((r) => r.plane === plane.id);
  const levels = rafters.map((r) => {
    const run = runOf(r);
    const pressure = (i: number) => roofCase.pressure(r, run.parts[i]!);
    return levelPart(run, squareLoads(run, r.tributaryWidthIn, pressure, 'squarePsf'));
  });
  return -plane.downY * sum(levels);
}

/** Rise of the roof as the wind across sees it, slopes that fall the other way behind it not twice [ft2]. */
function riseOf({ planes }: Shelter): number {
  const facing = ([1, -1] as const).map((downY) =>
    sum(planes.filter((p) => p.downY === downY).map((p) => (p.highZIn - p.lowZIn) * (p.toXIn - p.fromXIn))),
  );
  return Math.max(...facing) / 144;
}
