import type { Combination } from '../loads/combination.ts';
import type { FrameState } from '../solver/model.ts';
import { gapOpening, solveBraceSet, type SolvedStates } from './brace-sets.ts';
import type { LineResponse } from './line-frame.ts';
import type { LineMesh } from './line-mesh.ts';

interface SetResults {
  /** per solved case: every force, move and reaction with this set of braces working */
  readonly vectors: readonly Float64Array[];
  /** sum of all dead pieces at their heavy weight */
  readonly deadHeavy: Float64Array;
  /** per solved case: push of each brace, then the shift of the hold */
  readonly answers: readonly Float64Array[];
}

/**
 * Combines solved cases. Within one set of working braces everything is linear, so a combination is a weighted sum of
 * long vectors: element forces (N, V, M at start and end), moves of nodes, reactions of supports, brace pushes.
 * Cases come in the order: dead pieces heavy, dead pieces light, all others.
 */
export class Superposition {
  readonly forcesAt = 0;
  readonly movesAt: number;
  readonly reactionsAt: number;
  readonly bracesAt: number;
  readonly size: number;
  readonly #sets = new Map<string, SetResults | null>();

  constructor(
    private readonly mesh: LineMesh,
    private readonly states: SolvedStates,
    /** names of the dead pieces */
    private readonly pieces: readonly string[],
    private readonly indexOfCase: ReadonlyMap<string, number>,
  ) {
    this.movesAt = mesh.model.elements.length * 6;
    this.reactionsAt = this.movesAt + mesh.model.nodes.length * 3;
    this.bracesAt = this.reactionsAt + mesh.model.supports.length * 3;
    this.size = this.bracesAt + mesh.braces.length;
  }

  /** All values of a combination; null when this set of braces leaves a mechanism. */
  combine(combination: Combination, working: readonly boolean[], free: boolean): Float64Array | null {
    const set = this.#results(working, free);
    if (!set) return null;
    const out = new Float64Array(this.size);
    for (const { caseId, factor } of combination.factors) {
      const index = this.indexOfCase.get(caseId);
      if (index !== undefined) addTo(out, set.vectors[2 * this.pieces.length + index]!, factor);
    }
    if (combination.dead.weight === 'heavy') {
      addTo(out, set.deadHeavy, combination.dead.factor);
      return out;
    }
    const others = out.slice();
    for (let p = 0; p < this.pieces.length; p++)
      addAdverse(out, others, set.vectors[p]!, set.vectors[this.pieces.length + p]!, combination.dead.factor);
    return out;
  }

  /** Push of working braces and how far apart the ends of idle ones move, for choosing which braces push. */
  braceForces(
    combination: Combination,
    working: readonly boolean[],
    free: boolean,
  ): { readonly push: Float64Array; readonly opening: Float64Array } | null {
    const set = this.#results(working, free);
    if (!set) return null;
    const count = this.mesh.braces.length;
    const push = new Float64Array(count + 1);
    const opening = new Float64Array(count);
    const take = (caseIndex: number, factor: number): void => {
      addTo(push, set.answers[caseIndex]!, factor);
      for (let j = 0; j < count; j++)
        if (!working[j]) opening[j]! += factor * gapOpening(this.mesh, this.states.cases[caseIndex]!, j);
    };
    const first = combination.dead.weight === 'heavy' ? 0 : this.pieces.length;
    for (let p = 0; p < this.pieces.length; p++) take(first + p, combination.dead.factor);
    for (const { caseId, factor } of combination.factors) {
      const index = this.indexOfCase.get(caseId);
      if (index !== undefined) take(2 * this.pieces.length + index, factor);
    }
    for (let j = 0; j < count; j++) {
      if (working[j]) continue;
      for (let k = 0; k < count; k++) opening[j]! += push[k]! * gapOpening(this.mesh, this.states.unitPush[k]!, j);
      opening[j]! += push[count]! * gapOpening(this.mesh, this.states.unitShift, j);
    }
    return { push, opening };
  }

  /** What each dead piece and load case brings to one value of a response, for the steps of a check. */
  parts(
    response: LineResponse,
    index: number,
  ): readonly { readonly name: string; readonly factor: number; readonly value: number }[] {
    const { combination, working, held } = response;
    const set = this.#results(working, !held);
    if (!set) return [];
    const cases = combination.factors.flatMap(({ caseId, factor }) => {
      const at = this.indexOfCase.get(caseId);
      return at === undefined
        ? []
        : [{ name: caseId, factor, value: set.vectors[2 * this.pieces.length + at]![index]! }];
    });
    const others = cases.reduce((sum, c) => sum + c.factor * c.value, 0);
    const dead = this.pieces.map((name, p) => {
      const heavy = set.vectors[p]![index]!;
      const light = set.vectors[this.pieces.length + p]![index]!;
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

  #results(working: readonly boolean[], free: boolean): SetResults | null {
    const key = `${free ? 'free' : 'held'}:${working.map((w) => (w ? '1' : '0')).join('')}`;
    const known = this.#sets.get(key);
    if (known !== undefined) return known;
    const solved = solveBraceSet(this.mesh, this.states, working, free);
    const results = solved ? this.#combined(solved.answers) : null;
    this.#sets.set(key, results);
    return results;
  }

  #combined(answers: readonly Float64Array[]): SetResults {
    const vectors = this.states.cases.map((state, c) => this.#vector(state, answers[c]!));
    const deadHeavy = new Float64Array(this.size);
    for (let p = 0; p < this.pieces.length; p++) addTo(deadHeavy, vectors[p]!, 1);
    return { answers, vectors, deadHeavy };
  }

  #vector(state: FrameState, answer: Float64Array): Float64Array {
    const out = new Float64Array(this.size);
    const count = this.mesh.braces.length;
    this.#addState(out, state, 1);
    for (let j = 0; j < count; j++) if (answer[j] !== 0) this.#addState(out, this.states.unitPush[j]!, answer[j]!);
    if (answer[count] !== 0) this.#addState(out, this.states.unitShift, answer[count]!);
    out.set(answer.subarray(0, count), this.bracesAt);
    return out;
  }

  #addState(out: Float64Array, state: FrameState, factor: number): void {
    for (let i = 0; i < state.forces.length; i++) out[i]! += factor * state.forces[i]!;
    for (let i = 0; i < state.moves.length; i++) out[this.movesAt + i]! += factor * state.moves[i]!;
    for (let i = 0; i < state.reactions.length; i++) out[this.reactionsAt + i]! += factor * state.reactions[i]!;
  }
}

function addTo(out: Float64Array, vector: Float64Array, factor: number): void {
  for (let i = 0; i < out.length; i++) out[i]! += factor * vector[i]!;
}

/** Own rule of uplift: a piece of dead load that helps counts light x 0.6, one that adds to the harm heavy x 1.0. */
function addAdverse(
  out: Float64Array,
  others: Float64Array,
  heavy: Float64Array,
  light: Float64Array,
  factor: number,
): void {
  for (let i = 0; i < out.length; i++) out[i]! += heavy[i]! * others[i]! > 0 ? heavy[i]! : factor * light[i]!;
}
