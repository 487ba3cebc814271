import { describe, expect, it } from 'vitest';
import { footRows } from '../../../../src/engine/checks/pier/pier-checks.ts';
import type { CheckRow } from '../../../../src/engine/evaluation.ts';
import type { PierFoot, Project } from '../../../../src/engine/project/model.ts';
import { plainShed } from '../../../support/plain-shed.ts';
import { placed } from '../../frame/line-bench.ts';

const ID = 'post-0-0';

/** The shed on piers that are so; pier tops above the ground [in]. */
function onPiers(pierTopIn: number, foot: Partial<PierFoot>): Project {
  const shed = plainShed({ pierTopsIn: [pierTopIn, pierTopIn], bracesAt: [] });
  return {
    ...shed,
    groups: shed.groups.map((g) =>
      g.role === 'post' && g.foot.kind === 'pier' ? { ...g, foot: { ...g.foot, ...foot } } : g,
    ),
  };
}
const rowOf = (project: Project, ruleId: string): CheckRow | undefined =>
  footRows(project, placed(project).posts).find((row) => row.ruleId === ruleId && row.memberId === ID);
const says = (row: CheckRow | undefined) => [row?.status, row?.reason?.code];

describe('how a post on a pier keeps dry', () => {
  // IRC R317.1: columns within 8 in of exposed ground are treated; R317.1.4: not on a pier 6 in above covered earth
  // proof [post.clearance]: no-equation - 8 in above the ground, or a pier 6 in above covered earth (IRC R317.1, R317.1.4)
  it('[post.clearance] asks nothing of wood that ends 8 in above the ground', () => {
    expect(says(rowOf(onPiers(7, { standOffIn: 1 }), 'post.clearance'))).toEqual(['pass', 'clearOfGround']);
    expect(says(rowOf(onPiers(2, { standOffIn: 6 }), 'post.clearance'))).toEqual(['pass', 'clearOfGround']);
  });

  it('[post.clearance] asks whether the earth is covered where only the pier stands 6 in out of it', () => {
    expect(says(rowOf(onPiers(6, {}), 'post.clearance'))).toEqual(['notGiven', 'earthCoverNotSaid']);
    expect(says(rowOf(onPiers(6, { earthCovered: true }), 'post.clearance'))).toEqual(['pass', 'clearOverCover']);
    expect(says(rowOf(onPiers(6, { earthCovered: false }), 'post.clearance'))).toEqual(['fail', 'tooNearGround']);
  });

  it('[post.clearance] fails on a pier that is lower, covered earth or not', () => {
    expect(says(rowOf(onPiers(5.9, { earthCovered: true }), 'post.clearance'))).toEqual(['fail', 'tooNearGround']);
  });

  it('[post.clearance] waits for a pier whose top nobody has measured', () => {
    const shed = onPiers(6, {});
    const members = shed.members.map((m) => (m.role === 'post' ? { ...m, pierTopZIn: null } : m));
    expect(rowOf({ ...shed, members }, 'post.clearance')).toBeUndefined();
  });

  // proof [post.standOff]: no-equation - 1 in off the concrete, or a barrier between (IRC R317.1, R317.1.4)
  it('[post.standOff] asks an inch off the concrete, or a sheet between', () => {
    expect(says(rowOf(onPiers(8, { standOffIn: 1 }), 'post.standOff'))).toEqual(['pass', 'standsOff']);
    expect(says(rowOf(onPiers(8, { standOffIn: 0 }), 'post.standOff'))).toEqual(['notGiven', 'barrierNotSaid']);
    expect(says(rowOf(onPiers(8, { standOffIn: 0.5, barrier: true }), 'post.standOff'))).toEqual([
      'pass',
      'barrierLies',
    ]);
    expect(says(rowOf(onPiers(8, { standOffIn: 0.5, barrier: false }), 'post.standOff'))).toEqual([
      'fail',
      'woodOnConcrete',
    ]);
  });

  it('[post.clearance] [post.standOff] never stand ahead of what is judged by a ratio', () => {
    const rows = ['post.clearance', 'post.standOff'].map((rule) => rowOf(onPiers(8, { standOffIn: 1 }), rule)!);
    expect(rows.map(({ ratio, demand }) => [ratio, demand])).toEqual([
      [0, { value: 0, unit: 'in' }],
      [0, { value: 0, unit: 'in' }],
    ]);
  });
});
