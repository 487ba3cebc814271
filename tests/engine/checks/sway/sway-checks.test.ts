import { describe, expect, it } from 'vitest';
import { analysedLine } from '../../../../src/engine/analysed-line.ts';
import { assembleLine } from '../../../../src/engine/assemble-lines.ts';
import { ratedAlongRows } from '../../../../src/engine/checks/sway/rated-along.ts';
import {
  alongSystem,
  swayAcrossRows,
  swayAlongSites,
  swayForce,
} from '../../../../src/engine/checks/sway/sway-checks.ts';
import type { CheckRow } from '../../../../src/engine/evaluation.ts';
import type { LineCheckContext } from '../../../../src/engine/checks/line-context.ts';
import { materialsOf } from '../../../../src/engine/material-of.ts';
import { holdIndex } from '../../../../src/engine/frame/read-response.ts';
import type { Lateral, Project } from '../../../../src/engine/project/model.ts';
import { lineId, plainShed, type Measures } from '../../../support/plain-shed.ts';
import { lineBench, loadBench } from '../../frame/line-bench.ts';
import { handResponse, siteOf, verdict } from '../sites.ts';

const held = (by: Lateral['by'], measures: Partial<Measures> = {}, more: Partial<Lateral> = {}): Project => ({
  ...plainShed(measures),
  lateral: { along: [{ by, ...more }], across: [] },
});

/** Rows of line A as the whole evaluation makes them. */
function rowsOf(project: Project): readonly CheckRow[] {
  const bench = loadBench(project);
  const givens = { ...bench, materials: materialsOf(project, bench.shelter) };
  const parts = assembleLine(givens, analysedLine(givens, bench.shelter.lines[0]!), new Map());
  return parts.source.flatMap((source) => source.rows());
}
const rowOf = (project: Project, ruleId: string): CheckRow | undefined =>
  rowsOf(project).find((row) => row.ruleId === ruleId);

const bare: Partial<Measures> = { bracesAt: [] };

describe('what holds a line along its length', () => {
  // proof [frame.stands]: no-equation - a mechanism is said in words
  it('[frame.stands] an unbraced pinned line said to be held by nothing fails', () => {
    expect(rowOf(held('none', bare), 'frame.stands')).toMatchObject({
      status: 'fail',
      reason: { code: 'nothingHoldsSideways' },
    });
    expect(rowOf(held('none', bare), 'sway.along')).toMatchObject({
      status: 'fail',
      reason: { code: 'saidToBeUnheld' },
    });
  });

  it('[frame.stands] a beam on one post is a mechanism: it fails, and nothing on it is judged', () => {
    const one = held('kneeBraces', { postXsIn: [72], pierTopsIn: [6], bracesAt: [] });
    const rows = rowsOf(one);
    expect(rows.find(({ ruleId }) => ruleId === 'frame.stands')).toMatchObject({
      status: 'fail',
      reason: { code: 'lineIsMechanism' },
    });
    expect(rows.filter(({ ruleId }) => ruleId === 'beam.bending').map(({ status }) => status)).toEqual(['outside']);
  });

  // proof [sway.along]: closed-form - a hundredth of the height against the move of the seat itself
  it('[sway.along] not decided is not given, with the push that somebody must take', () => {
    const row = rowOf(held(null, bare), 'sway.along')!;
    expect([row.status, row.reason?.code]).toEqual(['notGiven', 'alongNotDecided']);
    expect(row.demand!.value).toBeGreaterThan(0);
    expect(rowOf(held(null, bare), 'frame.stands')).toBeUndefined();
  });

  it('[sway.along] a named system that has no members fails', () => {
    expect(rowOf(held('kneeBraces', bare), 'sway.along')).toMatchObject({
      status: 'fail',
      reason: { code: 'systemWithoutMembers' },
    });
    expect(rowOf(held('embeddedPosts', bare), 'sway.along')!.reason?.code).toBe('systemWithoutMembers');
    expect(rowOf(held('transverseFrame', bare), 'sway.along')!.status).toBe('notGiven');
  });

  it('[sway.along] a top may move by a hundredth of its height', () => {
    const { context } = lineBench(plainShed());
    const post = context.frame.mesh.posts[0]!;
    const site = siteOf(swayAlongSites(context, true), 'sway.along', lineId(0), 'post-0-0');
    const top = context.frame.layout.movesAt + post.nodes[post.count]! * 3;
    const v = verdict(site, handResponse(context, [[top, -0.6]], { swaysAlong: true }));
    expect(v.demand!.value).toBeCloseTo(0.6, 12);
    expect(v.capacity!.value).toBeCloseTo((post.post.axisZIn - 7) / 100, 9);
    expect(swayAlongSites(context, false)).toEqual([]);
  });

  it('the first system that names the line, one of its posts, or nothing at all, is the one', () => {
    const [high, low] = lineBench(plainShed()).shelter.lines;
    const list: Lateral[] = [{ by: null }, { by: 'ratedWalls', lines: ['line-1'] }, { by: 'building', lines: [] }];
    expect(alongSystem(list, low!)?.by).toBe('ratedWalls');
    expect(alongSystem(list, high!)?.by).toBe('building');
    expect(alongSystem([{ by: 'kneeBraces', posts: ['post-0-1'] }], high!)?.by).toBe('kneeBraces');
    expect(alongSystem([{ by: 'kneeBraces', posts: ['post-0-1'] }], low!)).toBeNull();
    expect(alongSystem([{ by: null }], high!)).toBeNull();
  });
});

