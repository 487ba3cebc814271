import { outside } from '../check.ts';
import type { CheckRow } from '../evaluation.ts';
import type { LineMembers } from '../frame/line-mesh.ts';
import type { Stick } from '../geometry/shelter.ts';
import { message } from '../message.ts';
import type { Project } from '../project/model.ts';
import { plainRow } from './site-of-check.ts';

/** What of the uprights of a frame is judged. */
type Uprights = Pick<LineMembers, 'posts' | 'braces'>;

/** Posts and braces cut by hand: what such a cut leaves is not computed, only housings that braces make. */
export function handCutRows(project: Project, members: Uprights): readonly CheckRow[] {
  const rowOf = (ruleId: 'post.bending' | 'brace.push') => (member: { readonly id: string; readonly label: string }) =>
    project.cuts.some((cut) => cut.member === member.id)
      ? [
          plainRow(
            ruleId,
            member.id,
            { kind: 'whole', name: 'cuts' },
            outside(message('handCutOnRoof', { member: member.label })),
          ),
        ]
      : [];
  return [...members.posts.flatMap(rowOf('post.bending')), ...members.braces.flatMap(rowOf('brace.push'))];
}

/** Posts and braces of a typed section have no wood values to be judged by. */
export function typedRows(members: Uprights): readonly CheckRow[] {
  const whole = { kind: 'whole', name: '' } as const;
  const typed = (m: { readonly stick: Stick | null }): boolean => m.stick?.kind === 'typed';
  return [
    ...members.posts
      .filter(typed)
      .map((p) => plainRow('post.push', p.id, whole, outside(message('typedSection', { name: p.label })))),
    ...members.braces
      .filter(typed)
      .map((b) => plainRow('brace.push', b.id, whole, outside(message('typedSection', { name: b.label })))),
  ];
}
