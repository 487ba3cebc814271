import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { askedSection } from '../../../src/engine/checks/asked-section.ts';
import { measuredBy, ratioIfThinner } from '../../../src/engine/checks/measured.ts';
import type { RuleId } from '../../../src/data/rules.ts';
import { sectionsOfMembers } from '../../../src/engine/thinnest.ts';
import { exampleText, soundProject } from '../../support/files.ts';
import { evaluated } from '../whole/whole.ts';

const bending = {
  ruleId: 'beam.bending',
  status: 'pass',
  ratio: 0.6,
  thins: { diameterIn: 10, power: 3 },
  spareIn: 1.566,
} as const;
const shear = {
  ruleId: 'beam.shear',
  status: 'pass',
  ratio: 0.5,
  thins: { diameterIn: 8, power: 2 },
  spareIn: 2.343,
} as const;

const interaction = { ruleId: 'post.bending', status: 'pass', ratio: 0.9, thins: null, spareIn: null } as const;

/** A whole round section that one rule asks, by its ratio at a diameter. */
const sectionOf = (ruleId: RuleId, hasIn: number, ratioAt: (diameterIn: number) => number) =>
  askedSection({
    hasIn,
    takenIn: 0,
    ofSize: [],
    responses: [{}],
    termsAt: (diameterIn) => [{ ruleId, ratio: () => ratioAt(diameterIn) }],
  });
/** Hardly anything is asked of it. */
const idle = sectionOf('beam.shear', 10, (d) => 0.1 * (10 / d) ** 2);

/** Section modulus of what is left of a circle with a flat, by thin strips: our own sum, not the engine's formula. */
function stripModulus(diameterIn: number, flatIn: number): number {
  const [R, n] = [diameterIn / 2, 20_000];
  const left = 2 * R - flatIn;
  const strips = Array.from({ length: n }, (_, i) => {
    const z = -R + ((i + 0.5) * left) / n;
    return { z, area: (2 * Math.sqrt(R * R - z * z) * left) / n };
  });
  const A = strips.reduce((sum, s) => sum + s.area, 0);
  const zMean = strips.reduce((sum, s) => sum + s.area * s.z, 0) / A;
  const I = strips.reduce((sum, s) => sum + s.area * (s.z - zMean) ** 2, 0);
  return I / Math.max(left - R - zMean, zMean + R);
}

