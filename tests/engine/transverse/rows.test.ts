import { describe, expect, it } from 'vitest';
import type { CheckRow, Evaluation } from '../../../src/engine/evaluation.ts';
import { evaluate } from '../../../src/engine/evaluate.ts';
import type { Lateral, Project } from '../../../src/engine/project/model.ts';
import { PLAIN } from '../../support/plain-shed.ts';
import { tiedShed, type Tied } from '../../support/tied-shed.ts';

function evaluated(project: Project): Evaluation {
  const answer = evaluate(project);
  if (!answer.ok) throw new Error(JSON.stringify(answer.faults));
  return answer.evaluation;
}
const across = ({ checks }: Evaluation): readonly CheckRow[] => checks.filter((c) => c.ruleId === 'sway.across');
const reasons = (rows: readonly CheckRow[]): readonly (string | undefined)[] => rows.map((row) => row.reason?.code);
const heldBy = (project: Project, ...lateral: Lateral[]): Project => ({
  ...project,
  lateral: { ...project.lateral, across: lateral },
});
/** Thick enough for the plain shed to stand across. */
const STOUT: Partial<Tied> = { tieDiametersIn: [14, 14] };

describe('a shelter that frames hold across', () => {
  // proof [sway.across]: closed-form - the top moves by no more than a hundredth of its height, foot to beam axis
  it('[sway.across] is asked at the top of every post in a row', () => {
    const evaluation = evaluated(tiedShed(STOUT));
    const rows = across(evaluation);
    expect(rows.map((row) => row.place.name).toSorted()).toEqual(['post-0-0', 'post-0-1', 'post-1-0', 'post-1-1']);
    for (const row of rows) {
      const post = evaluation.shelter.posts.find((p) => p.id === row.place.name)!;
      expect(row.capacity!.value).toBeCloseTo((post.axisZIn - post.footZIn) / 100, 9);
      expect(row.demand!.value).toBeGreaterThan(0);
    }
  });

  it('[sway.across] named knee braces across is the same frame', () => {
    const one = evaluated(tiedShed());
    const other = evaluated(heldBy(tiedShed(), { by: 'kneeBraces' }));
    const figures = (e: Evaluation) =>
      e.checks.filter((c) => /^(tie|sway\.across)/.test(c.ruleId)).map((c) => [c.key, c.ratio]);
    expect(figures(other)).toEqual(figures(one));
  });

  // proof [sway.transverse]: closed-form - reactions and loads of a row, both forces and the moment, in the test of statics beside
  it('[sway.transverse] is in balance', () => {
    const rows = evaluated(tiedShed()).checks.filter((c) => c.ruleId === 'sway.transverse');
    expect(rows).toHaveLength(2);
    for (const row of rows) expect(row.status).toBe('pass');
  });

  it('[sway.across] fails without a brace, and where braces can only push one way', () => {
    const bare = across(evaluated(tiedShed({ bracesAt: [] })));
    expect(reasons(bare.filter((row) => row.status === 'fail' && row.ratio === null))).toEqual([
      'rowNothingHolds',
      'rowNothingHolds',
    ]);
    const oneWay = across(evaluated(tiedShed({ bracesAt: ['near'], pullLb: null })));
    expect(reasons(oneWay.filter((row) => row.status === 'fail' && row.ratio === null))).toEqual([
      'rowLetsGo',
      'rowLetsGo',
    ]);
  });

  it('[sway.across] says of posts in no row that their beam would have to bend sideways', () => {
    const rows = across(evaluated(tiedShed({ at: [0] })));
    const loose = rows.filter((row) => row.reason?.code === 'postInNoFrame');
    expect(loose.map((row) => [row.memberId, row.status])).toEqual([
      ['post-0-1', 'outside'],
      ['post-1-1', 'outside'],
    ]);
  });

  it('[sway.across] is not given while a line is not known', () => {
    const shed = tiedShed();
    const members = shed.members.map((m) =>
      m.id === 'beam-1-0' && m.role === 'beam' ? { ...m, own: { stock: null } } : m,
    );
    const rows = across(evaluated({ ...shed, members }));
    expect(reasons(rows)).toEqual(['acrossNotKnown', 'acrossNotKnown']);
    expect(rows.every((row) => row.status === 'notGiven')).toBe(true);
  });

  it('holds only the rows that it names', () => {
    const named = heldBy(tiedShed(), { by: 'transverseFrame', posts: ['post-0-0'] }, { by: 'building', ratedLb: 1e5 });
    const rows = across(evaluated(named));
    expect(new Set(rows.map((row) => row.memberId))).toEqual(new Set(['row:post-0-0']));
    expect(reasons(rows)).not.toContain('postInNoFrame');
  });

  it('[tie.fit] says of a tie in no frame that is named that it is not computed', () => {
    for (const by of ['building', null] as const) {
      const { checks } = evaluated(heldBy(tiedShed(), { by, ratedLb: 1e5 }));
      expect(checks.filter((c) => c.memberId === 'tie-0').map((c) => [c.key, c.status, c.reason?.code])).toEqual([
        ['tie.fit/tie-0/whole', 'outside', 'tieOfNoFrame'],
      ]);
    }
  });

  // proof [tie.fit]: closed-form - the level of the tie's axis between foot and seat of each of its posts
  it('[tie.fit] refuses a tie that misses its posts, and says of one beside them that it is not computed', () => {
    const fit = (t: Partial<Tied>) => evaluated(tiedShed(t)).checks.filter((c) => c.ruleId === 'tie.fit');
    expect(fit({})).toEqual([]);
    expect(fit({ ends: 'beside' }).map((row) => [row.status, row.reason?.code])).toEqual([
      ['outside', 'tieBeside'],
      ['outside', 'tieBeside'],
    ]);
    // at the beam's axis the post has no wood
    expect(new Set(reasons(fit({ downIn: 0 })))).toEqual(new Set(['tieMissesPost']));
  });
});

