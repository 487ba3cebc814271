import { describe, expect, it } from 'vitest';
import { holderAt } from '../../../../src/engine/checks/joints/holder.ts';
import { shearBeside } from '../../../../src/engine/checks/joints/fastened/across-grain.ts';
import { loadOn, placeIn, type Group } from '../../../../src/engine/checks/joints/fastened/group.ts';
import { shankSize } from '../../../../src/engine/checks/joints/fastened/shank-size.ts';
import { standingsOf } from '../../../../src/engine/checks/joints/fastened/standing.ts';
import { woodOf } from '../../../../src/engine/checks/joints/fastened/wood-of-piece.ts';
import { jointsOf } from '../../../../src/engine/checks/joints/joints.ts';
import { cross, type Vector } from '../../../../src/engine/checks/fasteners/space.ts';
import { UP } from '../../../../src/engine/checks/joints/stick-shape.ts';
import type { JointPart } from '../../../../src/engine/checks/joints/rated.ts';
import { stepsOf } from '../../../../src/engine/note.ts';
import type { FastenedCapacity, FastenerRow, JointKind, Project } from '../../../../src/engine/project/model.ts';
import { everythingGivenText, soundProject } from '../../../support/files.ts';
import { plainShed } from '../../../support/plain-shed.ts';
import { tiedShed } from '../../../support/tied-shed.ts';
import { jointSource } from '../../frame/line-bench.ts';
import { evaluated, off } from '../../whole/whole.ts';

const STORM = 1.6;
/** Western larch among the groups of NDS Table 12.3.3A: 0.50. */
const G = 0.5;

const row = (change: Partial<FastenerRow>): FastenerRow => ({
  fastener: 'lag',
  diameterIn: 0.5,
  lengthIn: 6,
  count: 1,
  rows: 1,
  spacingIn: null,
  endIn: null,
  acts: 'both',
  driven: 'wet',
  ...change,
});
/** Wood screws No. 10 with a washer of 1/2 in. */
const SCREWS = row({ fastener: 'screw', diameterIn: 0.19, lengthIn: 4, washerIn: 0.5, count: 2, spacingIn: 2 });
/** Straps 3/16 in. by 2 in. on both sides of beam and post, two lag screws 1/2 by 4 in. in each end. */
const STRAPS = row({
  lengthIn: 4,
  count: 2,
  spacingIn: 2.5,
  endIn: 4,
  plate: { thicknessIn: 0.1875, widthIn: 2, steel: 'plate', each: 2 },
});

/** Half of what the wider piece of a joint is wider: as deep are flats cut in it on both sides for plates [in]. */
function stepIn(project: Project, kind: JointKind): number {
  const { upper, lower } = jointsOf(project, jointSource(project).shelter).find((j) => j.kind === kind)!;
  return Math.abs(upper.shape!.diameterIn! - lower.shape!.diameterIn!) / 2;
}
const FLUSH = { ...STRAPS, headFlatIn: stepIn(plainShed(), 'beamPost') };

const shedWith = (kind: JointKind, rows: readonly FastenerRow[], more: Partial<FastenedCapacity> = {}): Project => ({
  ...plainShed(),
  joints: { defaults: [{ kind, capacity: { kind: 'fasteners', rows: [...rows], shoulder: false, ...more } }], own: [] },
});

function answerOf(project: Project, kind: JointKind, part: JointPart, CD = STORM) {
  const source = jointSource(project);
  const joint = jointsOf(project, source.shelter).find((j) => j.kind === kind)!;
  return holderAt(source, kind, joint.key).part(part, CD);
}
const holds = (project: Project, kind: JointKind, part: JointPart, CD = STORM): number => {
  const answer = answerOf(project, kind, part, CD);
  return answer.ok ? answer.capacityLb : NaN;
};
const reasonOf = (project: Project, kind: JointKind, part: JointPart): string | undefined => {
  const answer = answerOf(project, kind, part);
  const verdict = answer.ok ? null : answer.verdict(100);
  return verdict ? `${verdict.status} ${verdict.reason?.code}` : undefined;
};

