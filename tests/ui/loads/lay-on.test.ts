import { describe, expect, it } from 'vitest';
import { evaluate } from '../../../src/engine/evaluate.ts';
import { roofPictures } from '../../../src/engine/load-pictures.ts';
import type { LoadPicture } from '../../../src/engine/load-pictures/picture.ts';
import type { Shelter } from '../../../src/engine/geometry/shelter.ts';
import { touches } from '../../../src/ui/drawing/outline.ts';
import { onScreen, type Point, type Segment } from '../../../src/ui/drawing/paper.ts';
import type { LaidOver } from '../../../src/ui/drawing/picture-options.ts';
import { planPicture } from '../../../src/ui/drawing/plan-picture.ts';
import { sectionPicture } from '../../../src/ui/drawing/section-picture.ts';
import type { Picture } from '../../../src/ui/drawing/sketch.ts';
import { layOnPlan } from '../../../src/ui/loads/lay-on-plan.ts';
import { layOnSection } from '../../../src/ui/loads/lay-on-section.ts';
import { loadScale } from '../../../src/ui/loads/load-scale.ts';
import { EXAMPLES, exampleText, soundProject, type Example } from '../../support/files.ts';
import { showFeet } from '../drawing/show.ts';

function loadsOf(name: Example): { readonly shelter: Shelter; readonly pictures: readonly LoadPicture[] } {
  const project = soundProject(exampleText(name));
  const drawn = roofPictures(project);
  const answer = evaluate(project);
  if (!drawn.ok || !answer.ok) throw new Error(`${name} has no figures`);
  return { shelter: answer.evaluation.shelter, pictures: drawn.pictures };
}

const scales = {
  pressures: loadScale(60, 'psf', 78, 'feet'),
  forces: loadScale(3000, 'lb', 58, 'feet'),
  greatestPsf: 60,
};

interface BothViews {
  readonly section: Picture;
  readonly plan: Picture;
}

function viewsOf(shelter: Shelter, picture: LoadPicture, width: number): BothViews {
  const paper = onScreen(width, 450);
  const load = { picture, shelter, system: 'feet', ...scales, title: 'a load', description: 'in words' } as const;
  const common = { paper, showLength: showFeet };
  const on = (laidOver: LaidOver) => ({ ...common, laidOver });
  return {
    section: sectionPicture(shelter, on(layOnSection(load, paper.textSize))),
    plan: planPicture(shelter, { ...on(layOnPlan(load)), units: 'feet' }),
  };
}

/** Straight pieces of every stroke but the hatch, which gives way to labels, read back from the paths. */
function linesOf({ strokes }: Picture): readonly Segment[] {
  return strokes
    .filter(({ ink }) => ink !== 'hatch')
    .flatMap(({ d }) => {
      const points = [...d.matchAll(/[ML](-?[\d.]+) (-?[\d.]+)/g)].map((m): Point => ({
        x: Number(m[1]),
        y: Number(m[2]),
      }));
      return points.slice(1).map((p, i): Segment => [points[i]!, p]);
    });
}

describe('loads on the views', () => {
  it.each(EXAMPLES)('%s: every label of a load lies clear of every straight line', (name) => {
    const { shelter, pictures } = loadsOf(name);
    for (const picture of pictures) {
      const views = viewsOf(shelter, picture, 436);
      for (const view of ['section', 'plan'] as const) {
        const drawn = views[view];
        const lines = linesOf(drawn);
        const crossed = drawn.texts
          .filter(({ kind }) => kind === 'load')
          .filter(({ box }) => lines.some((line) => touches(line, box)))
          .map(({ text }) => text);
        expect([picture.id, view, crossed]).toEqual([picture.id, view, []]);
      }
    }
  });

  it.each(EXAMPLES)('%s: on a telephone no label of a load is lost', (name) => {
    const { shelter, pictures } = loadsOf(name);
    for (const picture of pictures) {
      const { plan } = viewsOf(shelter, picture, 366);
      const labels = plan.texts.filter(({ kind }) => kind === 'load').length;
      const even = picture.strips.filter((s) => Math.abs(s.lowPsf - s.highPsf) < 1e-6).length;
      const uneven = picture.strips.length - even;
      const hung = new Set(picture.points.map((p) => p.lineId)).size;
      expect([picture.id, labels]).toEqual([
        picture.id,
        even + 2 * uneven + hung + picture.along.length + picture.pushes.length,
      ]);
    }
  });

  it('the view says the load in its title and its description', () => {
    const { shelter, pictures } = loadsOf('firewood-shed');
    const { section, plan } = viewsOf(shelter, pictures[0]!, 436);
    expect(section.title).toBe('Section across the frame lines: a load');
    expect(plan.title).toBe('Plan: a load');
    expect(plan.description).toMatch(/ in words$/);
  });
});

describe('the scale of loads', () => {
  // an inch is 96 px and a centimetre 96 / 2.54 px by the standard of style sheets; 1 psf = 0.0478803 kPa, from memory
  it('is round, says what an inch or a centimetre stands for, and keeps the greatest load in its room', () => {
    const inches = loadScale(46, 'psf', 78, 'feet');
    expect(inches.words).toBe('1 in is 60 psf');
    expect(inches.px(60)).toBeCloseTo(96, 9);
    expect(inches.px(-46)).toBeLessThanOrEqual(78);
    const metric = loadScale(46, 'psf', 78, 'metric');
    expect(metric.words).toBe('1 cm is 2 kPa');
    expect(metric.px(2 / 0.0478803)).toBeCloseTo(96 / 2.54, 4);
    expect(metric.px(46)).toBeLessThanOrEqual(78);
  });

  it('is drawn to scale: twice the load is twice as long', () => {
    const forces = loadScale(1200, 'lb', 58, 'feet');
    expect(forces.px(800)).toBeCloseTo(2 * forces.px(400), 9);
    expect(forces.words).toBe('1 in is 2,000 lb');
  });
});
