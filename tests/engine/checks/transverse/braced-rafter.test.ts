import { describe, expect, it } from 'vitest';
import type { BracedRow } from '../../../../src/engine/checks/transverse/rafter-on-post.ts';
import { rowSites } from '../../../../src/engine/checks/transverse/row-sites.ts';
import { footIndex, pushIndex, sectionsOf } from '../../../../src/engine/frame/read-response.ts';
import type { Project } from '../../../../src/engine/project/model.ts';
import type { Measures } from '../../../support/plain-shed.ts';
import { WOOD } from '../../../support/plain-shed.ts';
import { bracedShed } from '../../../support/braced-shed.ts';
import { acrossBench, framesOf } from '../../transverse/row-bench.ts';
import { handResponse, siteOf, verdict, type Site } from '../sites.ts';

/** An even pole 8 in. thick on 4 in 12 over 120 in. of level, its seat cut 1 in. plumb. */
const D = 8;
const COS = 12 / Math.hypot(12, 4);
const AREA = (Math.PI * D * D) / 4;
const MODULUS = (Math.PI * D ** 3) / 32;
const RAFTER = 'rafter-over-0';
const SPAN = 'post-0-0~post-1-0';
/** Axis of the pole over the level of its seat; the strip is 1-1/2 in. thick, line A bears at 126 in. */
const OVER_SEAT = D / 2 / COS - 1;
const STRIP = 1.5;
/** What the lines bring to a seat beside the row. */
const SEAT = { leastLb: 500, mostLb: 900, alongLb: 40, twistLbIn: 700 } as const;

const rowOf = (change: Parameters<typeof bracedShed>[0] = {}, measures: Partial<Measures> = {}) =>
  rowOfProject(bracedShed({ rafterDiametersIn: [D, D], ...change }, measures));

function rowOfProject(project: Project) {
  const across = acrossBench(project);
  const { context } = framesOf(across)[0]!;
  const { row } = across.frames.rows[0]!;
  const braced: BracedRow = {
    rafter: row.rafters[0]!,
    posts: row.posts,
    seatOn: () => SEAT,
    pushIdOf: () => null,
  };
  const sites: readonly Site[] = rowSites(context, new Set(), braced);
  return { context, row, sites };
}

describe('a pole rafter that braces bend', () => {
  const { context, sites } = rowOf();
  const at = sectionsOf(context.frame.mesh.beams[0]!, context.frame.layout).find((s) => s.atIn > 70 && s.atIn < 85)!;

  // proof [rafter.frameBending]: closed-form - M / S and the force along it as pull, (Fb / Ft) N / A, as for beams
  it('[rafter.frameBending] adds what bends it and what draws or presses it', () => {
    const v = verdict(
      siteOf(sites, 'rafter.frameBending', RAFTER, SPAN),
      handResponse(context, [
        [at.moment, 20_000],
        [at.axial, -3000],
      ]),
    );
    expect(v.demand!.value).toBeCloseTo(20_000 / MODULUS + ((WOOD.Fb / WOOD.Ft) * 3000) / AREA, 6);
    expect(v.capacity!.value).toBeCloseTo(WOOD.Fb * 1.15, 9);
  });

  // proof [rafter.frameShear]: closed-form - 4 V / 3 A of a whole round
  it('[rafter.frameShear] is 4 V / 3 A against Fv CD', () => {
    const v = verdict(siteOf(sites, 'rafter.frameShear', RAFTER, SPAN), handResponse(context, [[at.shear, 2500]]));
    expect(v.demand!.value).toBeCloseTo((4 * 2500) / (3 * AREA), 9);
    expect(v.capacity!.value).toBeCloseTo(WOOD.Fv * 1.15, 9);
  });

  // proof [rafter.framePush]: closed-form - NDS 3.9-3 with one moment, column of 120 in. of level up the slope, c 0.8
  it('[rafter.framePush] is push with buckling along the slope from post to post and bending together', () => {
    const [P, M] = [6000, 15_000];
    const v = verdict(
      siteOf(sites, 'rafter.framePush', RAFTER, SPAN),
      handResponse(context, [
        [at.axial, -P],
        [at.moment, M],
      ]),
    );
    const side = (Math.sqrt(Math.PI) / 2) * D;
    const FcE = (0.822 * WOOD.Emin) / (120 / COS / side) ** 2;
    const star = WOOD.Fc * 1.15;
    const half = (1 + FcE / star) / 1.6;
    const Fc = star * (half - Math.sqrt(half * half - FcE / star / 0.8));
    const fc = P / AREA;
    expect(v.demand!.value).toBeCloseTo((fc / Fc) ** 2 + M / MODULUS / (WOOD.Fb * 1.15 * (1 - fc / FcE)), 9);
  });

  // proof [rafter.frameSlender]: closed-form - the way up the slope over 0.886 d
  it('[rafter.frameSlender] is its length up the slope over the side of the square of equal area', () => {
    const v = verdict(siteOf(sites, 'rafter.frameSlender', RAFTER, SPAN), handResponse(context, []));
    expect(v.demand!.value).toBeCloseTo(120 / COS / ((Math.sqrt(Math.PI) / 2) * D), 9);
    expect(v.capacity!.value).toBe(50);
  });

  // proof [rafter.frameNotch]: closed-form - 2/3 Fv An (dn / d)2 of a circle less the segment of the seat cut
  it('[rafter.frameNotch] is the shear beside a post against what the seat cut leaves', () => {
    const post = sectionsOf(context.frame.mesh.beams[0]!, context.frame.layout).find(
      (s) => Math.abs(s.atIn - 18) < 1e-6,
    )!;
    const site = siteOf(sites, 'rafter.frameNotch', RAFTER, `post-0-0@${SPAN}`);
    const here = sectionsOf(context.frame.mesh.beams[0]!, context.frame.layout).filter((s) => s.atIn === post.atIn);
    const v = verdict(
      site,
      handResponse(
        context,
        here.map((s) => [s.shear, 900] as const),
      ),
    );
    const t = COS;
    const R = D / 2;
    const segment = R * R * Math.acos((R - t) / R) - (R - t) * Math.sqrt(2 * R * t - t * t);
    expect(v.demand!.value).toBeCloseTo(900, 9);
    expect(v.capacity!.value).toBeCloseTo((2 / 3) * WOOD.Fv * 1.15 * (AREA - segment) * ((D - t) / D) ** 2, 6);
  });
});