/** Where a row stands in the first joint of a kind. */
function standing(project: Project, kind: JointKind, of: FastenerRow) {
  const source = jointSource(project);
  const joint = jointsOf(project, source.shelter).find((j) => j.kind === kind)!;
  const woods = { upper: woodOf(source, joint.upper), lower: woodOf(source, joint.lower) };
  const size = shankSize(of);
  if (!size.ok) throw new Error(size.reason.code);
  return standingsOf(joint, woods, of, size.size).map((place) => {
    if (!place.ok) throw new Error(place.reason.code);
    return place;
  });
}

describe('screws down through a purlin into a rafter', () => {
  // NDS 2018 12.2.2 by hand: 2850 G2 D = 135.4 lb for each inch of thread. Of 4 in. there are 2 in the rafter, less a point
  // of two diameters; both woods are said to be used wet, CM 0.7; two screws. Their heads and steel hold more.
  it('hold the thread in the rafter against pull', () => {
    const W = 2850 * G ** 2 * 0.19;
    const each = W * (2 - 2 * 0.19) * STORM * 0.7;
    expect(holds(shedWith('purlinRafter', [SCREWS]), 'purlinRafter', 'pull')).toBeCloseTo(2 * each, 6);
  });

  // NDS 2018 12.3.1, mode IV, thinner than 1/4 in.: Fe = 16600 G^1.84, Fyb 80,000 psi (Table I1, nominal 0.19), root 0.152 in.
  // (Table L3), KD by the nominal diameter 10 D + 0.5 = 2.4, as the published example has it.
  it('bend in both sticks when they are pushed sideways', () => {
    const Fe = 16600 * G ** 1.84;
    const Z = (0.152 ** 2 / 2.4) * Math.sqrt((2 * Fe * 80_000) / (3 * 2));
    const project = shedWith('purlinRafter', [SCREWS]);
    expect(holds(project, 'purlinRafter', 'across')).toBeCloseTo(2 * Z * STORM * 0.7, 6);
    expect(holds(project, 'purlinRafter', 'along')).toBeCloseTo(2 * Z * STORM * 0.7, 6);
  });

  it('do not hold a direction in which they are said not to act', () => {
    const project = shedWith('purlinRafter', [{ ...SCREWS, acts: 'lateral' }]);
    expect(reasonOf(project, 'purlinRafter', 'pull')).toBe('notGiven rowDoesNotAct');
    expect(holds(project, 'purlinRafter', 'across')).toBeGreaterThan(0);
  });

  it('of two kinds count by the stronger alone, whichever is written first', () => {
    const lag = row({ diameterIn: 0.25, lengthIn: 5, washerIn: 0.75 });
    const alone = [SCREWS, lag].map((r) => holds(shedWith('purlinRafter', [r]), 'purlinRafter', 'pull'));
    expect(alone[0]).not.toBeCloseTo(alone[1]!, 0);
    for (const rows of [
      [SCREWS, lag],
      [lag, SCREWS],
    ])
      expect(holds(shedWith('purlinRafter', rows), 'purlinRafter', 'pull')).toBeCloseTo(Math.max(...alone), 9);
  });

  // NDS 2018 12.1.6.5 (from memory): six diameters of screw 2-1/2 in. long are not in the rafter, whatever the other row holds.
  it('that do not fit break the joint even beside a row that holds', () => {
    const short = { ...SCREWS, lengthIn: 2.5 };
    for (const rows of [
      [SCREWS, short],
      [short, SCREWS],
    ])
      expect(reasonOf(shedWith('purlinRafter', rows), 'purlinRafter', 'across')).toBe('fail fastenerTooShort');
  });

  it.each([
    ['too short', { lengthIn: 2.5 }, 'fail fastenerTooShort'],
    ['ending in the purlin', { lengthIn: 1.5 }, 'fail shankEndsEarly'],
    ['longer than purlin and rafter', { lengthIn: 11 }, 'fail shankComesOut'],
    ['of no listed size', { diameterIn: 0.2 }, 'outside fastenerSizeNotListed'],
    ['two without a spacing', { spacingIn: null }, 'notGiven spacingNotGiven'],
    ['side by side in 2 in. of rafter', { rows: 2, spacingIn: 2 }, 'fail fastenerNearEdge'],
  ] as const)('%s are refused with the rule', (_, change, reason) => {
    expect(reasonOf(shedWith('purlinRafter', [{ ...SCREWS, ...change }]), 'purlinRafter', 'across')).toBe(reason);
  });
});

