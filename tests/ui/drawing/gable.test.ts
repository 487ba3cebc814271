import { describe, expect, it } from 'vitest';
import { placeShelter } from '../../../src/engine/geometry/place-shelter.ts';
import { gableTemplate } from '../../../src/engine/project/templates/gable.ts';
import { frontPicture } from '../../../src/ui/drawing/front-picture.ts';
import { onScreen } from '../../../src/ui/drawing/paper.ts';
import { planPicture } from '../../../src/ui/drawing/plan-picture.ts';
import { rafterOutline } from '../../../src/ui/drawing/roof-shape.ts';
import { sectionPicture } from '../../../src/ui/drawing/section-picture.ts';
import { countedIds } from '../../support/ids.ts';
import { showFeet } from './show.ts';

const { shelter } = placeShelter(gableTemplate(countedIds()));
const options = { paper: onScreen(900, 620), showLength: showFeet };
const lengthsOf = (picture: ReturnType<typeof sectionPicture>) =>
  Object.fromEntries(picture.texts.map(({ key, text, leaf }) => [key, { text, path: leaf?.path ?? null }]));

describe('section of a gable', () => {
  const picture = sectionPicture(shelter, { ...options, snow: 'snow 20 psf' });
  const lengths = lengthsOf(picture);

  it('has rafters of both slopes that end plumb on the axis of the ridge, at one height', () => {
    const ends = shelter.planes.map((plane) => {
      const outline = rafterOutline(shelter.rafters.find((r) => r.plane === plane.id)!)!;
      return outline.filter(({ x }) => Math.abs(x - 84) < 1e-9).map(({ y }) => y);
    });
    expect(ends[0]).toHaveLength(2);
    expect([...ends[0]!].sort()).toEqual([...ends[1]!].sort());
  });

  it('lets each length move what it measures: lines by their place, overhangs at the eaves only', () => {
    const [b, a, c] = shelter.lines;
    const path = (id: string) => `supportLines[${id}].yIn`;
    const across = ['across-0', 'across-1', 'across-2', 'across-3'].map((key) => lengths[key]);
    expect(across).toEqual([
      { text: '1\' 6"', path: `roofPlanes[${shelter.planes[0]!.id}].lowOverhangIn` },
      { text: '7\' 0"', path: path(a!.id) },
      { text: '7\' 0"', path: path(c!.id) },
      { text: '1\' 6"', path: `roofPlanes[${shelter.planes[1]!.id}].lowOverhangIn` },
    ]);
    expect(b!.yIn).toBe(0);
  });

  it('says how high the ridge of the covering lies, and each pitch', () => {
    // bearing 114, rafter 8 less its seat cut of 0.75 plumb, purlin 1.5 flat, square to 3 in 12
    const cos = 12 / Math.hypot(3, 12);
    expect(lengths['ridge']?.text).toBe(`${showFeet(114 + (8 - 0.75 * cos + 1.5) / cos)} to the ridge`);
    expect(picture.texts.filter(({ text }) => text === '3 in 12')).toHaveLength(2);
    expect(picture.description).toContain('the rafters hang on its beam');
  });
});

describe('plan of a gable', () => {
  it('draws the ridge with its name, and the drip line around both slopes once', () => {
    const { texts, strokes } = planPicture(shelter, { ...options, units: 'feet' });
    expect(texts.some(({ text }) => text === 'ridge')).toBe(true);
    const posts = shelter.posts.length;
    expect(strokes.filter(({ ink }) => ink === 'hidden-line')).toHaveLength(posts + 1);
  });
});

describe('front view of a ridge line', () => {
  it('cuts the rafters of both slopes over the beam', () => {
    const ridge = shelter.lines.find(({ label }) => label === 'A')!;
    const { targets } = frontPicture(shelter, ridge.id, options)!;
    const cut = new Set(targets.map(({ memberId }) => memberId));
    expect(shelter.rafters.filter(({ id }) => cut.has(id))).toHaveLength(20);
  });
});
