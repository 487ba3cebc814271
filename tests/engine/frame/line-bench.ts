import type { JointSource } from '../../../src/engine/checks/joints/holder.ts';
import type { LineCheckContext } from '../../../src/engine/checks/line-context.ts';
import { analyseLine, type LineFrame, type LineSetting } from '../../../src/engine/frame/line-frame.ts';
import { membersOfLine } from '../../../src/engine/frame/line-mesh.ts';
import { placeShelter } from '../../../src/engine/geometry/place-shelter.ts';
import type { RafterGeometry, Shelter } from '../../../src/engine/geometry/shelter.ts';
import { combine, serviceCombinations } from '../../../src/engine/loads/combine.ts';
import { earthquakeOf, highestFt, type Earthquake } from '../../../src/engine/loads/earthquake.ts';
import { lineLoads, type LineLoading } from '../../../src/engine/loads/line-loads.ts';
import { ownPatches } from '../../../src/engine/loads/own-on-rafters.ts';
import { rafterRun } from '../../../src/engine/loads/rafter-run.ts';
import type { RoofCase, RunOf } from '../../../src/engine/loads/roof-cases.ts';
import { snowCases, snowCuts } from '../../../src/engine/loads/snow-cases.ts';
import { windCases } from '../../../src/engine/loads/wind-cases.ts';
import { sitePressures, type SitePressures } from '../../../src/engine/loads/site/site-pressures.ts';
import { stretchesOf } from '../../../src/engine/loads/stretches.ts';
import { unevenRoofSnow } from '../../../src/engine/loads/uneven-roof-snow.ts';
import { memberWeights, type MemberWeights } from '../../../src/engine/loads/weights.ts';
import { materialsOf } from '../../../src/engine/material-of.ts';
import type { Project } from '../../../src/engine/project/model.ts';
import { lineId } from '../../support/plain-shed.ts';

/** A placed shelter that must have no faults. */
export function placed(project: Project): Shelter {
  const { shelter, faults } = placeShelter(project);
  if (faults.length > 0) throw new Error(JSON.stringify(faults));
  return shelter;
}

/** Where joints of a placed shelter and their woods are found. */
export function jointSource(project: Project): JointSource {
  const shelter = placed(project);
  return { project, shelter, valuesOf: materialsOf(project, shelter).of };
}

/** Site figures of a project's single plane, as the shelter stands. */
const siteOf = (project: Project, shelter: Shelter): SitePressures =>
  sitePressures(
    project.site,
    project.code,
    {
      form: 'monoslope',
      slopeDeg: shelter.planes[0]!.slopeDeg,
      slippery: true,
      unobstructed: true,
      meanRoofHeightFt: shelter.meanRoofHeightIn / 12,
      planAlongFt: shelter.planAlongIn / 12,
      planAcrossFt: shelter.planAcrossIn / 12,
      blockedShare: project.surroundings.goods?.blockedShare ?? null,
      closedSides: 0,
    },
    { kz: 'formula', kd: null, gustFactor: null },
  );

export interface LoadBench {
  readonly project: Project;
  readonly shelter: Shelter;
  readonly site: SitePressures;
  readonly roof: readonly RoofCase[];
  readonly runOf: RunOf;
  readonly weights: MemberWeights;
  readonly earthquake: Earthquake | null;
  readonly loading: LineLoading;
}

/** Loads of one line, stage by stage, as the evaluation puts them together. */
export function loadBench(project: Project, line = lineId(0)): LoadBench {
  const shelter = placed(project);
  const even = siteOf(project, shelter);
  const site = { ...even, uneven: unevenRoofSnow(project, shelter, even, 'monoslope') };
  // cut by own loads and snow alone: nobody at work stands on the main frame
  const cuts = (rafter: RafterGeometry) => [
    ...ownPatches(shelter, rafter, project.ownLoads).flatMap((p) => [p.fromIn, p.toIn]),
    ...snowCuts(site, rafter),
  ];
  const runOf: RunOf = (rafter) => rafterRun(rafter, 1_200_000, cuts(rafter));
  const segments = runOf(shelter.rafters[0]!).segments.length;
  const roof = [...snowCases(site, segments), ...windCases(site, shelter, 'monoslope')];
  const weights = memberWeights(project, shelter);
  const earthquake = earthquakeOf(project.site, highestFt(shelter), site.figures.balancedSnow.value);
  const geometry = shelter.lines.find(({ id }) => id === line)!;
  const loading = lineLoads(project, shelter, geometry, site, roof, runOf, weights, earthquake);
  return { project, shelter, site, roof, runOf, weights, earthquake, loading };
}

export interface LineBench extends LoadBench {
  readonly frame: LineFrame;
  readonly context: LineCheckContext;
}

const HOLDS: LineSetting = { pullGiven: true, holdsItself: true };

/** One line loaded, analysed and ready to be checked. */
export function lineBench(project: Project, setting: LineSetting = HOLDS, line = lineId(0)): LineBench {
  const bench = loadBench(project, line);
  const { shelter, loading } = bench;
  const geometry = shelter.lines.find(({ id }) => id === line)!;
  const members = membersOfLine(shelter, geometry);
  const materials = materialsOf(project, shelter);
  const combinations = [...combine(loading.cases), ...serviceCombinations(loading.cases, project.calculation.kcr)];
  const elasticity = (id: string): number => {
    const answer = materials.of(id);
    return answer.ok ? answer.values.EPsi : 1_000_000;
  };
  const answer = analyseLine(members, loading.loads, combinations, elasticity, setting);
  if (!answer.ok) throw new Error(JSON.stringify(answer.reason));
  const context: LineCheckContext = {
    project,
    shelter,
    line: geometry,
    frame: answer.frame,
    stretches: stretchesOf(geometry, members.posts),
    site: bench.site,
    alongLb: loading.loads.alongLb,
    valuesOf: materials.of,
  };
  return { ...bench, frame: answer.frame, context };
}
