import { FREE_ROOF_RANGE, type Flow, type RoofForm } from '../../../data/loads/free-roof-main.ts';
import { SNOW_IMPORTANCE } from '../../../data/loads/snow.ts';
import { DIRECTIONALITY, RIGID_GUST } from '../../../data/loads/wind-exposure.ts';
import type { RuleId } from '../../../data/rules.ts';
import { clause } from '../../../data/sources.ts';
import { message, type Fault, type Message } from '../../message.ts';
import { put, stepsOf, type Note, type Step } from '../../note.ts';
import type { Given, Project, Site } from '../../project/model.ts';
import type { Unit } from '../../units.ts';
import { NO_UNEVEN_SNOW, type UnevenRoofSnow } from '../uneven-snow.ts';
import { edgeWidth } from './components.ts';
import { slopeBeyondFigure } from './free-roof.ts';
import { unreducedRoofLive } from './roof-live.ts';
import {
  flatRoofSnow,
  leastLowSlopeSnow,
  rainOnSnowSurcharge,
  slopedRoofSnow,
  slopeFactor,
  snowDensity,
} from './snow.ts';
import {
  allowableStressWindSpeed,
  groundElevationFactor,
  printedExposure,
  velocityPressure,
  velocityPressureExposure,
} from './wind.ts';

/** What the loads of the site need to know of the roof. */
export interface RoofOnSite {
  readonly form: RoofForm;
  readonly slopeDeg: number;
  readonly slippery: boolean;
  readonly unobstructed: boolean;
  readonly meanRoofHeightFt: number;
  /** plan size of the covering along the frame lines and across them [ft] */
  readonly planAlongFt: number;
  readonly planAcrossFt: number;
  /** share of the opening under the roof that goods block; null when nobody has said */
  readonly blockedShare: number | null;
  /** sides that are walled, the building of a lean-to counted */
  readonly closedSides: number;
  /** walls whose own wind goes into the frame; none where it is left out */
  readonly wallsOnFrame?: number;
}

/** What a person may choose or an engineer may type instead of the computed value. */
export interface WindChoices {
  readonly kz: 'formula' | 'table';
  readonly kd: number | null;
  readonly gustFactor: number | null;
}

/** One number of the site with the steps that made it; null where a value it needs is not given. */
export interface Figure {
  readonly value: number | null;
  readonly unit: Unit;
  /** told anew whenever they are asked */
  readonly steps: () => readonly Step[];
}

export type FigureName =
  | 'exposureFactor'
  | 'elevationFactor'
  | 'velocityPressure'
  | 'allowableStressWindSpeed'
  | 'edgeWidth'
  | 'flatRoofSnow'
  | 'slopeFactor'
  | 'slopedRoofSnow'
  | 'leastLowSlopeSnow'
  | 'countyLeastSnow'
  | 'balancedSnow'
  | 'rainOnSnow'
  | 'snowDensity'
  | 'unreducedRoofLive';

export interface SitePressures {
  readonly figures: Readonly<Record<FigureName, Figure>>;
  /** drifted, slid or carried over a ridge; found once the roof is placed */
  readonly uneven: UnevenRoofSnow;
  readonly gustFactor: number;
  /** flows that must be run, the worse governs */
  readonly flows: readonly Flow[];
  /** site values that nobody has given */
  readonly missing: readonly Fault[];
  /** judged all the same, with this reason on the check and in the cautions */
  readonly departures: readonly Message[];
  /** not covered by the method: the rule whose row says so, and why */
  readonly outside: readonly { readonly ruleId: RuleId; readonly reason: Message }[];
}

/**
 * Everything the site puts on the roof before any member is looked at. A guess counts as a value here: that it is a
 * guess is a row of its own. Total for a parsed project and a placed roof.
 * @param roof  plan size and height above zero, slope zero or above
 * @source ASCE7 chapters 2, 4, 7, 26, 27, 30 (7-16)
 * @departs own rules: a missing county load leaves the standard's own figure standing, named in `missing`;
 *   a county's least roof snow replaces the balanced snow when it is more; height over length outside 0.25 to 1 keeps
 *   the tabulated coefficient and is named in `departures`
 */
export function sitePressures(
  site: Site,
  code: Project['code'],
  roof: RoofOnSite,
  choices: WindChoices = { kz: 'formula', kd: null, gustFactor: null },
): SitePressures {
  const missing = missingValues(site, code);
  const wind = windFigures(site, roof, choices);
  const snow = snowFigures(site, roof);
  return {
    figures: {
      ...wind,
      ...snow,
      unreducedRoofLive: figure('psf', (note) => unreducedRoofLive(site.roofLivePsf.value, note)),
    },
    uneven: NO_UNEVEN_SNOW,
    gustFactor: choices.gustFactor ?? RIGID_GUST.value,
    flows: flowsToRun(roof),
    missing,
    departures: departuresOf(site, roof),
    outside: outsideOf(site, code, roof),
  };
}

