import { type Fault, fault } from '../../message.ts';
import type { Project } from '../model.ts';

/** In one direction a line is held in one way only (nothing says how two would share); `none` stands alone. */
export function lateralFaults(project: Project): readonly Fault[] {
  return (['along', 'across'] as const).flatMap((way) => {
    const held = project.lateral[way];
    const taken = new Set<string>();
    return held.flatMap((system, i) => {
      const path = `lateral.${way}[${i}]`;
      const faults: Fault[] = [];
      if (system.by === 'none' && held.length > 1) faults.push(fault(`${path}.by`, 'noneBesideOthers', { way }));
      for (const id of system.lines ?? []) {
        if (taken.has(id)) faults.push(fault(path, 'heldTwice', { id, way }));
        taken.add(id);
      }
      return faults;
    });
  });
}
