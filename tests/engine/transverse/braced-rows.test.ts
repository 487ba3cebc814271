import { describe, expect, it } from 'vitest';
import { jointsOf } from '../../../src/engine/checks/joints/joints.ts';
import { jointKey } from '../../../src/engine/project/joint-capacity.ts';
import { evaluate } from '../../../src/engine/evaluate.ts';
import type { CheckRow, Evaluation } from '../../../src/engine/evaluation.ts';
import type { Member, Project } from '../../../src/engine/project/model.ts';
import { upliftOf } from '../../../src/engine/uplift.ts';
import { bracedRafterId, bracedShed, rafterBraceId } from '../../support/braced-shed.ts';
import { postId } from '../../support/plain-shed.ts';

function evaluated(project: Project): Evaluation {
  const answer = evaluate(project);
  if (!answer.ok) throw new Error(JSON.stringify(answer.faults));
  return answer.evaluation;
}
const rowsOf = ({ checks }: Evaluation, ruleId: string, memberId: string): readonly CheckRow[] =>
  checks.filter((c) => c.ruleId === ruleId && c.memberId === memberId);

const withMembers = (project: Project, ...members: readonly Member[]): Project => ({
  ...project,
  members: [...project.members, ...members],
});

/** Shelters of which one thing lies beyond the method, and how it is said. */
const BEYOND: readonly (readonly [code: string, project: () => Project])[] = [
  ['rafterBesideRow', () => bracedShed({ at: [0], besideIn: 3 })],
  ['braceLetIntoRafter', () => bracedShed({ at: [0], braceTop: 'housed' })],
  ['rafterNotOnRow', () => bracedShed({ at: [0] }, { lineYsIn: [0, 60, 120], rafters: 'continuous' })],
  [
    'bracedRafterTyped',
    () => {
      const shed = bracedShed({ at: [0] });
      const typed = {
        kind: 'typed',
        name: 'I',
        FbSIn3Psi: 1e5,
        VallowLb: 1e4,
        EIPsiIn4: 1e8,
        heavyPlf: 3,
        lightPlf: 2,
      } as const;
      return {
        ...shed,
        groups: shed.groups.map((g) => (g.id === 'poles' && g.role === 'rafter' ? { ...g, stock: typed } : g)),
      };
    },
  ],
  [
    'bracedRafterCut',
    () => ({
      ...bracedShed({ at: [0] }),
      cuts: [
        {
          id: 'c',
          member: bracedRafterId(0),
          kind: 'dap',
          centreIn: 60,
          lengthIn: 4,
          depthIn: 1,
          angleDeg: 0,
          by: 'hand',
        },
      ],
    }),
  ],
  [
    'ownOnBracedRafter',
    () => ({
      ...bracedShed({ at: [0] }),
      ownLoads: [
        {
          id: 'swing',
          name: 'Swing',
          kind: 'live',
          duration: 'tenYears',
          removable: true,
          direction: 'down',
          where: { on: 'member', member: bracedRafterId(0), atIn: 60, lb: 200 },
        },
      ],
    }),
  ],
];

