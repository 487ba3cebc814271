import { describe, expect, it } from 'vitest';
import { readPath, type Step, writePath } from '../../../src/engine/project/paths.ts';

const PROJECT = {
  site: { 'snow load': 1, groundSnowPsf: { value: 55 } },
  logs: [{ id: 'log-1', stations: [{ fromButtIn: 0 }, { fromButtIn: 120 }] }],
  members: [{ id: 'post-1' }, { id: '0' }, { id: 'twice' }, { id: 'twice' }, { id: 'a b' }, {}],
  joints: { defaults: [{ kind: 'braceTop' }], own: [{ key: 'rafterStrip/rafter-3/line-1' }] },
};

describe('paths by id', () => {
  const CASES: readonly (readonly [string, readonly Step[]])[] = [
    ['site.groundSnowPsf.value', ['site', 'groundSnowPsf', 'value']],
    ['site["snow load"]', ['site', 'snow load']],
    ['logs[log-1].stations[1].fromButtIn', ['logs', 0, 'stations', 1, 'fromButtIn']],
    ['members[post-1].xIn', ['members', 0, 'xIn']],
    ['members[0].xIn', ['members', 1, 'xIn']],
    ['members[#2].id', ['members', 2, 'id']],
    ['members[#3].id', ['members', 3, 'id']],
    ['members[#4].id', ['members', 4, 'id']],
    ['members[#5].id', ['members', 5, 'id']],
    ['joints.defaults[braceTop].capacity', ['joints', 'defaults', 0, 'capacity']],
    ['joints.own[rafterStrip/rafter-3/line-1].capacity', ['joints', 'own', 0, 'capacity']],
  ];
  it.each(CASES)('%s is written from its steps and read back to them', (path, steps) => {
    expect(writePath(PROJECT, steps)).toBe(path);
    expect(readPath(PROJECT, path)).toEqual(steps);
  });

  it.each([
    '',
    'members[post-9].xIn',
    'members[#9].xIn',
    'logs[log-1].stations[2]',
    'logs[log-1].stations[x]',
    'site[0]',
    'members.length',
    'site..value',
    'site[',
    'site["\\q"]',
  ])('“%s” leads nowhere and is not guessed at', (path) => {
    expect(readPath(PROJECT, path)).toBeNull();
  });

  it('a path keeps its meaning when the list is put in another order', () => {
    const turned = { ...PROJECT, members: PROJECT.members.toReversed() };
    expect(readPath(turned, 'members[post-1].xIn')).toEqual(['members', 5, 'xIn']);
  });
});
