import type { BraceGeometry, PostGeometry, Shelter } from '../../engine/geometry/shelter.ts';
import { heightOn } from './ground.ts';
import type { View } from './paper.ts';
import { SlideHandle, type Phase } from './SlideHandle.tsx';
import { thicknessAt } from './sticks.ts';
import { postsOf } from './shelter-parts.ts';
import { DRAWING_WORDS, type ShowLength } from './words.ts';

export interface FrontHandlesProps {
  readonly shelter: Shelter;
  readonly lineId: string;
  readonly view: View;
  readonly units: 'feet' | 'metric';
  readonly showLength: ShowLength;
  readonly onMovePost: (postId: string, xIn: number, phase: Phase) => void;
  readonly onMoveBrace: (braceId: string, runIn: number, dropIn: number, phase: Phase) => void;
  /** how many braces move when this one's leg is changed, itself among them */
  readonly bracesAlike: (braceId: string, leg: 'runIn' | 'dropIn') => number;
  readonly onSelect?: ((memberId: string) => void) | undefined;
}

/** What can be moved on a front view: each post along the line, each knee brace by its run and by its drop. */
export function FrontHandles(props: FrontHandlesProps) {
  const { shelter } = props;
  const line = shelter.lines.find((l) => l.id === props.lineId);
  if (!line) return null;
  const posts = postsOf(shelter, line);
  const braces = shelter.braces.filter((b) => b.plane === 'along' && line.postIds.includes(b.postId));
  return (
    <g role="group" aria-label={DRAWING_WORDS.handles}>
      {posts.map((post, i) => (
        <PostHandle
          key={post.id}
          {...props}
          post={post}
          fromIn={roomBeside(post, posts[i - 1], line.fromXIn)}
          toIn={roomBeside(post, posts[i + 1], line.toXIn)}
        />
      ))}
      {braces.map((brace) => {
        const post = posts.find((p) => p.id === brace.postId);
        return post && <BraceHandles key={brace.id} {...props} brace={brace} post={post} />;
      })}
    </g>
  );
}

/** As far as the next post leaves room for both, or to the beam's end. */
function roomBeside(post: PostGeometry, next: PostGeometry | undefined, beamEndIn: number): number {
  if (!next) return beamEndIn;
  const both = ((thicknessAt(post.stick, 0, 'breadth') ?? 0) + (thicknessAt(next.stick, 0, 'breadth') ?? 0)) / 2;
  return next.xIn + Math.sign(post.xIn - next.xIn) * both;
}

interface PostHandleProps extends FrontHandlesProps {
  readonly post: PostGeometry;
  readonly fromIn: number;
  readonly toIn: number;
}
function PostHandle({ post, fromIn, toIn, view, units, showLength, onMovePost, onSelect }: PostHandleProps) {
  return (
    <SlideHandle
      at={view.at(post.xIn, heightOn(post, 0.15))}
      travel={{ x: view.scale, y: 0 }}
      label={DRAWING_WORDS.movePost(post.label)}
      valueIn={post.xIn}
      minIn={Math.min(fromIn, post.xIn)}
      maxIn={Math.max(toIn, post.xIn)}
      originIn={0}
      valueText={showLength(post.xIn)}
      units={units}
      onSlide={(xIn, phase) => onMovePost(post.id, xIn, phase)}
      onChoose={() => onSelect?.(post.id)}
    />
  );
}

/** Neither leg of a brace's triangle is ever shorter than this [in]. */
const LEAST_LEG_IN = 1;

interface BraceHandlesProps extends FrontHandlesProps {
  readonly brace: BraceGeometry;
  readonly post: PostGeometry;
}
/** The upper end slides along the beam, the lower one on the post; a value grows to the right and upward, as it is seen. */
function BraceHandles({
  shelter,
  brace,
  post,
  view,
  units,
  showLength,
  onMoveBrace,
  bracesAlike,
  onSelect,
}: BraceHandlesProps) {
  const side = brace.topPoint.xIn >= brace.postPoint.xIn ? 1 : -1;
  const postX = brace.postPoint.xIn;
  const topZ = brace.postPoint.zIn + brace.dropIn;
  const farthest = Math.max(brace.runIn, post.seatZIn - post.woodFromZIn);
  const alike = (leg: 'runIn' | 'dropIn'): string | null => {
    const count = bracesAlike(brace.id, leg);
    return count > 1 ? DRAWING_WORDS.bracesAlike(count, shelter.braces.length) : null;
  };
  const xs = [postX + side * LEAST_LEG_IN, postX + side * farthest];
  return (
    <>
      <SlideHandle
        at={view.at(brace.topPoint.xIn, brace.topPoint.zIn)}
        travel={{ x: view.scale, y: 0 }}
        label={DRAWING_WORDS.moveBraceRun(post.label)}
        valueIn={brace.topPoint.xIn}
        minIn={Math.min(...xs)}
        maxIn={Math.max(...xs)}
        originIn={postX}
        valueText={showLength(brace.runIn)}
        units={units}
        alike={alike('runIn')}
        onSlide={(xIn, phase) => onMoveBrace(brace.id, side * (xIn - postX), brace.dropIn, phase)}
        onChoose={() => onSelect?.(brace.id)}
      />
      <SlideHandle
        at={view.at(postX, brace.postPoint.zIn)}
        travel={{ x: 0, y: -view.scale }}
        label={DRAWING_WORDS.moveBraceDrop(post.label)}
        valueIn={brace.postPoint.zIn}
        minIn={Math.min(post.woodFromZIn, brace.postPoint.zIn)}
        maxIn={topZ - LEAST_LEG_IN}
        originIn={topZ}
        valueText={showLength(brace.dropIn)}
        units={units}
        alike={alike('dropIn')}
        onSlide={(zIn, phase) => onMoveBrace(brace.id, brace.runIn, topZ - zIn, phase)}
        onChoose={() => onSelect?.(brace.id)}
      />
    </>
  );
}
