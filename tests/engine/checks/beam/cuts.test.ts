import { describe, expect, it } from 'vitest';
import { beamSites } from '../../../../src/engine/checks/beam/beam-checks.ts';
import { sectionsOf } from '../../../../src/engine/frame/read-response.ts';
import type { LineFrame, LineResponse } from '../../../../src/engine/frame/line-frame.ts';
import type { LineCheckContext } from '../../../../src/engine/checks/line-context.ts';
import type { Project } from '../../../../src/engine/project/model.ts';
import { plainShed, type Measures } from '../../../support/plain-shed.ts';
import { lineBench } from '../../frame/line-bench.ts';
import { handResponse, siteOf, verdict } from '../sites.ts';

/** An even log of 12 in. on posts 144 apart; brace tops saddled, so that only what is drawn is cut. */
const even: Partial<Measures> = { beamDiametersIn: [12, 12], braceEnd: { kind: 'coped', depthIn: 0 } };

const withCut = (more: Partial<Project['cuts'][number]>, measures: Partial<Measures> = {}): Project => ({
  ...plainShed({ ...even, ...measures }),
  cuts: [
    {
      id: 'cut',
      member: 'beam-0-0',
      kind: 'dap',
      centreIn: 30,
      lengthIn: 4,
      depthIn: 1.5,
      angleDeg: 0,
      by: 'hand',
      ...more,
    },
  ],
});

/** Moments by place from the first post [in, lb in]. */
type Moments = Readonly<Record<number, number>>;

/** Moments at places of the beam, in a context whose gravity responses are the ones given. */
function asked(project: Project, moments: Moments, gravity: readonly Moments[]) {
  const { context } = lineBench(project);
  const sections = sectionsOf(context.frame.mesh.beams[0]!, context.frame.layout);
  const spread = (byPlace: Moments) =>
    Object.entries(byPlace).flatMap(([x, m]) =>
      sections.filter((s) => Math.abs(s.atIn - 24 - Number(x)) < 1e-6).map((s) => [s.moment, m] as const),
    );
  const responses: readonly LineResponse[] = gravity.map((byPlace) => handResponse(context, spread(byPlace)));
  const frame: LineFrame = { ...context.frame, responses };
  const own: LineCheckContext = { ...context, frame };
  const uplift = handResponse(own, spread(moments), { gravityOnly: false, durationFactor: 1.6 });
  return { sites: beamSites(own), uplift };
}

const verdictOf = (project: Project, id: string, x: number, momentLbIn: number, gravity: readonly number[] = []) => {
  const { sites, uplift } = asked(
    project,
    { [x]: momentLbIn },
    gravity.map((m) => ({ [x]: m })),
  );
  return verdict(siteOf(sites, 'beam.cuts', 'beam-0-0', id), uplift);
};

