import { type Fault, fault } from '../../message.ts';
import type { InsteadOf, Project } from '../model.ts';
import { planeAt, stockPlaces } from './at.ts';

/** Values that stand below a line or multiply a strength: zero would make a check pass for nothing. */
const ABOVE_ZERO: ReadonlySet<InsteadOf> = new Set<InsteadOf>([
  'meanRoofHeightFt',
  'effectiveLengthAlongIn',
  'effectiveLengthAcrossIn',
  'columnTaperA',
  'columnC',
  'seatAreaIn2',
  'gustFactor',
  'kd',
]);
/** Factors that the standards keep at one or below. */
const AT_MOST_ONE: ReadonlySet<InsteadOf> = new Set<InsteadOf>(['columnTaperA', 'gustFactor', 'kd']);

/** Greatest c of the column stability factor in the standard, of glued wood; at one the formula has no answer. */
const GREATEST_C = 0.9;

/** Typed values are possible in themselves: pairs of weights in order, factors in range, each typed once. */
export function typedValueFaults(project: Project): readonly Fault[] {
  return [...insteadFaults(project), ...weightFaults(project), ...stiffnessFaults(project)];
}

function insteadFaults(project: Project): readonly Fault[] {
  return project.instead.flatMap(({ what, of, value }, i) => {
    const path = `instead[${i}]`;
    const first = project.instead.findIndex((other) => other.what === what && other.of === of);
    return [
      ...(first < i ? [fault(`${path}.what`, 'insteadTwice', { what, first })] : []),
      ...(ABOVE_ZERO.has(what) && value === 0 ? [fault(`${path}.value`, 'notAbove', { least: 0, got: value })] : []),
      ...(AT_MOST_ONE.has(what) && value > 1 ? [fault(`${path}.value`, 'tooBig', { most: 1, got: value })] : []),
      ...(what === 'columnC' && value > GREATEST_C
        ? [fault(`${path}.value`, 'tooBig', { most: GREATEST_C, got: value })]
        : []),
    ];
  });
}

/** Gravity uses the heavy weight of a pair and uplift the light one, so they must not be swapped. */
function weightFaults(project: Project): readonly Fault[] {
  const pair = (path: string, heavy: number, light: number): readonly Fault[] =>
    heavy >= light ? [] : [fault(path, 'heavyBelowLight', { heavy, light })];
  return [
    ...project.roofPlanes.flatMap(({ id, dead }) =>
      dead.by === 'total'
        ? pair(planeAt(id, 'dead.heavyPsf'), dead.heavyPsf, dead.lightPsf)
        : dead.layers.flatMap((layer, i) =>
            pair(planeAt(id, `dead.layers[${i}].heavyPsf`), layer.heavyPsf, layer.lightPsf),
          ),
    ),
    ...project.woods.flatMap(({ id, weight }) =>
      weight.by === 'typed' ? pair(`woods[${id}].weight.heavyPcf`, weight.heavyPcf, weight.lightPcf) : [],
    ),
    ...stockPlaces(project).flatMap(({ path, stock }) =>
      stock.kind === 'typed' ? pair(`${path}.heavyPlf`, stock.heavyPlf, stock.lightPlf) : [],
    ),
  ];
}

/** The lower-bound stiffness for stability cannot be above the mean one. */
const stiffnessFaults = (project: Project): readonly Fault[] =>
  project.woods.flatMap(({ id, basis }) =>
    basis.kind === 'typed' && basis.EminPsi > basis.EPsi
      ? [fault(`woods[${id}].basis.EminPsi`, 'tooBig', { most: basis.EPsi, got: basis.EminPsi })]
      : [],
  );
