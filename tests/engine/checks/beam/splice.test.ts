import { describe, expect, it } from 'vitest';
import { spliceSites } from '../../../../src/engine/checks/beam/splice.ts';
import { emptyLineCase, type LineCase } from '../../../../src/engine/loads/cases.ts';
import type { Capacity, MemberOf, Project } from '../../../../src/engine/project/model.ts';
import { exampleText, soundProject } from '../../../support/files.ts';
import { plainShed } from '../../../support/plain-shed.ts';
import { analysed, combination, lineLoadsOf, membersOf, responseOf } from '../../frame/hand-line.ts';
import { lineBench } from '../../frame/line-bench.ts';
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

/**
 * Source: MECHANICS: statics, by hand. Posts on hinges carry no level force unless a brace makes them a frame. With one
 * brace, at the last post, everything level on the first beam must go through the meeting of the beams:
 * sum of the level forces on the first beam = 0 gives N = H exactly, whatever the sizes and the plumb loads.
 */
describe('two simple beams that meet on a post, the second one braced', () => {
  const members = membersOf({
    postXsIn: [0, 110, 230],
    pierTopsIn: [6, 6, 6],
    beamEndsIn: [-24, 110, 254],
    // without taper, so that the axes lie level and nothing plumb acts along them
    beamDiametersIn: [11, 11],
    bracesAt: [[2, 'minus']],
  });
  const at = (id: string, xIn: number, downLb: number, alongLb: number): LineCase => ({
    ...emptyLineCase(id),
    points: [{ xIn, downLb, alongLb }],
  });
  const cases = [
    at('away', 40, 0, -700),
    at('toward', 40, 0, 700),
    at('awayUnderSnow', 70, 3000, -250),
    at('behind', 180, 900, 700),
  ];
  const frame = analysed(
    members,
    lineLoadsOf(cases),
    cases.map(({ caseId }) => combination({ [caseId]: 1 })),
  );
  const [tie] = spliceSites({ ...lineBench(plainShed()).context, frame });
  const asked = (id: string): number => tie!.demand(responseOf(frame, id, 'bothWays')!);

  // proof [beam.splice]: closed-form - level balance of the first of two beams on hinged posts: N = H
  it('[beam.splice] is drawn apart by the whole level force on the beam that no brace holds', () => {
    expect(off(asked('away'), 700)).toBeLessThan(1e-9);
    expect(off(asked('awayUnderSnow'), 250)).toBeLessThan(1e-9);
  });

  it('[beam.splice] is not drawn apart by what pushes the beams together, nor by what acts behind it', () => {
    expect(asked('toward')).toBe(0);
    expect(asked('behind')).toBe(0);
  });
});

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
    const gone = ['post-2', 'brace-2', 'tie-2', 'brace-across-3', 'brace-across-4'];
    const project = { ...shed, members: shed.members.filter((m) => !gone.includes(m.id)) };
    const row = rowOf(evaluated(project), 'frame.stands/line-high/whole');
    expect(row.status).toBe('fail');
    expect(row.reason?.code).toBe('lineIsMechanism');
  });
});
