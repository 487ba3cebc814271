import type { Point } from './paper.ts';
import type { Sketch } from './sketch.ts';
import { textHeight } from './text-size.ts';

const FEET = { inches: 12, name: 'ft' } as const;
const METRES = { inches: 1 / 0.0254, name: 'm' } as const;
const STEPS = [1, 2, 5, 10, 20, 50];

/** A bar of a round length, the longest that stays within a third of the paper. */
export function drawScaleBar(sketch: Sketch, units: 'feet' | 'metric', start: Point): void {
  const { view } = sketch;
  const size = view.paper.textSize;
  const unit = units === 'feet' ? FEET : METRES;
  const longest = view.width / 3;
  const count = STEPS.findLast((n) => n * unit.inches * view.scale <= longest) ?? 1;
  const end = { x: start.x + count * unit.inches * view.scale, y: start.y };
  sketch.line([start, end], 'ink-line');
  for (const p of [start, end]) {
    sketch.line(
      [
        { x: p.x, y: p.y - size * 0.25 },
        { x: p.x, y: p.y + size * 0.25 },
      ],
      'ink-line',
    );
  }
  const under = size * 0.25 + textHeight(size) / 2 + 2;
  sketch.text({ key: 'bar-start', text: '0', kind: 'note', centres: [{ x: start.x, y: start.y + under }] });
  sketch.text({
    key: 'bar-end',
    text: `${count} ${unit.name}`,
    kind: 'note',
    centres: [{ x: end.x, y: end.y + under }],
  });
}
