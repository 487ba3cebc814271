import { describe, expect, it } from 'vitest';
import { evaluate } from '../../../src/engine/evaluate.ts';
import { givensOf, type Prepared } from '../../../src/engine/givens.ts';
import { atEnds } from '../../../src/engine/loads/rafter-reactions.ts';
import type { RafterPart } from '../../../src/engine/loads/rafter-run.ts';
import { enclosureOf } from '../../../src/engine/loads/walls.ts';
import type { Project } from '../../../src/engine/project/model.ts';
import { exampleText, soundProject } from '../../support/files.ts';
import { plainShed } from '../../support/plain-shed.ts';

type Wall = Project['surroundings']['closed'][number];
const wall = (side: Wall['side'], share = 1): Wall => ({ side, share, heldBy: 'itself' });

function walled(closed: readonly Wall[], change: Parameters<typeof plainShed>[0] = {}): Project {
  const shed = plainShed(change);
  return { ...shed, surroundings: { ...shed.surroundings, closed: [...closed] } };
}

function prepared(project: Project): Prepared {
  const givens = givensOf(project);
  if ('faults' in givens) throw new Error(JSON.stringify(givens.faults));
  return givens;
}

const classOf = (project: Project) => enclosureOf(project, prepared(project).shelter);
const THREE = [wall('yMinus'), wall('xMinus'), wall('xPlus')] as const;

describe('walls of a shelter', () => {
  it('[ASCE 7 26.2] make it open, partially open, partially enclosed or enclosed', () => {
    expect(classOf(walled([]))).toBe('open');
    expect(classOf(walled([wall('xMinus', 0.2)]))).toBe('open');
    expect(classOf(walled([wall('xMinus', 0.5)]))).toBe('partiallyOpen');
    expect(classOf(walled(THREE))).toBe('partiallyEnclosed');
    expect(classOf(walled([...THREE, wall('yPlus')]))).toBe('enclosed');
  });

  it('the building that carries a ledger closes its side', () => {
    expect(classOf(soundProject(exampleText('lean-to')))).toBe('partiallyOpen');
  });

  it('an open shelter has no case of walls, one with walls has eight', () => {
    const idsOf = (project: Project) =>
      prepared(project)
        .roof.map((c) => c.id)
        .filter((id) => id.endsWith('-walled'));
    expect(idsOf(walled([]))).toEqual([]);
    expect(idsOf(walled(THREE))).toHaveLength(8);
  });
});

