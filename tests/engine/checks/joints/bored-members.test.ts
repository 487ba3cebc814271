import { describe, expect, it } from 'vitest';
import { netOfBrace } from '../../../../src/engine/checks/brace/brace-net.ts';
import { boredAtStations, boredRows } from '../../../../src/engine/checks/joints/bored-members.ts';
import { jointsOf } from '../../../../src/engine/checks/joints/joints.ts';
import type { BoredRow } from '../../../../src/engine/checks/joints/fastened/bored.ts';
import { holeInPlane } from '../../../../src/engine/checks/wood/bored-section.ts';
import type { FastenerRow, JointKind, Project } from '../../../../src/engine/project/model.ts';
import { everythingGivenText, soundProject } from '../../../support/files.ts';
import { PLAIN, plainShed } from '../../../support/plain-shed.ts';
import { jointSource } from '../../frame/line-bench.ts';
import { redoFaults } from '../redo-step.ts';
import { evaluated, off, rowOf } from '../../whole/whole.ts';

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
const shed = plainShed({ braceEnd: { kind: 'housed', depthIn: 0.5 } });
const given = soundProject(everythingGivenText());
const shedWith = (kind: JointKind, rows: readonly FastenerRow[], from: Project): Project => ({
  ...from,
  joints: {
    ...from.joints,
    own: [],
    defaults: [
      ...from.joints.defaults.filter((d) => d.kind !== kind),
      { kind, capacity: { kind: 'fasteners', rows: [...rows], shoulder: true } },
    ],
  },
});
const areaOf = (rows: readonly BoredRow[]): number =>
  rows.flatMap(({ inPlane }) => inPlane).reduce((sum, b) => sum + b.areaIn2, 0);

describe('wood that hardware takes out of a member', () => {
  const LAG = row({ diameterIn: 0.75, lengthIn: 9, washerIn: 2, headFlatIn: 0.1875 });

  it('is that of its holes, in both pieces of a joint, at the height of the brace', () => {
    const source = jointSource(shedWith('bracePost', [LAG], shed));
    const brace = source.shelter.braces[0]!;
    const [inPost] = boredRows(source, brace.postId);
    const height = brace.postPoint.zIn - source.shelter.posts.find((p) => p.id === brace.postId)!.woodFromZIn;
    expect(Math.abs(inPost!.fromIn - height)).toBeLessThan(brace.postDiameterIn);
    expect(inPost!.toIn).toBe(inPost!.fromIn);
    const [inBrace] = boredRows(source, brace.id);
    // width times length in each piece, in the brace as it is projected on its section; together as long as the screw
    const inBraceIn = inBrace!.inPlane[0]!.areaIn2 / 0.75 / Math.cos((brace.phiDeg * Math.PI) / 180);
    const lengthIn = inPost!.inPlane[0]!.areaIn2 / 0.75 + inBraceIn;
    expect(off(lengthIn, 9 - LAG.headFlatIn!)).toBeLessThan(0.05);
  });

  it('is none of a rating, and none of shanks that are driven', () => {
    const nails = row({ fastener: 'nail', diameterIn: 0.162, lengthIn: 3.5, count: 2, spacingIn: 3 });
    for (const rows of [[], [nails]]) {
      const source = jointSource(shedWith('rafterStrip', rows, given));
      expect(areaOf(boredRows(source, source.shelter.rafters[0]!.id))).toBe(0);
    }
  });

  it('counts once for holes one behind another along the grain, and for each of those beside one another', () => {
    const along = { count: 3, spacingIn: 4 };
    const across = { count: 2, rows: 2, spacingIn: 2 };
    const areas = [{}, along, across].map((change) => {
      const source = jointSource(shedWith('stripBeam', [row(change)], given));
      return areaOf(boredRows(source, source.shelter.beams[0]!.id).slice(0, 1));
    });
    expect(off(areas[1]!, areas[0]!)).toBeLessThan(1e-9);
    expect(off(areas[2]!, 2 * areas[0]!)).toBeLessThan(1e-9);
  });

  it('counts under every rafter, where one row of a strip stands for all of them', () => {
    const source = jointSource(shedWith('stripBeam', [row({})], given));
    const beam = source.shelter.beams[0]!;
    const xs = source.shelter.rafters
      .filter((r) => r.supports.some((s) => s.line === beam.line))
      .map((r) => r.xIn - beam.fromXIn);
    const found = boredRows(source, beam.id).map(({ fromIn }) => fromIn);
    expect(found.map((x) => x.toFixed(6)).toSorted()).toEqual(xs.map((x) => x.toFixed(6)).toSorted());
  });

  it('counts at the stations on both sides of it, and nowhere else', () => {
    const hole = holeInPlane(0.5, -4, 4);
    const rows: readonly BoredRow[] = [{ memberId: 'm', fromIn: 12, toIn: 12, upright: [], inPlane: [hole] }];
    expect(boredAtStations(rows, [0, 10, 10, 20, 30], 'inPlane').map((b) => b.length)).toEqual([0, 1, 1, 1, 0]);
  });

  // proof [brace.crushing]: closed form - the thinnest section less one hole and its flat
  it('[brace.pull] [brace.crushing] are asked of the thinnest section less the hole and its flat', () => {
    const source = jointSource(shedWith('bracePost', [LAG], shed));
    const brace = source.shelter.braces[0]!;
    const d = Math.min(...PLAIN.braceDiametersIn);
    const whole = (Math.PI * d ** 2) / 4;
    const [hole, flat] = boredRows(source, brace.id)[0]!.inPlane;
    // a flat under the head: segment of a circle of the brace's diameter at that end, as deep as the lower rim of the washer
    const joint = jointsOf(source.project, source.shelter).find((j) => j.kind === 'bracePost')!;
    const R = joint.upper.shape!.diameterIn! / 2;
    const phi = (brace.phiDeg * Math.PI) / 180;
    const h = R - (LAG.headFlatIn! * Math.cos(phi) + (LAG.washerIn! / 2) * Math.sin(phi));
    expect(off(flat!.areaIn2, R * R * Math.acos(h / R) - h * Math.sqrt(R * R - h * h))).toBeLessThan(1e-9);
    const net = netOfBrace(source, brace, whole);
    expect(off(net.areaIn2(), whole - hole!.areaIn2 - flat!.areaIn2)).toBeLessThan(1e-12);
    expect(redoFaults((note) => net.areaIn2(note))).toEqual([]);
  });

  it('[beam.bending] [post.crushing] never ask less with holes than without', () => {
    const before = evaluated(shed);
    const after = evaluated(
      shedWith('beamPost', [row({ fastener: 'driftPin', diameterIn: 0.75, lengthIn: 20 })], shed),
    );
    for (const ruleId of ['beam.bending', 'beam.shear', 'post.crushing', 'post.bending'])
      for (const was of before.checks.filter((c) => c.ruleId === ruleId && c.ratio !== null))
        expect(rowOf(after, was.key).ratio ?? Infinity).toBeGreaterThanOrEqual(was.ratio! - 1e-12);
    const key = before.checks.find((c) => c.ruleId === 'beam.bending')!.key;
    expect(rowOf(after, key).ratio!).toBeGreaterThan(rowOf(before, key).ratio!);
  });
});