function windFigures(site: Site, roof: RoofOnSite, choices: WindChoices) {
  const { meanRoofHeightFt: heightFt } = roof;
  const exposure = site.exposure.value;
  const mph = site.windMph.value;
  const kzt = site.kzt.value;
  const exposureFactor = figureOf('1', exposure, (given, note) => {
    const printed = choices.kz === 'table' ? printedExposure(given, heightFt, note) : null;
    return printed ?? velocityPressureExposure(given, heightFt, note);
  });
  const elevationFactor =
    site.ke.value === null
      ? figureOf('1', site.altitudeFt.value, (altitudeFt, note) => groundElevationFactor(altitudeFt, note))
      : { value: site.ke.value, unit: '1' as const, steps: NO_STEPS };
  const kz = exposureFactor.value;
  const ke = elevationFactor.value;
  const isGiven = kz !== null && kzt !== null && ke !== null && mph !== null;
  const pressure = isGiven
    ? figure('psf', (note) => velocityPressure({ kz, kzt, kd: choices.kd ?? DIRECTIONALITY.value, ke, mph }, note))
    : notYet('psf');
  return {
    exposureFactor,
    elevationFactor,
    velocityPressure: after([exposureFactor, elevationFactor], pressure),
    allowableStressWindSpeed: figureOf('mph', mph, allowableStressWindSpeed),
    edgeWidth: figure('ft', (note) =>
      edgeWidth({ leastWidthFt: Math.min(roof.planAlongFt, roof.planAcrossFt), meanHeightFt: heightFt }, note),
    ),
  };
}

function snowFigures(site: Site, roof: RoofOnSite) {
  const pg = site.groundSnowPsf.value;
  const ce = site.snowExposureCe.value;
  const ct = site.snowThermalCt.value;
  const is = site.riskCategory.value === null ? null : SNOW_IMPORTANCE[site.riskCategory.value];
  const { slopeDeg, unobstructed } = roof;

  const flat =
    pg !== null && ce !== null && ct !== null && is !== null
      ? figure('psf', (note) => flatRoofSnow({ groundSnowPsf: pg, ce, ct, is }, note))
      : notYet('psf');
  const slippery = roof.slippery && !isWarm(ct);
  const slope = figureOf('1', ct, (given, note) => slopeFactor({ slopeDeg, ct: given, slippery, unobstructed }, note));
  const pf = flat.value;
  const cs = slope.value;
  const sloped =
    pf !== null && cs !== null
      ? figure('psf', (note) => slopedRoofSnow({ flatRoofSnowPsf: pf, slopeFactor: cs }, note))
      : notYet('psf');
  const slopedRoof = after([flat, slope], sloped);
  return {
    flatRoofSnow: flat,
    slopeFactor: slope,
    slopedRoofSnow: slopedRoof,
    leastLowSlopeSnow:
      pg !== null && is !== null
        ? figure('psf', (note) => leastLowSlopeSnow({ groundSnowPsf: pg, is, slopeDeg }, note))
        : notYet('psf'),
    countyLeastSnow: { value: site.leastRoofSnowPsf.value, unit: 'psf' as const, steps: NO_STEPS },
    balancedSnow: ofDepartment(balancedSnow(slopedRoof, site.leastRoofSnowPsf.value), site.roofSnowPsf),
    // From the lower eave to the ridge of a pitched roof is less than the whole depth: the longer length asks for more.
    rainOnSnow: figureOf('psf', pg, (given, note) =>
      rainOnSnowSurcharge({ groundSnowPsf: given, slopeDeg, eaveToRidgeFt: roof.planAcrossFt }, note),
    ),
    snowDensity: figureOf('pcf', pg, snowDensity),
  };
}

/** A warm roof sheds early only when it is well insulated, which an open shelter is not: the rough line serves. */
const isWarm = (ct: number | null): boolean => ct !== null && ct <= 1;

function balancedSnow(sloped: Figure, countyPsf: number | null): Figure {
  const ps = sloped.value;
  if (ps === null || countyPsf === null) return sloped;
  const larger = figure('psf', (note) => {
    const balanced = Math.max(ps, countyPsf);
    note?.({
      symbol: 'S',
      words: 'Balanced snow to design for: the county’s least roof snow governs when it is more',
      formula: 'max(ps, S county)',
      put: [
        put('ps', ps, 'psf', 'balanced snow of the standard'),
        put('S county', countyPsf, 'psf', 'least roof snow set by the county'),
      ],
      result: { value: balanced, unit: 'psf' },
      clause: clause('OWN', 'the larger of the standard and the county'),
    });
    return balanced;
  });
  return after([sloped], larger);
}

/**
 * Roof snow given by the department itself stands instead of what was computed, more or less; given by anyone else it
 * counts only where it is more (own rule).
 */
