import { describe, expect, it } from 'vitest';
import type { Project } from '../../../src/engine/project/model.ts';
import { exampleText, soundProject } from '../../support/files.ts';
import { evaluated } from './whole.ts';

const demo = soundProject(exampleText('firewood-shed'));
const bare: Project = {
  ...demo,
  logs: demo.logs.map((log) => ({ ...log, errorIn: 0 })),
  asBuilt: { ...demo.asBuilt, cutsMade: [] },
};
const NOT_READ: ReadonlySet<string> = new Set(['cutsMadeNotRead']);
const said = (project: Project): readonly string[] =>
  evaluated(project)
    .assumptions.map(({ code }) => code)
    .filter((code) => NOT_READ.has(code));

describe('what the file holds and no figure uses', () => {
  it('is not spoken of where there is none', () => {
    expect(said(bare)).toEqual([]);
  });

  it('is said: cuts already made', () => {
    const made = {
      log: bare.logs[0]!.id,
      kind: 'notch',
      fromButtIn: 40,
      lengthIn: 3,
      depthIn: 0.5,
      angleDeg: 0,
      date: '2026-05-02',
    } as const;
    const cut = { ...bare, asBuilt: { ...bare.asBuilt, cutsMade: [made] } };
    expect(said(cut)).toEqual(['cutsMadeNotRead']);
  });

  it('that diameters count as typed is said as soon as one of them may be off', () => {
    const rough = { ...bare, logs: bare.logs.map((log, i) => ({ ...log, errorIn: i === 0 ? 0.25 : 0 })) };
    const asTyped = (project: Project): boolean =>
      evaluated(project).assumptions.some(({ code }) => code === 'diametersAsTyped');
    expect([asTyped(bare), asTyped(rough)]).toEqual([false, true]);
  });
});