describe('a rating along the line', () => {
  /** Sway alone, without a frame response: the force of the case itself, times its factor. */
  const contextWith = (holdLb: number): LineCheckContext => {
    const { context } = lineBench(plainShed());
    const hold = holdIndex(context.frame.layout, context.frame.mesh);
    const push = { factors: [{ caseId: 'wind-along-plus-A-clear', factor: 0.6 }], swaysAlong: true } as const;
    const own = handResponse(context, [[hold, holdLb]], push);
    return {
      ...context,
      alongLb: { 'wind-along-plus-A-clear': 1000 },
      frame: { ...context.frame, responses: [{ ...own, held: true }], unheld: [] },
    };
  };
  const ratedAt = (ratedLb: number | null, holdLb: number): CheckRow => {
    const demandLb = swayForce(contextWith(holdLb)).value;
    return ratedAlongRows([{ lineId: lineId(0), label: 'A', system: { by: 'ratedWalls', ratedLb }, demandLb }])[0]!;
  };

  // proof [sway.alongRated]: closed-form - factored sway force, or the hold of the frame where that is more, over the rating
  it('[sway.alongRated] is asked for the sway force itself, or for what the frame leans on it where that is more', () => {
    expect(ratedAt(1200, -100).demand!.value).toBeCloseTo(600, 9);
    expect(ratedAt(1200, -100).ratio!).toBeCloseTo(0.5, 9);
    expect(ratedAt(1200, -900).ratio!).toBeCloseTo(0.75, 9);
  });

  it('[sway.alongRated] that other lines share is asked for what all of them lean on it, or not given', () => {
    const system: Lateral = { by: 'building', ratedLb: 1000 };
    const line = (name: string, demandLb: number | null) => ({ lineId: name, label: name, system, demandLb });
    const rows = ratedAlongRows([line('one', 300), line('two', 500)]);
    expect(rows.map(({ ratio }) => ratio)).toEqual([0.8, 0.8]);
    expect(ratedAlongRows([line('one', 300), line('two', null)]).map(({ status }) => status)).toEqual([
      'notGiven',
      'notGiven',
    ]);
  });

  it('[sway.alongRated] without a number is not given, of zero it fails', () => {
    expect(ratedAt(null, 0)).toMatchObject({ status: 'notGiven', reason: { code: 'ratingNotGiven' } });
    expect(ratedAt(0, 0)).toMatchObject({ status: 'fail', reason: { code: 'saidToBeUnheld' } });
  });
});

describe('an earthquake on posts that stand by their feet', () => {
  // ASCE 7-10 12.2.5.2, read in a public copy: such posts have a limit on what presses on them, and footings of their own.
  it('[site.seismic] is outside, on knee braces with free feet it is not', () => {
    const shaken = (measures: Partial<Measures>) => {
      const project = held('kneeBraces', measures);
      const seismic = { sds: 0.6, sd1: 0.2, r: 1.5, rGivenBy: '' };
      return rowOf({ ...project, site: { ...project.site, seismic } }, 'site.seismic');
    };
    expect(shaken({ fixity: 'fixed' })).toMatchObject({ status: 'outside', reason: { code: 'seismicCantilever' } });
    expect(shaken({})).toBeUndefined();
    expect(rowOf(held('kneeBraces', { fixity: 'fixed' }), 'site.seismic')).toBeUndefined();
  });
});

describe('what holds the shelter across its lines', () => {
  const rows = (lateral: readonly Lateral[], hasFrames = false): readonly CheckRow[] =>
    swayAcrossRows(lateral, 1500, hasFrames);
  const across = (...lateral: Lateral[]): CheckRow => rows(lateral)[0]!;

  it('[sway.across] not decided is not given, with the push; nothing fails', () => {
    expect(across()).toMatchObject({
      status: 'notGiven',
      demand: { value: 1500 },
      reason: { code: 'acrossNotDecided' },
    });
    expect(across({ by: null })).toMatchObject({ status: 'notGiven' });
    expect(across({ by: 'none' })).toMatchObject({ status: 'fail', reason: { code: 'saidToBeUnheld' } });
  });

  it('[sway.across] a frame that is named and does not stand there fails, by whichever of its names', () => {
    for (const by of ['transverseFrame', 'kneeBraces', 'embeddedPosts'] as const) {
      expect(across({ by })).toMatchObject({ status: 'fail', reason: { code: 'rowsWithoutMembers' } });
      expect(rows([{ by }], true)).toEqual([]);
    }
  });

  it('[sway.across] a rating does not answer for a frame that is missing, nor a frame for a rating', () => {
    const both = [{ by: 'building', ratedLb: 1000 }, { by: 'transverseFrame' }] as const;
    expect(rows(both).map((row) => [row.ruleId, row.status])).toEqual([
      ['sway.across', 'fail'],
      ['sway.acrossRated', 'fail'],
    ]);
    expect(rows(both, true).map((row) => [row.ruleId, row.status])).toEqual([['sway.acrossRated', 'fail']]);
  });

  // proof [sway.acrossRated]: closed-form - push across over the sum of the ratings
  it('[sway.acrossRated] adds up what is rated', () => {
    expect(across({ by: 'building', ratedLb: 1200 }, { by: 'ratedWalls', ratedLb: 800 })).toMatchObject({
      ruleId: 'sway.acrossRated',
      status: 'pass',
      ratio: 0.75,
    });
    expect(across({ by: 'building', ratedLb: 1000 })).toMatchObject({ status: 'fail', ratio: 1.5 });
    expect(across({ by: 'building' })).toMatchObject({ status: 'notGiven', reason: { code: 'ratingNotGiven' } });
  });
});
