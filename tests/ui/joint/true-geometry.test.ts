import { describe, expect, it } from 'vitest';
import { dot, lengthOf, plus, unit, type Vector } from '../../../src/engine/checks/fasteners/space.ts';
import { placeRow } from '../../../src/engine/checks/joints/fastened/row-holds.ts';
import { woodOf } from '../../../src/engine/checks/joints/fastened/wood-of-piece.ts';
import { jointsOf } from '../../../src/engine/checks/joints/joints.ts';
import type { FastenerRow, JointKind, Project } from '../../../src/engine/project/model.ts';
import { bodiesOf } from '../../../src/ui/joint/bodies-of.ts';
import { flatsOf } from '../../../src/ui/joint/heads.ts';
import { looksAt, seen } from '../../../src/ui/joint/looks.ts';
import { measuresOf } from '../../../src/ui/joint/measures.ts';
import { insideOf, seenBody } from '../../../src/ui/joint/outline.ts';
import { onShank, shanksOf } from '../../../src/ui/joint/shanks.ts';
import { everythingGivenText, exampleText, soundProject } from '../../support/files.ts';
import { plainShed } from '../../support/plain-shed.ts';
import { tiedShed } from '../../support/tied-shed.ts';
import { jointSource } from '../../engine/frame/line-bench.ts';
import { eachKind, HARDWARE, ofKind, placed, row } from './hardware.ts';

/** Cylinders all along, so that plane geometry by hand is exact: posts 9, beam 12, braces 5 in. at 45 degrees, let in 1 in. */
const cylinders = (braceEnd: 'housed' | 'coped' = 'housed') =>
  placed(
    plainShed({
      postDiametersIn: [9, 9],
      beamDiametersIn: [12, 12],
      braceDiametersIn: [5, 5],
      runIn: 30,
      dropIn: 30,
      braceEnd: { kind: braceEnd, depthIn: braceEnd === 'housed' ? 1 : 0 },
    }),
  );
const shanksAt = (kind: JointKind, hardware: FastenerRow) => {
  const joint = ofKind(cylinders(), kind);
  return shanksOf(joint, hardware, looksAt(joint)[0].toward);
};
const measured = (kind: JointKind, hardware: FastenerRow): Readonly<Record<string, number>> =>
  Object.fromEntries(measuresOf(shanksAt(kind, hardware)).map(({ what, lengthIn }) => [what, lengthIn]));

// plane geometry of circles and straight lines, by hand
describe('a lag screw through a brace of 5 in. at 45 degrees, square to the post of 9 in. or the beam of 12', () => {
  // the level line through the brace's axis leaves its back 2.5 / cos 45 = 3.536 in. from the contact; the contact lies
  // 4.5 - 1 = 3.5 in. from the post's axis
  const throughBrace = 2.5 * Math.SQRT2;

  it('goes into the post by what its length leaves behind the brace', () => {
    expect(measured('bracePost', row({ lengthIn: 8 }))['depth']).toBeCloseTo(8 - throughBrace, 9);
    expect(measured('bracePost', row({ lengthIn: 8, headFlatIn: 0.5 }))['depth']).toBeCloseTo(8.5 - throughBrace, 9);
  });

  it('has beside it, half way in, half of the chord of the post there', () => {
    const offAxis = 3.5 - (8 - throughBrace) / 2;
    expect(measured('bracePost', row({ lengthIn: 8 }))['edge']).toBeCloseTo(Math.sqrt(4.5 ** 2 - offAxis ** 2), 9);
  });

  it('has in the brace, half way through it, what is left of its fibres up to the contact', () => {
    // half of 3.536 in. from the contact, along a grain at 45 degrees
    expect(measured('bracePost', row({ lengthIn: 8 }))['sideEnd']).toBeCloseTo(2.5, 9);
  });

  it('lies with its washer on a flat as wide as the brace is there', () => {
    // 0.5 in. along the screw is 0.5 cos 45 square to the brace: the chord that far under its surface
    const joint = ofKind(cylinders(), 'braceTop');
    const [shank] = shanksAt('braceTop', row({ headFlatIn: 0.5, washerIn: 1.375 }));
    const [flat] = flatsOf(shank!, looksAt(joint)[1]);
    const floor = lengthOf(plus(flat![2]!, flat![1]!, -1));
    const off = 2.5 - 0.5 * Math.SQRT1_2;
    expect(floor).toBeCloseTo(2 * Math.sqrt(2.5 ** 2 - off ** 2), 9);
    expect(floor).toBeGreaterThan(1.375);
  });
});