describe('wind on a shelter with walls', () => {
  const givens = prepared(walled(THREE));
  const { shelter, site } = givens;
  const q = site.figures.velocityPressure.value!;
  const rafter = shelter.rafters[4]!;
  const psfOf = (id: string, part: RafterPart): number =>
    atEnds(givens.roof.find((c) => c.id === id)!.pressure(rafter, part).squarePsf).low;
  const inside: RafterPart = { fromIn: 60, toIn: 70, segment: 1, onHighHalf: false };
  const [low, high] = [inside, { ...inside, fromIn: 100, toIn: 110, onHighHalf: true }] as const;

  // ASCE 7-16 Fig. 27.3-1 at 18.43 degrees and h / L = h / 162 in., between the printed rows of 15 and 20 degrees.
  const ratio = shelter.meanRoofHeightIn / 162;
  const theta = (Math.atan(4 / 12) * 180) / Math.PI;
  const along = (at15: number, at20: number): number => at15 + ((theta - 15) / 5) * (at20 - at15);
  const windward = along(-0.7, -0.4) + ((ratio - 0.5) / 0.5) * (along(-1, -0.7) - along(-0.7, -0.4));
  const freeLift = (way: string, part: RafterPart): number =>
    Math.min(psfOf(`${way}-A-obstructed`, part), psfOf(`${way}-B-obstructed`, part));

  // Table 26.13-1: 0.55 inside a partially enclosed building. 180 meets the low eave: the slope faces it.
  it('[ASCE 7 27.3.1] the slope that faces the wind lifts by q (G Cp - GCpi) where the free roof lifts less', () => {
    expect(ratio).toBeGreaterThan(0.5);
    expect(ratio).toBeLessThan(1);
    const byWalls = q * (0.85 * windward - 0.55);
    for (const part of [low, high]) {
      expect(freeLift('wind-180', part)).toBeGreaterThan(byWalls);
      expect(psfOf('wind-180-lifting-walled', part)).toBeCloseTo(byWalls, 9);
    }
  });

  it('the slope that turns away keeps the free roof, which lifts it harder', () => {
    const byWalls = q * (0.85 * along(-0.6, -0.6) - 0.55);
    for (const part of [low, high]) {
      expect(freeLift('wind-0', part)).toBeLessThan(byWalls);
      expect(psfOf('wind-0-lifting-walled', part)).toBe(freeLift('wind-0', part));
    }
  });

  it('[ASCE 7 27.3.3] an overhang toward the wind is lifted from below by 0.8 of the gust besides', () => {
    const eave: RafterPart = { fromIn: 0, toIn: 20, segment: 0, onHighHalf: false };
    // 180 meets the low eave, whose overhang is 24 in. on plan
    expect(psfOf('wind-180-lifting-walled', eave)).toBeCloseTo(q * 0.85 * (windward - 0.8), 9);
    expect(psfOf('wind-180-lifting-walled', low)).toBeGreaterThan(psfOf('wind-180-lifting-walled', eave));
  });

  it('no part is softer than the obstructed free roof, either way', () => {
    for (const way of ['wind-0', 'wind-180', 'wind-along-plus', 'wind-along-minus'])
      for (const part of [low, high]) {
        const free = ['A', 'B'].map((windCase) => psfOf(`${way}-${windCase}-obstructed`, part));
        expect(psfOf(`${way}-lifting-walled`, part)).toBeLessThanOrEqual(Math.min(...free));
        expect(psfOf(`${way}-pressing-walled`, part)).toBeGreaterThanOrEqual(Math.max(...free));
      }
  });

  it('says which governs at eave and top', () => {
    const wordsOf = (id: string) => givens.roof.find((c) => c.id === id)!.words.values;
    expect(wordsOf('wind-180-lifting-walled')['enclosure']).toBe('partially enclosed');
    expect(wordsOf('wind-180-lifting-walled')['governs']).toBe('walls at the eave, walls at the top');
    expect(wordsOf('wind-0-lifting-walled')['governs']).toBe('free roof at the eave, free roof at the top');
  });

  it('slopes past the figures have no walled case across the lines', () => {
    const steep = prepared(
      walled(THREE, {
        risePer12: 13,
        lineYsIn: [0, 80],
        overhangsIn: [0, 0],
        bearing: { line: 0, of: 'bearing', zIn: 175 },
        bracesAt: [],
      }),
    );
    const ids = steep.roof.map((c) => c.id).filter((id) => id.endsWith('-walled'));
    expect(ids.filter((id) => !id.startsWith('wind-along'))).toEqual([]);
  });

  it('parts of the roof keep the free roof and say so; the push of a wall on the frame is outside', () => {
    const rowsOf = (project: Project) => {
      const answer = evaluate(project);
      if (!answer.ok) throw new Error(JSON.stringify(answer.faults));
      return answer.evaluation.checks;
    };
    const rows = rowsOf(walled(THREE));
    const lifted = rows.filter((r) => r.ruleId.startsWith('rafter.') && /wind-(up|down)-/.test(r.combinationId));
    expect(lifted.length).toBeGreaterThan(0);
    for (const row of lifted.filter((r) => r.status === 'pass' || r.status === 'fail'))
      expect(row.reason?.code).toBe('walledComponents');
    expect(rows.filter((r) => r.ruleId === 'site.walledSides')).toEqual([]);
    const held = rowsOf(walled([{ ...wall('xMinus'), heldBy: 'frame' }]));
    expect(held.filter((r) => r.ruleId === 'site.walledSides').map((r) => r.status)).toEqual(['outside']);
  });
});
