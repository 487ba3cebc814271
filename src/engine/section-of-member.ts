import { sectionAt, type Section } from './checks/section.ts';
import { cutsOfMember, type CutHere } from './cuts-of-member.ts';
import { diameterAt, type Shelter, type Stick } from './geometry/shelter.ts';
import type { Project } from './project/model.ts';

/** A round member at one place. */
export interface SectionHere {
  readonly diameterIn: number;
  /** planed off over the full length [in] */
  readonly flatIn: number;
  readonly cuts: readonly CutHere[];
  readonly section: Section;
}

/** What a member is made of, whatever part of the shelter it is. */
export const stickOfMember = (shelter: Shelter, memberId: string): Stick | null =>
  [...shelter.beams, ...shelter.posts, ...shelter.braces, ...shelter.ties, ...shelter.rafters, ...shelter.purlins].find(
    ({ id }) => id === memberId,
  )?.stick ?? null;

/**
 * What is left of a round member at a place: the circle less its planed flat and the cuts there, as its checks count it
 * (cuts at one place, from whichever side, as one of their summed depth).
 * @param atIn from the member's start [in]
 * @returns null where it is not round or has no wood there
 */
export function sectionOfMember(
  project: Project,
  shelter: Shelter,
  memberId: string,
  atIn: number,
): SectionHere | null {
  const stick = stickOfMember(shelter, memberId);
  if (stick?.kind !== 'round') return null;
  const diameterIn = diameterAt(stick, atIn);
  if (diameterIn === null) return null;
  const cuts = cutsOfMember(project, shelter, memberId).filter((c) => Math.abs(c.atIn - atIn) <= c.lengthIn / 2 + 1e-6);
  const cutIn = cuts.reduce((sum, c) => sum + c.depthIn, 0);
  return { diameterIn, flatIn: stick.flatIn, cuts, section: sectionAt(stick, diameterIn, cutIn) };
}