function ofDepartment(computed: Figure, typed: Site['roofSnowPsf']): Figure {
  const given = typed?.value ?? null;
  if (!typed || given === null) return computed;
  const isOfDepartment = typed.givenBy === 'department';
  if (!isOfDepartment && (computed.value === null || computed.value >= given)) return computed;
  const figureGiven = figure('psf', (note) => {
    note?.({
      symbol: 'S',
      words: isOfDepartment
        ? 'Balanced snow to design for, as the department gives it for the roof itself'
        : 'Balanced snow to design for: what was typed for the roof itself is more than what was computed',
      formula: 'as given',
      put: [put('S', given, 'psf', `given by: ${typed.givenBy}`)],
      result: { value: given, unit: 'psf' },
      clause: clause('OWN', 'a roof snow of the department governs'),
    });
    return given;
  });
  return after([computed], figureGiven);
}

/** Clear flow always: goods may be gone on the day. Obstructed too unless somebody has said that no more than half is blocked. */
function flowsToRun({ blockedShare, closedSides }: RoofOnSite): readonly Flow[] {
  const canBeBlocked = blockedShare === null || blockedShare > FREE_ROOF_RANGE.clearBlockedAtMost || closedSides > 0;
  return canBeBlocked ? ['clear', 'obstructed'] : ['clear'];
}

function departuresOf(site: Site, roof: RoofOnSite): readonly Message[] {
  const departures: Message[] = [];
  const { leastHeightOverLength: least, greatestHeightOverLength: greatest } = FREE_ROOF_RANGE;
  const across = roof.meanRoofHeightFt / roof.planAcrossFt;
  const along = roof.meanRoofHeightFt / roof.planAlongFt;
  const isBeyond = (ratio: number) => ratio < least || ratio > greatest;
  if (isBeyond(across)) departures.push(message('beyondFigureAcross', { ratio: across }));
  if (isBeyond(along)) departures.push(message('beyondFigureAlong', { ratio: along }));
  if (roof.slippery && roof.unobstructed && isWarm(site.snowThermalCt.value)) {
    departures.push(message('warmSlipperyTakenRough'));
  }
  return departures;
}

function outsideOf(site: Site, code: Project['code'], roof: RoofOnSite): SitePressures['outside'] {
  const outside: { ruleId: RuleId; reason: Message }[] = [];
  const edition = code.loads.value;
  if (edition !== null && edition !== 'ASCE 7-16') {
    outside.push({ ruleId: 'site.edition', reason: message('editionNotOffered', { edition }) });
  }
  const slope = slopeBeyondFigure(roof.slopeDeg);
  if (slope) outside.push({ ruleId: 'site.roofForm', reason: slope });
  const ct = site.snowThermalCt.value;
  if (ct !== null && isWarm(ct)) outside.push({ ruleId: 'site.overhangIce', reason: message('overhangIce', { ct }) });
  const walls = roof.wallsOnFrame ?? 0;
  if (walls > 0) outside.push({ ruleId: 'site.walledSides', reason: message('wallOnFrameNotComputed', { walls }) });
  return outside;
}

function missingValues(site: Site, code: Project['code']): readonly Fault[] {
  const asked: [Given<unknown>, Message['code'], string][] = [
    [code.loads, 'missingLoadEdition', 'code.loads'],
    [site.riskCategory, 'missingRiskCategory', 'site.riskCategory'],
    [site.groundSnowPsf, 'missingGroundSnow', 'site.groundSnowPsf'],
    [site.leastRoofSnowPsf, 'missingLeastRoofSnow', 'site.leastRoofSnowPsf'],
    [site.roofLivePsf, 'missingRoofLive', 'site.roofLivePsf'],
    [site.snowExposureCe, 'missingSnowExposure', 'site.snowExposureCe'],
    [site.snowThermalCt, 'missingSnowThermal', 'site.snowThermalCt'],
    [site.windMph, 'missingWindSpeed', 'site.windMph'],
    [site.exposure, 'missingWindExposure', 'site.exposure'],
    [site.kzt, 'missingHillFactor', 'site.kzt'],
    // The altitude alone is enough: the factor follows from it.
    [site.ke.value === null ? site.altitudeFt : site.ke, 'missingElevationFactor', 'site.ke'],
  ];
  if (site.roofSnowPsf) asked.push([site.roofSnowPsf, 'missingRoofSnow', 'site.roofSnowPsf']);
  return asked.flatMap(([given, words, path]) => (given.value === null ? [{ ...message(words), path }] : []));
}

const NO_STEPS = (): readonly Step[] => [];

const figure = (unit: Unit, call: (note?: Note) => number): Figure => ({
  value: call(),
  unit,
  steps: () => stepsOf(call).steps,
});

const figureOf = <Value>(unit: Unit, given: Value | null, call: (given: Value, note?: Note) => number): Figure =>
  given === null ? notYet(unit) : figure(unit, (note) => call(given, note));

const notYet = (unit: Unit): Figure => ({ value: null, unit, steps: NO_STEPS });

/** The steps of what went in come first, so that the list can be redone from top to bottom. */
const after = (inputs: readonly Figure[], made: Figure): Figure => ({
  ...made,
  steps: () => [...inputs.flatMap((input) => input.steps()), ...made.steps()],
});