describe('fixed feet across in an earthquake', () => {
  // ASCE 7-10 12.2.5.2, read in a public copy: such posts have a limit on what presses on them, and footings of their own
  it('[site.seismic] are outside, a frame of ties and braces is shaken across', () => {
    const shaken = (project: Project): Evaluation =>
      evaluated({
        ...project,
        site: { ...project.site, seismic: { sds: 0.6, sd1: 0.2, r: 1.5, rGivenBy: '' } },
        groups: project.groups.map((g) =>
          g.role === 'post' && project.lateral.across[0]?.by === 'embeddedPosts'
            ? { ...g, foot: { ...g.foot, fixity: { along: 'pinned', across: 'fixed' } } }
            : g,
        ),
      });
    const fixed = shaken(heldBy(tiedShed({ at: [] }), { by: 'embeddedPosts' })).checks;
    expect(fixed.find((c) => c.key === 'site.seismic/row:post-0-0/whole')).toMatchObject({
      status: 'outside',
      reason: { code: 'seismicCantilever' },
    });
    const braced = shaken(tiedShed());
    expect(braced.checks.some((c) => c.ruleId === 'site.seismic' && c.memberId.startsWith('row:'))).toBe(false);
    expect(braced.loads.combinations.some((c) => c.id === '8+seismic-across-plus')).toBe(true);
    expect(braced.loads.combinations.some((c) => c.id.includes('notional'))).toBe(false);
  });
});

describe('what frames across bring to posts and feet', () => {
  const measures = { ...PLAIN, bracesAt: [] };
  it('is said of every foot: the push across in every combination, its greatest beside those along', () => {
    const evaluation = evaluated(tiedShed({}, measures));
    for (const post of evaluation.lines.flatMap((l) => l.posts)) {
      const pushes = Object.values(post.byCombination).map((c) => c.acrossLb!);
      expect(post.greatestAcrossLb).toBeCloseTo(Math.max(...pushes), 9);
      expect(post.greatestAcrossLb).toBeGreaterThan(0);
    }
  });

  it('is not known where nobody said what holds it', () => {
    const evaluation = evaluated(heldBy(tiedShed(), { by: null }));
    for (const post of evaluation.lines.flatMap((l) => l.posts)) expect(post.greatestAcrossLb).toBeNull();
  });

  it('presses and lifts posts more than the line alone does', () => {
    const [framed, held] = [tiedShed(), heldBy(tiedShed(), { by: 'building', ratedLb: 1e5 })].map(evaluated);
    const feet = (e: Evaluation) => e.lines.flatMap((l) => l.posts);
    feet(framed!).forEach((post, i) => {
      const alone = feet(held!)[i]!;
      expect(post.greatestDownLb).toBeGreaterThan(alone.greatestDownLb);
      expect(post.greatestUpLb).toBeGreaterThan(alone.greatestUpLb);
    });
  });
});

describe('a brace to a rafter', () => {
  // the shed with its rafter over the first post, and that post's brace along the line turned to it
  const shed = (): Project => {
    const plain = heldBy(tiedShed({ at: [] }), { by: 'transverseFrame' });
    const members = plain.members.map((m) =>
      m.role === 'rafter' && m.id === 'rafter-1'
        ? { ...m, xIn: 0.5 }
        : m.id === 'brace-0-0-plus' && m.role === 'brace'
          ? { ...m, to: 'rafter-1' }
          : m,
    );
    return { ...plain, members };
  };

  it('is drawn to the rafter axis; let into the rafter it is not computed, and its row says why', () => {
    const { shelter, checks } = evaluated(shed());
    const brace = shelter.braces.find((b) => b.id === 'brace-0-0-plus')!;
    const rafter = shelter.rafters.find((r) => r.id === 'rafter-1')!;
    expect([brace.plane, brace.toId, brace.topPoint.yIn]).toEqual(['across', 'rafter-1', PLAIN.runIn]);
    // 2 x 8 on edge at 4 in 12: seat of line A at y 0 less its cut, half the depth over the cosine up, 30 in. down the slope
    const seat = rafter.supports.find((s) => s.yIn === 0)!;
    const axis = seat.zIn - 0.5 + 4 / Math.cos(Math.atan(4 / 12)) - (30 * 4) / 12;
    expect(brace.topPoint.zIn).toBeCloseTo(axis, 9);
    expect(checks.find((c) => c.key === 'brace.push/brace-0-0-plus/whole')).toMatchObject({
      status: 'outside',
      reason: { code: 'braceLetIntoRafter' },
    });
    expect(checks.find((c) => c.ruleId === 'sway.across' && c.memberId === 'row:post-0-0')).toMatchObject({
      status: 'outside',
      reason: { code: 'braceLetIntoRafter' },
    });
  });
});

describe('a foot on a pier that may not turn across', () => {
  it('[post.footTurning] shows the moment of the row, which nobody rated', () => {
    const plain = heldBy(tiedShed({ at: [] }), { by: 'embeddedPosts' });
    const groups = plain.groups.map((g) =>
      g.role === 'post'
        ? { ...g, foot: { ...g.foot, fixity: { along: 'pinned' as const, across: 'fixed' as const } } }
        : g,
    );
    const rows = evaluated({ ...plain, groups }).checks.filter((c) => c.ruleId === 'post.footTurning');
    expect(rows.map((row) => [row.memberId, row.status])).toEqual(
      ['post-0-0', 'post-0-1', 'post-1-0', 'post-1-1'].map((id) => [id, 'notGiven']),
    );
    for (const row of rows) expect(row.demand!.value).toBeGreaterThan(0);
  });
});
