import type { LineResponse } from '../../frame/line-frame.ts';
import type { PostGeometry, Shelter } from '../../geometry/shelter.ts';
import type { Project } from '../../project/model.ts';

/** Loads that come and go within minutes, by the ids of their cases. */
const SHORT = /^(own-)?wind|^seismic/;

/**
 * Where the doubled lateral value of the soil counts: somebody chose it, so that half an inch of movement at the ground does
 * no harm; wind or an earthquake pushes; and nothing leans on the post for ever, neither a brace nor a load of one's own.
 * @source IBC 1806.3.4, from memory; OWN: never for the lasting thrust of a brace
 */
export function pushIsShort(project: Project, shelter: Shelter, post: PostGeometry): (r: LineResponse) => boolean {
  if (!project.calculation.doubledLateralSoil || leansForEver(project, shelter, post)) return () => false;
  return (r) => r.combination.factors.some(({ caseId }) => SHORT.test(caseId));
}

/** Whether a brace or a load of one's own leans on a post as long as the shelter stands: then no push on it is short. */
export const leansForEver = ({ ownLoads }: Project, { braces }: Shelter, { id }: Pick<PostGeometry, 'id'>): boolean =>
  braces.some(({ postId }) => postId === id) ||
  ownLoads.some(({ kind, direction }) => kind !== 'wind' && (direction === 'xPlus' || direction === 'xMinus'));
