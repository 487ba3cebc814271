import type { Enclosure } from '../../data/loads/wind-walled.ts';
import type { Shelter } from '../geometry/shelter.ts';
import type { Project } from '../project/model.ts';
import { enclosureClass, type WallOpening } from './site/enclosure.ts';

type Side = Project['surroundings']['closed'][number]['side'];

/**
 * How closed the shelter is by its own walls and, of a lean-to, the wall of the building that it leans on.
 * @source ASCE7 26.2 (7-16), from memory
 */
export function enclosureOf(project: Project, shelter: Shelter): Enclosure {
  const { planes, lowestGradeZIn, meanRoofHeightIn, planAlongIn, planAcrossIn } = shelter;
  const heightAt = (side: 'yMinus' | 'yPlus'): number => {
    const edges = planes.flatMap((p) => [
      { yIn: p.lowYIn, zIn: p.lowZIn },
      { yIn: p.highYIn, zIn: p.highZIn },
    ]);
    const sign = side === 'yPlus' ? 1 : -1;
    return edges.reduce((a, b) => (sign * b.yIn > sign * a.yIn ? b : a)).zIn - lowestGradeZIn;
  };
  const wall = (side: Side): WallOpening => {
    const areaFt2 =
      side === 'xMinus' || side === 'xPlus'
        ? (planAcrossIn * meanRoofHeightIn) / 144
        : (planAlongIn * heightAt(side)) / 144;
    return { areaFt2, openFt2: (1 - closedShare(project, side)) * areaFt2 };
  };
  return enclosureClass([wall('xMinus'), wall('xPlus'), wall('yMinus'), wall('yPlus')], roofFt2(shelter));
}

const roofFt2 = ({ planes }: Shelter): number =>
  planes.reduce((sum, p) => sum + (Math.hypot(p.runIn, p.highZIn - p.lowZIn) * (p.toXIn - p.fromXIn)) / 144, 0);

/** Share of a side that a wall closes; the building that carries a ledger closes its side whole. */
function closedShare({ surroundings: { closed, neighbour } }: Project, side: Side): number {
  if (neighbour && neighbour.ledgerLine !== null && neighbour.side === side) return 1;
  return closed.find((each) => each.side === side)?.share ?? 0;
}
