import type { Vector } from '../../engine/checks/fasteners/space.ts';
import type { Point } from '../drawing/paper.ts';
import type { Sketch } from '../drawing/sketch.ts';
import { seen, type Look } from './looks.ts';

/** One view of a joint while it is drawn. */
export interface Pen {
  readonly sketch: Sketch;
  readonly look: Look;
  /** a place of the joint on the paper */
  readonly at: (place: Vector) => Point;
}

export function penFor(sketch: Sketch, look: Look): Pen {
  return {
    sketch,
    look,
    at: (place) => {
      const { x, y } = seen(look, place);
      return sketch.view.at(x, y);
    },
  };
}
