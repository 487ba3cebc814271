import { describe, expect, it } from 'vitest';
import type { Capacity, MemberOf, Project } from '../../../../src/engine/project/model.ts';
import { exampleText, soundProject } from '../../../support/files.ts';
import { evaluated, off, rowOf } from '../../whole/whole.ts';

const shed = soundProject(exampleText('firewood-shed'));

/** The shed with its high beam in two logs that meet on a third post. */
function spliced(capacity: Capacity = null): Project {
  const beam = shed.members.find((m): m is MemberOf<'beam'> => m.id === 'beam-high')!;
  const stem = shed.logs.find((l) => l.id === 'log-1')!;
  return {
    ...shed,
    logs: [...shed.logs, { ...stem, id: 'log-3' }],
    members: [
      ...shed.members.filter((m) => m !== beam),
      { ...beam, toXIn: 78 },
      {
        ...beam,
        id: 'beam-second',
        fromXIn: 78,
        own: { stock: { kind: 'log', logId: 'log-3', fromButtIn: 12, buttAt: 'start' } },
      },
      { id: 'post-mid', role: 'post', group: 'posts', line: 'line-high', xIn: 78, pierTopZIn: 6, gradeZIn: 0 },
    ],
    joints: { ...shed.joints, own: [{ key: 'beamSplice/beam-second', capacity }] },
  };
}

describe('two beams that meet on a post', () => {
  it('[beam.splice] is not given until somebody says what ties them, with what draws them apart', () => {
    const evaluation = evaluated(spliced());
    const row = rowOf(evaluation, 'beam.splice/beam-second/post-mid');
    expect(row.status).toBe('notGiven');
    // N of either beam at the splice, tension +, from the report of the members
    const ends = evaluation.lines
      .flatMap((l) => l.members)
      .flatMap(({ memberId, axialMaxLb }) =>
        memberId === 'beam-high' ? axialMaxLb.slice(-1) : memberId === 'beam-second' ? axialMaxLb.slice(0, 1) : [],
      );
    expect(ends.length).toBe(2);
    expect(off(row.demand!.value, Math.max(...ends))).toBeLessThan(1e-12);
  });

  it('[beam.splice] takes its own rated pull', () => {
    const parts = { pushLb: null, pullLb: 50, alongLb: null, acrossLb: null };
    const row = rowOf(
      evaluated(spliced({ kind: 'rated', label: 'a strap', parts, durationIncluded: 1.6 })),
      'beam.splice/beam-second/post-mid',
    );
    expect(row.status).toBe('fail');
  });

  it('[beam.splice] asks nothing of a beam in one piece', () => {
    expect(evaluated(shed).checks.filter((row) => row.ruleId === 'beam.splice')).toEqual([]);
  });
});

describe('a mechanism', () => {
  it('[frame.stands] fails in words: a beam on one post', () => {
    const project = { ...shed, members: shed.members.filter((m) => m.id !== 'post-2' && m.id !== 'brace-2') };
    const row = rowOf(evaluated(project), 'frame.stands/line-high/whole');
    expect(row.status).toBe('fail');
    expect(row.reason?.code).toBe('lineIsMechanism');
  });
});
