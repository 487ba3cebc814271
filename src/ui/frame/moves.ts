import { moveBrace } from '../../engine/project/edits/move-brace.ts';
import { movePost } from '../../engine/project/edits/posts.ts';
import type { Project } from '../../engine/project/model.ts';
import type { Phase } from '../drawing/SlideHandle.tsx';
import { acts } from '../state/use-workbench.ts';

/** One drag is one undo entry; what it passes on the way is drawn, and taken back when it is cancelled. */
function carry(name: string, phase: Phase, perform: (project: Project) => Project): void {
  if (phase === 'cancel') {
    acts().cancelGesture();
    return;
  }
  acts().perform({ name, perform, undo: 'with-next' });
  if (phase === 'end') acts().settle();
}

export const onMovePost = (postId: string, xIn: number, phase: Phase): void =>
  carry('move a post', phase, (project) => movePost(project, postId, xIn));

export const onMoveBrace = (braceId: string, runIn: number, dropIn: number, phase: Phase): void =>
  carry('move a brace', phase, (project) => moveBrace(project, braceId, runIn, dropIn));
