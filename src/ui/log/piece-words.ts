import type { Shelter } from '../../engine/geometry/shelter.ts';
import type { Member } from '../../engine/project/model.ts';
import type { Names } from '../cord/places.ts';
import { postsOf } from '../drawing/shelter-parts.ts';
import type { LogWords } from './log-rows.ts';

/** A piece with what it is: `post A2`; names of beams, braces and roof sticks say so themselves. */
export function pieceName(names: Names, { id, role }: Member): string {
  const name = names.get(id) ?? id;
  return name.startsWith(`${role} `) ? name : `${role} ${name}`;
}

/** What meets a piece along it, from its start: posts of a beam or a tie, braces at a post, lines under a rafter. */
export function marksAlong(shelter: Shelter, memberId: string): LogWords['marks'] {
  const beam = shelter.beams.find(({ id }) => id === memberId);
  const line = shelter.lines.find(({ id }) => id === beam?.line);
  if (beam && line)
    return postsOf(shelter, line)
      .filter(({ xIn }) => xIn >= beam.fromXIn && xIn <= beam.toXIn)
      .map(({ label, xIn }) => ({ label, atIn: xIn - beam.fromXIn }));
  const post = shelter.posts.find(({ id }) => id === memberId);
  if (post) return bracesAt(shelter, post.id).map(([label, zIn]) => ({ label, atIn: zIn - post.woodFromZIn }));
  const tie = shelter.ties.find(({ id }) => id === memberId);
  if (tie)
    return shelter.posts
      .filter(({ id }) => id === tie.fromPostId || id === tie.toPostId)
      .map(({ label, yIn }) => ({ label, atIn: yIn - tie.fromYIn }));
  const rafter = shelter.rafters.find(({ id }) => id === memberId);
  const cos = Math.cos(((rafter?.slopeDeg ?? 0) * Math.PI) / 180);
  return (rafter?.supports ?? []).map((support) => ({
    label: shelter.lines.find(({ id }) => id === support.line)?.label ?? '',
    atIn: support.atIn / cos,
  }));
}

/** Braces at a post by their level; those at one level share a mark. */
function bracesAt(shelter: Shelter, postId: string): readonly (readonly [label: string, zIn: number])[] {
  const levels = new Map<number, string[]>();
  for (const { postId: at, label, postPoint } of shelter.braces) {
    if (at !== postId) continue;
    const zIn = Math.round(postPoint.zIn * 16) / 16;
    levels.set(zIn, [...(levels.get(zIn) ?? []), label.replace('brace ', '')]);
  }
  return [...levels].map(([zIn, labels]) => [labels.join(', '), zIn]);
}
