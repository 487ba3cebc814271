import { describe, expect, it } from 'vitest';
import type { CaseKind, LoadCase } from '../../../src/engine/loads/cases.ts';
import { combine, serviceCombinations } from '../../../src/engine/loads/combine.ts';
import { message } from '../../../src/engine/message.ts';

const loadCase = (id: string, kind: CaseKind, swaysAlong = false): LoadCase => ({
  id,
  kind,
  swaysAlong,
  words: message('caseSnowBalanced'),
});

const CASES: readonly LoadCase[] = [
  loadCase('snow', 'snow'),
  loadCase('snow-along-endFull-1', 'snow'),
  loadCase('roof-live', 'roofLive'),
  loadCase('roof-live-odd', 'roofLive'),
  loadCase('wind-0-A-clear', 'wind'),
  loadCase('wind-along-plus-A-clear', 'wind', true),
  loadCase('notional-plus', 'notional', true),
];

/**
 * ASCE 7-16 2.4.1 written out for these cases: dead, dead and roof load, dead and wind, dead with three quarters of roof
 * load and wind, light dead and wind; the notional load with the same partners (1.4.1). A partial load has no companion.
 * Durations by the shortest load, NDS 2018 Table 2.3.2.
 */
const BY_HAND: readonly (readonly [id: string, duration: number, factors: Readonly<Record<string, number>>])[] = [
  ['1', 0.9, {}],
  ['3-roofLive+roof-live', 1.25, { 'roof-live': 1 }],
  ['3-roofLive+roof-live-odd', 1.25, { 'roof-live-odd': 1 }],
  ['3-snow+snow', 1.15, { snow: 1 }],
  ['3-snow+snow-along-endFull-1', 1.15, { 'snow-along-endFull-1': 1 }],
  ['5+wind-0-A-clear', 1.6, { 'wind-0-A-clear': 0.6 }],
  ['5+wind-along-plus-A-clear', 1.6, { 'wind-along-plus-A-clear': 0.6 }],
  ['6-roofLive+roof-live+wind-0-A-clear', 1.6, { 'roof-live': 0.75, 'wind-0-A-clear': 0.45 }],
  ['6-roofLive+roof-live+wind-along-plus-A-clear', 1.6, { 'roof-live': 0.75, 'wind-along-plus-A-clear': 0.45 }],
  ['6-snow+snow+wind-0-A-clear', 1.6, { snow: 0.75, 'wind-0-A-clear': 0.45 }],
  ['6-snow+snow+wind-along-plus-A-clear', 1.6, { snow: 0.75, 'wind-along-plus-A-clear': 0.45 }],
  ['7+wind-0-A-clear', 1.6, { 'wind-0-A-clear': 0.6 }],
  ['7+wind-along-plus-A-clear', 1.6, { 'wind-along-plus-A-clear': 0.6 }],
  ['N1+notional-plus', 1.6, { 'notional-plus': 0.7 }],
  ['N2-roofLive+roof-live+notional-plus', 1.6, { 'roof-live': 0.75, 'notional-plus': 0.525 }],
  ['N2-snow+snow+notional-plus', 1.6, { snow: 0.75, 'notional-plus': 0.525 }],
  ['N3+notional-plus', 1.6, { 'notional-plus': 0.7 }],
];

const factorsOf = (c: ReturnType<typeof combine>[number]) =>
  Object.fromEntries(c.factors.map((f) => [f.caseId, f.factor]));

