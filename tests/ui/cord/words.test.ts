import { describe, expect, it } from 'vitest';
import type { CheckRow } from '../../../src/engine/evaluation.ts';
import { combinationInWords } from '../../../src/ui/cord/combination.ts';
import { foldAlike } from '../../../src/ui/cord/fold.ts';
import { placeInWords } from '../../../src/ui/cord/places.ts';
import { roomOf } from '../../../src/ui/cord/room.ts';

const row = (change: Partial<CheckRow>): CheckRow => ({
  key: 'beam.bending/b/s',
  ruleId: 'beam.bending',
  memberId: 'b',
  place: { kind: 'whole', name: '' },
  status: 'pass',
  demand: null,
  capacity: null,
  ratio: 0.5,
  combinationId: '',
  scenario: '',
  clause: { source: 'NDS', clause: '3.3' },
  ratios: { labels: [], values: new Float64Array(0) },
  spareIn: null,
  thins: null,
  spareLb: null,
  ...change,
});
const names = new Map([
  ['post-1', 'A1'],
  ['post-2', 'A2'],
  ['line-high', 'line A'],
  ['brace-1', 'brace A1+'],
]);

describe('room in the wood’s own terms', () => {
  it('is never rounded to the pleasant side', () => {
    expect(roomOf(row({ spareIn: 0.99 }), 'feet')).toBe('7/8 in to spare');
    expect(roomOf(row({ spareIn: -0.01, status: 'fail' }), 'feet')).toBe('1/8 in missing');
    expect(roomOf(row({ spareIn: 0.05 }), 'feet')).toBe('next to nothing to spare');
    expect(roomOf(row({ spareIn: 1 }), 'metric')).toBe('25 mm to spare');
    expect(roomOf(row({ spareLb: 970.9 }), 'feet')).toBe('970 lb of room');
    expect(roomOf(row({ spareLb: -0.2, status: 'fail' }), 'feet')).toBe('1 lb too little');
  });
  it('is not told where nothing was judged', () => {
    expect(roomOf(row({ spareLb: 5, status: 'notGiven' }), 'feet')).toBeNull();
    expect(roomOf(row({}), 'feet')).toBeNull();
  });
});

describe('the place of a check', () => {
  const said = (kind: CheckRow['place']['kind'], name: string, atIn?: number): string =>
    placeInWords(row({ place: atIn === undefined ? { kind, name } : { kind, name, atIn } }), names, 'feet');
  it('is called by posts, lines and ends, never by an id', () => {
    expect(said('span', 'post-1~post-2', 112)).toBe('between A1 and A2, 9 ft 4 in from the left end');
    expect(said('overhang', 'minus~post-1')).toBe('beyond A1');
    expect(said('overhang', 'post-2~plus')).toBe('beyond A2');
    expect(said('support', 'post-1')).toBe('at A1');
    expect(said('support', 'line-high')).toBe('at line A');
    expect(said('joint', 'seat-post-2')).toBe('at A2');
    expect(said('joint', 'at-68.4')).toBe('5 ft 8 3/8 in above the foot');
    expect(said('end', 'top')).toBe('at the upper end');
    expect(said('whole', 'across')).toBe('across the lines');
    expect(said('whole', '')).toBe('');
    expect(said('joint', 'of-nobody')).toBe('');
  });
});

describe('a combination', () => {
  const loads = {
    pressures: [],
    gustFactor: 0.85,
    flows: [],
    cases: [
      { id: 'snow-along-endHalf-3', kind: 'snow', words: { code: 'caseSnowAlong', values: { pattern: 'endHalf-3' } } },
    ],
    combinations: [],
    leftOut: [],
  } as const;
  it('is told with the place of its load and how braces were taken', () => {
    expect(combinationInWords(loads, { combinationId: '3-snow+snow-along-endHalf-3', scenario: 'braces idle' })).toBe(
      'Dead and snow: partial snow along the beam, counted from the left (half the snow on stretch 3, in full on the others); braces idle',
    );
  });
  it('is silent where no load is involved', () => {
    expect(combinationInWords(loads, { combinationId: '', scenario: '' })).toBe('');
  });
});

describe('alike rows', () => {
  it('stand behind the worst of their rule and status; another reason is another row', () => {
    const rows = [
      row({ key: 'a', ratio: 1.2, status: 'fail' }),
      row({ key: 'b', ratio: 1.1, status: 'fail' }),
      row({ key: 'c', ratio: null, status: 'notGiven', reason: { code: 'capacityNotGiven', values: {} } }),
      row({ key: 'd', ratio: null, status: 'notGiven', reason: { code: 'soilNotGiven', values: {} } }),
      row({ key: 'e', ratio: 0.4 }),
      row({ key: 'f', ratio: 0.3 }),
    ];
    const folded = foldAlike(rows);
    expect(folded.map(({ worst, others }) => [worst.key, others.map(({ key }) => key)])).toEqual([
      ['a', ['b']],
      ['c', []],
      ['d', []],
      ['e', ['f']],
    ]);
    expect(folded.flatMap(({ worst, others }) => [worst, ...others])).toHaveLength(rows.length);
  });
});
