import type { PostGeometry, Shelter } from '../../engine/geometry/shelter.ts';
import { drawDimension } from '../drawing/dimension.ts';
import { heightOn } from '../drawing/ground.ts';
import type { LaidOver } from '../drawing/picture-options.ts';
import { postsOf } from '../drawing/shelter-parts.ts';
import type { Sketch } from '../drawing/sketch.ts';
import { thicknessAt } from '../drawing/sticks.ts';
import { textWidth } from '../drawing/text-size.ts';
import type { ShowLength } from '../drawing/words.ts';

/** Below the braces, above what lies on the ground: share of the post up to its seat. */
const AT_SHARE = 0.3;
/** Air beside the words of a clear length, in text sizes. */
const AIR = 0.6;
/** In a smaller view there is no room for it between ground and braces [paper units per inch]. */
const LEAST_SCALE = 0.55;

/** Clear lengths between the faces of neighbouring posts of a line, a little above the ground. */
export function clearLengths(shelter: Shelter, lineId: string, showLength: ShowLength): readonly string[] {
  return spansOf(shelter, lineId).map(({ fromXIn, toXIn }) => showLength(toXIn - fromXIn));
}

/** The same, drawn; one too short for its words is left to them. */
export function clearSpans(shelter: Shelter, lineId: string, showLength: ShowLength): LaidOver {
  const spans = spansOf(shelter, lineId);
  const words = ({ fromXIn, toXIn }: Span): string => `clear ${showLength(toXIn - fromXIn)}`;
  return {
    above: 0,
    left: 0,
    right: 0,
    title: 'clear lengths',
    description: spans.map((span) => `Between the faces of posts ${words(span)}.`).join(' '),
    draw: (sketch) => {
      for (const span of spans) drawSpan(sketch, span, words(span));
    },
  };
}

interface Span {
  readonly key: string;
  readonly fromXIn: number;
  readonly toXIn: number;
  readonly zIn: number;
}

function spansOf(shelter: Shelter, lineId: string): readonly Span[] {
  const line = shelter.lines.find(({ id }) => id === lineId);
  const posts = line ? postsOf(shelter, line) : [];
  return posts.slice(1).flatMap((post, i) => spanBetween(posts[i]!, post) ?? []);
}

/** Null where nobody has said how thick a post is. */
function spanBetween(left: PostGeometry, right: PostGeometry): Span | null {
  const zIn = Math.max(heightOn(left, AT_SHARE), heightOn(right, AT_SHARE));
  const half = (post: PostGeometry): number => (thicknessAt(post.stick, zIn - post.woodFromZIn, 'breadth') ?? NaN) / 2;
  const [fromXIn, toXIn] = [left.xIn + half(left), right.xIn - half(right)];
  return toXIn > fromXIn ? { key: `clear-${left.id}`, fromXIn, toXIn, zIn } : null;
}

function drawSpan(sketch: Sketch, { key, fromXIn, toXIn, zIn }: Span, text: string): void {
  const { view } = sketch;
  const size = view.paper.textSize;
  const [from, to] = [view.at(fromXIn, zIn), view.at(toXIn, zIn)];
  if (view.scale < LEAST_SCALE) return;
  if (to.x - from.x > textWidth(text, size) + 2 * AIR * size) drawDimension(sketch, { key, from, to, text, side: -1 });
}
