import { describe, expect, it } from 'vitest';
import { givensOf } from '../../../src/engine/givens.ts';
import { acrossForce } from '../../../src/engine/loads/across.ts';
import type { Project } from '../../../src/engine/project/model.ts';
import { exampleText, soundProject } from '../../support/files.ts';
import { evaluated, off } from './whole.ts';

/**
 * The gable example put together by hand: 18 ft along the ridge, 8.5 ft of level roof on each side of it, rafters on the
 * eave lines 1.5 ft from the drip and on the ridge line. Statics of a beam on two supports (MECHANICS).
 */
const gable = soundProject(exampleText('gable'));
const [RUN_IN, EAVE_IN, SPAN_IN, LONG_IN] = [102, 18, 84, 216];
/** Share of what lies evenly on a slope that goes to the ridge: moments about the eave line. */
const TO_RIDGE = (RUN_IN / 2 - EAVE_IN) / SPAN_IN;
const SLOPE_FT2 = (RUN_IN * LONG_IN) / 144;
const RISE = 3 / 12;
const q = 0.00256 * 2.01 * (15 / 900) ** (2 / 9.5) * 0.85 * 120 ** 2;

/** Every support holds its share of the level part of the wind, so that what the lines carry adds up. */
const squarely = evaluated({
  ...gable,
  roofPlanes: gable.roofPlanes.map((plane) => ({ ...plane, horizontalHeldBy: 'each-square' })),
});

type Line = (typeof squarely.lines)[number];
const reactionsOf = (line: Line, combination: string): number =>
  line.posts.reduce((sum, { byCombination }) => {
    const label = Object.keys(byCombination).find((k) => k.startsWith(`${combination}|`));
    if (label === undefined) throw new Error(`no ${combination}`);
    return sum + byCombination[label]!.verticalLb;
  }, 0);
const added = (line: Line, combination: string): number => reactionsOf(line, combination) - reactionsOf(line, '1');
const labelOf = (line: Line): string => squarely.shelter.lines.find(({ id }) => id === line.lineId)!.label;
const onLines = (combination: string): Readonly<Record<string, number>> =>
  Object.fromEntries(squarely.lines.map((line) => [labelOf(line), added(line, combination)]));

describe('[frame.balance] a gable brings what lies on it to its three lines', () => {
  it.each([
    ['3-roofLive+roof-live', 20],
    // 0.7 x 0.9 x 1.2 x 0.8 of 20 psf is less than the county's 20 psf (ASCE 7-16 7.3, and the department)
    ['3-snow+snow', 20],
  ] as const)('%s: to the ridge line from both slopes, to each eave line from its own', (combination, psf) => {
    const lines = onLines(combination);
    const whole = psf * SLOPE_FT2;
    expect(off(lines['A']!, 2 * whole * TO_RIDGE)).toBeLessThan(1e-9);
    for (const eave of ['B', 'C']) expect(off(lines[eave]!, whole * (1 - TO_RIDGE))).toBeLessThan(1e-9);
  });

  // Fig. 27.3-5 of ASCE 7-16, two slopes, clear flow, 7.5 and 15 degrees: windward and leeward slope
  it.each([
    ['wind-0-A-clear', [1.1, -0.3], [1.1, -0.4]],
    ['wind-180-A-clear', [1.1, -0.3], [1.1, -0.4]],
    ['wind-0-B-clear', [0.2, -1.2], [0.1, -1.1]],
    ['wind-180-B-clear', [0.2, -1.2], [0.1, -1.1]],
  ] as const)(
    '%s: six tenths of q G CN, each slope its own, the windward one by where the wind comes from',
    (c, at7, at15) => {
      const share = ((Math.atan(RISE) * 180) / Math.PI - 7.5) / 7.5;
      const [windward, leeward] = [0, 1].map(
        (i) => 0.6 * q * 0.85 * (at7[i]! + share * (at15[i]! - at7[i]!)) * SLOPE_FT2,
      );
      const lines = onLines(`5+${c}`);
      // at 0 the wind blows toward +y: line B stands at low y
      const [first, last] = c.includes('-0-') ? ['B', 'C'] : ['C', 'B'];
      expect(off(lines['A']! + lines['B']! + lines['C']!, windward! + leeward!)).toBeLessThan(1e-9);
      expect(off(lines[first!]!, windward! * (1 - TO_RIDGE))).toBeLessThan(1e-9);
      expect(off(lines[last!]!, leeward! * (1 - TO_RIDGE))).toBeLessThan(1e-9);
      expect(off(lines['A']!, (windward! + leeward!) * TO_RIDGE)).toBeLessThan(1e-9);
    },
  );

  const acrossOn = (project: Project) => {
    const givens = givensOf(project);
    if ('faults' in givens) throw new Error('not placed');
    return acrossForce(project, givens.shelter, givens.site, givens.roof, givens.runOf, 0);
  };
  const level = (cn: number, rise: number): number => q * 0.85 * cn * SLOPE_FT2 * rise;

  it('pushes across with both slopes together: at 3 in 12 wind presses one and lifts the other', () => {
    const share = ((Math.atan(RISE) * 180) / Math.PI - 7.5) / 7.5;
    const force = acrossOn(gable);
    // case A, 1.1 and -0.3 to -0.4, is more than case B, 0.2 to 0.1 and -1.2 to -1.1
    const both = level(1.1 + 0.3 + share * 0.1, RISE);
    expect(off(force.roofLb, both)).toBeLessThan(1e-9);
    expect(off(force.oneWayLb, both)).toBeLessThan(1e-9);
  });

  it('[beam.tieAcross] a line that holds one slope is not relieved by the other: at 6 in 12 wind presses both', () => {
    const steep: Project = { ...gable, roofPlanes: gable.roofPlanes.map((plane) => ({ ...plane, risePer12: 6 })) };
    // between 22.5 and 30 degrees: case A 1.1 to 1.3 windward, 0.1 to 0.3 leeward
    const share = ((Math.atan(6 / 12) * 180) / Math.PI - 22.5) / 7.5;
    const force = acrossOn(steep);
    expect(off(force.roofLb, level(1.0, 6 / 12))).toBeLessThan(1e-9);
    expect(off(force.oneWayLb, level(1.1 + share * 0.2, 6 / 12))).toBeLessThan(1e-9);
  });

  it('says that nothing is pushed outward at the eaves', () => {
    expect(squarely.assumptions.map(({ code }) => code)).toContain('assumeNoThrust');
  });
});

