import type { Note } from '../note.ts';

/** What hangs on the load duration alone is worked out once for each; who wants it told has it worked out again. */
export function byDuration<A>(find: (CD: number, note?: Note) => A): (CD: number, note?: Note) => A {
  const known = new Map<number, A>();
  return (CD, note) => {
    if (note) return find(CD, note);
    const found = known.get(CD);
    if (found !== undefined) return found;
    const answer = find(CD);
    known.set(CD, answer);
    return answer;
  };
}
