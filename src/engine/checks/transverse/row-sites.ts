import type { RuleId } from '../../../data/rules.ts';
import type { LineResponse } from '../../frame/line-frame.ts';
import { stretchSites } from '../beam/beam-checks.ts';
import { crookSites } from '../beam/crook.ts';
import { braceSites } from '../brace/brace-checks.ts';
import type { LineCheckContext } from '../line-context.ts';
import type { CheckSite } from '../site-of-check.ts';
import { lineBucklingSite } from '../sway/line-buckling-site.ts';
import { swayAlongSites } from '../sway/sway-checks.ts';
import { tieJointSites } from './tie-joints.ts';
import { tieSidewaysSites } from './tie-sideways.ts';
import { tiePushSites } from './tie-push.ts';

/**
 * Every check of a row across in its own plane; its posts are judged with their line, by both planes together.
 * @param ties  ids of its tie logs: rafters that only join the tops of posts are judged as rafters
 */
export const rowSites = (context: LineCheckContext, ties: ReadonlySet<string>): readonly CheckSite<LineResponse>[] => [
  ...[
    ...[...stretchSites(context), ...crookSites(context)].flatMap(renamed),
    ...tiePushSites(context),
    ...tieSidewaysSites(context),
    ...tieJointSites(context),
  ].filter((site) => ties.has(site.memberId)),
  ...braceSites(context),
  ...swayAlongSites(context, true).flatMap(renamed),
  ...renamed(lineBucklingSite(context)),
];

/** What a frame line is asked by its own rules, a row across is asked by these. Nothing but its own logs makes it sag. */
const ACROSS: Partial<Record<RuleId, RuleId>> = {
  'beam.bending': 'tie.bending',
  'beam.shear': 'tie.shear',
  'beam.twist': 'tie.twist',
  'beam.crook': 'tie.crook',
  'beam.cuts': 'tie.cuts',
  'beam.endNotch': 'tie.endNotch',
  'beam.sagLongTerm': 'tie.sagLongTerm',
  'sway.along': 'sway.across',
  'frame.buckling': 'sway.acrossBuckling',
};

function renamed(site: CheckSite<LineResponse>): readonly CheckSite<LineResponse>[] {
  const ruleId = ACROSS[site.ruleId];
  return ruleId ? [{ ...site, ruleId }] : [];
}
