import type { LineResponse } from '../../frame/line-frame.ts';
import type { CheckSite } from '../site-of-check.ts';
import type { LineCheckContext } from '../line-context.ts';
import { beamBendingSite } from './bending.ts';
import { beamStretches } from './beam-sections.ts';
import { crookSites } from './crook.ts';
import { cutSites, endCutsOf } from './cuts.ts';
import { sagSites } from './sag.ts';
import { seatSites } from './seat.ts';
import { spliceSites } from './splice.ts';
import { beamShearSite, endNotchSite } from './shear.ts';
import { twistShearSites } from './twist-shear.ts';
import { uprightSites } from './upright.ts';

/** Every check of the beams of a line, stretch by stretch and seat by seat. */
export function beamSites(context: LineCheckContext): readonly CheckSite<LineResponse>[] {
  const bySeat = context.frame.mesh.posts.flatMap((p) => p.post.seats.flatMap((s) => seatSites(context, p, s)));
  return [
    ...stretchSites(context),
    ...bySeat,
    ...spliceSites(context),
    ...crookSites(context),
    ...uprightSites(context),
  ];
}

/** What every log that lies is asked, beam or tie log, stretch by stretch. */
export const stretchSites = (context: LineCheckContext): readonly CheckSite<LineResponse>[] =>
  beamStretches(context).flatMap((on) => [
    beamBendingSite(context, on),
    beamShearSite(context, on),
    ...twistShearSites(context, on),
    ...cutSites(context, on),
    ...endCutsOf(context, on).flatMap((cut) => endNotchSite(context, on, cut) ?? []),
    ...sagSites(context, on),
  ]);
