import type { PostGeometry } from '../geometry/shelter.ts';
import { deadPieces } from '../loads/dead-pieces.ts';
import type { LineCase } from '../loads/cases.ts';
import { stretchesOf } from '../loads/stretches.ts';
import type { TwoWeights } from '../loads/weights.ts';
import type { Standing } from './standing.ts';

/** Of two equal spans that run through, an end post takes 3/8 where two simple spans give it 1/2. */
const RUNS_THROUGH = 3 / 4;

/**
 * What presses on the foot of one post at a stage, heavy and light: its own wood and braces, and what lies on the beam as
 * on simple spans between posts. Of the light weight on a line of more than two posts three quarters count, since a
 * beam that runs through presses less on its ends (own rule).
 * @returns weight [lb]
 * @source MECHANICS simple spans; continuous beam of two equal spans
 */
export function weightOnPost({ id, givens }: Standing, post: PostGeometry): TwoWeights {
  const { project, shelter, runOf, weights } = givens;
  const line = shelter.lines.find((l) => l.id === post.line)!;
  const posts = shelter.posts.filter((p) => p.line === line.id).sort((a, b) => a.xIn - b.xIn);
  const pieces = deadPieces({
    project,
    shelter,
    line,
    posts,
    braces: shelter.braces.filter((b) => b.plane === 'along' && posts.some((p) => p.id === b.postId)),
    rafters: shelter.rafters.filter((r) => r.supports.some((s) => s.line === line.id)),
    // a strip lies on the beam and comes with it
    stretches: id === 'posts' ? [] : stretchesOf(line, posts),
    runOf,
    weights,
  });
  const share = leverTo(
    posts.map((p) => p.xIn),
    posts.findIndex((p) => p.id === post.id),
  );
  const braces = new Set(shelter.braces.filter((b) => b.postId === post.id).map((b) => b.id));
  const sum = (weight: keyof TwoWeights): number => {
    const onBeam = pieces.reduce((lb, piece) => lb + beamLoad(piece[weight], share), 0);
    const own = pieces.reduce((lb, piece) => lb + ownLoad(piece[weight], post, braces), 0);
    const counted = weight === 'light' && posts.length > 2 ? Math.min(onBeam, RUNS_THROUGH * onBeam) : onBeam;
    return own + counted;
  };
  return { heavy: sum('heavy'), light: sum('light') };
}

/** Share of a weight at a place that one post takes: by the lever to the two nearest posts, past the last one as well. */
function leverTo(xs: readonly number[], index: number): (xIn: number) => number {
  if (xs.length < 2) return () => 1;
  return (xIn) => {
    const next = xs.findIndex((x, i) => i > 0 && xIn <= x);
    const right = next < 0 ? xs.length - 1 : next;
    const t = (xIn - xs[right - 1]!) / (xs[right]! - xs[right - 1]!);
    if (index === right) return t;
    return index === right - 1 ? 1 - t : 0;
  };
}

function beamLoad({ points, onBeam }: LineCase, share: (xIn: number) => number): number {
  const atRafters = points.reduce((sum, p) => sum + p.downLb * share(p.xIn), 0);
  return onBeam.slice(1).reduce((sum, to, i) => {
    const from = onBeam[i]!;
    const lb = ((from.downLbPerIn + to.downLbPerIn) / 2) * (to.xIn - from.xIn);
    return sum + lb * share((from.xIn + to.xIn) / 2);
  }, atRafters);
}

function ownLoad({ onPosts, onBraces }: LineCase, post: PostGeometry, braces: ReadonlySet<string>): number {
  const heightIn = post.axisZIn - post.footZIn;
  const wood = onPosts
    .filter((p) => p.postId === post.id)
    .reduce((sum, p) => sum + ((p.footDownLbPerIn + p.topDownLbPerIn) / 2) * heightIn, 0);
  return onBraces.filter((b) => braces.has(b.braceId)).reduce((sum, b) => sum + b.downLb, wood);
}
