import type { LineMesh } from './line-mesh.ts';
import type { ValueLayout } from './value-layout.ts';

/**
 * Braces as unknown forces. The mesh is factored once without braces and held sideways; every load case, every unit
 * brace push and a unit sideways shift of the hold are solved once. Any set of working braces, held or free, is then a
 * small system: the gap of a working brace closes by its own shortening, and a free line has no force in its hold.
 */
export interface SolvedStates<State> {
  readonly cases: readonly State[];
  readonly unitPush: readonly State[];
  readonly unitShift: State;
}

/**
 * A line without working braces that resists an inch of shift with less than this stands free: rounding leaves about a
 * billionth of a pound, the weakest foot or post that holds at all more than a pound [lb/in].
 */
const FREE_LB_PER_IN = 1e-6;

/**
 * Solves one set of working braces for all cases at once. Most sets are asked for a few cases only: the long list of a case is
 * added up when it is asked for.
 * @returns by case all values with these braces working; null when the set leaves a mechanism (nothing holds the free
 *   line sideways)
 */
export function solveBraceSet(
  mesh: LineMesh,
  layout: ValueLayout,
  states: SolvedStates<Float64Array>,
  working: readonly boolean[],
  free: boolean,
): ((index: number) => Float64Array) | null {
  const opening = (values: Float64Array, j: number): number => values[layout.openingsAt + j]!;
  const holdForce = (values: Float64Array): number => values[layout.reactionsAt + mesh.holdSupport * 3]!;

  const on = working.flatMap((w, j) => (w ? [j] : []));
  if (free && on.length === 0 && !someFootHoldsATurn(mesh)) return null;
  if (free && on.length === 0 && Math.abs(holdForce(states.unitShift)) < FREE_LB_PER_IN) return null;
  const matrix: number[][] = [];
  for (const j of on) {
    const row = on.map((k) => opening(states.unitPush[k]!, j) + (j === k ? mesh.braces[j]!.flexibility : 0));
    if (free) row.push(opening(states.unitShift, j));
    matrix.push(row);
  }
  if (free) matrix.push([...on.map((k) => holdForce(states.unitPush[k]!)), holdForce(states.unitShift)]);
  const right = states.cases.map((values) => {
    const column = on.map((j) => -opening(values, j));
    if (free) column.push(-holdForce(values));
    return column;
  });
  const solved = solveDense(matrix, right);
  if (!solved) return null;
  const units = on.map((j) => states.unitPush[j]!);
  if (free) units.push(states.unitShift);
  const known: Float64Array[] = [];
  return (index) => (known[index] ??= withUnits(layout, states.cases[index]!, units, solved[index]!));
}

/** A state with so much of each unit state added. */
function withUnits(
  layout: ValueLayout,
  state: Float64Array,
  units: readonly Float64Array[],
  amounts: readonly number[],
): Float64Array {
  if (units.length === 0) return state;
  const sum = layout.copyOf(state);
  for (let k = 0; k < units.length; k++) {
    const unit = units[k]!;
    const amount = amounts[k]!;
    for (let i = 0; i < sum.length; i++) sum[i]! += amount * unit[i]!;
  }
  return sum;
}

/**
 * Posts that turn freely at foot and top hold nothing sideways. Their stiffness would be rounding, not zero, and as the
 * only number of its system nothing would tell it from a soft frame.
 */
const someFootHoldsATurn = (mesh: LineMesh): boolean =>
  mesh.posts.some((p) => mesh.model.supports[p.support]!.turn !== false);

/** A pivot this much smaller than its own row's largest entry means that nothing resists that movement. */
const MECHANISM = 1e-9;

/**
 * Gaussian elimination with row scaling and partial pivoting; null when singular. The systems here have one row per
 * working brace, seldom more than a dozen, and mix inches per pound with pounds per inch, hence the scaling.
 */
function solveDense(
  matrix: readonly (readonly number[])[],
  columns: readonly (readonly number[])[],
): readonly (readonly number[])[] | null {
  const n = matrix.length;
  const columnScale = Array.from({ length: n }, (_, j) => Math.max(...matrix.map((row) => Math.abs(row[j]!)), 0) || 1);
  const rows = matrix.map((row) => row.map((v, j) => v / columnScale[j]!));
  const rowScale = rows.map((row) => Math.max(...row.map(Math.abs), 0) || 1);
  const a = rows.map((row, i) => [...row.map((v) => v / rowScale[i]!), ...columns.map((c) => c[i]! / rowScale[i]!)]);
  for (let k = 0; k < n; k++) {
    let pivot = k;
    for (let i = k + 1; i < n; i++) if (Math.abs(a[i]![k]!) > Math.abs(a[pivot]![k]!)) pivot = i;
    if (Math.abs(a[pivot]![k]!) < MECHANISM) return null;
    [a[k], a[pivot]] = [a[pivot]!, a[k]!];
    const pivotRow = a[k]!;
    for (let i = k + 1; i < n; i++) {
      const row = a[i]!;
      const f = row[k]! / pivotRow[k]!;
      if (f !== 0) for (let j = k; j < row.length; j++) row[j]! -= f * pivotRow[j]!;
    }
  }
  return columns.map((_, c) => {
    const x = new Array<number>(n).fill(0);
    for (let i = n - 1; i >= 0; i--) {
      let sum = a[i]![n + c]!;
      for (let j = i + 1; j < n; j++) sum -= a[i]![j]! * x[j]!;
      x[i] = sum / a[i]![i]!;
    }
    return x.map((v, j) => v / columnScale[j]!);
  });
}
