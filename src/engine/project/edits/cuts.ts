import { MisuseError } from '../../errors.ts';
import type { Cut, Id, Project } from '../model.ts';
import { finite } from './find.ts';

/** What one more cut by hand is until somebody says otherwise: a shallow dap in the upper side [in]. */
const NEW_CUT = { kind: 'dap', lengthIn: 4, depthIn: 1, angleDeg: 0, by: 'hand' } as const;

/**
 * The project with one more cut by hand.
 * @param centreIn  its middle as the file has places on that member [in]
 * @throws MisuseError  if there is no such member, or the place is not finite
 */
export function addCut(project: Project, member: Id, centreIn: number): Project {
  finite('centreIn', centreIn);
  if (!project.members.some(({ id }) => id === member)) {
    throw new MisuseError('member', member, 'a member of the project');
  }
  const cut: Cut = { ...NEW_CUT, id: freeId(project.cuts), member, centreIn };
  return { ...project, cuts: [...project.cuts, cut] };
}

/** The project without a cut. @throws MisuseError  if there is no such cut */
export function removeCut(project: Project, cutId: Id): Project {
  if (!project.cuts.some(({ id }) => id === cutId)) throw new MisuseError('cutId', cutId, 'a cut of the project');
  return { ...project, cuts: project.cuts.filter(({ id }) => id !== cutId) };
}

function freeId(cuts: readonly Cut[]): Id {
  const taken = new Set(cuts.map(({ id }) => id));
  let n = 1;
  while (taken.has(`cut-${n}`)) n++;
  return `cut-${n}`;
}
