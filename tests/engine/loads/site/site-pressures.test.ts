import { describe, expect, it } from 'vitest';
import { sitePressures, type FigureName, type RoofOnSite } from '../../../../src/engine/loads/site/site-pressures.ts';
import type { Project, Site } from '../../../../src/engine/project/model.ts';

const given = <T>(value: T) => ({ value, givenBy: 'department' as const, date: '2026-03-02' });
const unasked = { value: null, givenBy: 'guess' as const, date: null };

const site: Site = {
  altitudeFt: given(3000),
  riskCategory: given('II'),
  groundSnowPsf: given(50),
  leastRoofSnowPsf: given(0),
  roofLivePsf: given(20),
  snowExposureCe: given(1),
  snowThermalCt: given(1.2),
  windMph: given(100),
  exposure: given('C'),
  kzt: given(1),
  ke: given(1),
  seismic: null,
  soil: { bearingPsf: given(1500), lateralPsfPerFt: given(100), soilPcf: 100, kind: 'clay' },
  frostDepthIn: given(36),
};
const code: Project['code'] = {
  loads: given('ASCE 7-16'),
  wood: given('NDS 2018'),
  building: given('IBC 2018'),
};
const roof: RoofOnSite = {
  form: 'monoslope',
  slopeDeg: 14,
  slippery: true,
  unobstructed: true,
  meanRoofHeightFt: 10,
  planAlongFt: 18,
  planAcrossFt: 12,
  blockedShare: 0,
  closedSides: 0,
};
const value = (name: FigureName, over: Partial<Site> = {}, roofOver: Partial<RoofOnSite> = {}) =>
  sitePressures({ ...site, ...over }, code, { ...roof, ...roofOver }).figures[name].value;

