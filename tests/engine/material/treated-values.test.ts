import { describe, expect, it } from 'vitest';
import { sawnValues } from '../../../src/engine/material/sawn-values.ts';
import { treatedValues } from '../../../src/engine/material/treated-values.ts';
import type { DesignValues, ValueSymbol } from '../../../src/engine/material/values.ts';
import { materialsOf } from '../../../src/engine/material-of.ts';
import type { EmbeddedFoot, Project } from '../../../src/engine/project/model.ts';
import { plainShed, WOOD } from '../../support/plain-shed.ts';
import { placed } from '../frame/line-bench.ts';

const inGround = (treatment: string | null): Project => {
  const shed = plainShed({ bracesAt: [], bearing: { line: 0, of: 'bearing', zIn: 100 } });
  const foot: EmbeddedFoot = {
    kind: 'embedded',
    depthIn: 48,
    holeIn: 24,
    backfill: 'gravel',
    treatment,
    fixedBelowGradeIn: 16,
    fixity: { along: 'fixed', across: 'pinned' },
  };
  return { ...shed, groups: shed.groups.map((g) => (g.role === 'post' ? { ...g, foot } : g)) };
};
const valuesOf = (project: Project, memberId: string): DesignValues => {
  const answer = materialsOf(project, placed(project)).of(memberId);
  if (!answer.ok) throw new Error(answer.reason.code);
  return answer.values;
};

// NDS 2018 Table 6.3.5 (steaming, normal: 0.80) and 4.3.8 (incising: strength 0.80, E 0.95), from memory
describe('values of a post treated for the ground', () => {
  it('lose a fifth of every strength along the grain, and nothing across it', () => {
    const { FbPsi, FvPsi, FcPsi, FtPsi, FcPerpPsi, EPsi, EminPsi } = valuesOf(inGround('copper'), 'post-0-0');
    expect([FbPsi, FvPsi, FcPsi, FtPsi]).toEqual([WOOD.Fb, WOOD.Fv, WOOD.Fc, WOOD.Ft].map((F) => 0.8 * F));
    expect([FcPerpPsi, EPsi, EminPsi]).toEqual([WOOD.Fcp, WOOD.E, WOOD.Emin]);
  });

  it('are those of the post alone: beams, and a post that nobody has treated, keep theirs', () => {
    expect(valuesOf(inGround('copper'), 'beam-0-0').FbPsi).toBe(WOOD.Fb);
    expect(valuesOf(inGround(null), 'post-0-0').FbPsi).toBe(WOOD.Fb);
    expect(valuesOf(plainShed(), 'post-0-0').FbPsi).toBe(WOOD.Fb);
  });

  it('of a sawn stick lose a twentieth of stiffness as well', () => {
    const answer = sawnValues({
      kind: 'sawn',
      breadthIn: 6,
      depthIn: 6,
      lay: 'edge',
      plies: 1,
      species: 'Western larch',
      grade: 'No. 1',
      use: 'wet',
    });
    if (!answer.ok) throw new Error(answer.reason.code);
    const treated = treatedValues(answer.values);
    expect(treated.EminPsi / answer.values.EminPsi).toBeCloseTo(0.95, 12);
    expect(treated.FcPsi / answer.values.FcPsi).toBeCloseTo(0.8, 12);
  });

  it('tell that in a last step that ends with the value used', () => {
    const values = valuesOf(inGround('copper'), 'post-0-0');
    const last = (of: ValueSymbol) => values.steps(of).at(-1)!;
    expect([last('Fb').result.value, last('Fc').result.value]).toEqual([values.FbPsi, values.FcPsi]);
    expect([last('Fb').formula, last('Fb').clause.memory]).toEqual(['F × Ctr', true]);
    expect(last('Fcp').result.value).toBe(WOOD.Fcp);
  });
});
