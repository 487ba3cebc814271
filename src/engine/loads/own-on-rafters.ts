import { MisuseError } from '../errors.ts';
import type { RafterGeometry } from '../geometry/shelter.ts';
import type { OwnLoad } from '../project/model.ts';
import { runTo } from './own-loads.ts';
import { even, type AtEnds, type RafterRun } from './rafter-run.ts';

/** An own load on a stretch of one rafter: plumb, down +, per inch of slope, from its eave. */
export interface OwnPatch {
  readonly own: OwnLoad;
  readonly fromIn: number;
  readonly toIn: number;
  readonly plumbLbPerIn: number;
}

/** A load at one place of a rafter rests on this much of it [in]. */
const HOOK_IN = 2;

const ROUNDING_IN = 1e-5;

/** Own loads of a rafter and its share of those on the roof, by the width that it carries. */
export function ownPatches(rafter: RafterGeometry, loads: readonly OwnLoad[]): readonly OwnPatch[] {
  const cos = Math.cos((rafter.slopeDeg * Math.PI) / 180);
  const slopeLengthIn = rafter.runIn / cos;
  return loads.flatMap((own): OwnPatch[] => {
    const { where } = own;
    const sign = own.direction === 'up' ? -1 : 1;
    if (where.on === 'member' && where.member === rafter.id) {
      const middle = Math.min(Math.max(runTo(rafter, where.atIn) / cos, HOOK_IN / 2), slopeLengthIn - HOOK_IN / 2);
      const [fromIn, toIn] = [middle - HOOK_IN / 2, middle + HOOK_IN / 2];
      return [{ own, fromIn, toIn, plumbLbPerIn: (sign * where.lb) / HOOK_IN }];
    }
    if (where.on !== 'plane' || where.plane !== rafter.plane) return [];
    const widthIn = Math.min(where.toXIn, rafter.tributaryToXIn) - Math.max(where.fromXIn, rafter.tributaryFromXIn);
    if (!(widthIn > 0)) return [];
    const ends = [runTo(rafter, where.fromYIn), runTo(rafter, where.toYIn)].map((at) =>
      Math.min(Math.max(at / cos, 0), slopeLengthIn),
    );
    // of level area, as snow is counted
    const plumbLbPerIn = (sign * where.psf * widthIn * cos) / 144;
    return [{ own, fromIn: Math.min(...ends), toIn: Math.max(...ends), plumbLbPerIn }];
  });
}

/**
 * Patches as loads square to the slope on the parts of a run [lb/in].
 * @throws MisuseError  if the run is not cut where a patch begins and ends, see `rafterCuts`
 */
export function patchLoads(run: RafterRun, patches: readonly Omit<OwnPatch, 'own'>[]): readonly AtEnds[] {
  return run.parts.map((part) =>
    even(
      patches.reduce((sum, patch) => {
        const covered = Math.min(part.toIn, patch.toIn) - Math.max(part.fromIn, patch.fromIn);
        if (covered <= ROUNDING_IN) return sum;
        const lengthIn = part.toIn - part.fromIn;
        if (lengthIn - covered > ROUNDING_IN)
          throw new MisuseError('part of a rafter under a load', covered, 'all of it');
        return sum + patch.plumbLbPerIn * run.cos;
      }, 0),
    ),
  );
}
