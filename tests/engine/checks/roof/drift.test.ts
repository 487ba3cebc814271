import { describe, expect, test } from 'vitest';
import { explain } from '../../../../src/engine/explain.ts';
import { soundProject } from '../../../support/files.ts';
import { at, rawLeanTo, type Raw } from '../../project/raw.ts';
import { analysedRafters, leanToWith, rowOf } from './roof.ts';

/** The lean-to below a wall 8 ft higher, from which nothing slides: 71 psf gives round roots, (71 + 10)^(1/4) = 3. */
function drifted(raw: Raw): void {
  at(raw, 'site', 'groundSnowPsf')['value'] = 71;
  at(raw, 'site', 'leastRoofSnowPsf')['value'] = 0;
  Object.assign(at(raw, 'surroundings', 'neighbour'), { stepFt: 8, upperLengthFt: 64, slidesThisWay: false });
}

/** ASCE 7-16 Fig. 7.6-1 and 7.7.1 by hand: lu 64 ft has the cube root 4; 14 degrees of unheated steel keep all snow. */
const GAMMA = 0.13 * 71 + 14;
const HD = 0.43 * 4 * 3 - 1.5;
const PEAK = GAMMA * HD;
const WIDTH_IN = 4 * HD * 12;
const BALANCED = 0.7 * 1.2 * 71;

describe('a rafter below a step', () => {
  // plumb load on the level: beam over two lines, moments by summing thin slices from the eave
  test('[rafter.bending] bends as its drift triangle wants by statics', () => {
    const { loading, responses } = analysedRafters(leanToWith(drifted))[0]!;
    const { run, rafter, dead } = loading;
    const r = responses.find(({ combination }) => combination.id === '3-snow+snow-drift')!;
    const psf = (fromEaveIn: number): number => {
      const fromWall = rafter.runIn - fromEaveIn;
      return BALANCED + Math.max(0, PEAK * (1 - fromWall / WIDTH_IN));
    };
    const [low, high] = rafter.supports.map((s) => s.atIn);
    const n = 40_000;
    const step = rafter.runIn / n;
    const slices = Array.from({ length: n }, (_, i) => {
      const x = (i + 0.5) * step;
      return { x, lb: (psf(x) * rafter.tributaryWidthIn * step) / 144 };
    });
    const aboutLow = slices.reduce((sum, s) => sum + s.lb * (s.x - low!), 0);
    const highLb = aboutLow / (high! - low!);
    const lowLb = slices.reduce((sum, s) => sum + s.lb, 0) - highLb;
    run.stationsIn.forEach((atIn, i) => {
      const x = atIn * run.cos;
      const held = (x > low! ? lowLb * (x - low!) : 0) + (x > high! ? highLb * (x - high!) : 0);
      const passed = slices.reduce((sum, s) => (s.x < x ? sum + s.lb * (x - s.x) : sum), 0);
      const ofDead = run.moments.reduce((sum, m, part) => sum + dead[part]!.heavy * (m.low[i]! + m.high[i]!), 0);
      expect(Math.abs(r.moments[i]! - ofDead - (held - passed))).toBeLessThan(5);
    });
  });

  test('[rafter.bending] is told with the load at both ends of each part, to the number that judged it', () => {
    const project = soundProject(JSON.stringify(changed()));
    const row = rowOf(leanToWith(drifted), 'rafter.bending/rafter-2/line-1~ledger');
    expect(row.combinationId).toBe('3-snow+snow-drift');
    const answer = explain(project, row.key, row.combinationId);
    if (!answer.ok) throw new Error(answer.reason.code);
    const told = answer.steps.find((s) => s.symbol === 'M')!;
    const sum = told.put.reduce((total, p, i) => (i % 2 === 0 ? total + p.value * told.put[i + 1]!.value : total), 0);
    expect(sum / told.result.value).toBeCloseTo(1, 12);
    const sloped = told.put.filter((p) => p.words.includes('end of part') && p.unit === 'lb/in');
    expect(sloped.length).toBeGreaterThan(1);
    const opened = sloped.flatMap((p) => p.from ?? []).flatMap((s) => s.put.flatMap((p) => p.from ?? []));
    for (const symbol of ['hd', 'hc', 'w', 'pd', 'γ']) expect(opened.map((s) => s.symbol)).toContain(symbol);
  });
});

function changed(): Raw {
  const raw = rawLeanTo();
  drifted(raw);
  return raw;
}

describe('a purlin below a step', () => {
  test('[purlin.bending] carries the mean of the triangle over its strip of the slope', () => {
    const context = leanToWith(drifted);
    const uppermost = context.shelter.purlins.toSorted((a, b) => b.upSlopeIn - a.upSlopeIn)[0]!;
    const cos = 4 / Math.hypot(1, 4);
    // its strip ends at the wall; the mean of a straight line is its value at the middle
    const middle = (uppermost.tributaryWidthIn * cos) / 2;
    const psf = BALANCED + PEAK * (1 - middle / WIDTH_IN);
    const row = rowOf(context, `purlin.bending/${uppermost.id}/span`);
    const answer = explain(soundProject(JSON.stringify(changed())), row.key, '3-snow+snow-drift');
    if (!answer.ok) throw new Error(answer.reason.code);
    const flat = (steps: typeof answer.steps): readonly { readonly symbol: string; readonly value: number }[] =>
      steps.flatMap((s) => [{ symbol: s.symbol, value: s.result.value }, ...s.put.flatMap((p) => flat(p.from ?? []))]);
    const here = flat(answer.steps).filter(({ symbol }) => symbol === 'p');
    expect(here.length).toBeGreaterThan(0);
    expect(here[0]!.value).toBeCloseTo(psf, 6);
  });
});
