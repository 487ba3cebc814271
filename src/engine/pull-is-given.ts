import { holderAt, type JointSource } from './checks/joints/holder.ts';
import type { BraceGeometry } from './geometry/shelter.ts';
import { jointKey } from './project/joint-capacity.ts';

/** Every joint of these braces has a pull capacity above zero. */
export function pullIsGiven(source: JointSource, braces: readonly BraceGeometry[]): boolean {
  return braces.every((b) =>
    (['bracePost', 'braceTop'] as const).every(
      (kind) => holderAt(source, kind, jointKey(kind, b.id)).part('pull', 1).ok,
    ),
  );
}
