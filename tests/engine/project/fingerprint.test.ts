import { createHash } from 'node:crypto';
import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { canonicalText } from '../../../src/engine/project/canonical.ts';
import { fingerprint, fingerprintAsBuilt } from '../../../src/engine/project/fingerprint.ts';
import type { Project } from '../../../src/engine/project/model.ts';
import { EXAMPLES, exampleText, soundProject } from '../../support/files.ts';
import { randomProject } from '../../support/random-project.ts';

const shed = soundProject(exampleText('firewood-shed'));

/** The same meaning in another order: keys and lists without order turned round. */
function turned(value: unknown, key = ''): unknown {
  if (Array.isArray(value)) {
    const inside = value.map((element) => turned(element));
    return key === 'onLines' || key === 'stations' ? inside : inside.toReversed();
  }
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(
    Object.entries(value)
      .toReversed()
      .map(([name, inside]) => [name, turned(inside, name)]),
  );
}

describe('fingerprint', () => {
  it('is the first sixteen digits of SHA-256 of the canonical text, compared with the hash of the platform', () => {
    const { asBuilt: _a, trees: _t, pieces: _p, notYetYours: _n, extras: _e, ...design } = shed;
    const outside = createHash('sha256').update(canonicalText(design), 'utf8').digest('hex');
    expect(fingerprint(shed)).toMatch(/^[0-9a-f]{4}(-[0-9a-f]{4}){3}$/);
    expect(fingerprint(shed).replaceAll('-', '')).toBe(outside.slice(0, 16));
  });

  it('does not change with the order of keys and of lists that have none', () => {
    fc.assert(
      fc.property(randomProject(), (project) => {
        expect(fingerprint(turned(project) as Project)).toBe(fingerprint(project));
      }),
      { seed: 58, numRuns: 40 },
    );
  });

  it('changes when stations or lines change places, since their order is their meaning', () => {
    const [plane] = shed.roofPlanes;
    const swapped = { ...shed, roofPlanes: [{ ...plane!, onLines: plane!.onLines.toReversed() }] };
    expect(fingerprint(swapped)).not.toBe(fingerprint(shed));
  });

  const visit = { date: '2027-04-01', by: 'the owner', found: [] };
  it.each([
    ['a visit', { asBuilt: { ...shed.asBuilt, visits: [visit] } }],
    ['a tree', { trees: [{ id: 'tree-1' }] }],
    ['a piece', { pieces: [{ id: 'piece-1' }] }],
    ['a mark', { notYetYours: ['post-1/foot'] }],
    ['a note', { extras: { note: 1 } }],
  ])('does not change with %s', (_, change) => {
    expect(fingerprint({ ...shed, ...change })).toBe(fingerprint(shed));
  });

  it('of what was built changes with a visit, but not with a tree', () => {
    const visited = { ...shed, asBuilt: { ...shed.asBuilt, visits: [visit] } };
    expect(fingerprintAsBuilt(visited)).not.toBe(fingerprintAsBuilt(shed));
    expect(fingerprintAsBuilt({ ...shed, trees: [1] })).toBe(fingerprintAsBuilt(shed));
  });

  it('changes with every number of the design that is changed by a sixteenth', () => {
    const thicker = JSON.parse(JSON.stringify(shed).replace('"diameterIn":13.5', '"diameterIn":13.5625')) as Project;
    expect(fingerprint(thicker)).not.toBe(fingerprint(shed));
  });

  it('differs from example to example', () => {
    const all = EXAMPLES.map((name) => fingerprint(soundProject(exampleText(name))));
    expect(new Set(all).size).toBe(EXAMPLES.length);
  });
});

describe('canonical text', () => {
  it('leaves out what is undefined, as a file would', () => {
    expect(canonicalText({ b: 1, a: undefined })).toBe('{"b":1}');
  });

  it('sorts by code unit, not by the language of the machine', () => {
    expect(canonicalText({ members: [{ id: 'b' }, { id: 'Z' }, { id: 'a' }] })).toBe(
      '{"members":[{"id":"Z"},{"id":"a"},{"id":"b"}]}',
    );
  });
});