describe('a bolt up through a brace and a beam of 12 in. let in 1 in.', () => {
  it('has its nut on the far side, and goes through what the housing leaves', () => {
    // diameter less the housing
    expect(measured('braceTop', row({ fastener: 'bolt', lengthIn: 18 }))['through']).toBeCloseTo(11, 9);
    const [shank] = shanksAt('braceTop', row({ fastener: 'bolt', lengthIn: 18, headFlatIn: 0.5 }));
    expect(shank!.inMainIn).toBeCloseTo(10.5, 9);
    expect(shank!.nutIn).toBeCloseTo(shank!.entersIn + 10.5, 9);
  });
});

describe('fasteners of a plate at the top of a post', () => {
  const plate = { thicknessIn: 0.25, widthIn: 2, steel: 'plate', each: 1 } as const;
  const shanks = shanksAt('beamPost', row({ lengthIn: 3, count: 2, spacingIn: 2.5, endIn: 4, plate }));
  const post = shanks.filter(({ main }) => main.label.startsWith('post'));
  const beam = shanks.filter(({ main }) => !main.label.startsWith('post'));
  const joint = ofKind(cylinders(), 'beamPost');

  it('begin 4 in. under the end of the post and go down by their spacing', () => {
    expect(post.map(({ headAt }) => joint.at[2] - headAt[2])).toEqual([expect.closeTo(4, 9), expect.closeTo(6.5, 9)]);
    expect(beam.map(({ headAt }) => headAt[2] - joint.upper.shape!.axisAt[2]).toSorted()).toEqual([
      expect.closeTo(-1.25, 9),
      expect.closeTo(1.25, 9),
    ]);
  });

  it('have their heads on the steel, and the rest of their length in the wood, on one side of both logs', () => {
    for (const shank of post) expect(shank.inMainIn).toBeCloseTo(2.75, 9);
    expect(new Set(shanks.map(({ into }) => into.join()))).toHaveLength(1);
    // the post's surface is half of 9 in. from its axis, the head a quarter inch before it
    const out = post.map(({ headAt, into }) => -dot(plus(headAt, joint.at, -1), into));
    for (const off of out) expect(off).toBeCloseTo(4.75, 9);
  });
});

describe('plates on flats of the wider log', () => {
  const plate = { thicknessIn: 0.25, widthIn: 2, steel: 'plate', each: 2 } as const;
  // a beam of 9.5 in. over posts of 9: flats a quarter inch deep on both sides of the beam make it 9 in. wide
  const shed = placed(plainShed({ postDiametersIn: [9, 9], beamDiametersIn: [9.5, 9.5] }));
  const joint = ofKind(shed, 'beamPost');
  const plated = row({ lengthIn: 3, count: 2, spacingIn: 1.5, endIn: 4, headFlatIn: 0.25, plate });
  const shanks = shanksOf(joint, plated, looksAt(joint)[0].toward);

  it('stand with every head in one plane, and go in as far as their length behind the steel', () => {
    for (const { headAt, into, inMainIn } of shanks) {
      expect(-dot(plus(headAt, joint.at, -1), into)).toBeCloseTo(4.5 + 0.25, 9);
      expect(inMainIn).toBeCloseTo(2.75, 9);
    }
  });

  it('cut the round to a chord where the plates lie, and nowhere else', () => {
    const { upper, lower } = bodiesOf(joint, shed.shelter, 6, shanks);
    const wide = (ring: readonly Vector[]): number =>
      Math.max(...ring.map(([, y]) => y)) - Math.min(...ring.map(([, y]) => y));
    expect(wide(upper!.atJoint)).toBeCloseTo(9, 9);
    expect(wide(upper!.uncut)).toBeCloseTo(9.5, 9);
    expect(wide(upper!.rings[0]!)).toBeCloseTo(9.5, 9);
    expect(wide(lower!.atJoint)).toBeCloseTo(9, 9);
  });
});

describe('a nail slantwise through a rafter of 1-1/2 in. into its strip', () => {
  const shed = placed(soundProject(everythingGivenText()));
  const joint = ofKind(shed, 'rafterStrip');
  const nails = row({
    fastener: 'nail',
    diameterIn: 0.131,
    lengthIn: 2.5,
    count: 2,
    rows: 2,
    spacingIn: 1.25,
    slanted: true,
  });
  const shanks = shanksOf(joint, nails, looksAt(joint)[0].toward);

  // NDS 12.5.4.1 (from memory): 30 degrees from the side of the rafter, started a third of the length up from the joint
  it('starts on its side a third of its length up, and goes in at 30 degrees', () => {
    for (const { headAt, into, square, entersIn } of shanks) {
      expect(dot(into, square)).toBeCloseTo(Math.cos(Math.PI / 6), 12);
      expect(entersIn).toBeCloseTo(2.5 / 3 / Math.cos(Math.PI / 6), 9);
      const breadthIn = joint.upper.stick?.kind === 'sawn' ? joint.upper.stick.breadthIn : NaN;
      expect(Math.abs(headAt[0] - joint.upper.shape!.axisAt[0])).toBeCloseTo(breadthIn / 2, 9);
    }
  });

  it('comes from both sides in turn, inward', () => {
    const [one, other] = shanks.map(({ into }) => into[0]);
    expect(one! + other!).toBeCloseTo(0, 12);
    for (const { headAt, into } of shanks)
      expect(Math.sign(into[0])).toBe(-Math.sign(headAt[0] - joint.upper.shape!.axisAt[0]));
  });

  it('is measured straight down into the strip', () => {
    const depth = measuresOf(shanks).find(({ what }) => what === 'depth');
    expect(depth!.lengthIn).toBeCloseTo(2.5 * Math.cos(Math.PI / 6) - 2.5 / 3, 9);
  });
});

