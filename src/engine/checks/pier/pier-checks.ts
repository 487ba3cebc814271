import { breaks, judge, notGiven, outside, type Verdict } from '../../check.ts';
import type { CheckRow } from '../../evaluation.ts';
import type { LineResponse } from '../../frame/line-frame.ts';
import type { PostGeometry } from '../../geometry/shelter.ts';
import { message } from '../../message.ts';
import type { Foot, PierFoot, Project } from '../../project/model.ts';
import { quantity } from '../../units.ts';
import { baseOfPier, padProjection } from '../ground/pier.ts';
import type { LineCheckContext } from '../line-context.ts';
import { plainRow, type CheckSite } from '../site-of-check.ts';
import { buriedRows, dryFootRows } from './durability.ts';
import { sitesOfBuried } from './embedded-sites.ts';
import { shaftInGround, sitesOfPier } from './pier-sites.ts';

/** What every post of an analysed line stands on or in, each with its own reaction. */
export function pierSites(context: LineCheckContext): readonly CheckSite<LineResponse>[] {
  return context.frame.mesh.posts.flatMap((chain) => {
    const { foot } = chain.post;
    return foot.kind === 'pier' ? sitesOfPier(context, chain, foot) : sitesOfBuried(context, chain, foot);
  });
}

/** A footing stands at least this deep in undisturbed ground, frost or none, and is as wide [in]. @source IBC 1809.4 */
const LEAST_DEPTH_IN = 12;
const LEAST_WIDTH_IN = 12;

const WHOLE = { kind: 'whole', name: '' } as const;

/** What no load decides: level of the pier, pad without steel, depth below frost, dry feet, treatment. */
export function footRows(project: Project, posts: readonly PostGeometry[]): readonly CheckRow[] {
  return posts.flatMap((post): readonly CheckRow[] => {
    const { foot } = post;
    const reach = padReach(post, foot);
    return [
      ...(foot.kind === 'pier' && post.pierTopZIn === null
        ? [plainRow('pier.top', post.id, WHOLE, notGiven(message('pierTopNotGiven', { post: post.label })))]
        : []),
      ...(reach === null || !foot.pad
        ? []
        : [plainRow('pier.pad', post.id, WHOLE, padVerdict(reach, foot.pad.thickIn))]),
      ...(foot.kind === 'pier' ? [plainRow('pier.width', post.id, WHOLE, widthVerdict(foot))] : []),
      plainRow('pier.frost', post.id, WHOLE, frostVerdict(project, post, foot)),
      ...(foot.kind === 'pier' ? dryFootRows(post, foot) : buriedRows(post, foot)),
    ];
  });
}

/** How far a pad reaches beyond what stands on it [in]; null without one, or where nobody knows how thick the post is. */
function padReach({ stick }: PostGeometry, foot: Foot): number | null {
  if (foot.kind === 'pier') return foot.pad ? padProjection(foot) : null;
  if (!foot.pad || !stick || stick.kind === 'typed') return null;
  const postIn =
    stick.kind === 'round' ? (stick.profile[0]?.diameterIn ?? 0) : Math.min(stick.breadthIn, stick.depthIn);
  return Math.max(0, (foot.pad.acrossIn - postIn) / 2);
}

const padVerdict = (reachIn: number, thickIn: number): Verdict =>
  reachIn > thickIn
    ? outside(message('padTooWide', { reachIn, thickIn }), quantity(reachIn, 'in'))
    : judge(quantity(reachIn, 'in'), quantity(thickIn, 'in'));

const widthVerdict = (foot: PierFoot): Verdict =>
  judge(quantity(LEAST_WIDTH_IN, 'in'), quantity(baseOfPier(foot).acrossIn, 'in'));

function frostVerdict(project: Project, post: PostGeometry, foot: Foot): Verdict {
  const frost = project.site.frostDepthIn.value;
  if (frost === null) return notGiven(message('frostDepthNotGiven'));
  const depth = (foot.kind === 'pier' ? shaftInGround(post, foot) : foot.depthIn) + (foot.pad?.thickIn ?? 0);
  return depth > 0
    ? judge(quantity(Math.max(frost, LEAST_DEPTH_IN), 'in'), quantity(depth, 'in'))
    : breaks(message('pierNotInGround', { post: post.label }));
}