describe('combinations of a set of cases', () => {
  it('[ASCE 7-16 2.4.1] are those written out by hand, with factors and durations, and no others', () => {
    expect(combine(CASES).map((c) => [c.id, c.durationFactor, factorsOf(c)])).toEqual(BY_HAND);
  });

  it('[ASCE 7-16 2.4.1] take light dead load times 0.6 in 7 and N3 only', () => {
    for (const { id, dead } of combine(CASES)) {
      const light = id.startsWith('7') || id.startsWith('N3');
      expect(dead).toEqual(light ? { factor: 0.6, weight: 'light' } : { factor: 1, weight: 'heavy' });
    }
  });

  it('[ASCE 7-16 2.4.1] with an own load add it alone and as a companion of everything but uplift', () => {
    const all = combine([...CASES, loadCase('own-live', 'ownLive')]);
    const more = all.map(({ id }) => id).filter((id) => !BY_HAND.some(([known]) => known === id));
    expect(more).toEqual([
      '2+own-live',
      '4-roofLive+own-live+roof-live',
      '4-snow+own-live+snow',
      '6-roofLive+own-live+roof-live+wind-0-A-clear',
      '6-roofLive+own-live+roof-live+wind-along-plus-A-clear',
      '6-snow+own-live+snow+wind-0-A-clear',
      '6-snow+own-live+snow+wind-along-plus-A-clear',
      'N2-roofLive+own-live+roof-live+notional-plus',
      'N2-snow+own-live+snow+notional-plus',
    ]);
    const six = all.find(({ id }) => id === '6-snow+own-live+snow+wind-0-A-clear')!;
    expect(factorsOf(six)).toEqual({ 'own-live': 0.75, snow: 0.75, 'wind-0-A-clear': 0.45 });
    expect(all.find(({ id }) => id === '2+own-live')!.durationFactor).toBe(1);
  });

  it('[ASCE 7-16 2.4.1] keep every combination without the own load, so that what hangs there never helps', () => {
    const ids = combine([...CASES, loadCase('own-live', 'ownLive')]).map(({ id }) => id);
    expect(ids.filter((id) => BY_HAND.some(([known]) => known === id))).toEqual(BY_HAND.map(([id]) => id));
    expect(new Set(ids).size).toBe(ids.length);
  });

  it('say which of them push the line sideways and which are gravity alone', () => {
    for (const { id, swaysAlong, gravityOnly } of combine(CASES)) {
      expect(swaysAlong).toBe(id.includes('along-plus') || id.includes('notional'));
      expect(gravityOnly).toBe(!id.includes('wind') && !id.includes('notional'));
    }
  });

  it('leave out what has no case: without snow, live and wind only dead load remains', () => {
    expect(combine([]).map(({ id }) => id)).toEqual(['1']);
  });
});

describe('combinations for sag', () => {
  // IBC 2018 Table 1604.3: live, snow or wind alone (wind 0.42 of its strength value, note f, from memory), and creep of
  // the dead load beside live or snow. What hangs there for years counts with its whole sag, Kcr times (NDS 3.5.2), and may
  // be gone.
  it('ask each load alone, 0.42 of the wind, and the years with creep, with and without what hangs there', () => {
    const service = serviceCombinations([...CASES, loadCase('own-live', 'ownLive')], 2);
    const roof = ['snow', 'snow-along-endFull-1', 'roof-live', 'roof-live-odd'].flatMap((id) => [
      [`sag+${id}`, 0, { [id]: 1 }],
      [`years+${id}`, 1, { [id]: 1 }],
      [`years+own-live+${id}`, 1, { 'own-live': 2, [id]: 1 }],
    ]);
    expect(service.map((c) => [c.id, c.dead.factor, factorsOf(c)])).toEqual([
      ...roof,
      ['sag+wind-0-A-clear', 0, { 'wind-0-A-clear': 0.42 }],
      ['sag+own-live', 0, { 'own-live': 1 }],
      ['years+own-live', 1, { 'own-live': 2 }],
    ]);
  });

  it('without anything that hangs there ask nothing of it', () => {
    expect(serviceCombinations(CASES, 2).filter(({ id }) => id.includes('own-live'))).toEqual([]);
  });

  it('creep of seasoned wood is half of the dead sag', () => {
    const years = serviceCombinations([loadCase('snow', 'snow')], 1.5).find(({ id }) => id === 'years+snow')!;
    expect(years.dead).toEqual({ factor: 0.5, weight: 'heavy' });
    expect(years.purpose).toBe('sagLongTerm');
  });
});
