import { describe, expect, it } from 'vitest';
import { explain } from '../../../src/engine/explain.ts';
import { exampleText, soundProject } from '../../support/files.ts';
import { evaluated, off } from './whole.ts';

/**
 * The high line of the demo, worked out with a pocket calculator from the measures in its file: two posts 13 ft apart,
 * a tapering beam past both by 30 in., ten rafters alike on both sides of the middle, a tie log with its brace across from each
 * post. Nothing of the engine is used but
 * its answers. Formulas as printed; weights of wood as the handbook's chapter 4 has them.
 */
const project = soundProject(exampleText('firewood-shed'));
const evaluation = evaluated(project);
const A_TENTH_OF_A_PERCENT = 1e-3;

const pressure = (name: string): number => {
  const found = evaluation.loads.pressures.find((p) => p.name === name)?.value;
  if (found === undefined || found === null) throw new Error(`no ${name}`);
  return found;
};

/** ASCE 7-16 eq. 7.3-1: pf = 0.7 Ce Ct Is pg; at 14 degrees Cs = 1 (figure 7.4-1c); risk category I: Is = 0.8 */
const snowPsf = 0.7 * 1 * 1.2 * 0.8 * 55;
/** ASCE 7-16 eq. 26.10-1 and table 26.10-1 note 1: exposure B, zg = 1200 ft, alpha = 7, height taken as 15 ft */
const qPsf = 0.00256 * (2.01 * (15 / 1200) ** (2 / 7)) * 1 * 0.85 * 1 * 100 ** 2;

const RISE = 3 / 12;
const COVERING_IN = 18 + 108 + 18;
/** of covering over its level run */
const SLOPED = Math.hypot(1, RISE);
/**
 * Western larch, green: G 0.48 (handbook table 5-3b); thick logs by the whole tree, 60.25 % (tree weights,
 * table of green weights; the heartwood's 54 % is less), thin logs and sawn sticks from such by sapwood, 119 % (handbook table 4-1)
 */
const greenPcf = (moisture: number): number => 62.4 * 0.48 * (1 + moisture);
const WHOLE = greenPcf(0.6025) / 1728;
const SAP = greenPcf(1.19) / 1728;

/** Rafters 23 in. apart, the outer ones carry to the edges of the roof at -30 and 186. */
const rafters = Array.from({ length: 10 }, (_, i) => ({
  xIn: -25.5 + 23 * i,
  widthIn: i === 0 || i === 9 ? 16 : 23,
}));
const PURLINS_LB = 6 * 3.5 * 1.5 * 216 * SAP;
const RAFTER_LB_PER_IN = 2 * 8 * SAP;
const ROOF_AREA_FT2 = (COVERING_IN * SLOPED * 216) / 144;
/** covering and purlins, per square foot of slope */
const surfacePsf = 1 + PURLINS_LB / ROOF_AREA_FT2;

/** Both lines carry half of every rafter: overhangs are alike. */
const snowLb = (widthIn: number): number => (snowPsf * widthIn * COVERING_IN) / 144 / 2;
const deadLb = (widthIn: number): number =>
  ((surfacePsf * widthIn) / 144 + RAFTER_LB_PER_IN) * COVERING_IN * SLOPED * 0.5;

/** The beam log from its butt: 13.5 in., 12.5 at 120 (the smaller calliper), 11.75 at 252; the beam starts at 12. */
const beamDiameter = (xIn: number): number => {
  const s = xIn + 30 + 12;
  return s <= 120 ? 13.5 - s / 120 : 12.5 - ((s - 120) / 132) * 0.75;
};
/** Weight of a foot of beam and strip, spread over the inches of that foot. */
const beamLb = (fromIn: number, toIn: number): number => {
  const area = (x: number) => (Math.PI * beamDiameter(x) ** 2) / 4;
  const log = ((area(fromIn) + 4 * area((fromIn + toIn) / 2) + area(toIn)) / 6) * WHOLE;
  return (log + 3.5 * 3 * SAP) * (toIn - fromIn);
};
const pieces = Array.from({ length: 72 }, (_, i) => ({ xIn: -30 + 3 * i + 1.5, lb: beamLb(-30 + 3 * i, -27 + 3 * i) }));

const SPAN = 156;
const braceLb = ((Math.PI * (6.5 ** 2 + 6.5 * braceTip() + braceTip() ** 2)) / 12) * Math.hypot(30, 30) * SAP;
function braceTip(): number {
  return 6.5 - (0.5 * Math.hypot(30, 30)) / 72;
}
/** The tie log, 9 in. at the post and 8.25 ten feet on, lies between the axes 108 in. apart: by the lever its half at this post. */
const tieLb = ((Math.PI / 4) * 108 * SAP * (9 ** 2 + 4 * 0.5 * (9 - (0.75 * 54) / 120) ** 2)) / 6;
/** Everything that hangs on the beam, braces idle: half of each brace hangs at its top. */
const onBeam = (withSnow: boolean): readonly { readonly xIn: number; readonly lb: number }[] => [
  ...pieces,
  ...rafters.map((r) => ({ xIn: r.xIn, lb: deadLb(r.widthIn) + (withSnow ? snowLb(r.widthIn) : 0) })),
  { xIn: 30, lb: braceLb / 2 },
  { xIn: SPAN - 30, lb: braceLb / 2 },
];
const firstSeat = (loads: ReturnType<typeof onBeam>): number =>
  loads.reduce((sum, p) => sum + p.lb * (1 - p.xIn / SPAN), 0);