describe('a row whose braces run to a rafter, where the method ends', () => {
  it.each(BEYOND)('says %s on the row, the rafter and its braces', (code, project) => {
    const evaluation = evaluated(project());
    for (const [ruleId, memberId] of [
      ['sway.across', `row:${postId(0, 0)}`],
      ['rafter.frameBending', bracedRafterId(0)],
      ['brace.push', rafterBraceId(0, 'high')],
    ] as const)
      expect(rowsOf(evaluation, ruleId, memberId)).toMatchObject([{ status: 'outside', reason: { code } }]);
    expect(evaluation.rows.map((row) => row.frame)).toEqual([null]);
  });

  it('says of two beams that meet under the rafter that their joint is not computed', () => {
    const spliced = bracedShed(
      { at: [1] },
      {
        postXsIn: [0, 72, 144],
        pierTopsIn: [6, 6, 6],
        beamEndsIn: [-24, 72, 168],
        rafterXsIn: [-20, 24, 48, 96, 120, 164],
      },
    );
    expect(rowsOf(evaluated(spliced), 'sway.across', `row:${postId(0, 1)}`)).toMatchObject([
      { status: 'outside', reason: { code: 'rafterOverSplice' } },
    ]);
  });

  it('says of a brace in no frame that holds the shelter that its push is not computed', () => {
    const shed = bracedShed({ at: [0] });
    const elsewhere: Project = {
      ...shed,
      lateral: { ...shed.lateral, across: [{ by: 'building', ratedLb: 20_000, givenBy: 'owner' }] },
    };
    expect(rowsOf(evaluated(elsewhere), 'brace.push', rafterBraceId(0, 'low'))).toMatchObject([
      { status: 'outside', reason: { code: 'braceOfNoFrame' } },
    ]);
  });

  it('says of a row with a tie log besides that the two share the push in a way that is not computed', () => {
    const shed = bracedShed({ at: [0] });
    const tie: Member = {
      id: 'tie',
      role: 'tie',
      group: 'ties',
      fromPost: postId(0, 0),
      toPost: postId(1, 0),
      pastFromIn: 0,
      pastToIn: 0,
    };
    const tied: Project = {
      ...withMembers(shed, tie),
      groups: [
        ...shed.groups,
        {
          id: 'ties',
          role: 'tie',
          stock: { kind: 'log', logId: 'pole-log', fromButtIn: 0, buttAt: 'start' },
          downIn: 40,
          ends: 'between',
        },
      ],
    };
    expect(rowsOf(evaluated(tied), 'sway.across', `row:${postId(0, 0)}`)).toMatchObject([
      { status: 'outside', reason: { code: 'rowOfTiesAndRafters' } },
    ]);
  });
});

