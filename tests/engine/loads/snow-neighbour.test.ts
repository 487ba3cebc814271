import { describe, expect, it } from 'vitest';
import { evaluate } from '../../../src/engine/evaluate.ts';
import type { Project } from '../../../src/engine/project/model.ts';
import { beside, onLines, prepared, project, snowCaseOf, total, type Neighbour } from './snow-support.ts';

/** Level ground of every case here: 71 psf has pg + 10 = 81, of which the fourth root is 3; γ = 0.13 x 71 + 14. */
const PG = 71;
const GAMMA = 0.13 * PG + 14;
/** ASCE 7-16 Fig. 7.6-1 by hand: lu 64 ft has the cube root 4 */
const HD = 0.43 * 4 * 3 - 1.5;
const PEAK = GAMMA * HD;
const WIDTH_IN = 4 * HD * 12;

const shed = project('firewood-shed');
const withRoof = (change: Partial<Neighbour> | null, of: Project = shed) => prepared(beside(of, change, PG));
/** On the lines in one case beyond what the balanced snow brings, and the roof's own plan [in]. */
function surplus(change: Partial<Neighbour>, id: string, of: Project = shed) {
  const givens = withRoof(change, of);
  const [drifted, even] = [id, 'snow'].map((one) => onLines(givens, snowCaseOf(givens, one)));
  const lines = Object.fromEntries(Object.keys(drifted!).map((l) => [l, drifted![l]! - even![l]!]));
  const { planAlongIn, planAcrossIn, planes } = givens.shelter;
  return { givens, lines, along: planAlongIn, across: planAcrossIn, plane: planes[0]! };
}

/** Weight of a triangle of snow that falls off over `widthIn`, as far as `reachIn`, on `lengthIn` of eave [lb]. */
const triangleLb = (peakPsf: number, widthIn: number, reachIn: number, lengthIn: number): number => {
  const cut = Math.min(widthIn, reachIn);
  return ((peakPsf * (cut - cut ** 2 / (2 * widthIn))) / 144) * lengthIn;
};

describe('a drift beside a higher roof', () => {
  it('[ASCE 7-16 7.7.1] lies as a triangle from the high side, whole on the lines', () => {
    const { lines, along, across } = surplus({ side: 'yMinus' }, 'snow-drift');
    expect(total(lines)).toBeCloseTo(triangleLb(PEAK, WIDTH_IN, across, along), 4);
  });

  it('[ASCE 7-16 7.7.1] lies the same way round from the low side', () => {
    const { lines, along, across } = surplus({ side: 'yPlus' }, 'snow-drift');
    expect(total(lines)).toBeCloseTo(triangleLb(PEAK, WIDTH_IN, across, along), 4);
  });

  // two lines: moments about the high one, distances on the level from the edge at the higher roof
  it('is carried by ledger side and beam as statics wants it, overhangs and all', () => {
    const { lines, along, across, plane } = surplus({ side: 'yMinus' }, 'snow-drift');
    const edge = plane.downY === 1 ? plane.highYIn : plane.lowYIn;
    const [near, far] = [...plane.lineYIn].sort((a, b) => a - b).map((y) => y - edge);
    const cut = Math.min(WIDTH_IN, across);
    const W = triangleLb(PEAK, WIDTH_IN, across, along);
    // first moment of p0 (1 - s / w) about the edge
    const moment = ((PEAK * (cut ** 2 / 2 - cut ** 3 / (3 * WIDTH_IN))) / 144) * along;
    const byHand = (moment - W * near!) / (far! - near!);
    const farLine = plane.onLines[plane.lineYIn.indexOf(Math.max(...plane.lineYIn))]!;
    expect(lines[farLine]).toBeCloseTo(byHand, 4);
  });

  it.each(['xMinus', 'xPlus'] as const)('[ASCE 7-16 7.7.1] beside a gable end (%s) lies along the lines', (side) => {
    const { lines, along, across } = surplus({ side }, 'snow-drift');
    expect(total(lines)).toBeCloseTo(triangleLb(PEAK, WIDTH_IN, along, across), 4);
  });

  it('beside a gable end presses each rafter less than the one before', () => {
    const { givens } = surplus({ side: 'xMinus' }, 'snow-drift');
    const drift = snowCaseOf(givens, 'snow-drift');
    const each = givens.shelter.rafters
      .toSorted((a, b) => a.xIn - b.xIn)
      .map((r) => onLines({ ...givens, shelter: { ...givens.shelter, rafters: [r] } }, drift))
      .map((sums, i) => total(sums) / givens.shelter.rafters[i]!.tributaryWidthIn);
    each.slice(1).forEach((pressed, i) => expect(pressed).toBeLessThanOrEqual(each[i]! + 1e-9));
    expect(each[0]).toBeGreaterThan(each.at(-1)!);
  });

  // 7.7.2 by hand: lee (6 x 8 - 4) / 6 = 7.33 ft over 3.66, so 3.66 ft over min(6 x 3.66, 44) ft; windward triangle cut at 4 ft
  it('[ASCE 7-16 7.7.2] over a gap is two cases, lee wide from our edge and windward cut off by the gap', () => {
    const { lines, along, across } = surplus({ gapFt: 4 }, 'snow-drift-lee');
    expect(total(lines)).toBeCloseTo(triangleLb(PEAK, 6 * HD * 12, across, along), 4);
    const { lines: cut, givens } = surplus({ gapFt: 4 }, 'snow-drift-windward');
    // own roof under 25 ft: the least length counts
    expect(givens.shelter.planAcrossIn / 12).toBeLessThan(25);
    const hw = 0.75 * (0.43 * Math.cbrt(25) * 3 - 1.5);
    const w = 4 * hw * 12;
    const left = GAMMA * hw * (1 - 48 / w);
    expect(total(cut)).toBeCloseTo(triangleLb(left, w - 48, across, along), 4);
  });

  it('of the county lies on the county’s least roof snow where that is more', () => {
    const plain = beside(shed, {}, PG);
    const high: Project = {
      ...plain,
      site: { ...plain.site, leastRoofSnowPsf: { ...plain.site.leastRoofSnowPsf, value: 100 } },
    };
    const [a, b] = [plain, high].map((p) => prepared(p));
    const [standard, county] = [a!, b!].map((g) => total(onLines(g, snowCaseOf(g, 'snow-drift'))));
    const area = (a!.shelter.planAlongIn * a!.shelter.planAcrossIn) / 144;
    expect(county! - standard!).toBeCloseTo((100 - a!.site.figures.slopedRoofSnow.value!) * area, 3);
  });
});