describe('what lies between a braced rafter and its post', () => {
  const { context, row, sites } = rowOf();
  const { mesh, layout } = context.frame;
  const post = row.posts.find((p) => p.id === 'post-0-0')!;
  const faces = sectionsOf(
    mesh.posts.find((p) => p.memberId === post.id)!,
    layout,
  );
  const top = faces.at(-1)!;
  const seat = faces.find((s, i) => i % 2 === 1 && Math.abs(s.atIn - (post.seatZIn - post.woodFromZIn)) < 1e-6)!;
  const brace = mesh.braces.findIndex((b) => b.brace.postId === post.id);
  // the brace rises 26 in. over 30 in. of level: 36 in. down the post, 10 in. down the slope
  const PLUMB = 26 / Math.hypot(30, 26);
  const at = (ruleId: string, memberId: string, forces: readonly (readonly [number, number])[]) =>
    verdict(siteOf(sites, ruleId, memberId, post.id), handResponse(context, forces, { durationFactor: 1 }));

  // proof [rafter.frameLevel]: closed-form - shear of the post above and under the seat
  it('[rafter.frameLevel] is the shear of the post over the seat at rafter and strip, under it at the beam', () => {
    const asked = (id: string) =>
      at('rafter.frameLevel', id, [
        [top.shear, -1500],
        [seat.shear, 1100],
      ]).demand!.value;
    expect([RAFTER, 'line-0', 'beam-0-0'].map(asked)).toEqual([1500, 1500, 1100]);
  });

  // proof [rafter.frameLift]: closed-form - plumb balance of the top of the post with its brace
  it('[rafter.frameLift] is the pull in the top of the post; at the beam what its brace lifts less what the line presses', () => {
    const asked = (id: string) =>
      at('rafter.frameLift', id, [
        [top.axial, 800],
        [pushIndex(layout, brace), 1000],
      ]).demand!.value;
    expect(asked(RAFTER)).toBeCloseTo(800, 9);
    expect(asked('line-0')).toBeCloseTo(800, 9);
    expect(asked('beam-0-0')).toBeCloseTo(1000 * PLUMB - SEAT.leastLb, 6);
  });

  // proof [rafter.rolling]: closed-form - moments about the edge of each contact, its joint pulling with what the level force leaves
  it('[rafter.rolling] turns rafter and strip by the level force on its distance from the axis', () => {
    const forces = [
      [top.shear, 1500],
      [top.axial, -2000],
    ] as const;
    const free = 20_000 * (1 - 1500 / 20_000);
    const rafter = at('rafter.rolling', RAFTER, forces);
    expect(rafter.demand!.value).toBeCloseTo(1500 * OVER_SEAT, 6);
    // a level cut of 1 in. plumb on 4 in 12 is 3 in. long
    expect(rafter.capacity!.value).toBeCloseTo((2000 + free) * 1.5, 6);
    const strip = at('rafter.rolling', 'line-0', forces);
    expect(strip.demand!.value).toBeCloseTo(1500 * (OVER_SEAT + STRIP), 6);
    // an inch planed off a log that is 11.8 in. thick there
    expect(strip.capacity!.value).toBeCloseTo((2000 + free) * Math.sqrt(11.8 - 1), 6);
  });

  it('[rafter.rolling] turns the beam by the moment of the post at the seat and by its bow, a push along taking its share', () => {
    const v = at('rafter.rolling', 'beam-0-0', [
      [seat.moment, -9000],
      [seat.shear, 1100],
    ]);
    expect(v.demand!.value).toBeCloseTo(9000 + SEAT.twistLbIn, 6);
    const free = 20_000 * (1 - (1100 + SEAT.alongLb) / 20_000);
    // a seat 1 in. deep in the same log
    expect(v.capacity!.value).toBeCloseTo((SEAT.leastLb + free) * Math.sqrt(11.8 - 1), 6);
  });

  it('[rafter.rolling] a joint that may pull less than lifts holds nothing', () => {
    const bare = rowOf({ tiesLb: 1000 });
    const site = siteOf(bare.sites, 'rafter.rolling', RAFTER, post.id);
    const v = verdict(
      site,
      handResponse(bare.context, [
        [top.shear, 100],
        [top.axial, 2000],
      ]),
    );
    expect(v).toMatchObject({ status: 'fail', reason: { code: 'rafterRollsOff' } });
  });

  it('[rafter.rolling] a strip on a round top has no width to stand on: past the method', () => {
    const round = rowOf({}, { topFlatIn: 0 });
    const v = verdict(siteOf(round.sites, 'rafter.rolling', 'line-0', post.id), handResponse(round.context, []));
    expect(v).toMatchObject({ status: 'outside', reason: { code: 'stripTurnsOnRound' } });
  });

  // proof [rafter.frameSeat]: closed-form - push over the contact, a pointed flat at two thirds of its width
  it('[rafter.frameSeat] presses the seat of the rafter by the push in the top of the post', () => {
    const v = at('rafter.frameSeat', RAFTER, [[top.axial, -1800]]);
    const width = 2 * Math.sqrt(D * COS - COS * COS);
    expect(v.demand!.value).toBeCloseTo(1800 / (3 * (2 / 3) * width), 6);
    expect(v.capacity!.value).toBeCloseTo(WOOD.Fcp, 9);
  });

  it('[rafter.frameSeat] presses the post by what the line brings at most, less what the brace takes past the seat', () => {
    const v = at('rafter.frameSeat', 'beam-0-0', [[pushIndex(layout, brace), -400]]);
    expect(v.demand!.value).toBeCloseTo((SEAT.mostLb + 400 * PLUMB) / post.seats[0]!.areaIn2, 6);
  });

  it('[rafter.frameLift] counts what thrust shifts between feet of unlike levels against the seat', () => {
    // the low line's piers stand on the same level in the shed: lifted 12 in. over 120, a tenth of the thrust
    const shed = bracedShed({ rafterDiametersIn: [D, D] });
    const members = shed.members.map((m) => (m.role === 'post' && m.id === 'post-1-0' ? { ...m, pierTopZIn: 18 } : m));
    const uneven = rowOfProject({ ...shed, members });
    const { frame } = uneven.context;
    const foot = footIndex(
      frame.layout,
      frame.mesh.posts.find((p) => p.memberId === post.id)!,
    );
    const v = verdict(
      siteOf(uneven.sites, 'rafter.frameLift', 'beam-0-0', post.id),
      handResponse(uneven.context, [
        [foot, 9000],
        [pushIndex(frame.layout, brace), 1000],
      ]),
    );
    expect(v.demand!.value).toBeCloseTo(1000 * PLUMB - SEAT.leastLb + 9000 / 10, 6);
  });

  it('the moment at the seat is that of the level forces over it', () => {
    const asked = context.frame.responses.filter(
      ({ combination: c }) => c.purpose === 'strength' && c.dead.weight === 'heavy',
    );
    expect(asked.length).toBeGreaterThan(10);
    for (const r of asked) {
      const under = faces.find((s) => s.atIn > seat.atIn + 1e-6)!;
      const [overIn, betweenIn] = [top.atIn - under.atIn, under.atIn - seat.atIn];
      const sum = r.values[top.shear]! * overIn + r.values[seat.shear]! * betweenIn;
      // wind on the post itself is spread over it: a few pounds
      expect(Math.abs(Math.abs(r.values[seat.moment]!) - Math.abs(sum))).toBeLessThan(0.02 * Math.abs(sum) + 50);
    }
  });
});