/** The gable seen in a mirror that stands along its ridge: y to -y. */
const mirrored = (project: Project): Project => ({
  ...project,
  supportLines: project.supportLines.map((line) => ({ ...line, yIn: -line.yIn })),
});

describe('a gable in a mirror along its ridge', () => {
  it('keeps every ratio of every piece', () => {
    const image = new Map(evaluated(mirrored(gable)).checks.map((row) => [row.key, row]));
    const unlike = evaluated(gable).checks.filter(({ key, status, ratio, ruleId }) => {
      const other = image.get(key);
      if (ruleId === 'frame.balance') return false; // rounding knows of sides
      return other?.status !== status || Math.abs((ratio ?? 0) - (other?.ratio ?? 0)) > 1e-9;
    });
    expect(unlike.map(({ key }) => key)).toEqual([]);
  });

  it('has the same worst ratio of every rule on both eave lines, when both have the same log', () => {
    const stock = gable.members.find(({ id }) => id === 'beam-yard')!.own;
    const even: Project = {
      ...gable,
      logs: gable.logs.map((log) => ({ ...log, stands: 'pattern' })),
      members: gable.members.map((m) =>
        m.id === 'beam-field' && stock ? { ...m, own: stock } : m,
      ) as Project['members'],
    };
    const { checks, shelter } = evaluated(even);
    const sideOf = new Map<string, string>([
      ...shelter.beams.map((b) => [b.id, b.line] as const),
      ...shelter.posts.map((p) => [p.id, p.line] as const),
      ...shelter.braces.map((b) => [b.id, shelter.posts.find((p) => p.id === b.postId)!.line] as const),
      ...[...shelter.rafters, ...shelter.purlins, ...shelter.planes.map((p) => ({ id: p.id, plane: p.id }))].map(
        (s) => [s.id, shelter.planes.find((p) => p.id === s.plane)!.onLines.at(-1)!] as const,
      ),
      ...shelter.lines.map((l) => [l.id, l.id] as const),
    ]);
    const worstOn = (line: string): ReadonlyMap<string, number> => {
      const worst = new Map<string, number>();
      for (const { ruleId, memberId, ratio } of checks) {
        if (sideOf.get(memberId) !== line || ruleId === 'frame.balance') continue;
        worst.set(ruleId, Math.max(worst.get(ruleId) ?? -1, ratio ?? -1));
      }
      return worst;
    };
    const [yard, field] = [worstOn('line-yard'), worstOn('line-field')];
    expect(yard.size).toBeGreaterThan(20);
    expect([...yard.keys()].sort()).toEqual([...field.keys()].sort());
    for (const [rule, ratio] of yard) expect([rule, field.get(rule)!.toFixed(9)]).toEqual([rule, ratio.toFixed(9)]);
  });
});
