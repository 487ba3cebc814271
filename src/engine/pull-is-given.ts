import type { BraceGeometry } from './geometry/shelter.ts';
import { capacityOf, jointKey } from './project/joint-capacity.ts';
import type { Project } from './project/model.ts';

/** Every joint of these braces has a pull capacity above zero. */
export function pullIsGiven(project: Project, braces: readonly BraceGeometry[]): boolean {
  return braces.every((b) =>
    (['bracePost', 'braceTop'] as const).every((kind) => {
      const capacity = capacityOf(project, kind, jointKey(kind, b.id));
      return capacity?.kind === 'rated' && (capacity.parts.pullLb ?? 0) > 0;
    }),
  );
}
