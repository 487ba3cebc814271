import { describe, expect, it } from 'vitest';
import { beamSections } from '../../../../src/engine/checks/beam/least-diameter.ts';
import { sectionsOf } from '../../../../src/engine/frame/read-response.ts';
import { bowOfBeam } from '../../../../src/engine/geometry/bow.ts';
import type { LineCheckContext } from '../../../../src/engine/checks/line-context.ts';
import type { LineResponse } from '../../../../src/engine/frame/line-frame.ts';
import { plainShed } from '../../../support/plain-shed.ts';
import { lineBench } from '../../frame/line-bench.ts';
import { handResponse } from '../sites.ts';
import { leastOf } from '../least-of.ts';

const { context } = lineBench(plainShed({ beamDiametersIn: [10, 10], braceEnd: { kind: 'coped', depthIn: 0 } }));
const chain = context.frame.mesh.beams[0]!;
const sections = sectionsOf(chain, context.frame.layout);
/** First section at x from the first post; the log reaches 24 in. past it. */
const indexAt = (x: number): number => sections.findIndex((s) => Math.abs(s.atIn - 24 - x) < 1e-6);
const under = (...responses: LineResponse[]): LineCheckContext => ({
  ...context,
  frame: { ...context.frame, responses },
});
/** Without what a bow twists. */
const leastAt = (x: number, ...responses: LineResponse[]): number =>
  leastOf(beamSections(under(...responses), chain, false))[indexAt(x)]!;

