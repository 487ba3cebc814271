import { rafterChecks } from '../../../../src/engine/checks/roof/rafter-checks.ts';
import type { RoofCheckContext } from '../../../../src/engine/checks/roof/context.ts';
import { roofChecks } from '../../../../src/engine/checks/roof/roof-checks.ts';
import type { CheckRow } from '../../../../src/engine/evaluation.ts';
import { placeShelter } from '../../../../src/engine/geometry/place-shelter.ts';
import { rafterCuts } from '../../../../src/engine/loads/rafter-cuts.ts';
import { rafterRun } from '../../../../src/engine/loads/rafter-run.ts';
import { roofFormOf } from '../../../../src/engine/loads/roof-cases.ts';
import { sitePressures } from '../../../../src/engine/loads/site/site-pressures.ts';
import { unevenRoofSnow } from '../../../../src/engine/loads/uneven-roof-snow.ts';
import { memberWeights } from '../../../../src/engine/loads/weights.ts';
import { materialsOf } from '../../../../src/engine/material-of.ts';
import type { Step } from '../../../../src/engine/note.ts';
import type { Project } from '../../../../src/engine/project/model.ts';
import { soundProject } from '../../../support/files.ts';
import { at, listAt, rawLeanTo, rawShed, type Raw } from '../../project/raw.ts';

/** The roof of a project, ready to be checked without any frame line. */
function contextOf(project: Project): RoofCheckContext {
  const { shelter, faults } = placeShelter(project);
  if (faults.length > 0) throw new Error(JSON.stringify(faults));
  const form = roofFormOf(shelter.planes);
  const materials = materialsOf(project, shelter);
  const { covering } = project.roofPlanes[0]!;
  const even = sitePressures(project.site, project.code, {
    form: form ?? 'monoslope',
    slopeDeg: shelter.planes[0]!.slopeDeg,
    slippery: covering.slippery,
    unobstructed: covering.unobstructed,
    meanRoofHeightFt: shelter.meanRoofHeightIn / 12,
    planAlongFt: shelter.planAlongIn / 12,
    planAcrossFt: shelter.planAcrossIn / 12,
    blockedShare: null,
    closedSides: 0,
  });
  const site = { ...even, uneven: unevenRoofSnow(project, shelter, even, form) };
  // a typed section brings its whole stiffness itself
  const stiffness = (id: string): number => {
    const answer = materials.of(id);
    return answer.ok ? answer.values.EPsi : 1;
  };
  const runs = new Map(
    shelter.rafters.map((r) => [r.id, rafterRun(r, stiffness(r.id), rafterCuts(project, shelter, site, r))]),
  );
  const runOf: RoofCheckContext['runOf'] = (r) => runs.get(r.id)!;
  return { project, shelter, site, form, runOf, weights: memberWeights(project, shelter), valuesOf: materials.of };
}

export const shedWith = (change: (raw: Raw) => void): RoofCheckContext => contextOf(changed(rawShed(), change));
export const leanToWith = (change: (raw: Raw) => void): RoofCheckContext => contextOf(changed(rawLeanTo(), change));

function changed(raw: Raw, change: (raw: Raw) => void): Project {
  change(raw);
  return soundProject(JSON.stringify(raw));
}

export const rowsOf = (context: RoofCheckContext): readonly CheckRow[] =>
  roofChecks(context).sources.flatMap((source) => source.rows());

export function rowOf(context: RoofCheckContext, key: string): CheckRow {
  const row = rowsOf(context).find((r) => r.key === key);
  if (!row) throw new Error(`no row ${key}`);
  return row;
}

export function stepsOf(context: RoofCheckContext, key: string, combinationId?: string): readonly Step[] {
  for (const source of roofChecks(context).sources) {
    const steps = source.explain(key, combinationId);
    if (steps) return steps;
  }
  throw new Error(`no steps of ${key}`);
}

/** Ratio of a row in one combination. */
export function ratioIn(row: CheckRow, combinationId: string): number {
  const i = row.ratios.labels.indexOf(`${combinationId}|`);
  if (i < 0) throw new Error(`no ${combinationId} among ${row.ratios.labels.join(' ')}`);
  return row.ratios.values[i]!;
}

export const analysedRafters = (context: RoofCheckContext) => rafterChecks(context).analysed;

/** A rated capacity for one kind of joint. */
export function rate(raw: Raw, kind: string, parts: Raw, durationIncluded = 1.6): void {
  const all = { pushLb: null, pullLb: null, alongLb: null, acrossLb: null, ...parts };
  const list = listAt(raw, 'joints', 'defaults');
  const others = list.filter((joint) => at({ joint: joint ?? null }, 'joint')['kind'] !== kind);
  list.length = 0;
  list.push(...others, { kind, capacity: { kind: 'rated', label: 'letter', parts: all, durationIncluded } });
}

/**
 * A roof for hand calculation: two lines 120 in. apart, no overhangs, six 2x6 rafters (1.5 x 5.5 in.) at 36 in., each
 * carrying 36 in., purlins every 24 in. up the slope; 4 psf heavy and 2 psf light in all; no snow; least wind.
 */
export function plainRoof(risePer12: number): (raw: Raw) => void {
  return (raw) => {
    for (const [field, value] of Object.entries({ groundSnowPsf: 0, leastRoofSnowPsf: 0, windMph: 60, exposure: 'B' }))
      at(raw, 'site', field)['value'] = value;
    at(raw, 'supportLines', 'line-low')['yIn'] = 120;
    Object.assign(at(raw, 'roofPlanes', 'plane-1'), {
      risePer12,
      highOverhangIn: 0,
      lowOverhangIn: 0,
      horizontalHeldBy: 'each-square',
      dead: { by: 'total', heavyPsf: 4, lightPsf: 2, includes: ['purlins', 'rafters'] },
    });
    at(raw, 'roofPlanes', 'plane-1', 'covering')['pastRafterIn'] = 0;
    Object.assign(at(raw, 'groups', 'rafters'), { seatCutIn: 0.75, stock: twoBySix() });
    const members = listAt(raw, 'members');
    const others = members.filter((m) => !['rafter', 'purlin'].includes(String(at({ m: m ?? null }, 'm')['role'])));
    members.length = 0;
    members.push(
      ...others,
      ...[-12, 24, 60, 96, 132, 168].map((xIn, i) => ({
        id: `rafter-${i + 1}`,
        role: 'rafter',
        group: 'rafters',
        plane: 'plane-1',
        xIn,
      })),
      ...[0, 24, 48, 72, 96, 120].map((upSlopeIn, i) => ({
        id: `purlin-${i + 1}`,
        role: 'purlin',
        group: 'purlins',
        plane: 'plane-1',
        upSlopeIn,
      })),
    );
  };
}

const twoBySix = (): Raw => ({
  kind: 'sawn',
  breadthIn: 1.5,
  depthIn: 5.5,
  lay: 'edge',
  plies: 1,
  species: 'Douglas Fir-Larch',
  grade: 'No. 2',
  use: 'dry',
});
