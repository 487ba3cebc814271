import { describe, expect, it } from 'vitest';
import { beamSites } from '../../../../src/engine/checks/beam/beam-checks.ts';
import { sectionsOf } from '../../../../src/engine/frame/read-response.ts';
import { emptyLineCase, type LineCase } from '../../../../src/engine/loads/cases.ts';
import type { Capacity, Project } from '../../../../src/engine/project/model.ts';
import { BEAM_LOG_IN, plainShed, WOOD, type Measures } from '../../../support/plain-shed.ts';
import { analysed, combination, lineLoadsOf } from '../../frame/hand-line.ts';
import { lineBench } from '../../frame/line-bench.ts';
import { handResponse, rowOver, siteOf, verdict } from '../sites.ts';

/** Seats of a typed contact, so that the stress can be redone in the head. */
const withSeat = (areaIn2: number, measures: Partial<Measures> = {}): Project => ({
  ...plainShed({ seatLengthIn: 5, ...measures }),
  instead: [{ what: 'seatAreaIn2', of: 'beam-0-0', value: areaIn2, why: 'drawn' }],
});

/** A push of the beam on the first post: pressed along the last element of that post. */
function pressed(project: Project, downLb: number, alongLb = 0) {
  const { context } = lineBench(project);
  const post = context.frame.mesh.posts[0]!;
  const top = sectionsOf(post, context.frame.layout).at(-1)!;
  const r = handResponse(context, [
    [top.axial, -downLb],
    [top.shear, alongLb],
  ]);
  return { sites: beamSites(context), r, context };
}

describe('the seat of a beam', () => {
  // NDS 3.10.2 and 3.10.4: Fcp Cb = 300 (5 + 0.375) / 5 = 322.5 psi, no duration factor.
  it('[beam.seat] 6,000 lb on 40 in2 is 150 psi against 322.5', () => {
    const { sites, r } = pressed(withSeat(40), 6000);
    const v = verdict(siteOf(sites, 'beam.seat', 'beam-0-0', 'post-0-0'), r);
    expect(v.demand!.value).toBeCloseTo(150, 9);
    expect(v.capacity!.value).toBeCloseTo(322.5, 9);
  });

  it('[beam.seat] within 3 in. of the end of the log nothing helps beside the bearing', () => {
    const { sites, r } = pressed(withSeat(40, { beamEndsIn: [-5, 168] }), 6000);
    expect(verdict(siteOf(sites, 'beam.seat', 'beam-0-0', 'post-0-0'), r).capacity!.value).toBeCloseTo(300, 9);
  });

  it('[beam.seat] round on round without a flat is not given', () => {
    const { sites, r } = pressed(plainShed({ seatIn: 0 }), 6000);
    const v = verdict(siteOf(sites, 'beam.seat', 'beam-0-0', 'post-0-0'), r);
    expect([v.status, v.reason?.code]).toEqual(['notGiven', 'seatHasNoFlat']);
  });

  it('[beam.seat] asks nothing in a combination that lifts the beam', () => {
    const { sites, r } = pressed(withSeat(40), -500);
    expect(rowOver(siteOf(sites, 'beam.seat', 'beam-0-0', 'post-0-0'), [r])).toBeNull();
  });

  // NDS 3.10.1: Fc* = 800 x 1.15 = 920 psi; above three quarters of it a metal plate must lie between.
  it('[post.endGrain] 14,000 lb on 20 in2 is 700 psi against 920 and wants a plate; 13,000 does not', () => {
    const run = (lb: number) => {
      const { sites, r } = pressed(withSeat(20), lb);
      return verdict(siteOf(sites, 'post.endGrain', 'post-0-0', 'beam-0-0'), r);
    };
    expect(run(14_000).demand!.value).toBeCloseTo(700, 9);
    expect(run(14_000).capacity!.value).toBeCloseTo(920, 9);
    expect(run(14_000).reason?.code).toBe('endPlateNeeded');
    expect(run(13_000).reason).toBeUndefined();
  });

  const rated: Capacity = {
    kind: 'rated',
    label: 'strap, invented',
    parts: { pushLb: null, pullLb: 1600, alongLb: 800, acrossLb: null },
    durationIncluded: 1.6,
  };
  const tied = (capacity: Capacity): Project => ({
    ...plainShed(),
    joints: { defaults: [{ kind: 'beamPost', capacity }], own: [] },
  });

  // proof [beam.tie]: closed-form - pin force of the frame against the typed value, reduced by CD over the CD it holds
  // proof [beam.tieAlong]: closed-form - hinge force against the typed value, as for the pull
  it('[beam.tie] [beam.tieAlong] a rating for ten minutes is cut for two months by 1.15 / 1.6', () => {
    const { sites, r } = pressed(tied(rated), -575, -402.5);
    const pull = verdict(siteOf(sites, 'beam.tie', 'beam-0-0', 'post-0-0'), r);
    expect(pull.demand!.value).toBe(575);
    expect(pull.capacity!.value).toBeCloseTo(1150, 9);
    expect(pull.reason?.code).toBe('ratedReduced');
    const along = verdict(siteOf(sites, 'beam.tieAlong', 'beam-0-0', 'post-0-0'), r);
    expect(along.demand!.value).toBeCloseTo(402.5, 9);
    expect(along.ratio!).toBeCloseTo(0.7, 9);
  });

  it('[beam.tie] without a capacity shows what it is asked and reads not given; said to be bare contact it fails', () => {
    const unsaid = pressed(tied(null), -575);
    const v = verdict(siteOf(unsaid.sites, 'beam.tie', 'beam-0-0', 'post-0-0'), unsaid.r);
    expect([v.status, v.demand?.value]).toEqual(['notGiven', 575]);
    const bare = pressed(tied({ kind: 'none' }), -575);
    expect(verdict(siteOf(bare.sites, 'beam.tie', 'beam-0-0', 'post-0-0'), bare.r).status).toBe('fail');
    const still = pressed(tied({ kind: 'none' }), 575);
    expect(verdict(siteOf(still.sites, 'beam.tie', 'beam-0-0', 'post-0-0'), still.r).status).toBe('pass');
  });
});

