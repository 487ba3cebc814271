import type { Capacity, Id, JointKind, Project } from './model.ts';

/**
 * Name of a joint: its kind and the upper of its two members; the lower one only where the upper has several of the
 * kind (a rafter by the line it sits on, a beam by the post under it). Survives splitting and renaming of a beam.
 */
export const jointKey = (kind: JointKind, upper: Id, lower?: Id): string =>
  lower === undefined ? `${kind}/${upper}` : `${kind}/${upper}/${lower}`;

/** What is known of a joint: its own capacity where the file has one, else that of its kind, else null (nobody said). */
export function capacityOf(project: Project, kind: JointKind, key: string): Capacity {
  const own = project.joints.own.find((joint) => joint.key === key);
  if (own) return own.capacity;
  return project.joints.defaults.find((joint) => joint.kind === kind)?.capacity ?? null;
}
