import type { RoofForm } from '../data/loads/free-roof-main.ts';
import type { Enclosure } from '../data/loads/wind-walled.ts';
import { placeShelter } from './geometry/place-shelter.ts';
import type { RafterGeometry, Shelter } from './geometry/shelter.ts';
import { earthquakeOf, highestFt, type Earthquake } from './loads/earthquake.ts';
import { rafterCuts } from './loads/rafter-cuts.ts';
import { rafterRun, type RafterRun } from './loads/rafter-run.ts';
import { roofFormOf, type RoofCase, type RunOf } from './loads/roof-cases.ts';
import { sitePressures, type SitePressures } from './loads/site/site-pressures.ts';
import { snowCases } from './loads/snow-cases.ts';
import { solidityBeyondTable } from './loads/solid-wind.ts';
import { isBlockedBelow } from './loads/neighbour-snow.ts';
import { unevenRoofSnow } from './loads/uneven-roof-snow.ts';
import { memberWeights, type MemberWeights } from './loads/weights.ts';
import { walledWindCases } from './loads/walled-wind.ts';
import { enclosureOf } from './loads/walls.ts';
import { windCases } from './loads/wind-cases.ts';
import { materialsOf, type Materials } from './material-of.ts';
import { message, type Fault } from './message.ts';
import type { Project } from './project/model.ts';

/** A placed shelter with everything that acts on it, before any line is analysed. */
export interface Givens {
  readonly project: Project;
  readonly shelter: Shelter;
  readonly site: SitePressures;
  readonly roof: readonly RoofCase[];
  readonly runOf: RunOf;
  readonly weights: MemberWeights;
  readonly materials: Materials;
  readonly earthquake: Earthquake | null;
}

export interface Prepared extends Givens {
  /** null where the method has no wind for the roof */
  readonly form: RoofForm | null;
}

/** What checks, reports and pictures of loads all start from; faults where the shelter cannot be placed. */
export function givensOf(project: Project): Prepared | { readonly faults: readonly Fault[] } {
  const { shelter, faults } = placeShelter(project);
  if (faults.length > 0) return { faults };
  const form = roofFormOf(shelter.planes);
  const enclosure = enclosureOf(project, shelter);
  const even = withDepartures(siteOf(project, shelter, form ?? 'monoslope'), project, shelter, enclosure);
  const site = { ...even, uneven: unevenRoofSnow(project, shelter, even, form) };
  const materials = materialsOf(project, shelter);
  const weights = memberWeights(project, shelter);
  const runOf = cachedRuns(project, shelter, site, materials);
  const segments = shelter.rafters[0] ? runOf(shelter.rafters[0]).segments.length : 1;
  // snow needs no figure of the wind: on a roof that has none it still lies
  const free = form === null ? [] : windCases(site, shelter, form);
  const roof: readonly RoofCase[] = [
    ...snowCases(site, segments),
    ...free,
    ...(form === null ? [] : walledWindCases(site, shelter, form, enclosure, free)),
  ];
  const earthquake = earthquakeOf(project.site, highestFt(shelter), site.figures.balancedSnow.value);
  return { project, shelter, site, form, roof, runOf, weights, materials, earthquake };
}

function siteOf(project: Project, shelter: Shelter, form: 'monoslope' | 'pitched') {
  const covering = project.roofPlanes.map((p) => p.covering);
  const { closed, neighbour } = project.surroundings;
  const typed = (what: 'kd' | 'gustFactor'): number | null =>
    project.instead.find((i) => i.what === what)?.value ?? null;
  return sitePressures(
    project.site,
    project.code,
    {
      form,
      slopeDeg: Math.max(...shelter.planes.map((p) => p.slopeDeg)),
      slippery: covering.every((c) => c.slippery),
      unobstructed: covering.every((c) => c.unobstructed) && !isBlockedBelow(project, shelter),
      meanRoofHeightFt: shelter.meanRoofHeightIn / 12,
      planAlongFt: shelter.planAlongIn / 12,
      planAcrossFt: shelter.planAcrossIn / 12,
      blockedShare: project.surroundings.goods?.blockedShare ?? null,
      closedSides: closed.length + (neighbour && neighbour.ledgerLine !== null ? 1 : 0),
      wallsOnFrame: closed.filter((wall) => wall.heldBy === 'frame').length,
    },
    { kz: project.calculation.kz, kd: typed('kd'), gustFactor: typed('gustFactor') },
  );
}

/** A frame more solid than the table of open frames, and parts of a roof over walls, are departures of the site's wind too. */
function withDepartures(site: SitePressures, project: Project, shelter: Shelter, enclosure: Enclosure): SitePressures {
  const solid = solidityBeyondTable(shelter);
  const hasWalls = enclosure !== 'open' && project.surroundings.closed.length > 0;
  const more = [...(solid ? [solid] : []), ...(hasWalls ? [message('walledComponents')] : [])];
  return more.length > 0 ? { ...site, departures: [...site.departures, ...more] } : site;
}

/** Rafters that are alike are solved once. */
function cachedRuns(project: Project, shelter: Shelter, site: SitePressures, materials: Materials): RunOf {
  const alike = new Map<string, RafterRun>();
  const runs = new Map<RafterGeometry, RafterRun>();
  return (rafter: RafterGeometry) => {
    const known = runs.get(rafter);
    if (known) return known;
    const cuts = rafterCuts(project, shelter, site, rafter);
    const key = likenessOf(rafter, cuts);
    const answer = materials.of(rafter.id);
    const run = alike.get(key) ?? rafterRun(rafter, answer.ok ? answer.values.EPsi : 1, cuts);
    alike.set(key, run);
    runs.set(rafter, run);
    return run;
  };
}

const likenessOf = (rafter: RafterGeometry, cutsIn: readonly number[]): string =>
  JSON.stringify([
    rafter.stick,
    rafter.supports.map((s) => [s.line, s.atIn]),
    rafter.runIn,
    rafter.slopeDeg,
    rafter.continuous,
    cutsIn,
  ]);
