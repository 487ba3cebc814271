import { sectionAt, type Section } from './checks/section.ts';
import { diameterAt, type Shelter, type Stick } from './geometry/shelter.ts';

/** A cut that reaches over a place of a member, by its side: 0 up (of a post: +x), turning toward +y. */
export interface CutHere {
  readonly kind: 'flat' | 'dap' | 'notch' | 'housing';
  readonly madeBy: 'seat' | 'brace' | 'hand';
  /** middle of the cut and its length, along the member from its start [in] */
  readonly atIn: number;
  readonly lengthIn: number;
  readonly depthIn: number;
  readonly angleDeg: number;
}

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

/** Every cut of a beam, and the housings of braces in a post. Cuts at the ends of other members are not drawn. */
export function cutsOfMember(shelter: Shelter, memberId: string): readonly CutHere[] {
  const beam = shelter.beams.find(({ id }) => id === memberId);
  if (beam) return beam.cuts.map((cut) => ({ ...cut, atIn: cut.atXIn - beam.fromXIn }));
  const post = shelter.posts.find(({ id }) => id === memberId);
  if (!post) return [];
  return shelter.braces
    .filter((b) => b.postId === post.id && b.ends.post.kind !== 'coped' && b.ends.post.depthIn > 0)
    .map((b) => ({
      kind: 'housing',
      madeBy: 'brace',
      atIn: b.postPoint.zIn - post.woodFromZIn,
      // as long as the brace is thick where it meets the post at its slope
      lengthIn: thicknessOf(b.stick) / Math.max(Math.sin((b.phiDeg * Math.PI) / 180), 0.1),
      depthIn: b.ends.post.depthIn,
      angleDeg: b.plane === 'along' ? (b.side === 'plus' ? 0 : 180) : b.side === 'plus' ? 90 : 270,
    }));
}

function thicknessOf(stick: Stick | null): number {
  if (stick?.kind === 'round') return stick.profile[0]?.diameterIn ?? 0;
  return stick?.kind === 'sawn' ? stick.depthIn : 0;
}

/**
 * What is left of a round member at a place: the circle less its planed flat and the cuts there, as its checks count it
 * (cuts at one place, from whichever side, as one of their summed depth).
 * @param atIn from the member's start [in]
 * @returns null where it is not round or has no wood there
 */
export function sectionOfMember(shelter: Shelter, memberId: string, atIn: number): SectionHere | null {
  const stick = stickOfMember(shelter, memberId);
  if (stick?.kind !== 'round') return null;
  const diameterIn = diameterAt(stick, atIn);
  if (diameterIn === null) return null;
  const cuts = cutsOfMember(shelter, memberId).filter((c) => Math.abs(c.atIn - atIn) <= c.lengthIn / 2 + 1e-6);
  const cutIn = cuts.reduce((sum, c) => sum + c.depthIn, 0);
  return { diameterIn, flatIn: stick.flatIn, cuts, section: sectionAt(stick, diameterIn, cutIn) };
}
