/**
 * Plane frame: what the solver is told and what it answers. It knows nothing of loads on roofs or of checks.
 * Axes of the plane: u to the right, w up; rotation counter-clockwise positive. Inches, pounds, psi.
 */
export interface FrameNode {
  readonly id: string;
  readonly u: number;
  readonly w: number;
  /** shares u and w movement with that node but turns on its own: a hinge */
  readonly hingedTo?: string;
}

/** Section of a member between two of its points: EA and EI at each end, tapering as a round log does (d straight between). */
export interface BeamElement {
  readonly kind: 'beam';
  readonly id: string;
  readonly from: string;
  readonly to: string;
  readonly E: number;
  /** round: diameters at both ends */
  readonly section:
    | { readonly kind: 'round'; readonly fromDiameterIn: number; readonly toDiameterIn: number }
    | { readonly kind: 'prismatic'; readonly areaIn2: number; readonly inertiaIn4: number };
}

/** Axial only. */
export interface BarElement {
  readonly kind: 'bar';
  readonly id: string;
  readonly from: string;
  readonly to: string;
  /** EA, smallest or mean as the caller decides [lb] */
  readonly EA: number;
}

export interface Support {
  readonly node: string;
  readonly u: boolean;
  readonly w: boolean;
  readonly turn: boolean | { readonly lbInPerRad: number };
}

export interface FrameModel {
  readonly nodes: readonly FrameNode[];
  readonly elements: readonly (BeamElement | BarElement)[];
  readonly supports: readonly Support[];
}

export interface NodeLoad {
  readonly node: string;
  readonly u: number;
  readonly w: number;
  readonly turn?: number;
}
/** Force per length of the element along the frame axes u and w, straight between the ends [lb/in]. */
export interface ElementLoad {
  readonly element: string;
  readonly fromU: number;
  readonly toU: number;
  readonly fromW: number;
  readonly toW: number;
}
/** A support that is made to move by this much in u [in] (unit states). */
export interface SupportShift {
  readonly node: string;
  readonly u: number;
}
export interface LoadState {
  readonly nodes: readonly NodeLoad[];
  readonly elements: readonly ElementLoad[];
  readonly shifts?: readonly SupportShift[];
}

/**
 * One solved state, in flat arrays so that states can be combined by plain arithmetic.
 * Element order and node order are those of the model.
 */
export interface FrameState {
  /** per node: u, w, turn */
  readonly moves: Float64Array;
  /**
   * per element: N (tension +), V and M at its start, then at its end. Positive M puts tension on the side below the
   * element when it runs to the right (sagging +); V = dM/ds.
   */
  readonly forces: Float64Array;
  /** per support: u, w, turn reaction on the frame */
  readonly reactions: Float64Array;
  /** unbalanced force over the sum of absolute loads */
  readonly residual: number;
}

export type Factored =
  | { readonly ok: true; readonly solve: (load: LoadState) => FrameState }
  /** a mechanism: the node that moves freely and how */
  | { readonly ok: false; readonly node: string; readonly moves: 'u' | 'w' | 'turn' };