describe('a lag screw square to the post through the end of a brace', () => {
  const lag = row({ lengthIn: 7, washerIn: 1.375, headFlatIn: 0.6875 });
  const project = shedWith('bracePost', [lag]);

  // NDS 2018 12.4.1: a pull along the brace, at 45 degrees to the surface of the post, against what it holds along the log
  // and along its own shank.
  it('holds the pull of the brace by the equation for both at once', () => {
    const [pull, Z] = [holds(project, 'bracePost', 'pull'), holds(project, 'bracePost', 'along')];
    // shank in the post: 7 - (2.5 / cos 45 - 0.6875) = 4.152 in.; thread of a 7 in. screw 4 in. with a tip of 5/16 in.
    const p = 7 - (2.5 * Math.SQRT2 - 0.6875);
    const W = 1800 * G ** 1.5 * 0.5 ** 0.75 * (Math.min(4, p) - 5 / 16) * STORM;
    const washer = (Math.PI * (1.375 ** 2 - 0.5625 ** 2)) / 4;
    expect(W).toBeGreaterThan(300 * washer * 0.5);
    const sin2 = 0.5;
    const allowed = (w: number): number => (w * Z) / (w * (1 - sin2) + Z * sin2);
    // its washer on the brace, at 45 degrees to the grain, or its thread: the lesser holds
    expect(pull).toBeLessThanOrEqual(allowed(W) + 1e-6);
    expect(pull).toBeGreaterThan(0);
  });

  it('wants a flat that its washer lies on whole, aslant to the brace', () => {
    for (const headFlatIn of [0, 0.25, 0.6]) {
      const shallow = shedWith('bracePost', [row({ lengthIn: 7, washerIn: 1.375, headFlatIn })]);
      expect(reasonOf(shallow, 'bracePost', 'pull')).toBe('fail washerNeedsFlat');
    }
  });

  it('holds no more for a longer load', () => {
    for (const part of ['pull', 'along', 'across'] as const)
      expect(holds(project, 'bracePost', part, 0.9)).toBeLessThan(holds(project, 'bracePost', part));
  });

  it('tells how it comes about, down to the number that judged', () => {
    const source = jointSource(project);
    const joint = jointsOf(project, source.shelter).find((j) => j.kind === 'bracePost')!;
    const { value, steps } = stepsOf((note) => holderAt(source, 'bracePost', joint.key).part('pull', STORM, note));
    expect(value.ok && steps.at(-1)!.result.value).toBe(value.ok && value.capacityLb);
    const told = new Set(steps.map((step) => step.symbol));
    expect(["W'p", "Z'", "Zα'", 'Pw'].filter((symbol) => !told.has(symbol))).toEqual([]);
  });
});

