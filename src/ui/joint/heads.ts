import { BOLTS, CUT_WASHERS } from '../../data/fasteners/bolts.ts';
import { LAG_SCREWS } from '../../data/fasteners/lag-screws.ts';
import { stretchIn } from '../../engine/checks/fasteners/round-geometry.ts';
import { cross, dot, plus, unit, type Vector } from '../../engine/checks/fasteners/space.ts';
import type { Look } from './looks.ts';
import { onShank, type Shank } from './shanks.ts';

/** Shapes of what nobody measures: heights of heads and nuts and widths of heads without a listed one, in diameters. */
export const DRAWN = { hexHigh: 0.65, nutHigh: 0.875, nailHeadHigh: 0.35, headWide: 2, washerThickIn: 1 / 8 } as const;
/** Wood that is cut away on each side of what lies on a flat [in]. */
const AROUND_IN = 1 / 8;

/** Hexagon of a lag screw, a bolt and its nut, across flats; null for all others [in]. */
export function hexagonIn({ size }: Shank): number | null {
  if (size.kind !== 'lag' && size.kind !== 'bolt') return null;
  const rows = size.kind === 'lag' ? LAG_SCREWS.rows : BOLTS.rows;
  const listed = rows.find(({ nominalIn }) => Math.abs(nominalIn - size.nominalIn) < 1e-3);
  return listed?.headIn ?? 1.5 * size.nominalIn;
}

/** Outside and thickness of the washer that the row names; null without one. */
export function washerOf(shank: Shank): { readonly outsideIn: number; readonly thickIn: number } | null {
  const { row, size } = shank;
  if (row.washerIn === undefined || hexagonIn(shank) === null) return null;
  const listed = CUT_WASHERS.rows.find(({ nominalIn }) => Math.abs(nominalIn - size.nominalIn) < 1e-3);
  return { outsideIn: row.washerIn, thickIn: listed?.thickIn ?? DRAWN.washerThickIn };
}

/** A head that is no hexagon, across [in]. */
export const headOf = ({ size }: Shank): number =>
  size.kind === 'driftPin' ? size.nominalIn : (size.headIn ?? DRAWN.headWide * size.nominalIn);

/** What lies on the wood under a head or a nut, across [in]. */
const laidOn = (shank: Shank): number => Math.max(washerOf(shank)?.outsideIn ?? 0, hexagonIn(shank) ?? headOf(shank));

/**
 * Flats cut under a head and under the nut of a bolt: floor with both walls up to the surface. Along the log they are as
 * long as what lies on them needs, across it as wide as the round wood makes them.
 */
export function flatsOf(shank: Shank, look: Look): readonly (readonly Vector[])[] {
  const { row, side, main, nutIn, into } = shank;
  if (!row.headFlatIn || !side) return [];
  const aside = unit(cross(into, look.toward));
  const ends = [
    { shape: side.shape, atIn: 0, way: 1 },
    ...(nutIn === null ? [] : [{ shape: main.shape, atIn: nutIn, way: -1 }]),
  ];
  return ends.flatMap(({ shape, atIn, way }) => {
    const middle = onShank(shank, atIn);
    const wood = shape && stretchIn(shape, { at: middle, into: aside });
    if (!wood) return [];
    const isAcross = Math.abs(dot(shape.axis, aside)) < 0.3;
    const half = laidOn(shank) / 2 + AROUND_IN;
    const [fromIn, toIn] = isAcross ? [wood.fromIn, wood.toIn] : [-half, half];
    const floor = [fromIn, toIn].map((off) => plus(middle, aside, off));
    const walls = floor.map((foot) => {
      const above = stretchIn(shape, { at: foot, into });
      const outIn = above ? (way > 0 ? above.fromIn : above.toIn) : 0;
      return outIn * way < 0 ? plus(foot, into, outIn) : foot;
    });
    return [[walls[0]!, ...floor, walls[1]!]];
  });
}