describe('site pressures', () => {
  // Redone by hand from the printed formulas: Kz = 2.01 (15/900)^(2/9.5); q = 0.00256 Kz 0.85 100^2; pf = 0.7 x 1.2 x 50.
  it('gathers what the formulas give', () => {
    const kz = 2.01 * (15 / 900) ** (2 / 9.5);
    expect(value('exposureFactor')).toBeCloseTo(kz, 12);
    expect(value('velocityPressure')).toBeCloseTo(0.00256 * kz * 0.85 * 10000, 10);
    expect(value('flatRoofSnow')).toBeCloseTo(42, 12);
    expect(value('balancedSnow')).toBeCloseTo(42, 12);
    expect(value('leastLowSlopeSnow')).toBe(20);
    expect(value('edgeWidth')).toBe(3);
    expect(value('unreducedRoofLive')).toBe(20);
    expect(value('snowDensity')).toBeCloseTo(20.5, 12);
  });

  // Own rule: the department's own figure for the roof governs, anybody else's only where it is more; computed is 42 psf.
  it('takes the snow on the roof itself from the department, more or less than computed', () => {
    const by = (psf: number, givenBy: 'department' | 'map') =>
      value('balancedSnow', { roofSnowPsf: { value: psf, givenBy, date: null } });
    expect([by(30, 'department'), by(60, 'department'), by(30, 'map'), by(60, 'map')]).toEqual([30, 60, 42, 60]);
  });

  it('asks for it while it is said to be given', () => {
    const { missing } = sitePressures({ ...site, roofSnowPsf: unasked }, code, roof);
    expect(missing.map(({ path }) => path)).toEqual(['site.roofSnowPsf']);
  });

  it('every step list ends with the figure itself, and can be read from top to bottom', () => {
    const { figures } = sitePressures(site, code, roof);
    const made = Object.values(figures).filter((figure) => figure.steps().length > 0);
    expect(made.map((figure) => figure.steps().at(-1)?.result)).toEqual(
      made.map(({ value: last, unit }) => ({ value: last, unit })),
    );
    expect(made).toHaveLength(Object.keys(figures).length - 2); // Ke and the county's snow are as typed
    expect(figures.velocityPressure.steps().map((step) => step.symbol)).toEqual(['Kz', 'q']);
    expect(figures.balancedSnow.steps().map((step) => step.symbol)).toEqual(['pf', 'Cs', 'ps', 'S']);
  });

  it('the county’s loads govern when they are more', () => {
    expect(value('balancedSnow', { leastRoofSnowPsf: given(60) })).toBe(60);
    expect(value('slopedRoofSnow', { leastRoofSnowPsf: given(60) })).toBeCloseTo(42, 12);
    expect(value('unreducedRoofLive', { roofLivePsf: given(30) })).toBe(30);
  });

  it('takes the elevation factor from the altitude when nobody gave the factor', () => {
    expect(value('elevationFactor', { ke: unasked })).toBeCloseTo(Math.exp(-0.1086), 12);
    const { missing } = sitePressures({ ...site, ke: unasked, altitudeFt: unasked }, code, roof);
    expect(missing.map((fault) => fault.path)).toEqual(['site.ke']);
  });

  it('uses a guess for figures like any other value', () => {
    expect(value('flatRoofSnow', { groundSnowPsf: { value: 50, givenBy: 'guess', date: null } })).toBeCloseTo(42, 12);
  });

  it('a missing county load is named, the figure of the standard stands', () => {
    const answer = sitePressures({ ...site, leastRoofSnowPsf: unasked, roofLivePsf: unasked }, code, roof);
    expect(answer.missing.map((fault) => fault.path)).toEqual(['site.leastRoofSnowPsf', 'site.roofLivePsf']);
    expect(answer.figures.countyLeastSnow.value).toBeNull();
    expect(answer.figures.balancedSnow.value).toBeCloseTo(42, 12);
    expect(answer.figures.unreducedRoofLive.value).toBe(20);
  });

  it.each([
    [
      'groundSnowPsf',
      ['flatRoofSnow', 'slopedRoofSnow', 'leastLowSlopeSnow', 'balancedSnow', 'rainOnSnow', 'snowDensity'],
    ],
    ['riskCategory', ['flatRoofSnow', 'slopedRoofSnow', 'leastLowSlopeSnow', 'balancedSnow']],
    ['snowExposureCe', ['flatRoofSnow', 'slopedRoofSnow', 'balancedSnow']],
    ['snowThermalCt', ['flatRoofSnow', 'slopeFactor', 'slopedRoofSnow', 'balancedSnow']],
    ['windMph', ['velocityPressure', 'allowableStressWindSpeed']],
    ['exposure', ['exposureFactor', 'velocityPressure']],
    ['kzt', ['velocityPressure']],
  ] as const)('without %s exactly the figures that need it are not given, and it is named', (key, gone) => {
    const answer = sitePressures({ ...site, [key]: unasked }, code, roof);
    const nulls = Object.entries(answer.figures).filter(([, figure]) => figure.value === null);
    expect(nulls.map(([name]) => name).toSorted()).toEqual([...gone].toSorted());
    expect(answer.missing.map((fault) => fault.path)).toEqual([`site.${key}`]);
  });

  it('runs both flows unless somebody has said that no more than half is blocked', () => {
    const flows = (over: Partial<RoofOnSite>) => sitePressures(site, code, { ...roof, ...over }).flows;
    expect(flows({ blockedShare: null })).toEqual(['clear', 'obstructed']);
    expect(flows({ blockedShare: 0.5 })).toEqual(['clear']);
    expect(flows({ blockedShare: 0.51 })).toEqual(['clear', 'obstructed']);
    expect(flows({ blockedShare: 0, closedSides: 1 })).toEqual(['clear', 'obstructed']);
  });

  it('marks height over length beyond 0.25 to 1, each direction by itself', () => {
    const marks = (over: Partial<RoofOnSite>) =>
      sitePressures(site, code, { ...roof, ...over }).departures.map((departure) => departure.code);
    expect(marks({})).toEqual([]);
    expect(marks({ planAcrossFt: 10, planAlongFt: 40 })).toEqual([]);
    expect(marks({ planAcrossFt: 9.9 })).toEqual(['beyondFigureAcross']);
    expect(marks({ planAlongFt: 40.1 })).toEqual(['beyondFigureAlong']);
  });

  it('says what lies outside the method and by which rule', () => {
    const rules = (over: Partial<RoofOnSite>, loads = code.loads) =>
      sitePressures(site, { ...code, loads }, { ...roof, ...over }).outside.map((row) => row.ruleId);
    expect(rules({})).toEqual([]);
    expect(rules({ slopeDeg: 46 })).toEqual(['site.roofForm']);
    expect(rules({ closedSides: 2 })).toEqual([]);
    expect(rules({ closedSides: 2, wallsOnFrame: 1 })).toEqual(['site.walledSides']);
    expect(rules({}, given('ASCE 7-22'))).toEqual(['site.edition']);
  });

  it('a warm slippery roof is taken as a rough one, and says so', () => {
    const warm = { snowThermalCt: given(1) };
    expect(value('slopeFactor', warm, { slopeDeg: 30 })).toBe(1);
    expect(sitePressures({ ...site, ...warm }, code, roof).departures).toEqual([
      { code: 'warmSlipperyTakenRough', values: {} },
    ]);
  });

  it('typed factors replace the computed ones', () => {
    const typed = sitePressures(site, code, roof, { kz: 'table', kd: 1, gustFactor: 0.9 });
    expect(typed.figures.exposureFactor.value).toBe(0.85);
    expect(typed.figures.velocityPressure.value).toBeCloseTo(0.00256 * 0.85 * 10000, 10);
    expect(typed.gustFactor).toBe(0.9);
  });

  it('leaves what it was given as it was', () => {
    const before = JSON.stringify([site, code, roof]);
    sitePressures(site, code, roof);
    expect(JSON.stringify([site, code, roof])).toBe(before);
  });
});
