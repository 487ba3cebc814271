import { describe, expect, it } from 'vitest';
import { ratedHolder } from '../../../../src/engine/checks/joints/holder.ts';
import { togetherSite } from '../../../../src/engine/checks/joints/together-site.ts';
import { verdictAt, type Asked } from '../../../../src/engine/checks/site-of-check.ts';
import { evaluate } from '../../../../src/engine/evaluate.ts';
import type { RuleId } from '../../../../src/data/rules.ts';
import { stepsOf } from '../../../../src/engine/note.ts';
import type { SaidCapacity } from '../../../../src/engine/checks/joints/rated.ts';
import { everythingGivenText, exampleText, soundProject } from '../../../support/files.ts';

const rating = (pullLb: number | null, alongLb: number | null, durationIncluded = 1): SaidCapacity => ({
  kind: 'rated',
  label: 'strap, invented',
  parts: { pushLb: null, pullLb, alongLb, acrossLb: null },
  durationIncluded,
});
interface TwoWays extends Asked {
  readonly pull: number;
  readonly along: number;
}
const asked = (pull: number, along: number, durationFactor = 1.6): TwoWays => ({
  combination: { id: '', purpose: 'strength', durationFactor },
  pull,
  along,
});
const site = (capacity: SaidCapacity) =>
  togetherSite<TwoWays>({
    ruleId: 'beam.tieTogether',
    memberId: 'beam',
    place: { kind: 'joint', name: 'post' },
    holder: ratedHolder(capacity),
    parts: [
      { part: 'pull', force: (r) => r.pull },
      { part: 'along', force: (r) => r.along },
    ],
  });

describe('a joint asked in two directions at once', () => {
  // Own rule, by hand: 600 / 1000 + 450 / 900 = 0.6 + 0.5 = 1.1, though each alone passes.
  // proof [beam.tieTogether]: closed-form - sum of two shares
  it('[beam.tieTogether] fails at 0.6 and 0.5 of its ratings, each of which would pass alone', () => {
    const verdict = verdictAt(site(rating(1000, 900))!, asked(600, 450));
    expect([verdict.status, verdict.demand!.value.toFixed(9)]).toEqual(['fail', '1.100000000']);
  });

  it('takes each rating down for a longer load: held 1.6, snow 1.15', () => {
    const verdict = verdictAt(site(rating(1000, 900, 1.6))!, asked(600, 450, 1.15));
    expect(verdict.ratio!).toBeCloseTo((1.1 * 1.6) / 1.15, 12);
  });

  it('tells the share of each direction and their sum', () => {
    const told = stepsOf((note) => verdictAt(site(rating(1000, 900))!, asked(600, 450), note)).steps;
    const sum = told[told.length - 1]!;
    expect(sum.put.map((p) => p.value)).toEqual([0.6, 0.5]);
    expect(sum.result.value).toBeCloseTo(1.1, 12);
  });

  it('asks nothing where a direction is not rated: the row of that direction says so', () => {
    expect([site(rating(1000, null)), site(rating(0, 900)), site(null), site({ kind: 'none' })]).toEqual([
      null,
      null,
      null,
      null,
    ]);
  });
});

describe('joints of whole shelters', () => {
  const rowsOf = (text: string) => {
    const answer = evaluate(soundProject(text));
    if (!answer.ok) throw new Error(JSON.stringify(answer.faults));
    return answer.evaluation.checks;
  };

  // proof [rafter.tieTogether]: closed-form - never under either direction alone, never over their sum
  // proof [strip.together]: closed-form - never under either direction alone, never over their sum
  // proof [post.footTogether]: closed-form - never under either direction alone, never over their sum
  it.each([
    ['rafter.tieTogether', ['rafter.tie', 'rafter.tieAcross', 'rafter.tieAlong']],
    ['strip.together', ['strip.tie', 'strip.across', 'strip.along']],
    ['post.footTogether', ['post.foot', 'post.footAlong', 'post.footAcross']],
    ['beam.tieTogether', ['beam.tie', 'beam.tieAlong']],
  ] as const)('[%s] lies between the worst of its directions and their sum', (together, alone) => {
    for (const text of [everythingGivenText(), exampleText('firewood-shed')]) {
      const rows = rowsOf(text);
      const ratio = (ruleId: RuleId, like: (typeof rows)[number]): number =>
        rows.find((r) => r.ruleId === ruleId && r.memberId === like.memberId && r.place.name === like.place.name)
          ?.ratio ?? 0;
      const found = rows.filter((r) => r.ruleId === together);
      expect(found.length).toBeGreaterThan(0);
      for (const row of found) {
        const ratios = alone.map((ruleId) => ratio(ruleId, row));
        expect(row.ratio!).toBeGreaterThanOrEqual(Math.max(...ratios) - 1e-12);
        expect(row.ratio!).toBeLessThanOrEqual(ratios.reduce((sum, r) => sum + r, 0) + 1e-12);
      }
    }
  });

  it('[rafter.tieTogether] [strip.together] [post.footTogether] are asked wherever two directions are rated', () => {
    const rules = new Set(rowsOf(everythingGivenText()).map((r) => r.ruleId));
    for (const rule of ['rafter.tieTogether', 'strip.together', 'post.footTogether', 'beam.tieTogether'] as const)
      expect(rules.has(rule)).toBe(true);
  });
});
