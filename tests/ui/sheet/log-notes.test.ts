import { describe, expect, it } from 'vitest';
import { evaluate } from '../../../src/engine/evaluate.ts';
import type { Project, Seen, WoodBasis } from '../../../src/engine/project/model.ts';
import { logNotes } from '../../../src/ui/sheet/log-table.ts';
import { pieceNames } from '../../../src/ui/sheet/piece-names.ts';
import { exampleText, soundProject } from '../../support/files.ts';

const demo = soundProject(exampleText('firewood-shed'));

function notesOf(project: Project): readonly string[] {
  const answer = evaluate(project);
  if (!answer.ok) throw new Error(JSON.stringify(answer.faults));
  return logNotes(project, answer.evaluation, pieceNames(project, answer.evaluation));
}
const notesWith = (basis: WoodBasis): readonly string[] =>
  notesOf({ ...demo, woods: demo.woods.map((wood) => ({ ...wood, basis })) }).slice(2);

/** Who looked and how the species was told, where each log says so by its id. */
const noteWhere = (toldOf: (logId: string) => Seen['speciesToldBy']): string | undefined =>
  notesOf({
    ...demo,
    logs: demo.logs.map((log) => (log.seen ? { ...log, seen: { ...log.seen, speciesToldBy: toldOf(log.id) } } : log)),
  })[1];

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

  it('says by what the species was told, in own words too, without naming the logs where it is the same of all', () => {
    const note = noteWhere(() => ({ sign: 'conesOrFruit', inWords: ' small, upright ' }));
    expect(note).toBe('Looked at by the owner, 2026-02-20. Species told by cones or fruit (small, upright).');
  });

  it('keeps a line to write on for the logs of which it is not given', () => {
    const note = noteWhere((id) => (id === 'log-1' ? { sign: 'bark', inWords: '' } : undefined));
    expect(note).toMatch(/Species told by bark: beam A; ________________: posts .*, beam B, /);
  });

  it('keeps the line for everything where nobody said', () => {
    expect(noteWhere(() => undefined)).toMatch(
      /Species told by \(bark, needles, cones; who, when\): ________________$/,
    );
  });
});
