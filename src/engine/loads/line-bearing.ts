import type { RafterGeometry } from '../geometry/shelter.ts';
import type { LineCase } from './cases.ts';
import type { LineSetting } from './line-setting.ts';
import {
  loadPerPsf,
  opposedWindAt,
  plumbAt,
  sumsAt,
  windAt,
  type PartPressure,
  type Pressure,
  type SupportSums,
} from './rafter-reactions.ts';
import type { RafterRun } from './rafter-run.ts';
import type { RoofCase } from './roof-cases.ts';

/** A rafter as it bears on one line. */
export interface Bearing {
  readonly rafter: RafterGeometry;
  readonly run: RafterRun;
  readonly line: string;
  /** which of its supports, low to high */
  readonly support: number;
  /** who holds the level part of the wind on its slope */
  readonly heldBy: string;
}

/** Every rafter that bears on a line. */
export const bearingsOf = (c: LineSetting): readonly Bearing[] =>
  c.rafters.map((rafter) => {
    const run = c.runOf(rafter);
    const heldBy = c.project.roofPlanes.find((p) => p.id === rafter.plane)!.horizontalHeldBy;
    return { rafter, run, line: c.line.id, support: run.supportLines.indexOf(c.line.id), heldBy };
  });

/** A case of the roof as it arrives at a line. */
export interface Arriving {
  readonly points: LineCase['points'];
  /** reactions of the other sign where the holder of the level part is open (steep roofs); null where there is none */
  readonly opposed: LineCase['points'] | null;
}

/** Rafter reactions of a case on a line, as point loads at the rafters. */
export function arriving(bearings: readonly Bearing[], roofCase: Pick<RoofCase, 'pressure'>): Arriving {
  const points: LineCase['points'][number][] = [];
  const opposed: LineCase['points'][number][] = [];
  let isOpposed = false;
  for (const bearing of bearings) {
    const { rafter, run, line, heldBy } = bearing;
    const pressures = run.parts.map((part) => roofCase.pressure(rafter, part));
    const wind = pressureSums(bearing, pressures, 'squarePsf');
    const downLb = plumbAt(run, pressureSums(bearing, pressures, 'plumbPsf')) + windAt(run, wind, line, heldBy);
    const otherLb = heldBy === 'worse' ? opposedWindAt(run, wind) : 0;
    points.push({ xIn: rafter.xIn, alongLb: 0, downLb });
    opposed.push({ xIn: rafter.xIn, alongLb: 0, downLb: otherLb });
    isOpposed ||= otherLb !== 0;
  }
  return { points, opposed: isOpposed ? opposed : null };
}

function pressureSums(
  { rafter, run, support }: Bearing,
  pressures: readonly PartPressure[],
  kind: keyof PartPressure,
): SupportSums {
  const perPsf = loadPerPsf(run, rafter.tributaryWidthIn, kind);
  return sumsAt(
    run,
    support,
    (part) => perPsf * lowOf(pressures[part]![kind]),
    (part) => perPsf * highOf(pressures[part]![kind]),
  );
}

const lowOf = (pressure: Pressure): number => (typeof pressure === 'number' ? pressure : pressure.low);
const highOf = (pressure: Pressure): number => (typeof pressure === 'number' ? pressure : pressure.high);
