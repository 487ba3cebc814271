import { describe, expect, it } from 'vitest';
import type { RuleId } from '../../../src/data/rules.ts';
import { evaluate } from '../../../src/engine/evaluate.ts';
import { diameterAt } from '../../../src/engine/geometry/shelter.ts';
import type { Project } from '../../../src/engine/project/model.ts';
import { stickOfMember } from '../../../src/engine/section-of-member.ts';
import { thinnestLogs } from '../../../src/engine/thinnest.ts';
import { exampleText, soundProject } from '../../support/files.ts';
import { tiedShed } from '../../support/tied-shed.ts';
import { at, listAt, type Raw } from '../project/raw.ts';

/** What is asked of the wood at one place. */
const BY_SECTION: ReadonlySet<RuleId> = new Set<RuleId>([
  'beam.bending',
  'beam.shear',
  'beam.twist',
  'beam.cuts',
  'beam.endNotch',
  'post.crushing',
  'post.bending',
  'post.tension',
  'post.housing',
  'brace.crushing',
  'brace.pull',
  'rafter.bending',
  'rafter.shear',
  'purlin.bending',
  'purlin.shear',
  'tie.bending',
  'tie.shear',
  'tie.cuts',
  'tie.endNotch',
]);

/** An example with rafters and purlins cut from the poles of its braces, made long and even. */
function withPoles(name: Parameters<typeof exampleText>[0], diameterIn: number): Project {
  const raw = JSON.parse(exampleText(name)) as Raw;
  const even = [0, 400].map((fromButtIn) => ({ fromButtIn, diameterIn }));
  listAt(raw, 'logs').push({ ...at(raw, 'logs', 'size-brace'), id: 'pole', stations: even });
  for (const group of ['rafters', 'purlins'])
    at(raw, 'groups', group)['stock'] = { kind: 'log', logId: 'pole', fromButtIn: 0, buttAt: 'start' };
  return soundProject(JSON.stringify(raw));
}

describe('the thinnest log of every round member', () => {
  for (const { words, project, lacks } of [
    { words: 'firewood shed', project: soundProject(exampleText('firewood-shed')), lacks: false },
    { words: 'undersized shed', project: soundProject(exampleText('undersized-shed')), lacks: true },
    // pole rafters have their seats stretched by uplift: no pole passes there
    { words: 'firewood shed with pole rafters of 7 in.', project: withPoles('firewood-shed', 7), lacks: true },
    { words: 'undersized shed with pole rafters of 3 in.', project: withPoles('undersized-shed', 3), lacks: true },
    { words: 'shed with tie logs and braces across', project: tiedShed({ tieDiametersIn: [10, 9] }), lacks: true },
    { words: 'shed with tie logs cut for braces', project: tiedShed({ braceTop: 'housed' }), lacks: true },
  ]) {
    it(`of the ${words} fits inside the log exactly where every check of its sections passes`, () => {
      const answer = evaluate(project);
      if (!answer.ok) throw new Error(JSON.stringify(answer.faults));
      const { checks, shelter } = answer.evaluation;
      let [asked, lacking] = [0, 0];
      for (const { memberId, atIn, leastDiameterIn } of thinnestLogs(answer.evaluation)) {
        const rows = checks.filter((row) => row.memberId === memberId && BY_SECTION.has(row.ruleId));
        if (rows.length === 0) continue;
        asked++;
        const stick = stickOfMember(shelter, memberId);
        const fits = leastDiameterIn.every((least, i) => {
          const has = stick?.kind === 'round' ? diameterAt(stick, atIn[i]!) : null;
          return has === null || (least !== null && least <= has + 1e-6);
        });
        const passes = rows.every(({ ratio, status }) => (ratio === null ? status === 'pass' : ratio <= 1));
        if (!fits) lacking++;
        expect(`${memberId}: ${fits}`).toBe(`${memberId}: ${passes}`);
      }
      expect(asked).toBeGreaterThan(5);
      expect(lacking > 0).toBe(lacks);
    });
  }
});
