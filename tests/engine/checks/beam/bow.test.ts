import { describe, expect, it } from 'vitest';
import { beamSites } from '../../../../src/engine/checks/beam/beam-checks.ts';
import { twistAtPost } from '../../../../src/engine/checks/beam/twist.ts';
import { besidePost } from '../../../../src/engine/geometry/bow.ts';
import { pinForce } from '../../../../src/engine/frame/read-response.ts';
import type { LineResponse } from '../../../../src/engine/frame/line-frame.ts';
import { bowOf, bowOfBeam } from '../../../../src/engine/geometry/bow.ts';
import { emptyLineCase, type LineCase } from '../../../../src/engine/loads/cases.ts';
import type { LineCheckContext } from '../../../../src/engine/checks/line-context.ts';
import type { Project, Seen } from '../../../../src/engine/project/model.ts';
import { BEAM_LOG_IN, plainShed, WOOD, type Measures } from '../../../support/plain-shed.ts';
import { analysed, combination, lineLoadsOf } from '../../frame/hand-line.ts';
import { lineBench } from '../../frame/line-bench.ts';
import { redoFaults } from '../redo-step.ts';
import { siteOf, verdict } from '../sites.ts';

const SEEN: Seen = {
  worstKnotIn: 1,
  grainSlope1In: 40,
  spiral: 'none',
  checks: '',
  straightIn: null,
  by: 'the owner',
  date: '2026-03-02',
};

/** A plain shed whose beam logs stray so far from straight; null where nobody looked. */
function straying(straightIn: number | null, measures: Partial<Measures> = {}): Project {
  const shed = plainShed({ bracesAt: [], set: 'axis', ...measures });
  const seen = straightIn === null ? null : { ...SEEN, straightIn };
  return { ...shed, logs: shed.logs.map((log) => (log.id === 'beam-log' ? { ...log, seen } : log)) };
}

interface Loaded {
  readonly context: LineCheckContext;
  readonly r: LineResponse;
}

/** The line of such a shed under loads drawn by hand. */
function loaded(project: Project, lineCase: LineCase, purpose: 'strength' | 'sag' = 'strength'): Loaded {
  const bench = lineBench(project);
  const one = combination({ [lineCase.caseId]: 1 }, { purpose, dead: { factor: 0, weight: 'heavy' } });
  const frame = analysed(bench.frame.members, lineLoadsOf([lineCase]), [one], { pullGiven: true, holdsItself: false });
  return { context: { ...bench.context, frame }, r: frame.responses[0]! };
}

const at = (xIn: number, downLb: number) => ({ xIn, downLb, alongLb: 0 });
const points = (...loads: LineCase['points'][number][]): LineCase => ({ ...emptyLineCase('snow'), points: loads });

/** What turns the beam on each of its posts. */
function twists({ context, r }: Loaded): readonly number[] {
  const { mesh, members } = context.frame;
  const beam = members.beams[0]!;
  const bow = bowOfBeam(context.project, beam);
  return members.posts.map((post) => twistAtPost(mesh, beam, bow, members.posts, post)(r.values));
}

describe('how a log lies', () => {
  const stick = lineBench(plainShed()).frame.members.beams[0]!.stick;
  const of = (project: Project, to: 'up' | 'down' | 'side', lengthIn = BEAM_LOG_IN) =>
    bowOf(project, stick, lengthIn, to);

  it('half of a log bows a quarter as far as all of it: a parabola', () => {
    const crowned = straying(2, { crownIn: 2 });
    expect(of(crowned, 'up')).toEqual({ upIn: 2, sideIn: 0, strayIn: 2 });
    expect(of(crowned, 'down', BEAM_LOG_IN / 2).upIn).toBeCloseTo(-0.5, 12);
  });

  it('what it strays beyond its crown lies square to it: 5 of which 4 are crown leave 3 to the side', () => {
    expect(of(straying(5, { crownIn: 4 }), 'up').sideIn).toBeCloseTo(3, 12);
    expect(of(straying(5, { crownIn: 4 }), 'side')).toEqual({ upIn: 0, sideIn: 5, strayIn: 5 });
  });

  it('one that nobody has looked at counts as bowed to the side, 1 in 120', () => {
    expect(of(straying(null), 'up')).toEqual({ upIn: 0, sideIn: BEAM_LOG_IN / 120, strayIn: null });
  });
});

