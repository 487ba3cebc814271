import type { Point } from '../drawing/paper.ts';
import type { Sketch } from '../drawing/sketch.ts';
import type { ShowLength } from '../drawing/words.ts';
import type { Missing } from './silhouette.ts';

/** The inches that are missing in words, rounded up to eighths. */
export const missingWords = ({ inches, isMore }: Missing, showDiameter: ShowLength): string =>
  `${isMore ? 'more than ' : ''}${showDiameter(Math.ceil(inches * 8) / 8)} missing`;

/** The same, written beside the place. */
export function nameMissing(sketch: Sketch, key: string, about: Point, text: string): void {
  const size = sketch.view.paper.textSize;
  sketch.text({
    key,
    text,
    kind: 'missing',
    centres: [1.4, 2.4, 3.4, -1.4].flatMap((n) =>
      [0, 5, -5].map((m) => ({ x: about.x + m * size, y: about.y + n * size })),
    ),
    about,
  });
}
