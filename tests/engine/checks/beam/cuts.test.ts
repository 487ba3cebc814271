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

/** A moment at the middle of a cut, in a context whose gravity responses are the ones given. */
function asked(project: Project, x: number, momentLbIn: number, gravity: readonly number[] = []) {
  const { context } = lineBench(project);
  const at = sectionsOf(context.frame.mesh.beams[0]!, context.frame.layout).filter(
    (s) => Math.abs(s.atIn - 24 - x) < 1e-6,
  );
  const moments = (m: number) => at.map((s) => [s.moment, m] as const);
  const responses: readonly LineResponse[] = gravity.map((m) => handResponse(context, moments(m)));
  const frame: LineFrame = { ...context.frame, responses };
  const own: LineCheckContext = { ...context, frame };
  const uplift = handResponse(own, moments(momentLbIn), { gravityOnly: false, durationFactor: 1.6 });
  return { sites: beamSites(own), uplift };
}

const verdictOf = (project: Project, id: string, x: number, momentLbIn: number, gravity: readonly number[] = []) => {
  const { sites, uplift } = asked(project, x, momentLbIn, gravity);
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

  it('[beam.cuts] on the flank counts as stretched whichever way the log bends', () => {
    for (const angleDeg of [90, 270, -90])
      for (const moment of [20_000, -20_000])
        expect(verdictOf(withCut({ angleDeg }), 'cut', 30, moment).status).toBe('outside');
  });

  // NDS 4.4.3 (from memory): none in the middle third.
  it('[beam.cuts] in the middle third of a span fails', () => {
    const v = verdictOf(withCut({ centreIn: 72, depthIn: 0.5 }), 'cut', 72, 20_000);
    expect([v.status, v.ratio, v.reason?.code]).toEqual(['fail', null, 'cutInMiddleThird']);
    expect(verdictOf(withCut({ centreIn: 47, depthIn: 0.5 }), 'cut', 47, 20_000).status).toBe('pass');
    expect(verdictOf(withCut({ centreIn: 49, depthIn: 0.5 }), 'cut', 49, 20_000).status).toBe('fail');
  });

  it('[beam.cuts] a seat flat pressed by all gravity may turn to the stretched side under a lift, up to an eighth', () => {
    const shallow = plainShed({ ...even, seatIn: 1.5 });
    const v = verdictOf(shallow, 'seat-post-0-0', 0, 20_000, [-9000, -3000]);
    expect([v.status, v.reason?.code]).toEqual(['pass', 'seatTurnsTension']);
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
