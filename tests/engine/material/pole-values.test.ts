import { describe, expect, it } from 'vitest';
import { POLE_INSPECTION } from '../../../src/data/wood/pole-inspection.ts';
import { POLE_ITEMS } from '../../../src/data/wood/pole-items.ts';
import { logValues } from '../../../src/engine/material/log-values.ts';
import type { MaterialAnswer } from '../../../src/engine/material/values.ts';
import type { WoodBasis } from '../../../src/engine/project/model.ts';
import { aLog, aSeen, aWood, refusalIn, valuesIn } from './samples.ts';

type PoleBasis = Extract<WoodBasis, { kind: 'poles' }>;
const inspected: PoleBasis = { kind: 'poles', ticked: [...POLE_ITEMS], by: 'A. Owner', date: '2026-05-02' };
const poleOf = (species: string, basis: Partial<PoleBasis> = {}, log = aLog()): MaterialAnswer =>
  logValues(log, aWood(species, { ...inspected, ...basis }));

describe('published pole values', () => {
  it('NDS Supplement Table 6B (from memory): an inspected lodgepole pine has the printed values and c of poles', () => {
    const values = valuesIn(poleOf('Lodgepole pine'));
    expect(values).toMatchObject({
      basis: 'poles',
      FbPsi: 1275,
      FvPsi: 125,
      FcPerpPsi: 265,
      FcPsi: 825,
      EPsi: 1_100_000,
      EminPsi: 430_000,
      cForColumns: 0.85,
    });
    // the table prints no tension: 0.55 of bending (D245, from memory)
    expect(values.FtPsi).toBeCloseTo(0.55 * 1275, 9);
  });

  it('a pole over 13.5 in. loses bending by the ninth root of its equal-area square, and by nothing else', () => {
    const thick = aLog({ stations: [{ fromButtIn: 0, diameterIn: 16 }], seen: null });
    const values = valuesIn(poleOf('Red pine', {}, thick));
    expect(values.FbPsi).toBeCloseTo(1350 * 0.98163, 1); // (12 / 14.1796)^(1/9) = 0.98163
    expect(values.FcPsi).toBe(850);
  });

  it('every item must be ticked, and the reason names the ones that are not', () => {
    const answer = poleOf('Red pine', { ticked: POLE_ITEMS.filter((id) => id !== 'splits' && id !== 'rings') });
    if (answer.ok) throw new Error('values where none were expected');
    expect([answer.status, answer.reason.code, answer.reason.values['count']]).toEqual([
      'notGiven',
      'woodPolesNotTicked',
      2,
    ]);
    expect(answer.reason.values['items']).toBe('rings, splits');
  });

  it.each(POLE_ITEMS)('without %s there are no values', (id) => {
    const ticked = POLE_ITEMS.filter((other) => other !== id);
    expect(refusalIn(poleOf('Red pine', { ticked }))).toEqual(['notGiven', 'woodPolesNotTicked']);
  });

  it('the list beside the log asks every item once, each with its source', () => {
    expect(POLE_INSPECTION.map(({ id }) => id)).toEqual([...POLE_ITEMS]);
  });

  it('who looked is a name and a day', () => {
    expect(refusalIn(poleOf('Red pine', { by: ' ' }))).toEqual(['notGiven', 'woodPolesNotSigned']);
    expect(refusalIn(poleOf('Red pine', { by: 'A' }))).toEqual(['notGiven', 'woodPolesNotSigned']);
    expect(refusalIn(poleOf('Red pine', { date: null }))).toEqual(['notGiven', 'woodPolesNotSigned']);
  });

  it('a species without a row, and one whose row is remembered too loosely, give none', () => {
    expect(refusalIn(poleOf('White oak'))).toEqual(['notGiven', 'woodNoPoleRow']);
    expect(refusalIn(poleOf('Douglas-fir, Interior South'))).toEqual(['notGiven', 'woodNoPoleRow']);
    expect(refusalIn(poleOf('Western larch'))).toEqual(['notGiven', 'woodPoleRowDoubtful']);
    expect(refusalIn(poleOf('Ponderosa pine'))).toEqual(['notGiven', 'woodPoleRowDoubtful']);
    expect(refusalIn(poleOf('Ironbark'))).toEqual(['notGiven', 'woodSpeciesUnknown']);
  });

  // the log is 10 in. at its thinnest: girth 31.4 in., a sixth 5.2 in., a third 10.5 in.; half a turn in 20 ft is 1 in 15.3
  it.each([
    ['a knot of 4-1/4 in.', { worstKnotIn: 4.25 }, 'logKnotPastPole'],
    ['knots of 10-3/4 in. in one foot', { knotsInWorstFootIn: [3.75, 3.5, 3.5] }, 'logKnotsPastPole'],
    ['grain 1 in 15', { grainSlope1In: 15 }, 'logTwistPastPole'],
    ['five rings to the inch', { ringsPerIn: 5 }, 'logRingsPastPole'],
    ['5-1/8 in. out of straight', { straightIn: 5.125 }, 'logCrookPastPole'],
  ] as const)('%s contradicts the ticks', (_words, changes, code) => {
    expect(refusalIn(poleOf('Red pine', {}, aLog({ seen: aSeen(changes) })))).toEqual(['outside', code]);
  });

  it.each([
    ['a knot of 4 in.', { worstKnotIn: 4 }],
    ['knots of 10-1/4 in. in one foot', { knotsInWorstFootIn: [3.25, 3.5, 3.5] }],
    ['grain 1 in 16', { grainSlope1In: 16 }],
    ['six rings to the inch', { ringsPerIn: 6 }],
    ['4-7/8 in. out of straight', { straightIn: 4.875 }],
  ] as const)('%s does not', (_words, changes) => {
    expect(valuesIn(poleOf('Red pine', {}, aLog({ seen: aSeen(changes) }))).FbPsi).toBe(1350);
  });

  it('[log.limits] a check through an end is outside for poles too', () => {
    const log = aLog({ seen: aSeen({ throughCheckAtEnd: true }) });
    expect(refusalIn(poleOf('Red pine', {}, log))).toEqual(['outside', 'logThroughCheck']);
  });
});
