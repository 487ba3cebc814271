import { describe, expect, it } from 'vitest';
import { evaluate } from '../../../src/engine/evaluate.ts';
import type { Project, WoodBasis } from '../../../src/engine/project/model.ts';
import { logNotes } from '../../../src/ui/sheet/log-table.ts';
import { pieceNames } from '../../../src/ui/sheet/piece-names.ts';
import { exampleText, soundProject } from '../../support/files.ts';

const demo = soundProject(exampleText('firewood-shed'));

function notesWith(basis: WoodBasis): readonly string[] {
  const project: Project = { ...demo, woods: demo.woods.map((wood) => ({ ...wood, basis })) };
  const answer = evaluate(project);
  if (!answer.ok) throw new Error(JSON.stringify(answer.faults));
  return logNotes(project, answer.evaluation, pieceNames(project, answer.evaluation)).slice(2);
}

describe('what stands under the table of logs', () => {
  it('names who inspected the poles, and when, once for a wood', () => {
    const notes = notesWith({ kind: 'poles', ticked: [], by: ' Ann Miller', date: '2026-05-01' });
    expect(notes).toEqual(['Western larch: poles inspected by Ann Miller, 2026-05-01.']);
  });

  it('says that nobody is named where nobody is', () => {
    expect(notesWith({ kind: 'poles', ticked: [], by: '-', date: null })).toEqual([
      'Western larch: poles inspected by nobody named.',
    ]);
  });

  it('adds nothing to values derived from what was seen: each log says who looked', () => {
    expect(notesWith({ kind: 'derived' })).toEqual([]);
  });
});
