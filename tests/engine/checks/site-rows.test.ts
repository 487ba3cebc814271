import { describe, expect, it } from 'vitest';
import type { RoofForm } from '../../../src/data/loads/free-roof-main.ts';
import { siteRows } from '../../../src/engine/checks/site-rows.ts';
import { sitePressures } from '../../../src/engine/loads/site/site-pressures.ts';
import type { Project, Seen, Site } from '../../../src/engine/project/model.ts';
import { exampleText, soundProject } from '../../support/files.ts';
import { plainShed } from '../../support/plain-shed.ts';
import { placed } from '../frame/line-bench.ts';

/** Rows of a project as status and reason by rule and place. */
function rowsOf(
  project: Project,
  form: RoofForm | null = 'monoslope',
  shelter = placed(plainShed()),
): readonly string[] {
  const site = sitePressures(
    project.site,
    project.code,
    {
      form: form ?? 'monoslope',
      slopeDeg: project.roofPlanes[0]!.risePer12 > 12 ? 50 : shelter.planes[0]!.slopeDeg,
      slippery: true,
      unobstructed: true,
      meanRoofHeightFt: 10,
      planAlongFt: 17,
      planAcrossFt: 13.5,
      blockedShare: 0,
      closedSides: project.surroundings.closed.length,
      wallsOnFrame: project.surroundings.closed.filter((wall) => wall.heldBy === 'frame').length,
    },
    { kz: 'formula', kd: null, gustFactor: null },
  );
  return siteRows(project, shelter, site, form).map((row) => {
    const place = row.place.name === '' ? row.memberId : row.place.name;
    return `${row.ruleId} ${place}: ${row.status} ${row.reason?.code ?? ''}`;
  });
}

const withSite = (change: Partial<Site>): Project => {
  const shed = plainShed();
  return { ...shed, site: { ...shed.site, ...change } };
};
const around = (change: Partial<Project['surroundings']>): Project => {
  const shed = plainShed();
  return { ...shed, surroundings: { ...shed.surroundings, ...change } };
};
const guess = <T>(value: T | null) => ({ value, givenBy: 'guess', date: null }) as const;

