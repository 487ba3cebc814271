import { describe, expect, it } from 'vitest';
import type { MemberEnvelope } from '../../../src/engine/evaluation.ts';
import { frontPicture } from '../../../src/ui/drawing/front-picture.ts';
import { onScreen } from '../../../src/ui/drawing/paper.ts';
import { planPicture } from '../../../src/ui/drawing/plan-picture.ts';
import { purlinOutline, rafterOutline } from '../../../src/ui/drawing/roof-shape.ts';
import { sectionPicture } from '../../../src/ui/drawing/section-picture.ts';
import { braceOutline, postFace, undersideNear } from '../../../src/ui/drawing/sticks.ts';
import { sampleShelter } from './sample-shelter.ts';
import { showFeet } from './show.ts';

const options = { paper: onScreen(900, 620), showLength: showFeet };

describe('front view', () => {
  it('writes overhangs, bays, seat height, run and drop as the shelter has them', () => {
    const shelter = sampleShelter({ postXIn: [0, 150], overhangIn: 33, braceIn: { run: 32, drop: 28 } });
    const picture = frontPicture(shelter, 'line-A', options)!;
    const byKey = Object.fromEntries(picture.texts.map((t) => [t.key, t]));
    expect(byKey['along-0']?.text).toBe('2\' 9"');
    expect(byKey['along-1']?.text).toBe('12\' 6"');
    expect(byKey['along-1']?.leaf).toEqual({ path: 'members[post-A2].xIn', valueIn: 150, sign: 1 });
    expect(byKey['along-0']?.leaf).toEqual({ path: 'members[beam-A].fromXIn', valueIn: 33, sign: -1 });
    expect(byKey['run-brace-A1plus']?.leaf?.valueIn).toBe(32);
    expect(byKey['drop-brace-A1plus']?.leaf?.valueIn).toBe(28);
    const post = shelter.posts[0]!;
    expect(byKey['seat']?.leaf?.valueIn).toBeCloseTo(post.seatZIn - post.gradeZIn, 9);
  });

  it('uses one scale both ways: the distance of two posts on paper is the bay times the scale', () => {
    const { view } = frontPicture(sampleShelter(), 'line-A', options)!;
    expect(view.at(150, 0).x - view.at(0, 0).x).toBeCloseTo(150 * view.scale, 9);
    expect(view.at(0, 0).y - view.at(0, 40).y).toBeCloseTo(40 * view.scale, 9);
  });

  it('is nothing for a ledger line and for a line that does not exist', () => {
    const shelter = sampleShelter({ onWall: true, ties: false });
    expect(frontPicture(shelter, 'line-A', options)).toBeNull();
    expect(frontPicture(shelter, 'line-Z', options)).toBeNull();
  });

  it('says what is not given instead of drawing a size', () => {
    const shelter = sampleShelter();
    const bare = {
      ...shelter,
      beams: shelter.beams.map((b) => ({ ...b, stick: null })),
      posts: shelter.posts.map((p) => ({ ...p, stick: null, pierTopZIn: null })),
    };
    const texts = frontPicture(bare, 'line-A', options)!.texts.map((t) => t.text);
    expect(texts).toContain('beam: size not given');
    expect(texts).toContain('A1: size not given');
    expect(texts).toContain('A2: pier top not given');
  });

  it('tells in words what a person cannot see', () => {
    const { title, description } = frontPicture(sampleShelter(), 'line-A', options)!;
    expect(title).toBe('Front view of line A');
    expect(description).toContain('A1 to A2 12\' 6" between axes.');
    expect(description).toContain('2 knee braces.');
  });
});

describe('knee brace', () => {
  it('meets the surfaces of a straight post and a level beam where plane geometry says', () => {
    // 45 degrees, post and beam without taper: the edges of a brace of diameter d leave the post's face r away from its
    // axis; each edge is offset by d/2 square to the axis, that is by d/sqrt(2) along the face
    const shelter = sampleShelter({ postXIn: [0, 150], buttIn: 10, tipIn: 10, braceIn: { run: 32, drop: 32 } });
    const brace = { ...shelter.braces.find((b) => b.id === 'brace-A1plus')! };
    const post = { ...shelter.posts[0]!, stick: straight(8, 200) };
    const round = { ...brace, stick: straight(5, 50) };
    const outline = braceOutline(
      round,
      { x: brace.postPoint.xIn, y: brace.postPoint.zIn },
      { x: brace.topPoint.xIn, y: brace.topPoint.zIn },
      postFace(post, 0, 1),
      undersideNear(shelter.beams[0]!, brace.topPoint.xIn),
    )!;
    const faceZ = brace.postPoint.zIn + 4;
    const along = 2.5 * Math.SQRT2;
    const underZ = brace.topPoint.zIn - 5;
    expect(outline.map((p) => [p.x, p.y])).toEqual([
      [expect.closeTo(4, 9), expect.closeTo(faceZ + along, 9)],
      [expect.closeTo(32 - 5 - along, 9), expect.closeTo(underZ, 9)],
      [expect.closeTo(32 - 5 + along, 9), expect.closeTo(underZ, 9)],
      [expect.closeTo(4, 9), expect.closeTo(faceZ - along, 9)],
    ]);
  });
});