describe('how well a log was measured', () => {
  it('closed form: a 10 in. log that is 1/4 in. thinner bends at (10/9.75)^3 of its ratio', () => {
    expect(ratioIfThinner(bending, 0.25)).toBeCloseTo(0.6 * (10 / 9.75) ** 3, 12);
  });

  it('by girth within 1/2 in., the diameter is within 1/2 over pi: a shear ratio grows by 4.1 per cent', () => {
    // derived here: (8 / (8 - 0.15915))^2 = 1.0410
    expect(ratioIfThinner(shear, 0.5 / Math.PI)).toBeCloseTo(0.5 * 1.041, 4);
  });

  it('names the rule that is worst as typed, at the worst end, and the one that stops a loss of wood first', () => {
    const steep = {
      ruleId: 'beam.sag',
      status: 'pass',
      ratio: 0.58,
      thins: { diameterIn: 5, power: 4 },
      spareIn: 0.637,
    } as const;
    const measured = measuredBy([bending, shear, steep], [idle], 0.5)!;
    expect(measured.asTyped).toEqual({ ruleId: 'beam.bending', ratio: 0.6 });
    expect(measured.atWorst).toEqual({ ruleId: 'beam.sag', ratio: expect.closeTo(0.58 * (5 / 4.5) ** 4, 12) });
    expect(measured.mayLose).toEqual({ ruleId: 'beam.sag', inches: 0.637 });
  });

  // fb = 32 M / (pi d3) and fc = 4 P / (pi d2): 0.5 and 0.4 of what an 8 in. post may take, in one straight sum
  it('closed form: a post that is pushed and bent reaches 1 where the sum of its section does, which no row tells', () => {
    const sum = (d: number): number => 0.5 * (8 / d) ** 3 + 0.4 * (8 / d) ** 2;
    const post = sectionOf('post.bending', 8, sum);
    const thins = { diameterIn: 8, power: 4 } as const;
    const push = { ruleId: 'post.push', status: 'pass', ratio: 0.4, thins, spareIn: 1.64 } as const;
    const measured = measuredBy(
      [
        { ...push, status: 'pass' },
        { ...interaction, ratio: 0.9 },
      ],
      [null, post],
      0.25,
    )!;
    expect(measured.asTyped).toEqual({ ruleId: 'post.bending', ratio: 0.9 });
    expect(measured.atWorst).toEqual({ ruleId: 'post.bending', ratio: expect.closeTo(sum(7.75), 12) });
    expect(measured.mayLose.ruleId).toBe('post.bending');
    // d = 7.6890: 0.5 x 1.12632 + 0.4 x 1.08254 = 0.5632 + 0.4330 = 0.9962; one more turn by hand gives 7.6775
    expect(sum(8 - measured.mayLose.inches)).toBeCloseTo(1, 6);
    expect(measured.mayLose.inches).toBeCloseTo(8 - 7.6775, 3);
    expect(measured.leftOut).toBe(null);
  });

  it('what a rule refuses however thick it is has nothing to lose', () => {
    const refused = askedSection({
      hasIn: 10,
      takenIn: 0,
      ofSize: [{ ruleId: 'beam.cuts', leastIn: Infinity }],
      responses: [{}],
      termsAt: (d) => [{ ruleId: 'beam.bending', ratio: () => 0.3 * (10 / d) ** 3 }],
    });
    const measured = measuredBy([bending], [idle, refused, idle], 0.5)!;
    expect(measured.mayLose).toEqual({ ruleId: 'beam.cuts', inches: -Infinity });
    // its ratios are those of what is computed
    expect(measured.atWorst.ratio).toBeCloseTo(0.6 * (10 / 9.5) ** 3, 12);
  });

  it('the worst contact is told beside them', () => {
    const seat = { ruleId: 'beam.seat', status: 'pass', ratio: 0.9, thins: null, spareIn: null } as const;
    const tie = { ruleId: 'beam.tie', status: 'notGiven', ratio: null, thins: null, spareIn: null } as const;
    const cut = { ruleId: 'beam.cuts', status: 'pass', ratio: 0.95, thins: null, spareIn: null } as const;
    expect(measuredBy([bending, cut, seat, tie], [idle], 0.25)?.leftOut).toEqual({ ruleId: 'beam.seat', ratio: 0.9 });
    // a rated joint does not hang on the wood of the beam, however much is asked of it
    const asked = { ...tie, status: 'pass', ratio: 0.95 } as const;
    expect(measuredBy([bending, tie, asked], [idle], 0.25)?.leftOut).toBe(null);
    expect(measuredBy([bending, seat], [], 0.25)).toBe(null);
    expect(measuredBy([bending, seat], [null], 0.25)).toBe(null);
  });

  it('names what fails without a ratio once, since no figure speaks for it', () => {
    const broken = { ruleId: 'beam.rolling', status: 'fail', ratio: null, thins: null, spareIn: null } as const;
    const measured = measuredBy([bending, broken, broken], [idle], 0.25)!;
    expect(measured.broken).toEqual(['beam.rolling']);
    expect(measured.asTyped.ruleId).toBe('beam.bending');
  });

  it('a log as thin as its error has nothing left, and a row that was not judged says nothing', () => {
    expect(ratioIfThinner(bending, 10)).toBe(Infinity);
    const unknown = { ...bending, status: 'notGiven', ratio: null, thins: null, spareIn: null } as const;
    expect(ratioIfThinner(unknown, 0.25)).toBe(null);
    expect(measuredBy([{ ...bending, status: 'outside' as const }], [idle], 0.25)?.asTyped.ratio).toBe(0.1);
  });

  it('a greater error never lowers the ratio, and no error leaves it', () => {
    const error = fc.double({ min: 0, max: 4, noNaN: true });
    fc.assert(
      fc.property(error, error, (a, b) => {
        expect(ratioIfThinner(bending, Math.max(a, b))).toBeGreaterThanOrEqual(
          ratioIfThinner(bending, Math.min(a, b))!,
        );
      }),
    );
    expect(ratioIfThinner(bending, 0)).toBe(0.6);
  });

  it.each([
    [10, 1, 0.5],
    [10, 2, 1],
    [8, 0.5, 0.25],
  ])(
    'a %d in. log with a flat of %d in. loses no more strength than is said when it thins by %d in.',
    (d, flat, less) => {
      const said = ratioIfThinner({ ratio: 1, thins: { diameterIn: d - flat, power: 3 } }, less)!;
      expect(said).toBeGreaterThanOrEqual(stripModulus(d, flat) / stripModulus(d - less, flat));
    },
  );

  it('every row of the demo with inches to spare reaches 1 when they are lost, and not before', () => {
    const rows = evaluated(soundProject(exampleText('firewood-shed'))).checks.filter(
      ({ status, spareIn }) => status === 'pass' && spareIn !== null && spareIn > 0,
    );
    expect(rows.length).toBeGreaterThan(10);
    for (const row of rows) {
      expect(ratioIfThinner(row, row.spareIn!)).toBeCloseTo(1, 9);
      expect(ratioIfThinner(row, row.spareIn! * 0.9)!).toBeLessThan(1);
    }
  });

  it('says of each member of the demo as typed what the hardest row of that rule says', () => {
    const evaluation = evaluated(soundProject(exampleText('firewood-shed')));
    for (const { memberId, sections } of sectionsOfMembers(evaluation)) {
      const rows = evaluation.checks.filter((row) => row.memberId === memberId);
      const { asTyped } = measuredBy(rows, sections(), 0.25)!;
      const ratios = rows.flatMap(({ ruleId, ratio }) => (ruleId === asTyped.ruleId && ratio !== null ? [ratio] : []));
      // the outline takes the log at the thinner end of a cut: a thousandth more, never less
      const more = asTyped.ratio - Math.max(...ratios);
      expect([memberId, more > -1e-9 && more < 0.002]).toEqual([memberId, true]);
    }
  });

  // The figures hold where every sum of every section and every row are asked anew at the thinner diameter.
  it('no sum of a section and no row of the demo passes 1 while no more is lost than is said, and one does beyond', () => {
    const evaluation = evaluated(soundProject(exampleText('firewood-shed')));
    const members = sectionsOfMembers(evaluation);
    expect(members.length).toBeGreaterThan(5);
    for (const { memberId, sections } of members) {
      const rows = evaluation.checks.filter((row) => row.memberId === memberId);
      const { mayLose, asTyped } = measuredBy(rows, sections(), 0.25)!;
      if (mayLose.inches === -Infinity) continue;
      const worst = (lessIn: number): number => measuredBy(rows, sections(), lessIn)!.atWorst.ratio;
      const around = [worst(mayLose.inches) <= 1 + 1e-6, worst(mayLose.inches + 0.01) > 1];
      expect([memberId, ...around]).toEqual([memberId, true, true]);
      const ratios = rows.flatMap(({ ratio, ruleId }) => (ratio !== null && ruleId === 'post.bending' ? [ratio] : []));
      expect(asTyped.ratio).toBeGreaterThanOrEqual(Math.max(0, ...ratios) - 1e-9);
    }
  });
});
