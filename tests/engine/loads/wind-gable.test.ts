import { describe, expect, it } from 'vitest';
import { givensOf, type Prepared } from '../../../src/engine/givens.ts';
import { leastGablePush } from '../../../src/engine/loads/gable-push.ts';
import { openGableAlongRidge, type OpenGableGivens } from '../../../src/engine/loads/site/open-gable.ts';
import { alongForces } from '../../../src/engine/loads/sway.ts';
import { stepsOf } from '../../../src/engine/note.ts';
import type { Project } from '../../../src/engine/project/model.ts';
import { exampleText, soundProject } from '../../support/files.ts';
import { plainShed } from '../../support/plain-shed.ts';

function prepared(project: Project): Prepared {
  const givens = givensOf(project);
  if ('faults' in givens) throw new Error(JSON.stringify(givens.faults));
  return givens;
}

const GIVENS: OpenGableGivens = {
  velocityPressurePsf: 20,
  widthFt: 20,
  endAreaFt2: 200,
  endStripFt: 6,
  solidity: 0.2,
  frames: 5,
};

// ASCE 7-16 28.3.5, from memory: p = qh ((GCpf)windward - (GCpf)leeward) KB KS, F = p AE; Fig. 28.3-1 load case B 0.40 and
// -0.29, in the end strips 0.61 and -0.43; KB = 1.8 - 0.01 B; KS = 0.60 + 0.073 (n - 3) + 1.25 φ^1.8, n at least 3.
describe('wind along the ridge of an open gable', () => {
  it('[ASCE 7 Eq. 28.3-3] is q GCpf KB KS AE', () => {
    const both = (6 * (0.61 + 0.43) + 14 * (0.4 + 0.29)) / 20;
    const KS = 0.6 + 0.073 * 2 + 1.25 * Math.exp(1.8 * Math.log(0.2));
    const { value, steps } = stepsOf((note) => openGableAlongRidge(GIVENS, note));
    expect(value).toBeCloseTo(20 * both * (1.8 - 0.2) * KS * 200, 9);
    expect(steps.map((s) => s.symbol)).toEqual(['GCpf', 'KB', 'KS', 'F']);
    expect(steps.every((s) => s.clause.memory === true)).toBe(true);
  });

  it('[ASCE 7 Eq. 28.3-3] fewer than three frames count as three, beyond 100 ft the width counts no more', () => {
    const push = (change: Partial<OpenGableGivens>) => openGableAlongRidge({ ...GIVENS, ...change });
    expect(push({ frames: 1 })).toBe(push({ frames: 3 }));
    expect(push({ frames: 4 })).toBeGreaterThan(push({ frames: 3 }));
    const wide = { endStripFt: 1e-9 };
    expect(push({ ...wide, widthFt: 140 })).toBeCloseTo(push({ ...wide, widthFt: 100 }), 4);
    expect(push({ ...wide, widthFt: 99 })).toBeGreaterThan(push({ ...wide, widthFt: 100 }));
    expect(() => push({ solidity: 1.01 })).toThrow('solidity');
  });

  const gable = prepared(soundProject(exampleText('gable')));
  const along = (g: Prepared, project: Project = g.project) =>
    g.shelter.lines
      .filter((line) => line.kind === 'frame')
      .map((line) => {
        const posts = g.shelter.posts.filter((p) => p.line === line.id);
        const braces = g.shelter.braces.filter((b) => b.plane === 'along' && posts.some((p) => p.id === b.postId));
        return alongForces(project, g.shelter, line, posts, braces, g.site);
      });

  it('asks no line of a gable for less than its share; all shares together are the whole push', () => {
    const least = leastGablePush(gable.project, gable.shelter, gable.site);
    const lines = along(gable);
    expect(least).toBeGreaterThan(0);
    expect(lines.reduce((sum, l) => sum + l.totalLb, 0)).toBeGreaterThanOrEqual(least - 1e-6);
    for (const { parts, totalLb } of lines)
      expect(parts.reduce((sum, p) => sum + p.forceLb, 0)).toBeCloseTo(totalLb, 9);
  });

  it('makes up what thin rafters lack, line by line, when the end is as light as can be', () => {
    const thin: Prepared = {
      ...gable,
      shelter: {
        ...gable.shelter,
        rafters: gable.shelter.rafters.map((r) => ({ ...r, stick: null })),
        purlins: [],
        beams: [],
        posts: gable.shelter.posts.map((p) => ({ ...p, stick: null })),
        braces: [],
        ties: [],
      },
    };
    const least = leastGablePush(thin.project, thin.shelter, thin.site);
    expect(along(thin).reduce((sum, l) => sum + l.totalLb, 0)).toBeCloseTo(least, 6);
  });

  it('takes the exposure factor of its own method in exposure B', () => {
    const inB: Project = {
      ...gable.project,
      site: { ...gable.project.site, exposure: { ...gable.project.site.exposure, value: 'B' } },
    };
    const { shelter, site } = prepared(inB);
    const own = leastGablePush(inB, shelter, site);
    const plain = leastGablePush(gable.project, gable.shelter, gable.site);
    // Kz of exposure C at 15 ft by the power law (Table 26.10-1, note 1), which both methods share
    expect(own / plain).toBeCloseTo(0.7 / (2.01 * (15 / 900) ** (2 / 9.5)), 9);
  });

  it('asks nothing of a single slope', () => {
    const shed = prepared(plainShed());
    expect(leastGablePush(shed.project, shed.shelter, shed.site)).toBe(0);
  });
});
