import type { RoofForm } from '../../data/loads/free-roof-main.ts';
import { ridgeOf } from '../geometry/ridge.ts';
import type { PlaneGeometry, RafterGeometry } from '../geometry/shelter.ts';
import type { LoadCase } from './cases.ts';
import type { PartPressure } from './rafter-reactions.ts';
import type { RafterPart, RafterRun } from './rafter-run.ts';

/** A load case of the whole roof as it acts on the main frame: pressure on any part of any rafter. */
export interface RoofCase extends LoadCase {
  readonly pressure: (rafter: RafterGeometry, part: RafterPart) => PartPressure;
  /** +1 wind blowing toward +x, -1 toward -x, 0 across the lines or none */
  readonly windAlong: 1 | -1 | 0;
  /** wind across the lines: +1 blowing toward +y, -1 toward -y */
  readonly windAcross?: 1 | -1;
  /** patterns that follow the spans of a beam are added line by line */
  readonly spansPattern: 'snow' | null;
}

/** Which figure of the free roofs a shelter is: one plane, or two that meet on one ridge. */
export function roofFormOf(planes: readonly PlaneGeometry[]): RoofForm | null {
  if (planes.length === 1) return 'monoslope';
  return ridgeOf(planes) ? 'pitched' : null;
}

/** Runs by rafter id, computed once for rafters that are alike. */
export type RunOf = (rafter: RafterGeometry) => RafterRun;