describe('rows of the site', () => {
  it('a shelter with everything given has none', () => {
    expect(rowsOf(plainShed())).toEqual([]);
  });

  it('[log.knots] a log of which only the widest knot is written down says that its worst foot is not listed', () => {
    const example = soundProject(exampleText('firewood-shed'));
    const codes = (change: Partial<Seen>): readonly string[] => {
      const logs = example.logs.map((log) => (log.seen ? { ...log, seen: { ...log.seen, ...change } } : log));
      return rowsOf({ ...example, logs }).filter((row) => row.startsWith('log.knots log-1'));
    };
    expect(codes({})).toEqual([]);
    expect(codes({ knotsInWorstFootIn: [] })).toEqual(['log.knots log-1: notGiven knotsOfFootUnlisted']);
    expect(codes({ knotsInWorstFootIn: [], worstKnotIn: null })).toEqual([
      'log.knots log-1: notGiven knotsNotMeasured',
    ]);
    expect(codes({ knotsInWorstFootIn: [], worstKnotIn: 0 })).toEqual([]);
  });

  // proof [site.value]: no-equation - a value that is missing or only guessed is said to be not given
  it('[site.value] a guess counts as not given, and so does a blank', () => {
    expect(rowsOf(withSite({ riskCategory: guess('II' as const) }))).toEqual([
      'site.value site.riskCategory: notGiven guessedValue',
    ]);
    expect(rowsOf(withSite({ groundSnowPsf: guess<number>(null) }))).toEqual([
      'site.value site.groundSnowPsf: notGiven missingGroundSnow',
    ]);
    const soil = { ...plainShed().site.soil, bearingPsf: guess(1500) };
    expect(rowsOf(withSite({ soil }))).toEqual(['site.value site.soil.bearingPsf: notGiven guessedValue']);
  });

  it('[site.value] what the owner judged on the spot is given', () => {
    expect(rowsOf(withSite({ exposure: { value: 'B', givenBy: 'owner', date: null } }))).toEqual([]);
  });

  // proof [site.edition]: no-equation - another edition of the load standard is outside, by name
  it('[site.edition] another edition of the load standard is outside', () => {
    const shed = plainShed();
    const newer: Project = {
      ...shed,
      code: { ...shed.code, loads: { value: 'ASCE 7-22', givenBy: 'department', date: null } },
    };
    expect(rowsOf(newer)).toEqual(['site.edition site: outside editionNotOffered']);
  });

  // proof [site.overhangIce]: no-equation - 7.4.5 asks more of the overhangs of warm roofs; an open shelter has none
  it('[site.overhangIce] a roof that is said to be warm is outside', () => {
    const ct = (value: number) => withSite({ snowThermalCt: { value, givenBy: 'owner', date: null } });
    expect(rowsOf(ct(1))).toEqual(['site.overhangIce site: outside overhangIce']);
    expect(rowsOf(ct(1.1))).toEqual([]);
  });

  // proof [site.roofForm]: no-equation - what the figures for free roofs do not cover is outside
  it('[site.roofForm] a form or a slope that the figures do not cover is outside', () => {
    expect(rowsOf(plainShed(), null)).toEqual(['site.roofForm site: outside roofFormNotCovered']);
    const shed = plainShed();
    const steep: Project = { ...shed, roofPlanes: shed.roofPlanes.map((p) => ({ ...p, risePer12: 14 })) };
    expect(rowsOf(steep)).toEqual(['site.roofForm site: outside slopeOverFigure']);
  });

  // proof [site.walledSides]: no-equation - the push of a wall on the frame is said not to be computed
  it('[site.walledSides] a wall whose wind goes into the frame is outside; one that stands by itself is not', () => {
    const wall = (heldBy: 'frame' | 'itself') => around({ closed: [{ side: 'yMinus', share: 1, heldBy }] });
    expect(rowsOf(wall('frame'))).toEqual(['site.walledSides site: outside wallOnFrameNotComputed']);
    expect(rowsOf(wall('itself'))).toEqual([]);
  });

  it('goods that lean on a line are computed and have no row', () => {
    const goods = { blockedShare: 0, heightIn: 60, leansOnLines: ['line-0'] };
    expect(rowsOf(around({ goods }))).toEqual([]);
  });

  // An SD1 of 0.40 is the least that an S1 of 0.75 can give (2/3 x 0.8 x 0.75); category E begins there.
  it('[site.seismic] an earthquake is computed; what decides the category and the frame must be known', () => {
    const shaken = (seismic: Site['seismic']) => rowsOf(withSite({ seismic }));
    const given = { sds: 0.8, sd1: 0.39, r: 1.5, rGivenBy: '' };
    expect(shaken(given)).toEqual([]);
    expect(shaken({ ...given, sd1: 0.41 })).toEqual(['site.seismic s1: notGiven seismicS1NotGiven']);
    expect(shaken({ ...given, sd1: 0.41, s1: 0.5 })).toEqual([]);
    expect(shaken({ ...given, sd1: 0.41, s1: 0.75 })).toEqual(['site.seismic category: outside seismicCategoryE']);
    expect(shaken({ ...given, r: 3 })).toEqual(['site.seismic r: notGiven seismicRNotNamed']);
    expect(shaken({ ...given, r: 3, rGivenBy: 'A. Engineer' })).toEqual([]);
  });

  // proof [site.ponding]: no-equation - ASCE 7-16 8.4, from memory: susceptible below a quarter inch in a foot
  it('[site.ponding] a roof under a quarter inch in a foot is outside, at a quarter it is not', () => {
    const flat = placed(plainShed({ risePer12: 0.24 }));
    expect(rowsOf(plainShed(), 'monoslope', flat)).toEqual(['site.ponding site: outside pondingNotComputed']);
    expect(rowsOf(plainShed(), 'monoslope', placed(plainShed({ risePer12: 0.25 })))).toEqual([]);
  });

  // Each edition of the IBC names one edition of ASCE 7 (chapter 35, from memory).
  it('[site.edition] an adopted code that goes with another load standard is said', () => {
    const adopted = (value: string): readonly string[] => {
      const shed = plainShed();
      return rowsOf({ ...shed, code: { ...shed.code, building: { ...shed.code.building, value } } });
    };
    expect(['IBC 2018', '2021 IRC', 'our county code', 'IBC'].flatMap(adopted)).toEqual([]);
    const said = 'site.edition code.building: notGiven codeOfAnotherEdition';
    expect(['IBC 2024', '2015 International Building Code', 'IRC 2009'].flatMap(adopted)).toEqual([said, said, said]);
  });

  it('[site.seismic] a frame of timber posts higher than 35 ft is outside', () => {
    const shelter = placed(plainShed());
    const onAHill = { ...shelter, lowestGradeZIn: shelter.lowestGradeZIn - 300 };
    const seismic = { sds: 0.8, sd1: 0.3, r: 1.5, rGivenBy: '' };
    expect(rowsOf(withSite({ seismic }), 'monoslope', onAHill)).toEqual([
      'site.seismic height: outside seismicTooTall',
    ]);
  });

  // proof [site.ownLoad]: no-equation - an own load that is not computed has a row of its own
  it('[site.ownLoad] loads along the lines and on posts are computed, one across the lines has a row', () => {
    const base = { name: 'swing', kind: 'live', duration: 'tenYears', removable: true, direction: 'down' } as const;
    const ownLoads: Project['ownLoads'] = [
      { ...base, id: 'down', where: { on: 'line', line: 'line-0', xIn: 40, lb: 100 } },
      { ...base, id: 'aside', direction: 'xPlus', where: { on: 'line', line: 'line-0', xIn: 40, lb: 100 } },
      { ...base, id: 'across', direction: 'yPlus', where: { on: 'line', line: 'line-0', xIn: 40, lb: 100 } },
      { ...base, id: 'post', where: { on: 'member', member: 'post-0-0', atIn: 40, lb: 100 } },
    ];
    expect(rowsOf({ ...plainShed(), ownLoads })).toEqual(['site.ownLoad across: outside ownAcross']);
  });

  it('[site.ownLoad] one that has no size yet is not given', () => {
    const hung = { name: 'hoist', kind: 'live', duration: 'tenYears', removable: true, direction: 'down' } as const;
    const ownLoads: Project['ownLoads'] = [
      { ...hung, id: 'own-1', where: { on: 'line', line: 'line-0', xIn: 40, lb: 0 } },
    ];
    expect(rowsOf({ ...plainShed(), ownLoads })).toEqual(['site.ownLoad own-1: notGiven ownLoadIsNothing']);
  });
});
