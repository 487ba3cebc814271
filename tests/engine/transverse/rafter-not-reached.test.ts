import { describe, expect, it } from 'vitest';
import { evaluate } from '../../../src/engine/evaluate.ts';
import type { CheckRow, Evaluation } from '../../../src/engine/evaluation.ts';
import type { Member, Project } from '../../../src/engine/project/model.ts';
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
});
