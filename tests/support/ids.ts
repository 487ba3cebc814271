import type { NewId } from '../../src/engine/project/model.ts';

/** `post-1`, `post-2`, `rafter-1`: the same ids on every run. */
export function countedIds(): NewId {
  const counts = new Map<string, number>();
  return (what) => {
    const count = (counts.get(what) ?? 0) + 1;
    counts.set(what, count);
    return `${what}-${count}`;
  };
}
