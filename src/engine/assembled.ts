import { assemble, type Assembled } from './assemble.ts';
import type { Fault } from './message.ts';
import type { Project } from './project/model.ts';

let last: { readonly project: Project; readonly assembled: Assembled | { readonly faults: readonly Fault[] } } | null =
  null;

/**
 * A shelter as the telling doors ask it, one question after another: the last one asked about is kept, and none besides.
 * `evaluate` puts every project together anew.
 */
export function assembledOf(project: Project): Assembled | { readonly faults: readonly Fault[] } {
  if (last?.project !== project) last = { project, assembled: assemble(project) };
  return last.assembled;
}
