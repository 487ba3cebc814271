import { describe, expect, it } from 'vitest';
import type { Project } from '../../../../src/engine/project/model.ts';
import { exampleText, soundProject } from '../../../support/files.ts';
import { evaluated, rowOf } from '../../whole/whole.ts';

const leanTo = soundProject(exampleText('lean-to'));
const seatOn = (kind: 'flat' | 'dap' | 'saddle'): Project => ({
  ...leanTo,
  groups: leanTo.groups.map((g) => (g.role === 'beam' ? { ...g, seat: { ...g.seat, kind } } : g)),
});
const cutRow = (kind: 'flat' | 'dap' | 'saddle') => rowOf(evaluated(seatOn(kind)), 'beam.cuts/beam-1/seat-post-2');

// the seat on the middle post is pressed under every gravity load and stretched while the wind lifts
describe('a seat that only lift stretches', () => {
  it('[beam.cuts] may be a flat that runs out at a slope', () => {
    expect(cutRow('flat').status).toBe('pass');
  });

  it.each(['dap', 'saddle'] as const)('[beam.cuts] may not be a %s, which ends square', (kind) => {
    expect(cutRow(kind)).toMatchObject({ status: 'outside', reason: { code: 'cutInTension' } });
  });
});
