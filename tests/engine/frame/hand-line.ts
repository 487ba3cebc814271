import * as fc from 'fast-check';
import {
  analyseLine,
  type LineFrame,
  type LineResponse,
  type LineSetting,
} from '../../../src/engine/frame/line-frame.ts';
import { membersOfLine, type LineMembers } from '../../../src/engine/frame/line-mesh.ts';
import { emptyLineCase, type DeadPiece, type LineCase, type LineLoads } from '../../../src/engine/loads/cases.ts';
import type { Combination } from '../../../src/engine/loads/combination.ts';
import { placeShelter } from '../../../src/engine/geometry/place-shelter.ts';
import { message } from '../../../src/engine/message.ts';
import { lineId, plainShed, WOOD, type Measures } from '../../support/plain-shed.ts';

/** The frame members of line A of a plain shed. */
export function membersOf(measures: Partial<Measures>): LineMembers {
  const { shelter } = placeShelter(plainShed(measures));
  return membersOfLine(
    shelter,
    shelter.lines.find(({ id }) => id === lineId(0))!,
  );
}

/** One combination: factors on cases by id, dead load by its own. */
export const combination = (
  factors: Readonly<Record<string, number>>,
  more: Partial<Combination> = {},
): Combination => ({
  id: Object.keys(factors).join('+') || 'dead',
  purpose: 'strength',
  words: message('combinationDead'),
  dead: { factor: 1, weight: 'heavy' },
  factors: Object.entries(factors).map(([caseId, factor]) => ({ caseId, factor })),
  duration: 'tenMinutes',
  durationFactor: 1.6,
  gravityOnly: false,
  swaysAlong: false,
  ...more,
});

export const lineLoadsOf = (cases: readonly LineCase[], dead: readonly DeadPiece[] = []): LineLoads => ({
  lineId: lineId(0),
  dead,
  cases,
  inertiaLb: 0,
  alongLb: {},
  deadLb: 0,
});

/** Analysis of a line under loads drawn by hand. @throws Error where the line is a mechanism */
export function analysed(
  members: LineMembers,
  loads: LineLoads,
  combinations: readonly Combination[],
  setting: LineSetting = { pullGiven: true, holdsItself: true },
): LineFrame {
  const answer = analyseLine(members, loads, combinations, () => WOOD.E, setting);
  if (!answer.ok) throw new Error(answer.reason.code);
  return answer.frame;
}

export const responseOf = (frame: LineFrame, id: string, model: LineResponse['braceModel']): LineResponse | undefined =>
  frame.responses.find((r) => r.combination.id === id && r.braceModel === model);

const real = (min: number, max: number) => fc.double({ min, max, noNaN: true });

/** A line of two to four posts of random places, diameters and piers, each with or without braces. */
export const randomLine: fc.Arbitrary<LineMembers> = fc
  .record({
    bays: fc.array(real(80, 150), { minLength: 1, maxLength: 3 }),
    past: fc.oneof(fc.constant(0), real(2, 30)),
    beam: fc.tuple(real(10, 15), real(7, 10)),
    post: fc.tuple(real(8, 12), real(6, 8)),
    brace: fc.tuple(real(4, 6), real(3, 4)),
    run: real(20, 36),
    drop: real(20, 44),
    piers: fc.array(real(0, 14), { minLength: 4, maxLength: 4 }),
    set: fc.constantFrom('top', 'axis', 'underside'),
    skip: fc.nat({ max: 6 }),
  })
  .map(({ bays, past, beam, post, brace, run, drop, piers, set, skip }) => {
    const xs = bays.reduce((at, bay) => [...at, at[at.length - 1]! + bay], [0]);
    const last = xs.length - 1;
    const inward = xs.flatMap((_, k): [number, 'plus' | 'minus'][] =>
      k === 0
        ? [[k, 'plus']]
        : k === last
          ? [[k, 'minus']]
          : [
              [k, 'plus'],
              [k, 'minus'],
            ],
    );
    const length = xs[last]! + 2 * past;
    return membersOf({
      postXsIn: xs,
      pierTopsIn: piers,
      beamEndsIn: [-past, xs[last]! + past],
      // taper of the log over the length that the beam takes of it
      beamDiametersIn: [beam[0], beam[0] - ((beam[0] - beam[1]) * 240) / Math.max(240, length)],
      postDiametersIn: post,
      braceDiametersIn: brace,
      bracesAt: inward.filter((_, i) => i !== skip),
      runIn: run,
      dropIn: drop,
      set,
    });
  })
  .filter((members) => members.posts.length > 1 && members.beams[0]!.toXIn - members.beams[0]!.fromXIn <= 240);

/** Random loads on everything of a line that can carry one. */
export const randomCase = (members: LineMembers, id: string): fc.Arbitrary<LineCase> =>
  fc
    .record({
      points: fc.array(fc.tuple(real(0, 1), real(-2000, 3000), real(-500, 500)), { minLength: 1, maxLength: 4 }),
      beam: fc.tuple(real(-10, 30), real(-10, 30)),
      posts: fc.tuple(real(0, 3), real(0, 3), real(-4, 4)),
      braces: fc.tuple(real(0, 60), real(-40, 40)),
    })
    .map(({ points, beam, posts, braces }) => {
      const { fromXIn, toXIn } = members.beams[0]!;
      return {
        ...emptyLineCase(id),
        points: points.map(([t, downLb, alongLb]) => ({ xIn: fromXIn + t * (toXIn - fromXIn), downLb, alongLb })),
        onBeam: [
          { xIn: fromXIn, downLbPerIn: beam[0] },
          { xIn: toXIn, downLbPerIn: beam[1] },
        ],
        onPosts: members.posts.map((p) => ({
          postId: p.id,
          footDownLbPerIn: posts[0],
          topDownLbPerIn: posts[1],
          alongLbPerIn: posts[2],
        })),
        onBraces: members.braces.map((b) => ({ braceId: b.id, downLb: braces[0], alongLb: braces[1] })),
      };
    });