describe('straps from a beam down its post', () => {
  // AISI S100 D2, D3 by hand (from memory): two straps 3/16 by 2 in. of A36: gross t w 36 / 1.67 = 8.08 kip each, net
  // t (w - (1/2 + 1/32)) 58 / 2 = 7.99 kip each; the lag screws hold far less.
  it('hold no more than steel and fasteners', () => {
    expect(reasonOf(shedWith('beamPost', [FLUSH]), 'beamPost', 'pull')).toBeUndefined();
    const held = holds(shedWith('beamPost', [FLUSH]), 'beamPost', 'pull');
    expect(held).toBeLessThan(2 * 0.1875 * (2 - 17 / 32) * 29_000);
    expect(held).toBeGreaterThan(0);
    const narrow = { ...FLUSH, plate: { ...FLUSH.plate!, widthIn: 0.58 } };
    expect(holds(shedWith('beamPost', [narrow]), 'beamPost', 'pull')).toBeCloseTo(
      2 * 0.1875 * (0.58 - 17 / 32) * 29_000,
      6,
    );
  });

  // By hand: half the difference of both diameters is the step; 1/16 in. of air is let pass, more is not.
  it('lie on both logs or are outside: flats as deep as the step, to 1/16 in.', () => {
    expect(reasonOf(shedWith('beamPost', [STRAPS]), 'beamPost', 'pull')).toBe('outside plateNotFlush');
    const flat = (moreIn: number) => [{ ...STRAPS, headFlatIn: FLUSH.headFlatIn + moreIn }];
    expect(reasonOf(shedWith('beamPost', flat(-0.06)), 'beamPost', 'pull')).toBeUndefined();
    for (const moreIn of [-0.07, 0.07])
      expect(reasonOf(shedWith('beamPost', flat(moreIn)), 'beamPost', 'pull')).toBe('outside plateNotFlush');
  });

  it('leave their air at the narrower log', () => {
    const straps = { ...FLUSH, headFlatIn: FLUSH.headFlatIn - 0.06 };
    const [beam, post] = standing(shedWith('beamPost', [straps]), 'beamPost', straps);
    expect([beam!.gapIn.toFixed(9), post!.gapIn.toFixed(9)]).toEqual(['0.000000000', '0.060000000']);
  });

  // By hand: thread of a bolt longer than 6 in. 2 D + 1/2 (NDS Table L1, from memory), its nut D high; both logs are as wide as
  // the post where plates of 3/16 in. lie on flats.
  it('bolted, want bolts whose thread reaches the wood and has room for the nut', () => {
    const source = jointSource(plainShed());
    const joint = jointsOf(plainShed(), source.shelter).find((j) => j.kind === 'beamPost')!;
    const gripIn = joint.lower.shape!.diameterIn! + 2 * 0.1875;
    const bolt = (beyondIn: number): FastenerRow => ({
      ...FLUSH,
      fastener: 'bolt',
      count: 1,
      spacingIn: null,
      lengthIn: gripIn + beyondIn,
    });
    const reason = (beyondIn: number) => reasonOf(shedWith('beamPost', [bolt(beyondIn)]), 'beamPost', 'pull');
    expect([0.49, 0.51, 1.49, 1.51].map(reason)).toEqual([
      'fail boltTooShort',
      undefined,
      undefined,
      'fail boltTooLong',
    ]);
  });

  it('pull only: sideways another row or a rating is asked for', () => {
    expect(reasonOf(shedWith('beamPost', [FLUSH]), 'beamPost', 'across')).toBe('notGiven strapOnlyPulls');
  });

  it('through plates on both sides have half of the log each; through one plate the whole of it', () => {
    const thinnestIn = 8; // the posts of this shed, even
    const lag = (lengthIn: number, each: 1 | 2): FastenerRow => ({
      ...FLUSH,
      lengthIn,
      count: 1,
      spacingIn: null,
      plate: { ...FLUSH.plate!, each },
    });
    const shed = (lengthIn: number, each: 1 | 2) =>
      reasonOf(shedWith('beamPost', [lag(lengthIn, each)]), 'beamPost', 'pull');
    expect(shed(thinnestIn / 2 + 1, 2)).toBe('fail shanksMeet');
    expect([shed(thinnestIn / 2, 2), shed(thinnestIn / 2 + 1, 1)]).toEqual([undefined, undefined]);
  });

  it('that were meant to hold say why they do not, before a pin that holds other ways', () => {
    const pin = row({ fastener: 'driftPin', diameterIn: 0.75, lengthIn: 19, acts: 'lateral' });
    const { headFlatIn: _, ...onRound } = FLUSH;
    expect(reasonOf(shedWith('beamPost', [pin, onRound]), 'beamPost', 'pull')).toBe('outside plateNotFlush');
    expect(reasonOf(shedWith('beamPost', [onRound, pin]), 'beamPost', 'pull')).toBe('outside plateNotFlush');
  });

  it('say what is missing of them', () => {
    const { plate: _, ...loose } = FLUSH;
    expect(reasonOf(shedWith('beamPost', [{ ...loose, fastener: 'strap' }]), 'beamPost', 'pull')).toBe(
      'notGiven strapWithoutFasteners',
    );
    expect(reasonOf(shedWith('beamPost', [{ ...FLUSH, endIn: null }]), 'beamPost', 'pull')).toBe(
      'notGiven endNotGiven',
    );
  });

  it('a long screw down through the beam would end before the post', () => {
    expect(reasonOf(shedWith('beamPost', [row({ lengthIn: 8 })]), 'beamPost', 'pull')).toBe('fail shankEndsEarly');
  });
});

