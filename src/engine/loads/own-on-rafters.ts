import { MisuseError } from '../errors.ts';
import type { PurlinGeometry, RafterGeometry, Shelter } from '../geometry/shelter.ts';
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

/**
 * Own loads of a rafter, its share of those on the roof by the width that it carries, and of those on purlins by the lever
 * rule between the two rafters beside them.
 */
export function ownPatches(shelter: Shelter, rafter: RafterGeometry, loads: readonly OwnLoad[]): readonly OwnPatch[] {
  const cos = Math.cos((rafter.slopeDeg * Math.PI) / 180);
  const slopeLengthIn = rafter.runIn / cos;
  return loads.flatMap((own): OwnPatch[] => {
    const { where } = own;
    const sign = own.direction === 'up' ? -1 : 1;
    const hook = (slopeIn: number, lb: number): OwnPatch => {
      const middle = Math.min(Math.max(slopeIn, HOOK_IN / 2), slopeLengthIn - HOOK_IN / 2);
      return { own, fromIn: middle - HOOK_IN / 2, toIn: middle + HOOK_IN / 2, plumbLbPerIn: (sign * lb) / HOOK_IN };
    };
    if (where.on === 'member') {
      if (where.member === rafter.id) return [hook(runTo(rafter, where.atIn) / cos, where.lb)];
      const purlin = shelter.purlins.find((p) => p.id === where.member);
      const share = purlin ? leverShare(purlin, rafter.id, where.atIn) : 0;
      return purlin && share !== 0 ? [hook(purlin.upSlopeIn, share * where.lb)] : [];
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

/** Share of a load at a place of a purlin that a rafter under it carries; beyond the last rafter the one before is lifted. */
function leverShare({ rafterXIn, rafterIds }: PurlinGeometry, rafterId: string, xIn: number): number {
  const last = rafterXIn.length - 1;
  if (last < 1) return rafterIds[0] === rafterId ? 1 : 0;
  const passed = rafterXIn.filter((x) => x <= xIn).length;
  const i = Math.min(Math.max(passed, 1), last) - 1;
  const share = (xIn - rafterXIn[i]!) / (rafterXIn[i + 1]! - rafterXIn[i]!);
  if (rafterIds[i] === rafterId) return 1 - share;
  return rafterIds[i + 1] === rafterId ? share : 0;
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
