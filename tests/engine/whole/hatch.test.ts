import { describe, expect, it } from 'vitest';
import { EXAMPLES, everythingGivenText, exampleText, soundProject } from '../../support/files.ts';
import { evaluated } from './whole.ts';

const PROJECTS = [
  ...EXAMPLES.map((name) => ({ name, text: exampleText(name) })),
  { name: 'everything given', text: everythingGivenText() },
];

describe('the hatch along a beam', () => {
  // A round log has CL = 1 (NDS 3.3.3.1), so the hatch leaves nothing out of its check.
  it.each(PROJECTS)('of $name is as harsh as the bending check of the log, station by station', ({ text }) => {
    const { lines, checks, shelter } = evaluated(soundProject(text));
    const isRound = (id: string): boolean => shelter.beams.find((b) => b.id === id)?.stick?.kind === 'round';
    const beams = lines.flatMap((l) => l.members).filter((m) => isRound(m.memberId) && m.bendingRatio.length > 0);
    expect(beams.length).toBeGreaterThan(0);
    for (const { memberId, bendingRatio } of beams) {
      const judged = checks.filter((c) => c.ruleId === 'beam.bending' && c.memberId === memberId && c.ratio !== null);
      expect(judged.length).toBeGreaterThan(0);
      expect(Math.max(...bendingRatio)).toBeCloseTo(Math.max(...judged.map((c) => c.ratio!)), 9);
    }
  });
});
