import { describe, expect, it } from 'vitest';
import { parseProject } from '../../../src/engine/project/parse.ts';
import { asGable, at, listAt, type Raw, rawShed, splitBeam, withSecondPlane, withThirdLine, withTie } from './raw.ts';

const faultsOf = (raw: Raw) => {
  const answer = parseProject(raw);
  return answer.ok ? [] : answer.faults;
};
const spoilt = (raw: Raw, change: (raw: Raw) => void): Raw => {
  change(raw);
  return raw;
};

/** Files just as unusual, that must be let through. */
const GOOD: readonly (readonly [string, (raw: Raw) => void])[] = [
  [
    'a joint capacity of a brace that is gone',
    (r) => void listAt(r, 'joints', 'own').push({ key: 'braceTop/brace-77', capacity: { kind: 'none' } }),
  ],
  ['a mark on a post that is gone', (r) => void listAt(r, 'notYetYours').push('post-77/foot')],
  [
    'a pier top measured at a post that is gone',
    (r) => void listAt(r, 'asBuilt', 'pierTops').push({ post: 'post-77', zIn: 6, date: '2026-05-11' }),
  ],
  ['two logs that meet over a post', (r) => splitBeam(r, 156, 156)],
  ['a roof of one slope on three lines', withThirdLine],
  ['a gable: two slopes from one ridge line', asGable],
  ['two planes of one slope on the same lines', (r) => withSecondPlane(r, 3)],
  [
    'a roof without slope',
    (r) => void ((at(r, 'roofPlanes', 'plane-1')['risePer12'] = 0), (at(r, 'members', 'purlin-6')['upSlopeIn'] = 140)),
  ],
  [
    'height said of the other line',
    (r) =>
      void (
        (at(r, 'supportLines', 'line-high')['height'] = null),
        (at(r, 'supportLines', 'line-low')['height'] = { of: 'underside', zIn: 80 })
      ),
  ],
  ['lines that fall toward lower y', (r) => void (at(r, 'supportLines', 'line-low')['yIn'] = -108)],
  ['everything moved 40 ft along x', (r) => moveAlong(r, 480)],
  [
    'a site that nobody asked about',
    (r) =>
      Object.values(at(r, 'site')).forEach((given) => {
        if (typeof given === 'object' && given !== null && 'givenBy' in given)
          Object.assign(given, { value: null, givenBy: 'guess', date: null });
      }),
  ],
  ['beams not chosen yet', (r) => void (at(r, 'members', 'beam-high')['own'] = { stock: null })],
  ['a post whose pier is not measured', (r) => void (at(r, 'members', 'post-1')['pierTopZIn'] = null)],
  ['a tie square across', withTie],
  [
    'a brace to a tie',
    (r) => {
      withTie(r);
      at(r, 'members', 'brace-1')['to'] = 'tie-1';
    },
  ],
  [
    'a brace to a rafter over its post',
    (r) => void ((at(r, 'members', 'rafter-2')['xIn'] = 0.5), (at(r, 'members', 'brace-1')['to'] = 'rafter-2')),
  ],
  [
    'covering laid on the rafters',
    (r) =>
      void (
        (at(r, 'roofPlanes', 'plane-1')['sheetOn'] = 'rafters'),
        (r['members'] = listAt(r, 'members').filter((m) => (m as Raw)['role'] !== 'purlin'))
      ),
  ],
  [
    'a station with a second calliper and a girth',
    (r) => void Object.assign(at(r, 'logs', 'log-2', 'stations', 1), { acrossIn: 12.25, read: 'girth' }),
  ],
  ['a stiff pier', (r) => void (at(r, 'groups', 'posts', 'foot', 'fixity')['across'] = { lbInPerRad: 2e6 })],
  ['one stem cut into two posts', (r) => oneStemForTwo(r)],
  ['names in other letters', (r) => void (at(r, 'title')['name'] = 'Aitta metsän reunassa – 薪小屋')],
  ['the last day of February of a leap year', (r) => void (at(r, 'code', 'loads')['date'] = '2024-02-29')],
  ['own notes under extras', (r) => void (r['extras'] = { note: ['anything', { at: 1 }] })],
  ['members in another order', (r) => void listAt(r, 'members').reverse()],
  ['nobody has decided what holds it', (r) => void (r['lateral'] = { along: [{ by: null }], across: [] })],
];

function moveAlong(r: Raw, byIn: number): void {
  for (const list of [listAt(r, 'roofPlanes'), listAt(r, 'members'), [at(r, 'ownLoads', 'tool-rack', 'where')]]) {
    for (const element of list as Raw[]) {
      for (const field of ['xIn', 'fromXIn', 'toXIn']) {
        if (typeof element[field] === 'number') element[field] += byIn;
      }
    }
  }
}

function oneStemForTwo(r: Raw): void {
  Object.assign(at(r, 'logs', 'size-post'), {
    stands: 'log',
    id: 'long-stem',
    stations: [
      { fromButtIn: 0, diameterIn: 11 },
      { fromButtIn: 300, diameterIn: 9 },
    ],
  });
  at(r, 'groups', 'posts')['stock'] = null;
  const stock = (fromButtIn: number): Raw => ({
    stock: { kind: 'log', logId: 'long-stem', fromButtIn, buttAt: 'start' },
  });
  at(r, 'members', 'post-1')['own'] = stock(0);
  at(r, 'members', 'post-2')['own'] = stock(120);
}

describe('files that are unusual but sound', () => {
  it.each(GOOD)('%s is let through', (_, change) => {
    expect(faultsOf(spoilt(rawShed(), change))).toEqual([]);
  });

  it.each(['cuts', 'ownLoads', 'instead', 'asBuilt', 'trees', 'pieces', 'notYetYours', 'extras'])(
    'a file without %s is read as having none, and says so',
    (key) => {
      const answer = parseProject(spoilt(rawShed(), (r) => void delete r[key]));
      expect(answer).toMatchObject({ ok: true, repaired: [{ code: 'filledIn', values: { fields: key } }] });
    },
  );
});