describe('what a bow to the side does', () => {
  const L = 144;
  const c = 2;
  const span: Partial<Measures> = { beamEndsIn: [0, L], beamDiametersIn: [10, 10], crownTo: 'side' };

  // Statics: the resultant of an even load lies two thirds of the bow beside the line of the seats, half of it for each.
  it('[beam.rolling] an even load w turns each end of a simple span by w c L / 3', () => {
    const w = 12;
    const even: LineCase = {
      ...emptyLineCase('snow'),
      onBeam: [
        { xIn: 0, downLbPerIn: w },
        { xIn: L, downLbPerIn: w },
      ],
    };
    for (const T of twists(loaded(straying(c, span), even))) expect(T).toBeCloseTo((w * c * L) / 3, 6);
  });

  // Statics: moments about the line through the seats.
  it('[beam.rolling] both ends together turn by every load times its own distance beside the line of the seats', () => {
    const loads = [at(30, 700), at(72, 1200), at(110, 400)];
    const turned = loads.reduce((sum, { xIn, downLb }) => sum + (downLb * 4 * c * xIn * (L - xIn)) / L ** 2, 0);
    const [left, right] = twists(loaded(straying(c, span), points(...loads)));
    expect(left! + right!).toBeCloseTo(turned, 4);
    // a load nearer to the left end turns it more
    expect(left!).toBeGreaterThan(right!);
  });

  it('[beam.rolling] past the last post the log lies on the other side of the line, and turns the other way', () => {
    const past = 36;
    const { context, r } = loaded(straying(c, { ...span, beamEndsIn: [0, L + past] }), points(at(L + past, 500)));
    const curvature = (8 * c) / (L + past) ** 2;
    const sum = twists({ context, r }).reduce((a, b) => a + b, 0);
    expect(sum).toBeCloseTo((-500 * curvature * past * (L + past)) / 2, 4);
  });

  it('[beam.rolling] over three posts the middle one stands beside the log and takes its share of the turning', () => {
    const three: Partial<Measures> = { ...span, postXsIn: [0, 60, L], pierTopsIn: [6, 6, 6] };
    const { context, r } = loaded(straying(c, three), points(at(30, 900), at(100, 1500)));
    const { mesh, members } = context.frame;
    const beam = members.beams[0]!;
    const besides = members.posts.map((p) =>
      besidePost(
        beam,
        bowOfBeam(context.project, beam),
        members.posts.map(({ xIn }) => xIn),
        p.xIn,
      ),
    );
    const y = (x: number): number => (4 * c * x * (L - x)) / L ** 2;
    expect(besides).toEqual([0, expect.closeTo(y(60), 9), 0]);
    const middle = pinForce(mesh, mesh.posts[1]!, beam.id).down(r.values);
    const sum = twists({ context, r }).reduce((a, b) => a + b, 0);
    expect(sum).toBeCloseTo(900 * y(30) + 1500 * y(100) - middle * y(60), 3);
  });

  // proof [beam.twist]: closed-form - 4 V / (3 A) and one and a half times 16 T / (pi d3), T = P c / 2 at each end
  it('[beam.twist] of a load at the middle: half the load, turned by its own bow, on a log of 10 in.', () => {
    const P = 3000;
    const { context, r } = loaded(straying(c, { ...span, seatIn: 0 }), points(at(L / 2, P)));
    const site = siteOf(beamSites(context), 'beam.twist', 'beam-0-0');
    const found = verdict(site, r);
    const shear = (4 * (P / 2)) / (3 * ((Math.PI * 10 ** 2) / 4));
    const turning = (16 * ((P * c) / 2)) / (Math.PI * 10 ** 3);
    expect(found.demand!.value).toBeCloseTo(shear + 1.5 * turning, 4);
    expect(found.capacity!.value).toBeCloseTo(WOOD.Fv * 1.6, 9);
    expect(redoFaults((note) => site.demand(r, note))).toEqual([]);
  });

  it('[beam.twist] a straight log has none, and a greater bow never asks less', () => {
    const demand = (bow: number): number | null => {
      const { context, r } = loaded(straying(bow, span), points(at(40, 2000)));
      const sites = beamSites(context).filter((s) => s.ruleId === 'beam.twist');
      return sites.length === 0 ? null : verdict(sites[0]!, r).demand!.value;
    };
    expect(demand(0)).toBeNull();
    const asked = [0.25, 0.5, 1, 1.25].map((bow) => demand(bow)!);
    expect(asked).toEqual([...asked].sort((a, b) => a - b));
  });
});

