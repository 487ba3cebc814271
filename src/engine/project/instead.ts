import type { Id, InsteadOf, Project } from './model.ts';

/** The value typed instead of a computed one for a thing: its own, else the one typed for all of its kind. */
export const insteadOf = (project: Project, what: InsteadOf, of: Id): Project['instead'][number] | undefined =>
  project.instead.find((i) => i.what === what && i.of === of) ??
  project.instead.find((i) => i.what === what && i.of === null);