describe('straps along a tie log onto its post', () => {
  const straps = { ...STRAPS, headFlatIn: stepIn(tiedShed(), 'tiePost') };
  const project = {
    ...tiedShed(),
    joints: {
      defaults: [{ kind: 'tiePost', capacity: { kind: 'fasteners', rows: [straps], shoulder: false } } as const],
      own: [],
    },
  };

  // By hand: both sides of tie and post that a strap along the tie lies on face along the line, x; of each lag screw 4 in. less
  // 3/16 in. of steel is in the wood.
  it('cross post and tie along the line', () => {
    const stand = standing(project, 'tiePost', straps);
    expect(stand.map((s) => s.into.map(Math.abs))).toEqual([
      [1, 0, 0],
      [1, 0, 0],
    ]);
    for (const s of stand) expect(s.main.lengthIn).toBeCloseTo(4 - 0.1875, 12);
  });

  it('are judged with the whole shelter, whatever they hold', () => {
    const rows = evaluated(project).checks.filter((c) => c.ruleId === 'tie.pulled');
    expect(rows.length).toBeGreaterThan(0);
  });
});

describe('a post base', () => {
  const anchor = {
    label: 'anchor, invented',
    parts: { pushLb: null, pullLb: 700, alongLb: 500, acrossLb: 400 },
    durationIncluded: 1.6,
  };

  it('is not given while its anchor in the concrete is not rated', () => {
    expect(reasonOf(shedWith('postFoot', [STRAPS]), 'postFoot', 'pull')).toBe('notGiven anchorNotRated');
  });

  it('holds what the weaker of fasteners and anchor hold, and sideways what it is rated for', () => {
    const project = shedWith('postFoot', [STRAPS], { alsoRated: anchor });
    expect(holds(project, 'postFoot', 'pull')).toBe(700);
    expect(holds(project, 'postFoot', 'along')).toBe(500);
    const one = shedWith('postFoot', [{ ...STRAPS, count: 1 }], {
      alsoRated: { ...anchor, parts: { ...anchor.parts, pullLb: 90_000 } },
    });
    expect(holds(one, 'postFoot', 'pull')).toBeLessThan(90_000);
  });
});

describe('a sheet on its screws', () => {
  const screws = row({
    fastener: 'screw',
    diameterIn: 0.19,
    lengthIn: 1.5,
    washerIn: 0.5,
    spacingIn: 9,
    plate: { thicknessIn: 0.0142, widthIn: null, steel: 'strap', each: 1 },
  });

  // By the foot of row 12 / 9 screws. AISI S100 J4.4.2 by hand (from memory): 1.5 t dw Fu / 3 = 1.5 x 0.0142 x 0.5 x 45000 / 3.
  it('holds by the foot of row, here by the sheet drawn over the washers', () => {
    const over = (1.5 * 0.0142 * 0.5 * 45_000) / 3;
    const thread = 2850 * G ** 2 * 0.19 * (1 - 0.38) * STORM * 0.7;
    const held = holds(shedWith('sheetPurlin', [screws]), 'sheetPurlin', 'pull');
    expect(held).toBeCloseTo((Math.min(over, thread) * 12) / 9, 6);
  });

  it('wants the thickness of the sheet', () => {
    const { plate: _, ...loose } = screws;
    expect(reasonOf(shedWith('sheetPurlin', [loose]), 'sheetPurlin', 'pull')).toBe('notGiven sheetThicknessNotGiven');
  });
});

it('what a wall holds is never computed', () => {
  expect(reasonOf(shedWith('stripBeam', []), 'stripBeam', 'pull')).toBe('notGiven fastenersNone');
});