describe('straps of a tie log at its post', () => {
  it('lie level on the sides of both logs, along the pull', () => {
    const shed = placed(tiedShed({ tieDiametersIn: [8, 8] }));
    const joint = ofKind(shed, 'tiePost');
    const plate = { thicknessIn: 0.25, widthIn: 2, steel: 'plate', each: 2 } as const;
    const shanks = shanksOf(
      joint,
      row({ lengthIn: 2, count: 2, spacingIn: 2, endIn: 3, plate }),
      looksAt(joint)[0].toward,
    );
    // two on each side of each log
    expect(shanks).toHaveLength(8);
    for (const { into, along } of shanks) {
      expect(Math.abs(into[0])).toBeCloseTo(1, 9);
      expect(Math.abs(along[1])).toBeCloseTo(1, 9);
    }
    // a head lies on steel on the surface of an 8 in. log
    const onTie = shanks.filter(({ main }) => main.id === joint.upper.id);
    for (const { headAt } of onTie) expect(Math.abs(headAt[0] - joint.at[0])).toBeCloseTo(4.25, 6);
  });
});

describe('the outlines of both pieces', () => {
  it('show a beam on its seat as a circle less a segment', () => {
    const joint = ofKind(cylinders(), 'beamPost');
    const { upper } = bodiesOf(joint, cylinders().shelter, 0);
    const { outline, isEndOn } = seenBody(upper!, looksAt(joint)[1]);
    const twice = outline.reduce((sum, p, i) => {
      const next = outline[(i + 1) % outline.length]!;
      return sum + p.x * next.y - next.x * p.y;
    }, 0);
    // circle R 6 less a segment 1 in. high
    const segment = 36 * Math.acos(5 / 6) - 5 * Math.sqrt(11);
    expect(isEndOn).toBe(true);
    expect(Math.abs(twice) / 2 / (Math.PI * 36 - segment)).toBeCloseTo(1, 2);
  });

  it('step up by the seat over the width of the post, seen from the front', () => {
    const joint = ofKind(cylinders(), 'beamPost');
    const { upper } = bodiesOf(joint, cylinders().shelter, 0);
    const low = seenBody(upper!, looksAt(joint)[0]).outline.filter(({ y }) => y < joint.at[2] + 0.5);
    const seat = low.filter(({ y }) => Math.abs(y - joint.at[2]) < 1e-6).map(({ x }) => x);
    expect(Math.max(...seat) - Math.min(...seat)).toBeCloseTo(9, 4);
    expect(Math.min(...low.map(({ y }) => y))).toBeCloseTo(joint.at[2] - 1, 6);
  });

  it('end a coped brace on the surface of its log, fibre by fibre', () => {
    const shed = cylinders('coped');
    const joint = ofKind(shed, 'bracePost');
    const { upper } = bodiesOf(joint, shed.shelter, 0);
    for (const [x, y] of upper!.rings[0]!) expect(Math.hypot(x - joint.at[0], y - joint.at[1])).toBeCloseTo(4.5, 9);
  });

  it('cut a rafter plumb at the heel and level from there until the cut runs out', () => {
    const shed = placed(soundProject(exampleText('firewood-shed')));
    const joint = ofKind(shed, 'rafterStrip');
    const { upper, lower } = bodiesOf(joint, shed.shelter, 0);
    const look = looksAt(joint)[0];
    const seatZ = joint.at[2];
    const { outline } = seenBody(upper!, look);
    const level = outline.filter(({ y }) => Math.abs(y - seatZ) < 1e-6).map(({ x }) => x);
    const strip = seenBody(lower!, look).outline.map(({ x }) => x);
    // uphill it runs out of the wood: half of its depth over the rise, on that side of the line
    const { seatCutIn, slopeDeg } = shed.shelter.rafters.find(({ id }) => id === joint.upper.id)!;
    const runsOutAt = joint.at[1] - seatCutIn / 2 / Math.tan((slopeDeg * Math.PI) / 180);
    expect(runsOutAt).toBeGreaterThan(Math.min(...strip));
    expect([Math.min(...level), Math.max(...level)]).toEqual([
      expect.closeTo(runsOutAt, 5),
      expect.closeTo(Math.max(...strip), 6),
    ]);
    // the rafter falls toward growing y: its heel is the end of the seat there, with a corner straight below it
    expect(upper!.axis[1]).toBeLessThan(0);
    expect(outline.some(({ x, y }) => Math.abs(x - Math.max(...level)) < 1e-5 && y < seatZ - 0.1)).toBe(true);
  });

  it('taper as the log does', () => {
    const shed = placed(plainShed({ postDiametersIn: [10, 8] }));
    const joint = ofKind(shed, 'bracePost');
    const { lower } = bodiesOf(joint, shed.shelter, 0);
    const [first, last] = [lower!.rings[0]!, lower!.rings.at(-1)!];
    const thick = (ring: readonly Vector[]): number =>
      Math.max(...ring.map(([, y]) => y)) - Math.min(...ring.map(([, y]) => y));
    const rise = last[0]![2] - first[0]![2];
    const log = joint.lower.stick?.kind === 'round' ? joint.lower.stick.profile : [];
    const [butt, tip] = [log[0]!, log.at(-1)!];
    const each = (butt.diameterIn - tip.diameterIn) / (tip.atIn - butt.atIn);
    expect(thick(first) - thick(last)).toBeCloseTo(each * rise, 6);
  });

  it('hide of a line what lies inside of an outline', () => {
    const square = [
      { x: 0, y: 0 },
      { x: 4, y: 0 },
      { x: 4, y: 4 },
      { x: 0, y: 4 },
    ];
    expect(
      insideOf(
        [
          { x: -2, y: 1 },
          { x: 6, y: 1 },
        ],
        square,
      ),
    ).toEqual([
      [
        { x: 0, y: 1 },
        { x: 4, y: 1 },
      ],
    ]);
    expect(
      insideOf(
        [
          { x: -2, y: 5 },
          { x: 6, y: 5 },
        ],
        square,
      ),
    ).toEqual([]);
    // a line along a side lies on it
    expect(
      insideOf(
        [
          { x: 0, y: 0 },
          { x: 4, y: 0 },
        ],
        square,
      ),
    ).toEqual([]);
  });
});