describe('a row whose braces run to a rafter, in an evaluation', () => {
  const evaluation = evaluated(bracedShed());

  it('is judged: tops, braces, rafter and every face between rafter and post', () => {
    const asked = (ruleId: string) => evaluation.checks.filter((c) => c.ruleId === ruleId);
    expect(asked('sway.across')).toHaveLength(4);
    expect(asked('rafter.frameBending')).toHaveLength(6);
    for (const ruleId of ['rafter.frameLevel', 'rafter.frameLift', 'rafter.rolling']) {
      expect(asked(ruleId)).toHaveLength(12);
      for (const row of asked(ruleId)) expect(row.status).not.toBe('outside');
    }
    expect(
      evaluation.checks.filter((c) => c.memberId.startsWith('to-rafter') && c.ruleId === 'brace.push'),
    ).toHaveLength(4);
    for (const row of asked('sway.transverse')) expect(row.status).toBe('pass');
  });

  it('is reported with its rafters, and what it takes for granted is said', () => {
    expect(evaluation.rows.map((row) => row.rafterIds)).toEqual([[bracedRafterId(0)], [bracedRafterId(1)]]);
    expect(evaluation.assumptions.filter((m) => m.code === 'assumeRafterHinge')).toHaveLength(2);
  });

  it('leaves joints without ratings not given where the frame asks something of them', () => {
    const shed = bracedShed();
    const bare = evaluated({ ...shed, joints: { defaults: [], own: [] } });
    const rows = bare.checks.filter((c) => c.ruleId === 'rafter.frameLevel' || c.ruleId === 'rafter.frameLift');
    expect(rows.length).toBeGreaterThan(0);
    for (const row of rows) expect(row.status).toBe('notGiven');
  });

  it('presses posts more than the lines alone do', () => {
    const shed = bracedShed();
    const held = evaluated({
      ...shed,
      lateral: { ...shed.lateral, across: [{ by: 'building', ratedLb: 1e5, givenBy: 'owner' }] },
    });
    const feet = (e: Evaluation) => e.lines.flatMap((l) => l.posts);
    feet(evaluation).forEach((post, i) => expect(post.greatestDownLb).toBeGreaterThan(feet(held)[i]!.greatestDownLb));
  });

  // seen in a mirror that stands along the lines, nothing of it changes
  it('bears the same where its roof falls the other way', () => {
    const ratios = (e: Evaluation, called: (key: string) => string) =>
      new Map(e.checks.flatMap((c) => (c.ratio === null ? [] : [[called(c.key), c.ratio] as const])));
    // a row and its spans are named from low y up
    const ENDS: Readonly<Record<string, string>> = { minus: 'plus', plus: 'minus' };
    const seenBack = (key: string): string =>
      key
        .replace('row:post-1-', 'row:post-0-')
        .replace(
          /(minus|post-\d-\d)~(plus|post-\d-\d)$/,
          (_, a: string, b: string) => `${ENDS[b] ?? b}~${ENDS[a] ?? a}`,
        );
    const falls = ratios(evaluation, (key) => key);
    const rises = ratios(evaluated(bracedShed({}, { lineYsIn: [0, -120] })), (key) =>
      /^(rafter\.frame|sway\.across)/.test(key) ? seenBack(key) : key,
    );
    const asked = [...falls.keys()].filter((key) => /^(rafter|brace|post|pier|sway\.a)/.test(key));
    const alike = asked.filter((key) => Math.abs(falls.get(key)! - (rises.get(key) ?? NaN)) < 1e-6);
    expect(asked.filter((key) => !alike.includes(key))).toEqual([]);
    expect(asked.length).toBeGreaterThan(100);
  });

  it('is in the uplift chain of its posts: what the frame lifts where that is harder than the wind on the rafter', () => {
    const chain = upliftOf(bracedShed(), evaluation).find((c) => c.postId === postId(0, 0))!;
    const rowOf = (name: string) => chain.links.find((link) => link.name === name)!.row!;
    for (const name of ['rafter', 'strip'])
      expect(rowOf(name)).toMatchObject({ ruleId: 'rafter.frameLift', place: { name: postId(0, 0) } });
    // alike ratings, so that the harder pull has the higher ratio
    const pulls = (ruleId: string, memberId: string) =>
      rowsOf(evaluation, ruleId, memberId).map((c) => c.demand!.value!);
    expect(rowOf('rafter').demand!.value).toBeGreaterThan(Math.max(...pulls('rafter.tie', bracedRafterId(0))));
  });

  it('is judged with sawn rafters as well', () => {
    const shed = bracedShed({ at: [0] });
    const sawn = {
      kind: 'sawn',
      breadthIn: 4,
      depthIn: 8,
      lay: 'edge',
      plies: 1,
      species: 'Western larch',
      grade: 'No. 2',
      use: 'wet',
    } as const;
    const groups = shed.groups.map((g) => (g.id === 'poles' && g.role === 'rafter' ? { ...g, stock: sawn } : g));
    const { checks } = evaluated({ ...shed, groups });
    for (const ruleId of ['rafter.frameBending', 'rafter.frameShear', 'rafter.framePush', 'rafter.frameSeat']) {
      const rows = checks.filter((c) => c.ruleId === ruleId && c.memberId === bracedRafterId(0));
      expect(rows.length).toBeGreaterThan(0);
      for (const row of rows) expect(row.ratio).toBeGreaterThan(0);
    }
  });
});

describe('the joint of a brace and the rafter that it runs to', () => {
  // the middle of the contact lies on the axis of the brace, the fastener stands square to the rafter
  it('lies on the axis of the brace, its fastener square to the slope', () => {
    const project = bracedShed();
    const { shelter } = evaluated(project);
    const rise = 4 / 12;
    for (const end of ['high', 'low'] as const) {
      const brace = shelter.braces.find((b) => b.id === rafterBraceId(0, end))!;
      const joint = jointsOf(project, shelter).find((j) => j.id === jointKey('braceTop', brace.id))!;
      const [, dy, dz] = joint.line!.at.map((v, i) => v - joint.at[i]!);
      const [y, z] = [brace.topPoint.yIn - brace.postPoint.yIn, brace.topPoint.zIn - brace.postPoint.zIn];
      expect(dy! * z - dz! * y).toBeCloseTo(0, 9);
      const [, iy, iz] = joint.line!.into;
      expect(iy! - iz! * rise).toBeCloseTo(0, 9);
      expect(Math.hypot(iy!, iz!)).toBeCloseTo(1, 9);
      // half the depth of the pole off its axis
      const off = Math.abs(dy! * iy! + dz! * iz!);
      expect(off).toBeCloseTo(brace.topDiameterIn / 2, 9);
    }
  });
});
