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
import { uprightSites } from './upright.ts';

/** Every check of the beams of a line, stretch by stretch and seat by seat. */
export function beamSites(context: LineCheckContext): readonly CheckSite<LineResponse>[] {
  const stretches = beamStretches(context);
  const posts = context.frame.mesh.posts;
  const byStretch = stretches.flatMap((on) => [
    beamBendingSite(context, on),
    beamShearSite(context, on),
    ...cutSites(context, on),
    ...endCutsOf(context, on).flatMap((cut) => endNotchSite(context, on, cut) ?? []),
    ...sagSites(context, on),
  ]);
  const bySeat = posts.flatMap((p) => p.post.seats.flatMap((s) => seatSites(context, p, s)));
  return [...byStretch, ...bySeat, ...spliceSites(context), ...crookSites(context), ...uprightSites(context)];
}