describe('the thinnest log that would do with the forces held', () => {
  // M = Fb CD pi d3 / 32 turned round, Fb 1000 psi, snow 1.15 (NDS 3.3; circle).
  it('is (32 M / (pi Fb CD))^(1/3) where bending decides', () => {
    const r = handResponse(context, [[sections[indexAt(76)]!.moment, 60_000]]);
    expect(leastAt(76, r)).toBeCloseTo(Math.cbrt((32 * 60_000) / (Math.PI * 1150)), 5);
  });

  // V = Fv CD 3 A / 4 turned round (NDS 3.4.2); 9000 lb.
  it('is sqrt(16 V / (3 pi Fv CD)) where shear decides', () => {
    const answer = context.valuesOf(chain.memberId);
    const Fv = answer.ok ? answer.values.FvPsi : NaN;
    const r = handResponse(context, [[sections[indexAt(76)]!.shear, 9000]]);
    expect(leastAt(76, r)).toBeCloseTo(Math.sqrt((16 * 9000) / (3 * Math.PI * Fv * 1.15)), 5);
  });

  it('asks every combination: a smaller moment that lasts longer may ask for more', () => {
    const at = sections[indexAt(76)]!.moment;
    const snow = handResponse(context, [[at, 60_000]]);
    const forGood = handResponse(context, [[at, 50_000]], { duration: 'permanent', durationFactor: 0.9 });
    expect(leastAt(76, snow, forGood)).toBeCloseTo(Math.cbrt((32 * 50_000) / (Math.PI * 900)), 5);
  });

  // With the cut's depth held the wood below it must do: circle less a segment, summed over thin strips here.
  it('keeps the depth of a seat: the log grows until what the flat leaves is enough', () => {
    const at = sections[indexAt(0)]!;
    const d = leastAt(0, handResponse(context, [[at.moment, -60_000]]));
    expect(60_000 / stripModulus(d, 1)).toBeCloseTo(1150, 1);
  });

  // a cut on the pressed side takes at most d/6, a seat flat that only uplift stretches d/8 (NDS 4.4.3 from memory, own rule)
  it('[beam.cuts] is as thick as the depth of a seat asks for, and has no answer where gravity stretches it', () => {
    const { moment } = sections[indexAt(0)]!;
    expect(leastAt(0, handResponse(context, [[moment, -100]]))).toBe(6);
    expect(leastAt(0, handResponse(context, [[moment, 100]], { gravityOnly: false }))).toBe(8);
    expect(leastAt(0, handResponse(context, [[moment, 100]]))).toBe(Infinity);
  });

  // 2/3 Fv An (dn/d)2 = V (NDS 3.4.3.2, from memory), at most a quarter deep; seat 1 in. deep 3 in. from the end
  it('[beam.endNotch] is where a seat near the end would just carry its shear', () => {
    const short = lineBench(
      plainShed({ beamDiametersIn: [10, 10], beamEndsIn: [-3, 147], braceEnd: { kind: 'coped', depthIn: 0 } }),
    );
    const beam = short.context.frame.mesh.beams[0]!;
    const faces = sectionsOf(beam, short.context.frame.layout);
    const index = faces.findIndex((s) => Math.abs(s.atIn - 3) < 1e-6);
    const leastUnder = (shearLb: number): number => {
      const responses = [handResponse(short.context, [[faces[index]!.shear, shearLb]])];
      const asked = { ...short.context, frame: { ...short.context.frame, responses } };
      return leastOf(beamSections(asked, beam, true))[index]!;
    };
    expect(leastUnder(10)).toBe(4);
    const answer = context.valuesOf(chain.memberId);
    const Fv = answer.ok ? answer.values.FvPsi : NaN;
    const d = leastUnder(3000);
    expect((2 / 3) * Fv * 1.15 * areaLeft(d, 1) * ((d - 1) / d) ** 2).toBeCloseTo(3000, 2);
  });

  // 16 T / (pi d3) counted one and a half times is Fv CD; dT/dx = M 8 c / L2, each end of the span by its share of the way
  it('[beam.twist] is where what a bow twists the log would just do, though nothing bends or shears it there', () => {
    const shed = plainShed({ beamDiametersIn: [10, 10], braceEnd: { kind: 'coped', depthIn: 0 } });
    const logs = shed.logs.map((log) => (log.id === 'beam-log' ? { ...log, seen: null } : log));
    const bowed = lineBench({ ...shed, logs }).context;
    const beam = bowed.frame.mesh.beams[0]!;
    const faces = sectionsOf(beam, bowed.frame.layout);
    // both faces of every element between 36 and 84 in. past the first post; the log begins 24 in. before it
    const bent = faces.filter((s, i) => {
      const other = faces[i % 2 === 0 ? i + 1 : i - 1]!;
      return Math.min(s.atIn, other.atIn) >= 60 && Math.max(s.atIn, other.atIn) <= 108;
    });
    const [from, to] = [bent[0]!.atIn - 24, bent.at(-1)!.atIn - 24];
    const M = 2e6;
    const r = handResponse(
      bowed,
      bent.map((s) => [s.moment, M] as const),
    );
    const L = 192;
    const { sideIn } = bowOfBeam(
      bowed.project,
      bowed.shelter.beams.find(({ id }) => id === beam.memberId)!,
    );
    const towardLast = (to ** 2 - from ** 2) / 2 / 144;
    const T = ((M * 8 * sideIn) / L ** 2) * Math.max(to - from - towardLast, towardLast);
    const answer = bowed.valuesOf(beam.memberId);
    const Fv = answer.ok ? answer.values.FvPsi : NaN;
    const asked = { ...bowed, frame: { ...bowed.frame, responses: [r] } };
    const index = faces.findIndex((s) => s.atIn - 24 > 100 && s.atIn - 24 < 140);
    const section = beamSections(asked, beam, true)![index]!;
    const d = Math.cbrt((1.5 * 16 * T) / (Math.PI * Fv * 1.15));
    expect(section.leastIn()).toBeCloseTo(d, 5);
    expect(section.hardestAt(9)).toEqual({ ruleId: 'beam.twist', ratio: expect.closeTo((d / 9) ** 3, 6) });
    expect(beamSections(asked, beam, false)![index]!.leastIn()).toBeLessThan(0.2);
  });

  // circle: the ratio grows with the cube of what is left; a seat may take a sixth
  it('tells what a log that is thinner would be asked the hardest, and by which rule', () => {
    const hardest = (x: number, moment: number, diameterIn: number) => {
      const r = handResponse(context, [[sections[indexAt(x)]!.moment, moment]]);
      return beamSections(under(r), chain, true)![indexAt(x)]!.hardestAt(diameterIn);
    };
    const bending = (60_000 * 32) / (Math.PI * 9.75 ** 3) / 1150;
    expect(hardest(76, 60_000, 9.75)).toEqual({ ruleId: 'beam.bending', ratio: expect.closeTo(bending, 9) });
    expect(hardest(0, -100, 5)).toEqual({ ruleId: 'beam.cuts', ratio: 6 / 5 });
    expect(hardest(0, -100, 0.5).ratio).toBe(Infinity);
  });

  it('has no answer where no log in reach passes', () => {
    const r = handResponse(context, [[sections[indexAt(76)]!.moment, 1e9]]);
    expect(leastAt(76, r)).toBe(Infinity);
  });
});

/** Smaller section modulus of a circle less a segment of some depth, by ten thousand strips. */
function stripModulus(d: number, cut: number): number {
  const n = 10_000;
  const [low, high] = [-d / 2, d / 2 - cut];
  const h = (high - low) / n;
  let [A, Q, I] = [0, 0, 0];
  for (let i = 0; i < n; i++) {
    const y = low + (i + 0.5) * h;
    const b = 2 * Math.sqrt((d * d) / 4 - y * y);
    A += b * h;
    Q += b * y * h;
    I += b * y * y * h;
  }
  const c = Q / A;
  const own = I - A * c * c;
  return Math.min(own / (high - c), own / (c - low));
}

/** Circle less a segment (plane geometry). */
function areaLeft(d: number, cut: number): number {
  const R = d / 2;
  return Math.PI * R * R - (R * R * Math.acos((R - cut) / R) - (R - cut) * Math.sqrt(2 * R * cut - cut * cut));
}
