import { describe, expect, it } from 'vitest';
import { drivenRows } from '../../../../src/engine/checks/joints/propose/candidates.ts';
import {
  proposeHardware,
  type AskedAtOnce,
  type JointCase,
} from '../../../../src/engine/checks/joints/propose/propose.ts';
import { holderAt } from '../../../../src/engine/checks/joints/holder.ts';
import { jointsOf } from '../../../../src/engine/checks/joints/joints.ts';
import { woodOf } from '../../../../src/engine/checks/joints/fastened/wood-of-piece.ts';
import type { Capacity, FastenerRow, JointKind } from '../../../../src/engine/project/model.ts';
import { proposeFor } from '../../../../src/engine/propose.ts';
import { everythingGivenText, soundProject } from '../../../support/files.ts';
import { plainShed } from '../../../support/plain-shed.ts';
import { jointSource } from '../../frame/line-bench.ts';
import { evaluated } from '../../whole/whole.ts';

const STORM = 1.6;
const caseOf = (kind: JointKind, asked: readonly AskedAtOnce[]): JointCase => {
  const source = jointSource(plainShed());
  const setting = jointsOf(source.project, source.shelter).find((j) => j.kind === kind)!;
  return { setting, woods: { upper: woodOf(source, setting.upper), lower: woodOf(source, setting.lower) }, asked };
};
const pulled = (lb: number): readonly AskedAtOnce[] => [{ CD: STORM, forces: [{ part: 'pull', lb }] }];

/** What a row alone holds against pull in the plain shed. */
function holds(kind: JointKind, row: FastenerRow): number {
  const capacity: Capacity = { kind: 'fasteners', rows: [row], shoulder: false };
  const source = jointSource({ ...plainShed(), joints: { defaults: [{ kind, capacity }], own: [] } });
  const joint = jointsOf(source.project, source.shelter).find((j) => j.kind === kind)!;
  const answer = holderAt(source, kind, joint.key).part('pull', STORM);
  return answer.ok ? answer.capacityLb : 0;
}

describe('hardware that is proposed', () => {
  it('holds what is asked, and nothing with fewer, thinner or shorter pieces does', () => {
    const askedLb = 180;
    const one = caseOf('purlinRafter', pulled(askedLb));
    const proposal = proposeHardware([one], null);
    if (!proposal.ok) throw new Error(proposal.reason.code);
    const [row] = proposal.capacity.rows;
    expect(holds('purlinRafter', row!)).toBeGreaterThanOrEqual(askedLb);
    expect(proposal.share).toBeCloseTo(askedLb / holds('purlinRafter', row!), 9);
    const isBefore = (other: FastenerRow): boolean =>
      other.count - row!.count < 0 ||
      (other.count === row!.count && other.diameterIn < row!.diameterIn) ||
      (other.count === row!.count && other.diameterIn === row!.diameterIn && other.lengthIn < row!.lengthIn);
    const better = drivenRows(one.setting).filter(
      (other) => isBefore(other) && holds('purlinRafter', other) >= askedLb,
    );
    expect(better).toEqual([]);
  });

  it('takes more of it where more is asked', () => {
    const sizes = [60, 180, 400].map((lb) => {
      const proposal = proposeHardware([caseOf('purlinRafter', pulled(lb))], null);
      const row = proposal.ok ? proposal.capacity.rows[0]! : null;
      return row ? row.count * 1000 + row.diameterIn * 100 + row.lengthIn : Infinity;
    });
    expect(sizes).toEqual(sizes.toSorted((a, b) => a - b));
    expect(sizes[0]).toBeLessThan(sizes[2]!);
  });

  it('of a beam on its post is a strap for the pull and a pin for what pushes', () => {
    const asked: readonly AskedAtOnce[] = [
      {
        CD: STORM,
        forces: [
          { part: 'pull', lb: 900 },
          { part: 'along', lb: 300 },
        ],
      },
      { CD: STORM, forces: [{ part: 'across', lb: 500 }] },
    ];
    const proposal = proposeHardware([caseOf('beamPost', asked)], null);
    if (!proposal.ok) throw new Error(proposal.reason.code);
    const [strap, pin] = proposal.capacity.rows;
    expect([strap!.plate !== undefined, pin!.fastener, proposal.capacity.rows.length]).toEqual([true, 'driftPin', 2]);
    expect(proposal.share).toBeLessThanOrEqual(1);
  });

  it('says where only a rated part would do', () => {
    const reason = (kind: JointKind, lb: number): string => {
      const proposal = proposeHardware([caseOf(kind, pulled(lb))], null);
      return proposal.ok ? 'ok' : proposal.reason.code;
    };
    expect(reason('postFoot', 10)).toBe('anchorNotRated');
    expect(reason('purlinRafter', 50_000)).toBe('noFastenersFit');
    expect(reason('sheetPurlin', 10)).toBe('sheetThicknessNotGiven');
  });
});

describe('hardware proposed for a whole shelter', () => {
  const shed = soundProject(everythingGivenText());

  it('passes every row of its joints', () => {
    const proposal = proposeFor(shed, 'purlinRafter');
    if (!proposal.ok) throw new Error(proposal.reason.code);
    const defaults = shed.joints.defaults.map((d) =>
      d.kind === 'purlinRafter' ? { ...d, capacity: proposal.capacity } : d,
    );
    const held = evaluated({ ...shed, joints: { defaults, own: [] } });
    const rows = held.checks.filter((c) => /^purlin\.(tie|slide|together)$/.test(c.ruleId));
    expect(rows.length).toBeGreaterThan(2);
    expect(rows.filter((c) => c.status !== 'pass').map((c) => c.key)).toEqual([]);
    expect(Math.max(...rows.map((c) => c.ratio!))).toBeLessThanOrEqual(proposal.share + 1e-9);
  });

  it('says so where the shelter has no such joint', () => {
    const proposal = proposeFor(shed, 'ledgerWall');
    expect(proposal.ok ? '' : proposal.reason.code).toBe('noSuchJoint');
  });
});
