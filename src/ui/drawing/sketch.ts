import { circlePath, circlePoints, pathOf, segmentsOf } from './outline.ts';
import type { Box, Point, Segment, View } from './paper.ts';
import { placeLabels, type LabelWish } from './place-labels.ts';
import { textHeight, textWidth } from './text-size.ts';

/** Line weights, by name: their thickness and ink are the stylesheet's. */
export type Ink =
  | 'ink-heavy'
  | 'ink-line'
  | 'ink-thin'
  | 'hidden-line'
  | 'dimension'
  | 'hatch'
  | 'force-line'
  | 'cover-line'
  | 'least-line'
  | 'whole-line'
  | 'missing';

export interface Stroke {
  readonly d: string;
  readonly ink: Ink;
  /** covers what was drawn before it */
  readonly covers: boolean;
}
export interface PlacedText {
  readonly key: string;
  readonly text: string;
  readonly kind: 'name' | 'note' | 'length' | 'load' | 'missing';
  readonly box: Box;
  readonly leader: Segment | null;
  readonly rotated: boolean;
  readonly leaf: Leaf | null;
}
/** The number in the project that a shown length changes: it moves by `sign` times what the length grows. */
export interface Leaf {
  readonly path: string;
  readonly valueIn: number;
  readonly sign: 1 | -1;
}
/** Outline of a member, to be picked by pointer. */
export interface Target {
  readonly memberId: string;
  readonly d: string;
}
export interface Picture {
  readonly title: string;
  readonly description: string;
  readonly view: View;
  readonly strokes: readonly Stroke[];
  readonly texts: readonly PlacedText[];
  readonly targets: readonly Target[];
}

export interface TextWish {
  readonly key: string;
  readonly text: string;
  readonly kind: PlacedText['kind'];
  readonly centres: readonly Point[];
  readonly about?: Point;
  readonly rotated?: boolean;
  readonly leaf?: Leaf;
  /** left out where there is no room beside what it is about */
  readonly optional?: boolean;
}
interface DrawOptions {
  readonly covers?: boolean;
  readonly memberId?: string;
  /** quiet enough that a label may lie on it, on a strip of bare paper */
  readonly givesWay?: boolean;
}

export interface Sketch {
  readonly view: View;
  readonly line: (points: readonly Point[], ink: Ink, options?: DrawOptions) => void;
  readonly outline: (points: readonly Point[], ink: Ink, options?: DrawOptions) => void;
  readonly circle: (centre: Point, radius: number, ink: Ink, options?: DrawOptions) => void;
  readonly hatch: (strokes: readonly Segment[], options?: DrawOptions) => void;
  readonly text: (wish: TextWish) => void;
  readonly finish: (title: string, description: string) => Picture;
}

/**
 * Collects what a view draws, remembers every line as a place where no label may lie, and finds room for the labels
 * once all lines are known.
 */
export function beginSketch(view: View): Sketch {
  const strokes: Stroke[] = [];
  const segments: Segment[] = [];
  const targets: Target[] = [];
  const wishes: TextWish[] = [];
  const size = view.paper.textSize;

  const add = (d: string, ink: Ink, kept: readonly Segment[], options: DrawOptions = {}): void => {
    strokes.push({ d, ink, covers: options.covers ?? false });
    if (!options.givesWay) segments.push(...kept);
    if (options.memberId !== undefined) targets.push({ memberId: options.memberId, d });
  };
  return {
    view,
    line: (points, ink, options) => add(pathOf(points), ink, segmentsOf(points), options),
    outline: (points, ink, options) => add(pathOf(points, true), ink, segmentsOf(points, true), options),
    circle: (centre, radius, ink, options) =>
      add(circlePath(centre, radius), ink, segmentsOf(circlePoints(centre, radius), true), options),
    hatch: (lines, options) => add(lines.map((l) => pathOf(l)).join(''), 'hatch', lines, options),
    text: (wish) => wishes.push(wish),
    finish: (title, description) => {
      const placed = placeLabels(
        wishes.map((w) => labelWish(w, size)),
        segments,
        { x: 0, y: 0, width: view.width, height: view.height },
      );
      const texts = wishes.flatMap((w): PlacedText[] => {
        const at = placed.find((p) => p.key === w.key);
        if (!at) return [];
        const { key, text, kind } = w;
        return [{ key, text, kind, box: at.box, leader: at.leader, rotated: w.rotated ?? false, leaf: w.leaf ?? null }];
      });
      return { title, description, view, strokes, texts, targets };
    },
  };
}

function labelWish(wish: TextWish, size: number): LabelWish {
  const long = textWidth(wish.text, size);
  const thick = textHeight(size);
  return {
    key: wish.key,
    width: wish.rotated ? thick : long,
    height: wish.rotated ? long : thick,
    centres: wish.centres,
    about: wish.about ?? wish.centres[0] ?? { x: 0, y: 0 },
    optional: wish.optional ?? false,
  };
}
