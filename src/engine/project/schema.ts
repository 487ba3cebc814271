import { z } from 'zod';
import { asBuilt } from './schema/as-built.ts';
import { cut, instead, lateral, ownLoad } from './schema/sway-loads-cuts.ts';
import { joints } from './schema/joints.ts';
import { group, member } from './schema/members.ts';
import { roofPlane, supportLine } from './schema/roof.ts';
import { code, site, surroundings, title } from './schema/site.ts';
import { log, wood } from './schema/wood.ts';

/**
 * `name.shelter.json`, formatVersion 1. Axes: x along frame lines, y across, z up from the datum mark.
 * `null` = not given yet; an optional key that is absent = there is none, or "as the group says".
 * Start of a member: beam and purlin low x; tie low y; rafter its eave end; post its foot; brace its post end.
 * Places on the shelter are x on a line or purlin, y on a tie or rafter, height above the foot on a post.
 */
export const projectSchema = z.strictObject({
  formatVersion: z.literal(1),
  title,
  code,
  site,
  surroundings,
  supportLines: z.array(supportLine).min(1).max(6),
  roofPlanes: z.array(roofPlane).min(1).max(4),
  woods: z.array(wood).max(20),
  logs: z.array(log).max(200),
  groups: z.array(group).max(60),
  members: z.array(member).max(400),
  joints,
  cuts: z.array(cut).max(300),
  lateral: z.strictObject({ along: z.array(lateral).max(10), across: z.array(lateral).max(10) }),
  ownLoads: z.array(ownLoad).max(50),
  instead: z.array(instead).max(100),
  calculation: z.strictObject({
    kcr: z.number().min(1).max(3),
    kz: z.enum(['formula', 'table']),
    soilAboveCountsInUplift: z.boolean(),
    doubledLateralSoil: z.boolean(),
  }),
  asBuilt,
  trees: z.array(z.unknown()).max(2000),
  pieces: z.array(z.unknown()).max(2000),
  notYetYours: z.array(z.string().max(200)).max(500),
  extras: z.record(z.string(), z.unknown()),
});
