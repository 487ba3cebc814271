import { clause } from '../../data/sources.ts';
import type { Shelter, Stick } from '../geometry/shelter.ts';
import { nominalDepth } from '../geometry/sticks.ts';
import { put, type Note } from '../note.ts';
import type { Project } from '../project/model.ts';
import { quantity } from '../units.ts';
import { goodsFace, windOnGoods } from './goods.ts';
import type { RoofCase, RunOf } from './roof-cases.ts';
import { levelPart, squareLoads } from './rafter-reactions.ts';
import type { SitePressures } from './site/site-pressures.ts';
import { roundDiameter, soliditySeen, widthSeen, windOnSolid } from './solid-wind.ts';

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
  const roofLb = roof
    .filter((c) => c.kind === 'wind' && c.windAlong === 0)
    .reduce((most, c) => {
      const level = shelter.rafters.reduce((sum, r) => {
        const run = runOf(r);
        const loads = squareLoads(run, r.tributaryWidthIn, (i) => c.pressure(r, run.parts[i]!), 'squarePsf');
        return sum + r.downY * levelPart(run, loads);
      }, 0);
      return Math.max(most, Math.abs(level));
    }, 0);
  const solids = solidAreas(shelter);
  const solidity = soliditySeen(shelter, 'side');
  const typedDrag = project.instead.find((i) => i.what === 'acrossDragLb');
  const typedArea = project.instead.find((i) => i.what === 'acrossMinAreaFt2');
  // a heap leans on the shelter once, on whichever line
  const goodsLb = Math.max(0, ...shelter.lines.map((l) => windOnGoods(project, shelter, site, 'side', l.id)));
  const dragLb = typedDrag
    ? typedDrag.value
    : goodsLb + solids.reduce((sum, s) => sum + s.areaFt2 * windOnSolid(site, solidity, s.diameterIn), 0);
  const rise = shelter.planes.reduce((sum, p) => sum + ((p.highZIn - p.lowZIn) * (p.toXIn - p.fromXIn)) / 144, 0);
  const goodsFt2 = goodsLb > 0 ? goodsFace(project, shelter, 'side') : 0;
  const areaFt2 = typedArea ? typedArea.value : solids.reduce((sum, s) => sum + s.areaFt2, 0) + rise + goodsFt2;
  const leastLb = q > 0 ? LEAST_PSF * areaFt2 : 0;
  const parts = { roofLb, dragLb, leastLb, inertiaLb };
  return { ...parts, asdLb: acrossPush(parts) };
}

interface Solid {
  readonly areaFt2: number;
  /** null = flat-sided */
  readonly diameterIn: number | null;
}

/** Everything solid as the wind across the lines sees it: beams, posts above ground, braces, eave edges. */
function solidAreas(shelter: Shelter): readonly Solid[] {
  const of = (stick: Stick | null, lengthIn: number): Solid => ({
    areaFt2: (lengthIn * widthSeen(stick, 'side')) / 144,
    diameterIn: roundDiameter(stick),
  });
  return [
    ...shelter.beams.map((b) => of(b.stick, b.toXIn - b.fromXIn)),
    ...shelter.posts.map((p) => of(p.stick, p.seatZIn - Math.max(p.footZIn, p.gradeZIn))),
    ...shelter.braces.filter((b) => b.plane === 'along').map((b) => of(b.stick, b.lengthIn)),
    ...shelter.planes.map((plane) => {
      const rafter = shelter.rafters.find((r) => r.plane === plane.id);
      const purlin = shelter.purlins.find((p) => p.plane === plane.id);
      const edgeIn = nominalDepth(rafter?.stick ?? null) + nominalDepth(purlin?.stick ?? null);
      return { areaFt2: ((plane.toXIn - plane.fromXIn) * edgeIn) / 144, diameterIn: null };
    }),
  ];
}
