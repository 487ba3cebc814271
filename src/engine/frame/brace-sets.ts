import type { FrameState } from '../solver/model.ts';
import type { LineMesh } from './line-mesh.ts';

/**
 * Braces as unknown forces. The mesh is factored once without braces and held sideways; every load case, every unit
 * brace push and a unit sideways shift of the hold are solved once. Any set of working braces, held or free, is then a
 * small system: the gap of a working brace closes by its own shortening, and a free line has no force in its hold.
 */
export interface SolvedStates {
  readonly cases: readonly FrameState[];
  readonly unitPush: readonly FrameState[];
  readonly unitShift: FrameState;
}

export interface BraceSet {
  /** per case: push in each brace (compression +), then the shift of the hold; null for a mechanism */
  readonly answers: readonly Float64Array[];
}

/** How much the ends of brace j move apart in a state [in]. */
export function gapOpening(mesh: LineMesh, state: FrameState, j: number): number {
  const link = mesh.braces[j]!;
  const a = link.postNode * 3;
  const b = link.topNode * 3;
  return (state.moves[b]! - state.moves[a]!) * link.du + (state.moves[b + 1]! - state.moves[a + 1]!) * link.dw;
}

/**
 * A line without working braces that resists an inch of shift with less than this stands free: rounding leaves about a
 * billionth of a pound, the weakest foot or post that holds at all more than a pound [lb/in].
 */
const FREE_LB_PER_IN = 1e-6;

const holdForce = (mesh: LineMesh, state: FrameState): number => state.reactions[mesh.holdSupport * 3]!;

/**
 * Solves one set of working braces for all cases at once.
 * @returns null when the set leaves a mechanism (nothing holds the free line sideways)
 */
export function solveBraceSet(
  mesh: LineMesh,
  states: SolvedStates,
  working: readonly boolean[],
  free: boolean,
): BraceSet | null {
  const count = mesh.braces.length;
  const on = working.flatMap((w, j) => (w ? [j] : []));
  if (free && on.length === 0 && !someFootHoldsATurn(mesh)) return null;
  const size = on.length + (free ? 1 : 0);
  if (free && on.length === 0 && Math.abs(holdForce(mesh, states.unitShift)) < FREE_LB_PER_IN) return null;
  const matrix: number[][] = [];
  for (const j of on) {
    const row = on.map((k) => gapOpening(mesh, states.unitPush[k]!, j) + (j === k ? mesh.braces[j]!.flexibility : 0));
    if (free) row.push(gapOpening(mesh, states.unitShift, j));
    matrix.push(row);
  }
  if (free) matrix.push([...on.map((k) => holdForce(mesh, states.unitPush[k]!)), holdForce(mesh, states.unitShift)]);
  const right = states.cases.map((state) => {
    const column = on.map((j) => -gapOpening(mesh, state, j));
    if (free) column.push(-holdForce(mesh, state));
    return column;
  });
  const solved = solveDense(matrix, right);
  if (!solved) return null;
  return {
    answers: solved.map((x) => {
      const answer = new Float64Array(count + 1);
      on.forEach((j, i) => (answer[j] = x[i]!));
      if (free) answer[count] = x[size - 1]!;
      return answer;
    }),
  };
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
