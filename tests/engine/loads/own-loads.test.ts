import { describe, expect, it } from 'vitest';
import type { OwnLoad, Project } from '../../../src/engine/project/model.ts';
import { exampleText, soundProject } from '../../support/files.ts';
import { evaluated, rowOf } from '../whole/whole.ts';

const shed = soundProject(exampleText('firewood-shed'));
const leanTo = soundProject(exampleText('lean-to'));
const load = (more: Partial<OwnLoad>): OwnLoad => ({
  id: 'swing',
  name: 'swing',
  kind: 'live',
  duration: 'tenYears',
  removable: true,
  direction: 'down',
  where: { on: 'line', line: 'line-high', xIn: 78, lb: 400 },
  ...more,
});
const durationOf2 = (project: Project): number =>
  evaluated(project).loads.combinations.find((c) => c.id === '2+own-live')!.duration;

describe('what the person hangs there', () => {
  // NDS Table 2.3.2: ten years 1.0, permanent 0.9
  it('counts ten years, or for ever where it hangs for ever', () => {
    expect(durationOf2({ ...shed, ownLoads: [load({})] })).toBe(1);
    expect(durationOf2({ ...shed, ownLoads: [load({ duration: 'sevenDays' })] })).toBe(1);
    expect(durationOf2({ ...shed, ownLoads: [load({ duration: 'permanent' })] })).toBe(0.9);
  });

  it.each([
    ['on a ledger', leanTo, load({ where: { on: 'line', line: 'ledger', xIn: 78, lb: 400 } })],
    ['spread on a ledger', leanTo, load({ where: { on: 'stretch', line: 'ledger', fromXIn: 0, toXIn: 78, plf: 40 } })],
    ['pulling up', shed, load({ direction: 'up' })],
    ['of dead weight', shed, load({ kind: 'dead' })],
    ['on a member', shed, load({ where: { on: 'member', member: 'beam-high', atIn: 78, lb: 400 } })],
  ])('%s it is not computed, and a row says so', (_, project, own) => {
    expect(rowOf(evaluated({ ...project, ownLoads: [own] }), 'site.ownLoad/swing/whole').status).toBe('outside');
  });
});