describe('joints that are judged as one', () => {
  /** A plain shed whose strips are sawn; on its lower line, set by the axis, packing fills what the tapering log leaves. */
  const strips = (set: 'top' | 'axis'): Project => {
    const screws: FastenerRow = { ...SCREWS, count: 1, spacingIn: null, diameterIn: 0.242, lengthIn: 5 };
    const project = shedWith('stripBeam', [screws]);
    const stock = {
      kind: 'sawn',
      breadthIn: 3.5,
      depthIn: 1.5,
      lay: 'flat',
      plies: 1,
      species: 'Western larch',
      grade: null,
      use: 'wet',
    } as const;
    return {
      ...project,
      supportLines: project.supportLines.map((line) =>
        line.kind === 'frame' && line.strip ? { ...line, set, strip: { ...line.strip, stock } } : line,
      ),
    };
  };

  it('are held by the weakest: a strip where the packing under it is thickest', () => {
    const [level, packed] = (['top', 'axis'] as const).map((set) => strips(set));
    for (const part of ['along', 'across'] as const)
      expect(holds(packed!, 'stripBeam', part)).toBeLessThan(holds(level!, 'stripBeam', part));
  });
});

describe('a piece that a row pushes across its grain', () => {
  // NDS 3.4.3.3 (from memory): V' = 2/3 Fv' b de within a log, (de / d)^2 of that within 5 d of its end; de of a bolt or lag
  // screw is measured to its centre (of split rings to their edge); round: area for b de
  it('[post.foot] [beam.tie] shears beside its fasteners: near its end by the square of the depth left', () => {
    const shed = plainShed();
    const source = jointSource(shed);
    const joint = jointsOf(shed, source.shelter).find((j) => j.kind === 'beamPost')!;
    const [inBeam] = standing(shed, 'beamPost', FLUSH);
    if (!inBeam) throw new Error('no place');
    const group: Group = { inRow: 1, rows: 1, spacingIn: 0, along: UP, across: [1, 0, 0], beginsAtEnd: true };
    const size = shankSize(FLUSH);
    if (!size.ok) throw new Error('no size');
    const beam = inBeam.main;
    const d = beam.shape.diameterIn!;
    // the screw stands in the middle: half of the log lies on the loaded side of its axis
    const whole = (2 / 3) * beam.wood.values.FvPsi * STORM * ((Math.PI * d * d) / 8);
    const bare = { ...beam, shape: { ...beam.shape, faces: [] } };
    const holdsIn = (endIn: number, force: Vector = UP): number =>
      shearBeside({ ...bare, endIn }, inBeam.into, group, size.size, force, STORM);
    expect(off(holdsIn(6 * d), whole)).toBeLessThan(1e-9);
    expect(off(holdsIn(2 * d), whole / 4)).toBeLessThan(1e-9);
    // aslant to the grain only its part across counts; along the grain nothing shears that way
    expect(off(holdsIn(6 * d, [0.6, 0, 0.8]), whole / 0.8)).toBeLessThan(1e-9);
    expect(holdsIn(6 * d, [1, 0, 0])).toBe(Infinity);
    expect(joint.upper.shape!.diameterIn).toBe(d);
  });

  it('[beam.tieAcross] the piece that holds the point is asked as well as the one under the head', () => {
    const weak = row({ lengthIn: 8, washerIn: 1.375, headFlatIn: 0.1875 });
    const project = shedWith('braceTop', [weak]);
    const { steps } = stepsOf((note) => {
      const source = jointSource(project);
      const joint = jointsOf(project, source.shelter).find((j) => j.kind === 'braceTop')!;
      return holderAt(source, 'braceTop', joint.key).part('across', STORM, note);
    });
    const asked = steps.filter(({ symbol }) => symbol === 'Vp');
    // the beam and the brace
    expect(asked).toHaveLength(2);
  });
});

