import { describe, expect, it } from 'vitest';
import { onScreen } from '../../../src/ui/drawing/paper.ts';
import { frontPicture } from '../../../src/ui/drawing/front-picture.ts';
import { buckledFront } from '../../../src/ui/frame/buckled.tsx';
import { evaluated } from '../../engine/whole/whole.ts';
import { exampleText, soundProject } from '../../support/files.ts';
import { showFeet } from './show.ts';

const evaluation = evaluated(soundProject(exampleText('firewood-shed')));
const draw = (lineId: string) => {
  const laidOver = buckledFront(evaluation, lineId);
  const picture = frontPicture(evaluation.shelter, lineId, {
    paper: onScreen(900, 620),
    showLength: showFeet,
    laidOver,
  });
  return { laidOver, lines: picture!.strokes.filter(({ ink }) => ink === 'whole-line') };
};

describe('a line as it would buckle', () => {
  it('[frame.buckling] is one dashed line for every beam and post, and feet stay where they are', () => {
    const line = evaluation.lines[0]!;
    const { posts, beams } = evaluation.shelter;
    const here = [...posts, ...beams].filter((part) => part.line === line.lineId);
    expect(draw(line.lineId).lines).toHaveLength(here.length);
    for (const { memberId, points } of line.buckled!.members) {
      if (!posts.some(({ id }) => id === memberId)) continue;
      expect(Math.hypot(points[0]!.moveX, points[0]!.moveZ)).toBeLessThan(1e-6);
    }
    const farthest = line.buckled!.members.flatMap(({ points }) => points.map((p) => Math.hypot(p.moveX, p.moveZ)));
    expect(Math.max(...farthest)).toBeCloseTo(1, 9);
  });

  it('[frame.buckling] its factor is the least of the line and is never rounded up', () => {
    for (const { lineId, buckled } of evaluation.lines) {
      const row = evaluation.checks.find((c) => c.key === `frame.buckling/${lineId}/whole`)!;
      expect(buckled!.factor).toBeLessThanOrEqual(row.capacity!.value * (1 + 1e-9));
      const said = Number(/([\d.]+) times/.exec(buckledFront(evaluation, lineId)!.description)![1]);
      expect(said).toBeLessThanOrEqual(buckled!.factor);
      expect(said).toBeGreaterThan(buckled!.factor - 0.1);
    }
  });

  it('is nothing for a line that is not there', () => {
    expect(buckledFront(evaluation, 'line-Z')).toBeNull();
  });
});
