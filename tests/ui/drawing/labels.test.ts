import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { frontPicture } from '../../../src/ui/drawing/front-picture.ts';
import { overlap, touches } from '../../../src/ui/drawing/outline.ts';
import { onScreen, onSheet, type Paper, type Segment } from '../../../src/ui/drawing/paper.ts';
import { planPicture } from '../../../src/ui/drawing/plan-picture.ts';
import { sectionPicture } from '../../../src/ui/drawing/section-picture.ts';
import type { Picture } from '../../../src/ui/drawing/sketch.ts';
import { placeLabels, type LabelWish } from '../../../src/ui/drawing/place-labels.ts';
import { sampleShelter, type SampleChoice } from './sample-shelter.ts';
import { showFeet } from './show.ts';

const choice: fc.Arbitrary<SampleChoice> = fc
  .record({
    bays: fc.array(fc.integer({ min: 60, max: 190 }), { minLength: 1, maxLength: 4 }),
    overhangIn: fc.integer({ min: 6, max: 48 }),
    lineYIn: fc.constantFrom([0, 84], [0, 108], [0, 90, 180]),
    risePer12: fc.constantFrom(0.5, 2, 3, 6),
    bearingZIn: fc.integer({ min: 108, max: 160 }),
    buttIn: fc.integer({ min: 9, max: 16 }),
    postIn: fc.integer({ min: 6, max: 12 }),
    legs: fc.option(fc.integer({ min: 18, max: 40 })),
    gradeFallIn: fc.integer({ min: -8, max: 14 }),
    rafterSpacingIn: fc.integer({ min: 16, max: 32 }),
    embedded: fc.boolean(),
    pad: fc.boolean(),
    ties: fc.boolean(),
    onWall: fc.boolean(),
  })
  .map(({ bays, legs, ...rest }) => ({
    ...rest,
    ties: rest.ties && !rest.onWall,
    tipIn: rest.buttIn - 2,
    postXIn: bays.reduce<number[]>((xs, bay) => [...xs, xs[xs.length - 1]! + bay], [0]),
    braceIn: legs === null ? null : { run: legs, drop: legs },
  }));
const papers: readonly Paper[] = [onScreen(900, 620), onScreen(360, 520), onSheet(260, 170)];

function picturesOf(c: SampleChoice, paper: Paper): readonly Picture[] {
  const shelter = sampleShelter(c);
  const options = { paper, showLength: showFeet };
  const fronts = shelter.lines.flatMap((l) => {
    const picture = frontPicture(shelter, l.id, options);
    return picture ? [picture] : [];
  });
  return [
    ...fronts,
    sectionPicture(shelter, { ...options, snow: 'snow 46 psf' }),
    planPicture(shelter, { ...options, units: 'feet' }),
  ];
}

describe('labels on the drawings', () => {
  it('never lie on each other or over the edge of the paper, on 50 random shelters in every view and size', () => {
    fc.assert(
      fc.property(choice, (c) => {
        for (const paper of papers) {
          for (const picture of picturesOf(c, paper)) {
            picture.texts.forEach((a, i) => {
              expect(a.box.x).toBeGreaterThanOrEqual(0);
              expect(a.box.y).toBeGreaterThanOrEqual(0);
              expect(a.box.x + a.box.width).toBeLessThanOrEqual(picture.view.width);
              expect(a.box.y + a.box.height).toBeLessThanOrEqual(picture.view.height);
              for (const b of picture.texts.slice(i + 1)) {
                expect(overlap(a.box, b.box), `${a.text} on ${b.text} in ${picture.title}`).toBe(false);
              }
            });
          }
        }
      }),
      { seed: 20261125, numRuns: 50 },
    );
  });

  it('name every post and write every length, however crowded the drawing', () => {
    fc.assert(
      fc.property(choice, (c) => {
        const shelter = sampleShelter(c);
        for (const paper of papers) {
          const plan = planPicture(shelter, { paper, showLength: showFeet, units: 'feet' });
          const names = plan.texts.map((t) => t.text);
          for (const post of shelter.posts) expect(names).toContain(post.label);
          const frame = shelter.lines.find((l) => l.kind === 'frame')!;
          const front = frontPicture(shelter, frame.id, { paper, showLength: showFeet })!;
          const along = front.texts.filter((t) => t.key.startsWith('along-'));
          expect(along).toHaveLength(c.postXIn.length + 1);
          expect(front.texts.filter((t) => t.kind === 'name')).toHaveLength(c.postXIn.length);
        }
      }),
      { seed: 20261126, numRuns: 50 },
    );
  });
});