describe('cuts of a beam, by side and place', () => {
  // proof [beam.cuts]: closed-form - the stated limits themselves (NDS 3.2.3, 4.4.3 from memory), both sides of each
  it('[beam.cuts] on the pressed side of an outer third may take a sixth of the log', () => {
    const pass = verdictOf(withCut({ depthIn: 1.5 }), 'cut', 30, 20_000);
    expect([pass.status, pass.demand!.value, pass.capacity!.value]).toEqual(['pass', 1.5, 2]);
    expect(verdictOf(withCut({ depthIn: 2.25 }), 'cut', 30, 20_000).status).toBe('fail');
  });

  it('[beam.cuts] on the stretched side away from an end is outside the method, whatever its depth', () => {
    const v = verdictOf(withCut({ depthIn: 0.25 }), 'cut', 30, -20_000);
    expect([v.status, v.reason?.code]).toEqual(['outside', 'cutInTension']);
    expect(verdictOf(withCut({ depthIn: 0.25, angleDeg: 180 }), 'cut', 30, 20_000).status).toBe('outside');
    expect(verdictOf(withCut({ depthIn: 0.25, angleDeg: 180 }), 'cut', 30, -20_000).status).toBe('pass');
  });

  it('[beam.cuts] is asked from its one end to the other: stretched at one end is stretched', () => {
    const project = withCut({ lengthIn: 12, depthIn: 1 });
    const under = (moments: Moments) => {
      const { sites, uplift } = asked(project, moments, []);
      return verdict(siteOf(sites, 'beam.cuts', 'beam-0-0', 'cut'), uplift).status;
    };
    expect(under({ 24: 4000, 30: 9000, 36: 12_000 })).toBe('pass');
    expect(under({ 24: -4000, 30: 9000, 36: 12_000 })).toBe('outside');
    expect(under({ 24: 4000, 30: 9000, 36: -50 })).toBe('outside');
  });

  it('[beam.cuts] may take its sixth where the log is thinnest under it', () => {
    // from 12 in. down to 9 in. over the 240 in. log, its butt 24 in. before the post: 11.1 in. where the cut ends at 48
    const taper = withCut({ centreIn: 36, lengthIn: 24, depthIn: 1.8 }, { beamDiametersIn: [12, 9] });
    const v = verdictOf(taper, 'cut', 36, 20_000);
    expect(v.capacity!.value).toBeCloseTo(11.1 / 6, 6);
  });

  // Own rule: an end cut reaches no further than two diameters, here 24 in., from the end of the log.
  it('[beam.cuts] that begins at the end of the log and runs far in is a cut like another', () => {
    const rowsOf = (lengthIn: number) => {
      const project = withCut({ centreIn: -24 + lengthIn / 2, lengthIn, depthIn: 0.5 });
      return asked(project, {}, []).sites.filter(({ place }) => place.name.startsWith('cut'));
    };
    expect(rowsOf(24).map(({ ruleId }) => ruleId)).toContain('beam.endNotch');
    expect(rowsOf(25).map(({ ruleId }) => ruleId)).toEqual(['beam.cuts']);
  });

  it('[beam.cuts] on the flank counts as stretched whichever way the log bends', () => {
    for (const angleDeg of [90, 270, -90])
      for (const moment of [20_000, -20_000])
        expect(verdictOf(withCut({ angleDeg }), 'cut', 30, moment).status).toBe('outside');
  });

  // NDS 4.4.3 (from memory): none in the middle third, here from 48 to 96; the cut is 4 in. long.
  it('[beam.cuts] that reaches into the middle third of a span fails', () => {
    const v = verdictOf(withCut({ centreIn: 72, depthIn: 0.5 }), 'cut', 72, 20_000);
    expect([v.status, v.ratio, v.reason?.code]).toEqual(['fail', null, 'cutInMiddleThird']);
    expect(verdictOf(withCut({ centreIn: 46, depthIn: 0.5 }), 'cut', 46, 20_000).status).toBe('pass');
    expect(verdictOf(withCut({ centreIn: 46.25, depthIn: 0.5 }), 'cut', 46.25, 20_000).status).toBe('fail');
    // from one outer third to the other, its middle outside the middle third
    const long = withCut({ centreIn: 45, lengthIn: 8, depthIn: 0.5 });
    expect(verdictOf(long, 'cut', 45, 20_000).reason?.code).toBe('cutInMiddleThird');
  });

  it('[beam.cuts] a seat flat pressed by all gravity may turn to the stretched side under a lift, up to an eighth', () => {
    const shallow = plainShed({ ...even, seatIn: 1.5 });
    const v = verdictOf(shallow, 'seat-post-0-0', 0, 20_000, [-9000, -3000]);
    expect([v.status, v.reason?.code]).toEqual(['pass', 'seatTurnsTension']);
    // own rule: judged by the eighth that it may take there, not by the sixth of the pressed side
    expect(v.capacity?.value).toBeCloseTo(12 / 8, 9);
    expect(verdictOf(shallow, 'seat-post-0-0', 0, 20_000, [-9000, 4000]).status).toBe('outside');
    const deep = plainShed({ ...even, seatIn: 1.6 });
    expect(verdictOf(deep, 'seat-post-0-0', 0, 20_000, [-9000, -3000]).status).toBe('outside');
  });

  it('[beam.cuts] the exception is for seats: a dap that a lift stretches stays outside', () => {
    expect(verdictOf(withCut({ depthIn: 1 }), 'cut', 30, -20_000, [9000]).status).toBe('outside');
  });

  it('[beam.cuts] a housing for a brace top is a cut like another', () => {
    const housed = plainShed({ ...even, braceEnd: { kind: 'housed', depthIn: 1 } });
    const id = 'brace-brace-0-0-plus';
    expect(verdictOf(housed, id, 30, 20_000).status).toBe('outside');
    expect(verdictOf(housed, id, 30, -20_000).status).toBe('pass');
  });
});
