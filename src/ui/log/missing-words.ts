import type { Point } from '../drawing/paper.ts';
import type { Sketch } from '../drawing/sketch.ts';
import type { ShowLength } from '../drawing/words.ts';

/** The inches that are missing, in words beside the place, rounded up to eighths. */
export function nameMissing(sketch: Sketch, key: string, about: Point, inches: number, showDiameter: ShowLength): void {
  const size = sketch.view.paper.textSize;
  sketch.text({
    key,
    text: `${showDiameter(Math.ceil(inches * 8) / 8)} missing`,
    kind: 'missing',
    centres: [1.4, 2.4, 3.4, -1.4].flatMap((n) =>
      [0, 5, -5].map((m) => ({ x: about.x + m * size, y: about.y + n * size })),
    ),
    about,
  });
}