describe('two looks at a joint', () => {
  it('are square to each other, with x to the right from the front and y to the right along the line', () => {
    for (const joint of eachKind(placed(soundProject(exampleText('gable'))))) {
      const [one, other] = looksAt(joint);
      expect(dot(one.toward, other.toward)).toBeCloseTo(0, 9);
      for (const { up, right, toward } of [one, other]) {
        expect([dot(up, right), dot(up, toward), dot(right, toward)].map((v) => Math.abs(v) < 1e-9)).not.toContain(
          false,
        );
        expect(lengthOf(unit(right))).toBeCloseTo(lengthOf(right), 9);
      }
    }
    const [front, end] = looksAt(ofKind(cylinders(), 'beamPost'));
    expect(seen(front, [3, 1, 2])).toEqual({ x: 3, y: 2 });
    expect(seen(end, [3, 1, 2])).toEqual({ x: 1, y: 2 });
  });
});

describe('what is drawn and what is judged', () => {
  it('find the same length of every fastener in the wood that holds it', () => {
    let compared = 0;
    for (const name of ['firewood-shed', 'gable'] as const) compared += comparedIn(soundProject(exampleText(name)));
    expect(compared).toBeGreaterThan(6);
  });

  /** Every fastener of every kind of joint, as drawn and as judged; how many there were. */
  function comparedIn(project: Project): number {
    const source = jointSource(project);
    let compared = 0;
    for (const joint of eachKind({ shelter: source.shelter, joints: jointsOf(project, source.shelter) })) {
      const capacity = HARDWARE[joint.kind];
      if (capacity?.kind !== 'fasteners' || joint.kind === 'tiePost') continue;
      const woods = { upper: woodOf(source, joint.upper), lower: woodOf(source, joint.lower) };
      for (const hardware of capacity.rows) {
        const judged = placeRow(joint, woods, hardware);
        if (!judged.ok) continue;
        const drawn = shanksOf(joint, { ...hardware, count: 1, rows: 1 }, looksAt(joint)[0].toward);
        for (const { standing } of judged.places) {
          const shank = drawn.find(({ main }) => main.shape === standing.main.shape)!;
          compared += 1;
          expect(shank.inMainIn).toBeCloseTo(standing.main.lengthIn, 6);
          expect(lengthOf(plus(onShank(shank, 1), shank.headAt, -1))).toBeCloseTo(1, 9);
        }
      }
    }
    return compared;
  }
});