describe('plates on the end of a brace', () => {
  // plane geometry: the wood ends in the housing, 1 in. behind the face of the post, along the brace by the sine of its angle
  it('have their fasteners as far from the true end of the wood as is written', () => {
    const even = plainShed({ braceDiametersIn: [8, 8], postDiametersIn: [8, 8], dropIn: 40 });
    const joint = jointsOf(even, jointSource(even).shelter).find((j) => j.kind === 'bracePost')!;
    const [inBrace] = standing(even, 'bracePost', { ...STRAPS, endIn: 5 });
    if (!inBrace) throw new Error('no place');
    const { axis } = inBrace.main.shape;
    const at = inBrace.main.entersAt;
    // from the axis of the post to the bolt, level, less what lies before the end of the wood
    const level = Math.abs(at[0] - joint.lower.shape!.axisAt[0]) - (8 / 2 - 1);
    expect(level / Math.abs(axis[0])).toBeCloseTo(5, 9);
  });

  it('stand nearer to its end where several are beside one another, since it ends aslant', () => {
    const even = plainShed({ braceDiametersIn: [8, 8], postDiametersIn: [8, 8], dropIn: 40 });
    const strap = { ...STRAPS, endIn: 5, rows: 2 };
    const size = shankSize(strap);
    const [inBrace] = standing(even, 'bracePost', strap);
    if (!size.ok || !inBrace) throw new Error('no place');
    const { main, into } = inBrace;
    const aside = cross(into, main.shape.axis);
    const group: Group = {
      inRow: 1,
      rows: 2,
      spacingIn: 2.5,
      along: main.shape.axis,
      across: aside,
      beginsAtEnd: true,
    };
    const load = loadOn(main, into, group, main.shape.axis);
    // the face of the post is plumb: so far along the brace for each inch beside its axis
    const slope = Math.abs(main.shape.axis[2] / main.shape.axis[0]);
    expect(placeIn(main, into, group, load, size.size, 4, true).endIn).toBeCloseTo(5 - slope * 1.25, 9);
  });
});

describe('a screw down through a rafter over its line', () => {
  // plane geometry: plumb through the rafter, less half of a seat cut that runs out from its heel to nothing
  it('meets the depth of the rafter over the cosine of its slope, less half of the seat cut', () => {
    const shed = soundProject(everythingGivenText());
    const { slopeDeg, seatCutIn, stick } = jointSource(shed).shelter.rafters[0]!;
    if (stick?.kind !== 'sawn') throw new Error('a sawn rafter is meant');
    const [place] = standing(shed, 'rafterStrip', row({ diameterIn: 0.25, lengthIn: 9, washerIn: 0.75 }));
    const plumbIn = stick.depthIn / Math.cos((slopeDeg * Math.PI) / 180);
    expect(seatCutIn).toBeGreaterThan(0);
    expect(place!.side.lengthIn).toBeCloseTo(plumbIn - seatCutIn / 2, 9);
  });
});

describe('a strap beside a pin', () => {
  const PIN = row({ fastener: 'driftPin', diameterIn: 0.75, lengthIn: 19, acts: 'lateral' });
  const shareOf = (project: Project, parts: readonly JointPart[], forcesLb: readonly number[]) => {
    const source = jointSource(project);
    const joint = jointsOf(project, source.shelter).find((j) => j.kind === 'beamPost')!;
    const share = holderAt(source, 'beamPost', joint.key).together?.(parts, STORM);
    return share ? stepsOf((note) => share(forcesLb, note)) : null;
  };

  // proof [beam.tieTogether]: closed-form - neither row can carry for the other: the harder share alone
  it('[beam.tieTogether] each answers for its own direction; two directions of the pin add up', () => {
    const project = shedWith('beamPost', [FLUSH, PIN]);
    const [T, Z, Y] = (['pull', 'along', 'across'] as const).map((part) => holds(project, 'beamPost', part));
    const both = shareOf(project, ['pull', 'along'], [0.7 * T!, 0.6 * Z!]);
    expect(both?.value).toBeCloseTo(0.7, 12);
    expect(both?.steps.at(-1)?.result.value).toBe(both?.value);
    expect(shareOf(project, ['pull', 'along', 'across'], [0.7 * T!, 0.6 * Z!, 0.3 * Y!])?.value).toBeCloseTo(0.9, 12);
  });

  it('[beam.tieTogether] with a rating beyond them, or a row that may hold both ways, nothing is taken apart', () => {
    const alsoRated = {
      label: 'invented',
      parts: { pushLb: null, pullLb: 9000, alongLb: 9000, acrossLb: 9000 },
      durationIncluded: 1.6,
    };
    expect(shareOf(shedWith('beamPost', [FLUSH, PIN], { alsoRated }), ['pull', 'along'], [1, 1])).toBeNull();
    const screw = row({ diameterIn: 0.375, lengthIn: 16, washerIn: 1, headFlatIn: 0.0625 });
    expect(shareOf(shedWith('beamPost', [FLUSH, screw]), ['pull', 'along'], [1, 1])).toBeNull();
  });
});

