import { describe, expect, it } from 'vitest';
import { beamAcrossChecks } from '../../../../src/engine/checks/beam/tie-across.ts';
import { acrossPush } from '../../../../src/engine/loads/across.ts';
import type { CheckRow } from '../../../../src/engine/evaluation.ts';
import type { Project } from '../../../../src/engine/project/model.ts';
import { lineId, plainShed, type Measures } from '../../../support/plain-shed.ts';
import { jointSource } from '../../frame/line-bench.ts';
import { redoFaults } from '../redo-step.ts';

/** strength level [lb] */
const parts = { roofLb: 1000, dragLb: 400, leastLb: 900, inertiaLb: 50 };
/** 0.6 (1000 + 400); without the roof's part the least force is more than the drag: 0.6 x 900 [lb] */
const WHOLE = 840;
const WITHOUT_ROOF = 540;

/** Three posts; a beam from 24 in. before the first to 36 in. past the last. */
const line: Partial<Measures> = {
  postXsIn: [0, 96, 144],
  pierTopsIn: [6, 6, 6],
  beamEndsIn: [-24, 180],
  bracesAt: [],
};

const tied = (measures: Partial<Measures>): Project => ({
  ...plainShed({ ...line, ...measures }),
  joints: {
    defaults: [
      {
        kind: 'beamPost',
        capacity: {
          kind: 'rated',
          label: 'bracket, invented',
          parts: { pushLb: null, pullLb: 1, alongLb: 1, acrossLb: 1000 },
          durationIncluded: 1.6,
        },
      },
    ],
    own: [],
  },
});

function rowsOf(project: Project, analysed: readonly string[] = [lineId(0), lineId(1)]): readonly CheckRow[] {
  const across = { ...parts, oneWayLb: parts.roofLb, asdLb: acrossPush(parts) };
  return beamAcrossChecks(jointSource(project), across, new Set(analysed)).rows();
}
const rowOf = (project: Project, beam: string, post: string): CheckRow =>
  rowsOf(project).find((r) => r.key === `beam.tieAcross/${beam}/${post}`)!;

describe('a beam on its posts across the line', () => {
  // proof [beam.tieAcross]: closed-form - the push across on the shelter by the length of line that each seat holds
  it('[beam.tieAcross] half way to the next posts and the whole of an overhang, of 204 in. in all', () => {
    const project = tied({ horizontalHeldBy: 'worse' });
    const shares = [24 + 48, 48 + 24, 24 + 36];
    shares.forEach((share, i) => {
      const row = rowOf(project, 'beam-0-0', `post-0-${i}`);
      expect(row.demand!.value).toBeCloseTo((WHOLE * share) / 204, 9);
      expect(row.ratio!).toBeCloseTo((WHOLE * share) / 204 / 1000, 9);
    });
  });

  it('[beam.tieAcross] the seats of two beams that meet on a post each hold the length on their own side', () => {
    const project = tied({ beamEndsIn: [-24, 96, 180], horizontalHeldBy: 'worse' });
    expect(rowOf(project, 'beam-0-0', 'post-0-1').demand!.value).toBeCloseTo((WHOLE * 48) / 204, 9);
    expect(rowOf(project, 'beam-0-1', 'post-0-1').demand!.value).toBeCloseTo((WHOLE * 24) / 204, 9);
  });

  it('[beam.tieAcross] every line that may hold the push of the roof is asked for all of it, another for the rest', () => {
    const sumOn = (heldBy: string, at: number): number =>
      rowsOf(tied({ horizontalHeldBy: heldBy }))
        .filter((r) => r.memberId === `beam-${at}-0`)
        .reduce((sum, r) => sum + r.demand!.value, 0);
    for (const heldBy of ['worse', 'each-square'])
      expect([sumOn(heldBy, 0), sumOn(heldBy, 1)].map(Math.round)).toEqual([WHOLE, WHOLE]);
    expect([sumOn(lineId(0), 0), sumOn(lineId(0), 1)].map(Math.round)).toEqual([WHOLE, WITHOUT_ROOF]);
  });

  it('[beam.tieAcross] while a line is not analysed nobody knows the push', () => {
    const rows = rowsOf(tied({}), [lineId(0)]);
    expect(rows.length).toBe(3);
    for (const row of rows) expect([row.status, row.reason?.code]).toEqual(['notGiven', 'acrossNotKnown']);
  });

  // ASCE 7-16 1.4.1 with 2.4: 0.7 of one per cent of the dead load where that is more
  it('the push is never under 0.7 of one per cent of the dead load, and its step can be redone', () => {
    expect(acrossPush({ roofLb: 0, dragLb: 0, leastLb: 0, inertiaLb: 50 })).toBeCloseTo(35, 12);
    expect(redoFaults((note) => acrossPush(parts, note))).toEqual([]);
  });
});