const momentAt = (xIn: number, loads: ReturnType<typeof onBeam>): number =>
  firstSeat(loads) * xIn - loads.reduce((sum, p) => sum + (p.xIn < xIn ? p.lb * (xIn - p.xIn) : 0), 0);

/** How deep the lag screws of the strip, 5/16 by 6 in., go through 3 in. of strip and its packing into the beam. */
function lagInBeam(xIn: number): number {
  const { stations } = evaluation.shelter.beams.find(({ id }) => id === 'beam-high')!;
  const i = stations.findIndex((s) => s.xIn >= xIn);
  const [a, b] = [stations[Math.max(0, i - 1)]!, stations[i]!];
  const share = b.xIn > a.xIn ? (xIn - a.xIn) / (b.xIn - a.xIn) : 0;
  return 6 - 3 - (a.shimIn + share * (b.shimIn - a.shimIn));
}
/** A circle less a hole 5/16 in. wide from its top, by the parallel-axis theorem (NDS 3.1.2). */
function netModulus(d: number, deepIn: number): number {
  const [R, area, holeArea] = [d / 2, (Math.PI * d ** 2) / 4, 0.3125 * deepIn];
  const middle = R - deepIn / 2;
  const z = (-holeArea * middle) / (area - holeArea);
  const I = (Math.PI * d ** 4) / 64 - (0.3125 * deepIn ** 3) / 12 - holeArea * middle ** 2 - (area - holeArea) * z * z;
  return I / (R - z);
}

const footLb = (combination: string): number => {
  const post = evaluation.lines[0]?.posts.find((p) => p.postId === 'post-1');
  const found = post?.byCombination[`${combination}|idle`]?.verticalLb;
  if (found === undefined) throw new Error(`no reaction in ${combination}`);
  return found;
};

describe('the demo by hand', () => {
  it('[site.value] balanced snow is 0.7 Ce Ct Is pg (ASCE 7-16 eq. 7.3-1)', () => {
    expect(off(pressure('balancedSnow'), snowPsf)).toBeLessThan(1e-12);
  });

  it('[site.value] velocity pressure is 0.00256 Kz Kzt Kd Ke V2 (ASCE 7-16 eq. 26.10-1)', () => {
    expect(off(pressure('velocityPressure'), qPsf)).toBeLessThan(1e-12);
  });

  it('[pier.bearing] a post brings half of the snow of its line to the ground', () => {
    const half = rafters.reduce((sum, r) => sum + snowLb(r.widthIn), 0) / 2;
    expect(off(footLb('3-snow+snow') - footLb('1'), half)).toBeLessThan(1e-9);
    // a quarter of what lies on the level area of the roof
    expect(off(half, (snowPsf * 216 * COVERING_IN) / 144 / 4)).toBeLessThan(1e-12);
  });

  it('[pier.bearing] and its share of beam, roof, braces and tie log, and its own wood up to the beam axis', () => {
    // heights as the drawing gives them; the post is 10 in. through on the mean, so not a thin log
    const { axisZIn, footZIn, lengthIn } = evaluation.shelter.posts.find((p) => p.id === 'post-1')!;
    const topIn = 10.5 - (1.25 * lengthIn) / 144;
    expect((10.5 + topIn) / 2).toBeGreaterThan(10);
    const postLb = ((Math.PI * (10.5 ** 2 + topIn ** 2)) / 8) * (axisZIn - footZIn) * WHOLE;
    // the brace that runs across is as long as the other one, and all of it hangs on the post
    const expected = firstSeat(onBeam(false)) + braceLb / 2 + braceLb + tieLb + postLb;
    expect(off(footLb('1'), expected)).toBeLessThan(A_TENTH_OF_A_PERCENT);
  });

  it('[beam.bending] under dead load and snow, braces idle, is that of a simple beam with overhangs', () => {
    const loads = onBeam(true);
    const answer = explain(project, 'beam.bending/beam-high/post-1~post-2', '3-snow+snow');
    const step = answer.ok ? answer.steps.find((s) => s.symbol === 'fb') : undefined;
    const put = (symbol: string): number => step?.put.find((p) => p.symbol === symbol)?.value ?? NaN;
    // the worst place is where M / S is greatest, under a rafter, where its strip is screwed down
    const worst = rafters
      .map(({ xIn }) => ({ moment: momentAt(xIn, loads), S: netModulus(beamDiameter(xIn), lagInBeam(xIn)) }))
      .reduce((a, b) => (b.moment / b.S > a.moment / a.S ? b : a));
    expect(off(put('M'), worst.moment)).toBeLessThan(A_TENTH_OF_A_PERCENT);
    expect(off(put('S'), worst.S)).toBeLessThan(1e-9);
    expect(put('k')).toBe(1);
  });
});