describe('nails driven slantwise from a rafter into its strip', () => {
  const shed = soundProject(everythingGivenText());
  const NAILS = row({
    fastener: 'nail',
    diameterIn: 0.131,
    lengthIn: 2.5,
    count: 2,
    rows: 2,
    spacingIn: 1.25,
    slanted: true,
  });
  const strip = (rows: readonly FastenerRow[]): Project => ({
    ...shed,
    joints: {
      own: [],
      defaults: [{ kind: 'rafterStrip', capacity: { kind: 'fasteners', rows: [...rows], shoulder: false } }],
    },
  });

  // NDS 12.5.4.1 (from memory): slant of 30 degrees, started a third of the length from the joint, Ctn 0.67 against pull and
  // 0.83 sideways; W = 1380 G^2.5 D; Table 12N and its neighbours by the yield equations
  it('bear a third of their length in the rafter, and what the slant leaves in the strip', () => {
    const [place] = standing(strip([NAILS]), 'rafterStrip', NAILS);
    expect(place!.side.lengthIn).toBeCloseTo(2.5 / 3, 12);
    expect(place!.main.lengthIn).toBeCloseTo(2.5 * Math.cos(Math.PI / 6) - 2.5 / 3, 12);
    expect(place!.isToed).toBe(true);
  });

  // proof [rafter.tie]: closed form - withdrawal of a plain nail over that penetration, times 0.67, wet service not asked
  it('[rafter.tie] hold 0.67 of what the same nails would hold square, as deep', () => {
    const p = 2.5 * Math.cos(Math.PI / 6) - 2.5 / 3;
    const W = 1380 * G ** 2.5 * 0.131;
    expect(holds(strip([NAILS]), 'rafterStrip', 'pull') / (2 * 0.67 * W * p * STORM)).toBeCloseTo(1, 9);
  });

  it('[rafter.tieAlong] hold 0.83 sideways, told as a step', () => {
    const project = strip([NAILS]);
    const source = jointSource(project);
    const joint = jointsOf(project, source.shelter).find((j) => j.kind === 'rafterStrip')!;
    const { steps } = stepsOf((note) => holderAt(source, 'rafterStrip', joint.key).part('along', STORM, note));
    const value = (symbol: string): number => steps.find((step) => step.symbol === symbol)!.result.value;
    expect(value('Ctn')).toBe(0.83);
    expect(value("Z'")).toBeCloseTo(value('Z') * STORM * value('CM') * 0.83, 9);
  });

  it.each([
    ['a lag screw', { fastener: 'lag', diameterIn: 0.25, lengthIn: 5 }, 'outside toedOnlyNails'],
    [
      'a nail too long for what it starts on',
      { lengthIn: 30, diameterIn: 0.244, fastener: 'spike' },
      'fail toedTooLong',
    ],
    ['a nail through a plate', { plate: { ...STRAPS.plate!, each: 1 } }, 'outside toedNeedsSawn'],
  ] as const)('are refused: %s', (_, change, reason) => {
    expect(reasonOf(strip([{ ...NAILS, ...change }]), 'rafterStrip', 'pull')).toBe(reason);
  });

  it('are refused through a round stick: its side curves away', () => {
    expect(reasonOf(shedWith('braceTop', [NAILS]), 'braceTop', 'pull')).toBe('outside toedNeedsSawn');
  });
});