describe('snow that slides off a higher roof', () => {
  // 0.4 x (0.7 x 1.0 x 71 psf) x 15 ft over 15 ft, Ce as on this site
  it('[ASCE 7-16 7.9] lies evenly on fifteen feet, as much as finds room', () => {
    const { lines, along, across, givens } = surplus({ slidesThisWay: true }, 'snow-sliding');
    const psf = 0.4 * 0.7 * givens.project.site.snowExposureCe.value! * PG;
    expect(total(lines)).toBeCloseTo((psf * Math.min(across, 180) * along) / 144, 4);
  });

  it('[ASCE 7-16 7.9] reaches less far over a gap', () => {
    const { lines, along, givens } = surplus({ slidesThisWay: true, gapFt: 5 }, 'snow-sliding');
    const psf = 0.4 * 0.7 * givens.project.site.snowExposureCe.value! * PG;
    expect(givens.shelter.planAcrossIn).toBeGreaterThan(120);
    expect(total(lines)).toBeCloseTo((psf * 120 * along) / 144, 4);
  });
});

describe('what does not apply', () => {
  const reasons = (change: Partial<Neighbour> | null, pg = PG) =>
    prepared(beside(shed, change, pg)).site.uneven.leftOut.map(({ code }) => code);

  it('is listed with its reason', () => {
    expect(reasons(null)).toEqual(['noHigherRoof', 'unbalancedWithoutRidge']);
    expect(reasons({})).toContain('slidesElsewhere');
    expect(reasons({ stepFt: 0 })).toContain('driftWithoutStep');
    expect(reasons({ stepFt: 1 }, 140)).toContain('driftBuried');
    expect(reasons({}, 0)).toContain('driftWithoutSnow');
    expect(reasons({ gapFt: 20, slidesThisWay: true })).toEqual(
      expect.arrayContaining(['driftOverGap', 'slidesIntoGap']),
    );
    expect(reasons({ slidesThisWay: true, upperRisePer12: 0.25 })).toContain('tooFlatToSlide');
    expect(reasons({ slidesThisWay: true, guards: true })).toContain('slideHeldBack');
  });

  // proof [site.driftAndSliding]: no-equation - a drift or slide whose measure nobody gave never reads as passing
  it('[site.driftAndSliding] a length of the higher roof that is still nothing is asked for', () => {
    const rows = (change: Partial<Neighbour>): readonly string[] => {
      const answer = evaluate(beside(shed, change, PG));
      if (!answer.ok) throw new Error(JSON.stringify(answer.faults));
      const found = answer.evaluation.checks.filter((c) => c.ruleId === 'site.driftAndSliding');
      return found.map((c) => `${c.status} ${c.reason?.code}`);
    };
    expect(rows({})).toEqual([]);
    expect(rows({ upperLengthFt: 0 })).toEqual(['notGiven upperLengthNotGiven']);
    expect(rows({ slidesThisWay: true, eaveToRidgeFt: 0 })).toEqual(['notGiven upperWidthNotGiven']);
  });

  it('of a drift that is not known lets nothing pass that loads decide', () => {
    const answer = evaluate(beside(shed, { upperLengthFt: 0 }, PG));
    if (!answer.ok) throw new Error(JSON.stringify(answer.faults));
    const beam = answer.evaluation.checks.filter((c) => c.ruleId === 'beam.bending');
    expect(new Set(beam.map((c) => c.status))).not.toContain('pass');
  });
});

describe('the slope factor beside a building', () => {
  // own rule: slid snow reaches 15 ft
  it('lets nothing slide off toward a building nearer than fifteen feet', () => {
    const steep: Project = { ...shed, roofPlanes: shed.roofPlanes.map((p) => ({ ...p, risePer12: 6 })) };
    const cs = (change: Partial<Neighbour> | null) => withRoof(change, steep).site.figures.slopeFactor.value;
    const lowSide =
      shed.supportLines.find((l) => l.id === shed.roofPlanes[0]!.onLines.at(-1))!.yIn > 0 ? 'yPlus' : 'yMinus';
    const free = cs(null);
    expect(free).toBeLessThan(1);
    expect(cs({ side: lowSide, gapFt: 14.9 })).toBe(1);
    expect(cs({ side: lowSide, gapFt: 15 })).toBe(free);
    expect(cs({ side: lowSide === 'yPlus' ? 'yMinus' : 'yPlus' })).toBe(free);
  });
});
