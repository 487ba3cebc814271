import type { FrameState } from '../solver/model.ts';
import { solveBraceSet, type SolvedStates } from './brace-sets.ts';
import type { LineResponse } from './line-frame.ts';
import type { LineMesh } from './line-mesh.ts';
import { ValueLayout, valuesOfState } from './value-layout.ts';
import { WorkingSet, type CaseOrder, type Sway } from './working-set.ts';

/** The solved cases of a line with any set of working braces, each set put together once and only when asked for. */
export class Superposition extends ValueLayout {
  readonly #states: SolvedStates<Float64Array>;
  readonly #sets = new Map<string, WorkingSet | null>();

  constructor(
    private readonly mesh: LineMesh,
    states: SolvedStates<FrameState>,
    private readonly order: CaseOrder,
  ) {
    super(mesh);
    const valuesOf = (state: FrameState): Float64Array => valuesOfState(mesh, this, state);
    this.#states = {
      cases: states.cases.map(valuesOf),
      unitPush: states.unitPush.map(valuesOf),
      unitShift: valuesOf(states.unitShift),
    };
    // the pound that the state was solved for
    this.#states.unitPush.forEach((values, j) => (values[this.bracesAt + j] = 1));
  }

  /** All cases with these braces working; null when they leave a mechanism. */
  with(working: readonly boolean[], free: boolean): WorkingSet | null {
    let key = free ? 'free' : 'held';
    for (const on of working) key += on ? '1' : '0';
    const known = this.#sets.get(key);
    if (known !== undefined) return known;
    const cases = solveBraceSet(this.mesh, this, this.#states, working, free);
    const set = cases && new WorkingSet(this, this.order, working, free, cases);
    this.#sets.set(key, set);
    return set;
  }

  /** The sway of a free line so often; nothing to add where it counts once. What holds free holds as well when held. */
  swayOf(working: readonly boolean[], times: number): Sway | undefined {
    return times > 1 ? { held: this.with(working, false)!, times } : undefined;
  }

  /** What one load case brings to every value of a response, its factor counted; zero where the response has none of it. */
  partOf({ combination, working, held, secondOrder }: LineResponse, caseId: string): (index: number) => number {
    const at = this.order.indexOf.get(caseId);
    const factor = combination.factors.find((f) => f.caseId === caseId)?.factor ?? 0;
    const set = this.with(working, !held);
    if (at === undefined || !set) return () => 0;
    const sway = this.swayOf(working, secondOrder?.times ?? 1);
    return (index) => factor * set.valueOf(at, index, sway);
  }

  /** What each dead piece and load case brings to one value of a response, for the steps of a check. */
  parts(
    response: LineResponse,
    index: number,
  ): readonly { readonly name: string; readonly factor: number; readonly value: number }[] {
    const { combination, working, held, secondOrder } = response;
    const set = this.with(working, !held);
    if (!set) return [];
    const sway = this.swayOf(working, secondOrder?.times ?? 1);
    const { pieces, indexOf } = this.order;
    const cases = combination.factors.flatMap(({ caseId, factor }) => {
      const at = indexOf.get(caseId);
      return at === undefined ? [] : [{ name: caseId, factor, value: set.valueOf(at, index, sway) }];
    });
    const others = cases.reduce((sum, c) => sum + c.factor * c.value, 0);
    const dead = pieces.map((name, p) => {
      const heavy = set.valueOf(p, index, sway);
      const light = set.valueOf(pieces.length + p, index, sway);
      const asHeavy = combination.dead.weight === 'heavy' ? combination.dead.factor : 1;
      const useHeavy = combination.dead.weight === 'heavy' || heavy * others > 0;
      return {
        name: `dead ${useHeavy ? 'heavy' : 'light'}, ${name}`,
        factor: useHeavy ? asHeavy : combination.dead.factor,
        value: useHeavy ? heavy : light,
      };
    });
    return [...dead, ...cases].filter((c) => c.value !== 0);
  }
}