describe('section', () => {
  it('draws rafter, purlin and covering as one stack: purlins fill the room between rafter and covering', () => {
    const shelter = sampleShelter({ risePer12: 4 });
    const rafter = rafterOutline(shelter.rafters[0]!)!;
    const purlin = purlinOutline(shelter.purlins[1]!, shelter.planes[0]!)!;
    // outlines are (y, z); rafter corners 2 and 3 are the ends of its top edge, purlin corner 2 lies on its underside
    const [high, eave] = [rafter[2]!, rafter[3]!];
    const under = purlin[2]!;
    const topAt = high.y + ((under.x - high.x) / (eave.x - high.x)) * (eave.y - high.y);
    expect(under.y).toBeCloseTo(topAt, 6);
  });

  it('writes overhangs and the distance of the lines, each with the number that it changes', () => {
    const picture = sectionPicture(sampleShelter(), options);
    const leaves = picture.texts.flatMap((t) => (t.leaf ? [[t.text, t.leaf.path]] : []));
    expect(leaves).toEqual([
      ['1\' 6"', 'roofPlanes[plane].highOverhangIn'],
      ['8\' 8"', 'supportLines[line-B].yIn'],
      ['1\' 6"', 'roofPlanes[plane].lowOverhangIn'],
    ]);
    expect(picture.texts.map((t) => t.text)).toContain('3 in 12');
  });
});

describe('plan', () => {
  it('has y down the paper and a scale bar of the length it names', () => {
    const picture = planPicture(sampleShelter(), { ...options, units: 'feet' });
    const place = (key: string) => picture.texts.find((t) => t.key === key)!;
    expect(place('line-line-A').box.y).toBeLessThan(place('line-line-B').box.y);
    const middle = (key: string): number => place(key).box.x + place(key).box.width / 2;
    const feet = Number.parseInt(place('bar-end').text, 10);
    expect(middle('bar-end') - middle('bar-start')).toBeCloseTo(feet * 12 * picture.view.scale, 6);
  });

  it('counts a metric bar in metres', () => {
    const picture = planPicture(sampleShelter(), { ...options, units: 'metric' });
    const bar = picture.texts.find((t) => t.key === 'bar-end')!;
    expect(bar.text).toMatch(/^\d+ m$/);
  });
});

describe('forces on the log', () => {
  const shelter = sampleShelter();
  const beam = shelter.beams[0]!;
  const atIn = [0, 108, 216];
  const zeros = atIn.map(() => 0);
  const envelope: MemberEnvelope = {
    memberId: beam.id,
    atIn,
    axialMaxLb: zeros,
    axialMinLb: zeros,
    shearMaxLb: zeros,
    shearMinLb: zeros,
    momentMaxLbIn: [0, 5000, 0],
    momentMinLbIn: zeros,
    sagIn: zeros,
    bendingRatio: zeros,
  };
  const drawn = (members: readonly MemberEnvelope[], kind: 'moment' | 'sag') =>
    frontPicture(shelter, 'line-A', { ...options, overlay: { kind, members, show: (v) => `moment ${v}` } })!;

  it('hang a sagging moment below the axis and name its greatest value', () => {
    const picture = drawn([envelope], 'moment');
    const lobe = picture.strokes.filter((s) => s.ink === 'force-line');
    expect(lobe).toHaveLength(1);
    const ys = [...lobe[0]!.d.matchAll(/[ML][\d.]+ ([\d.]+)/g)].map((m) => Number(m[1]));
    const axisY = picture.view.at(0, Math.min(...beam.stations.map((s) => s.axisZIn))).y;
    expect(Math.max(...ys)).toBeGreaterThan(axisY);
    expect(Math.min(...ys)).toBeGreaterThanOrEqual(
      picture.view.at(0, Math.max(...beam.stations.map((s) => s.axisZIn))).y - 0.01,
    );
    expect(picture.texts.map((t) => t.text)).toContain('moment 5000');
  });

  it('draw nothing where every value is zero', () => {
    expect(drawn([envelope], 'sag').strokes.filter((s) => s.ink === 'force-line')).toEqual([]);
  });
});

function straight(diameterIn: number, lengthIn: number) {
  return {
    kind: 'round',
    logId: 'straight',
    woodId: 'larch',
    buttAt: 'start',
    flatIn: 0,
    profile: [
      { atIn: 0, diameterIn },
      { atIn: lengthIn, diameterIn },
    ],
  } as const;
}