/** Straight pieces of what was drawn, read back from its paths. */
function linesOf(picture: Picture): readonly Segment[] {
  return picture.strokes.flatMap((stroke) =>
    stroke.d
      .split('M')
      .filter((piece) => piece !== '' && !piece.includes('a'))
      .flatMap((piece) => {
        const points = piece
          .replace('Z', '')
          .split('L')
          .map((pair) => pair.split(' ').map(Number))
          .map(([x, y]) => ({ x: x!, y: y! }));
        const closed = piece.endsWith('Z') ? [...points, points[0]!] : points;
        return closed.slice(1).map((p, i): Segment => [closed[i]!, p]);
      }),
  );
}

describe('labels and lines', () => {
  it.each([
    ['two posts', {}],
    ['four posts, close', { postXIn: [0, 80, 170, 240], overhangIn: 18 }],
    ['embedded, on a slope', { embedded: true, gradeFallIn: 14, postXIn: [0, 110, 230] }],
    ['on a wall', { onWall: true, ties: false }],
  ])('no label of the front view or the section lies on a line, wide or narrow: %s', (_, c) => {
    const shelter = sampleShelter(c);
    const frame = shelter.lines.find((l) => l.kind === 'frame')!;
    for (const paper of papers) {
      const options = { paper, showLength: showFeet };
      for (const picture of [frontPicture(shelter, frame.id, options)!, sectionPicture(shelter, options)]) {
        const lines = linesOf(picture);
        expect(lines.length).toBeGreaterThan(40);
        for (const text of picture.texts) {
          expect(
            lines.filter((l) => touches(l, text.box)),
            `${text.text} in ${picture.title}`,
          ).toEqual([]);
        }
      }
    }
  });
});

describe('placing a label', () => {
  const sheet = { x: 0, y: 0, width: 200, height: 100 };
  const wish = (key: string, over: Partial<LabelWish> = {}): LabelWish => ({
    key,
    width: 40,
    height: 10,
    centres: [{ x: 100, y: 50 }],
    about: { x: 100, y: 50 },
    optional: false,
    ...over,
  });

  it('takes the first place it asked for when nothing lies there', () => {
    expect(placeLabels([wish('a')], [], sheet)).toEqual([
      { key: 'a', box: { x: 80, y: 45, width: 40, height: 10 }, leader: null },
    ]);
  });

  it('moves off a line and points back with a leader', () => {
    const [placed] = placeLabels(
      [wish('a')],
      [
        [
          { x: 0, y: 50 },
          { x: 200, y: 50 },
        ],
      ],
      sheet,
    );
    expect(placed?.leader).not.toBeNull();
    expect(placed!.box.y > 50 || placed!.box.y + placed!.box.height < 50).toBe(true);
  });

  it('leaves an optional label out rather than leading to it', () => {
    expect(
      placeLabels(
        [wish('a', { optional: true })],
        [
          [
            { x: 0, y: 50 },
            { x: 200, y: 50 },
          ],
        ],
        sheet,
      ),
    ).toEqual([]);
  });

  it('leaves a label out when the paper is full', () => {
    const many = Array.from({ length: 60 }, (_, i) => wish(`n${i}`));
    expect(placeLabels(many, [], sheet).length).toBeLessThan(60);
  });
});