describe('sag of a beam', () => {
  // An even log on two posts at its ends: 5 w L4 / (384 E I) at the middle, P L3 / (48 E I) for a single load.
  const L = 144;
  const spanOnly: Partial<Measures> = {
    beamDiametersIn: [10, 10],
    beamEndsIn: [0, L],
    bracesAt: [],
    set: 'axis',
  };
  const I = (Math.PI * 10 ** 4) / 64;
  const load: LineCase = { ...emptyLineCase('snow'), points: [{ xIn: L / 2, downLb: 2400, alongLb: 0 }] };

  function sagged(measures: Partial<Measures>, lineCase: LineCase, purpose: 'sag' | 'sagLongTerm' = 'sag') {
    const bench = lineBench(plainShed(measures));
    const one = combination({ [lineCase.caseId]: 1 }, { purpose, dead: { factor: 0, weight: 'heavy' } });
    const frame = analysed(bench.frame.members, lineLoadsOf([lineCase]), [one], {
      pullGiven: true,
      holdsItself: false,
    });
    return { sites: beamSites({ ...bench.context, frame }), r: frame.responses[0]! };
  }

  it('[beam.sag] of a single load at the middle of an even log is P L3 / (48 E I), against L / 180', () => {
    const { sites, r } = sagged(spanOnly, load);
    const v = verdict(siteOf(sites, 'beam.sag', 'beam-0-0'), r);
    expect(v.demand!.value / ((2400 * L ** 3) / (48 * WOOD.E * I))).toBeCloseTo(1, 5);
    expect(v.capacity!.value).toBeCloseTo(L / 180, 12);
  });

  it('[beam.sagLongTerm] is held against L / 120', () => {
    const { sites, r } = sagged(spanOnly, load, 'sagLongTerm');
    expect(verdict(siteOf(sites, 'beam.sagLongTerm', 'beam-0-0'), r).capacity!.value).toBeCloseTo(L / 120, 12);
    expect(rowOver(siteOf(sites, 'beam.sag', 'beam-0-0'), [r])).toBeNull();
  });

  // Tip of an overhang c beyond a span L under P at the tip: P c2 (L + c) / (3 E I).
  it('[beam.sag] of an overhang is measured from its seat, twice its length allowed', () => {
    const c = 36;
    const tip: LineCase = { ...emptyLineCase('snow'), points: [{ xIn: L + c, downLb: 500, alongLb: 0 }] };
    const { sites, r } = sagged({ ...spanOnly, beamEndsIn: [0, L + c] }, tip);
    const v = verdict(siteOf(sites, 'beam.sag', 'beam-0-0', 'post-0-1~plus'), r);
    // the posts give a little along their length: part of the turn of the span
    expect(v.demand!.value / ((500 * c ** 2 * (L + c)) / (3 * WOOD.E * I))).toBeCloseTo(1, 1);
    expect(v.capacity!.value).toBeCloseTo((2 * c) / 180, 12);
  });

  it('[beam.sag] a lift counts as much as a load', () => {
    const up: LineCase = { ...load, points: [{ xIn: L / 2, downLb: -2400, alongLb: 0 }] };
    const [down, lifted] = [load, up].map((c) => {
      const { sites, r } = sagged(spanOnly, c);
      return verdict(siteOf(sites, 'beam.sag', 'beam-0-0'), r).demand!.value;
    });
    expect(lifted!).toBeCloseTo(down!, 9);
  });

  it('[beam.sag] of a tapering log is larger than that of its thick end and smaller than that of its thin end', () => {
    const of = (beamDiametersIn: readonly [number, number]): number => {
      const { sites, r } = sagged({ ...spanOnly, beamDiametersIn }, load);
      return verdict(siteOf(sites, 'beam.sag', 'beam-0-0'), r).demand!.value;
    };
    const tip = 12 - ((12 - 9) * L) / BEAM_LOG_IN;
    expect(of([12, 9])).toBeGreaterThan(of([12, 12]));
    expect(of([12, 9])).toBeLessThan(of([tip, tip]));
  });
});
