import { describe, expect, it } from 'vitest';
import { MisuseError } from '../../../src/engine/errors.ts';
import { capacityOf, jointKey } from '../../../src/engine/project/joint-capacity.ts';
import type { MemberOf, Project } from '../../../src/engine/project/model.ts';
import { logOf, membersOf, stockOf, traitsOf, woodOf } from '../../../src/engine/project/traits.ts';
import { exampleText, soundProject } from '../../support/files.ts';

const shed = soundProject(exampleText('firewood-shed'));
const braces = membersOf(shed, 'brace');
const brace = (id: string): MemberOf<'brace'> => braces.find((member) => member.id === id)!;

describe('what a member is', () => {
  it('a member without fields of its own is as its group says', () => {
    expect(traitsOf(shed, brace('brace-1'))).toMatchObject({ runIn: 30, dropIn: 30 });
  });

  it('a field of its own takes the place of the group’s as a whole', () => {
    expect(traitsOf(shed, brace('brace-4'))).toMatchObject({ runIn: 28, dropIn: 32 });
    const coped = { kind: 'coped', depthIn: 0 } as const;
    const own = { ends: { post: coped, top: coped } };
    expect(traitsOf(shed, { ...brace('brace-1'), own }).ends).toEqual(own.ends);
  });

  it('an own stock of null is not given, whatever the group has', () => {
    expect(stockOf(shed, { ...brace('brace-1'), own: { stock: null } })).toBeNull();
  });

  it('an own field that is undefined hides nothing', () => {
    expect(traitsOf(shed, { ...brace('brace-1'), own: { runIn: undefined } }).runIn).toBe(30);
  });

  it('carries neither the id nor the role of the group', () => {
    expect(traitsOf(shed, brace('brace-1'))).not.toHaveProperty('id');
    expect(traitsOf(shed, brace('brace-1'))).not.toHaveProperty('role');
  });

  it('a member of no group is misuse', () => {
    expect(() => traitsOf(shed, { ...brace('brace-1'), group: 'posts' })).toThrow(MisuseError);
  });

  it('stock leads to its log and the log to its wood', () => {
    const [beam] = membersOf(shed, 'beam');
    const stock = stockOf(shed, beam!);
    const log = stock?.kind === 'log' ? logOf(shed, stock) : undefined;
    expect(log?.id).toBe('log-1');
    expect(log && woodOf(shed, log)?.species).toBe('Western larch');
  });
});

describe('what a joint holds', () => {
  const none = { kind: 'none' } as const;
  const key = jointKey('braceTop', 'brace-1');
  const withOwn: Project = { ...shed, joints: { ...shed.joints, own: [{ key, capacity: none }] } };

  it('its own capacity goes before that of its kind', () => {
    expect(capacityOf(withOwn, 'braceTop', key)).toEqual(none);
    expect(capacityOf(withOwn, 'braceTop', jointKey('braceTop', 'brace-2'))).toMatchObject({ kind: 'rated' });
  });

  it('an own null means nobody said, not “as its kind”', () => {
    const unsaid: Project = { ...shed, joints: { ...shed.joints, own: [{ key, capacity: null }] } };
    expect(capacityOf(unsaid, 'braceTop', key)).toBeNull();
  });

  it('a kind that is not listed is not given', () => {
    expect(capacityOf(shed, 'beamSplice', jointKey('beamSplice', 'beam-high', 'post-1'))).toBeNull();
  });

  it('a joint is named by its kind, the upper member and, where there are several, the lower', () => {
    expect(jointKey('rafterStrip', 'rafter-3', 'line-high')).toBe('rafterStrip/rafter-3/line-high');
  });
});