describe('how straight a log must be', () => {
  const beam = { beamEndsIn: [0, 144], beamDiametersIn: [10, 10] } as const;
  const asked = (straightIn: number | null) => {
    const { context, r } = loaded(straying(straightIn, beam), points(at(72, 100)));
    return { site: siteOf(beamSites(context), 'beam.crook', 'beam-0-0'), r };
  };

  // proof [beam.crook]: no-equation - from memory, straightness of piles after D25: 1 in 100, at most 3 in.; 144 in. may stray 1.44 in.
  it('[beam.crook] a beam of 144 in. may stray 1.44 in.; past that it is outside, from 1.2 in. on it is said', () => {
    const answers = [1, 1.25, 1.5].map((straightIn) => {
      const { site, r } = asked(straightIn);
      const found = verdict(site, r);
      return [found.status, found.ratio === null ? null : Number(found.ratio.toFixed(4)), found.reason?.code ?? null];
    });
    expect(answers).toEqual([
      ['pass', 0.6944, null],
      ['pass', 0.8681, 'crookSaid'],
      ['outside', null, 'crookPastLimit'],
    ]);
    const { site, r } = asked(1);
    expect(redoFaults((note) => [site.demand(r, note), site.capacity(r, note)])).toEqual([]);
  });

  it('[beam.crook] one that nobody has looked at is not given', () => {
    const { site, r } = asked(null);
    expect([verdict(site, r).status, verdict(site, r).reason?.code]).toEqual(['notGiven', 'crookNotLookedAt']);
  });
});

describe('a crown of the log beside its sag', () => {
  const L = 144;
  const sagOf = (crownTo: 'up' | 'down') => {
    const measures: Partial<Measures> = { beamEndsIn: [0, L], beamDiametersIn: [10, 10], crownIn: 2, crownTo };
    const { context, r } = loaded(straying(2, measures), points(at(L / 2, 2400)), 'sag');
    return { site: siteOf(beamSites(context), 'beam.sag', 'beam-0-0'), r };
  };

  // MECHANICS: P L3 / (48 E I) at the middle, where a parabola of 2 in. over 240 in. hangs 2 (144 / 240)2 in.
  it('[beam.sag] laid down it is added to the sag at the middle, laid up it takes nothing off', () => {
    const elastic = (2400 * L ** 3) / (48 * WOOD.E * ((Math.PI * 10 ** 4) / 64));
    const [up, down] = (['up', 'down'] as const).map((to) => {
      const { site, r } = sagOf(to);
      return verdict(site, r).demand!.value;
    });
    expect(up! / elastic).toBeCloseTo(1, 4);
    expect(down! / (elastic + 2 * (L / BEAM_LOG_IN) ** 2)).toBeCloseTo(1, 4);
  });

  it('[beam.sag] its step says which, and can be redone', () => {
    for (const to of ['up', 'down'] as const) {
      const { site, r } = sagOf(to);
      const told = redoFaults((note) => site.demand(r, note && ((step) => step.symbol === 'Δc' && note(step))));
      expect(told).toEqual([]);
    }
  });
});
