import { diameterAt, type RafterGeometry, type Stick } from '../geometry/shelter.ts';
import { continuousBeam, type BeamOnRollers, type RollerLoads } from '../solver/continuous-beam.ts';
import type { BeamElement } from '../solver/model.ts';
import { radiansFromDegrees } from '../units.ts';

/** A value at the low and at the high end of a part, straight between. */
export interface AtEnds<Value = number> {
  readonly low: Value;
  readonly high: Value;
}

/** The same at both ends. */
export const even = (value: number): AtEnds => ({ low: value, high: value });

/**
 * A stretch of rafter on which every load is straight: cut at supports, at mid-slope, where wind steps, and wherever else
 * a load jumps or bends. Slope distances from the eave.
 */
export interface RafterPart {
  readonly fromIn: number;
  readonly toIn: number;
  /** overhangs and spans counted from the eave */
  readonly segment: number;
  readonly onHighHalf: boolean;
}

/**
 * What one pound per inch square to the slope does that falls to nothing from one end of a part to its other: reactions at
 * the supports (low to high), and moment and sag at stations. Every load on the rafter is a weighted sum of these.
 */
export interface RafterRun {
  readonly cos: number;
  readonly sin: number;
  readonly slopeLengthIn: number;
  readonly parts: readonly RafterPart[];
  readonly segments: readonly {
    readonly kind: 'overhang' | 'span';
    readonly fromIn: number;
    readonly toIn: number;
    readonly name: string;
  }[];
  readonly supportLines: readonly string[];
  /** per support, per part */
  readonly reactions: readonly (readonly AtEnds[])[];
  readonly stationsIn: readonly number[];
  /** per part, per station */
  readonly moments: readonly AtEnds<Float64Array>[];
  readonly sags: readonly AtEnds<Float64Array>[];
}

const STATION_STEP_IN = 12;

/**
 * The rafter as a beam on its lines, along the slope. Over three lines it is continuous, or a separate piece between
 * each pair of lines, as the person builds it; then the eave and ridge pieces carry the overhangs.
 * @param E mean modulus for sag [psi]
 * @param cutsIn where loads jump or bend beside supports and mid-slope, along the slope from the eave; what lies beyond the
 *   rafter is left out [in]
 */
export function rafterRun(rafter: RafterGeometry, E: number, cutsIn: readonly number[] = []): RafterRun {
  const theta = radiansFromDegrees(rafter.slopeDeg);
  const cos = Math.cos(theta);
  const slopeLengthIn = rafter.runIn / cos;
  const supports = rafter.supports.map((s) => s.atIn / cos);
  const parts = partsOf(slopeLengthIn, supports, cutsIn);
  const pieces =
    rafter.continuous || supports.length === 2
      ? [{ fromIn: 0, toIn: slopeLengthIn, supports }]
      : simplePieces(slopeLengthIn, supports);
  const stationsIn = stationsOf(slopeLengthIn, supports, cutsIn);
  const reactions = supports.map(() => parts.map(() => ({ low: 0, high: 0 })));
  const stations = (): Float64Array => new Float64Array(stationsIn.length);
  const perPart = (): AtEnds<Float64Array>[] => parts.map(() => ({ low: stations(), high: stations() }));
  const moments = perPart();
  const sags = perPart();

  for (const piece of pieces) {
    const inside = stationsIn.filter((s) => s >= piece.fromIn - 1e-6 && s <= piece.toIn + 1e-6);
    const beam: BeamOnRollers = {
      lengthIn: piece.toIn - piece.fromIn,
      E,
      pieces: sectionPieces(rafter.stick, piece.fromIn, piece.toIn),
      supportsAtIn: piece.supports.map((s) => s - piece.fromIn),
      stationsAtIn: inside.map((s) => Math.min(piece.toIn, Math.max(piece.fromIn, s)) - piece.fromIn),
    };
    const own = parts.flatMap((p, part) =>
      p.fromIn >= piece.fromIn - 1e-6 && p.toIn <= piece.toIn + 1e-6
        ? (['low', 'high'] as const).map((end) => ({ part, end }))
        : [],
    );
    const loads = own.map(({ part, end }) => unitLoad(parts[part]!, end, piece.fromIn));
    const firstSupport = supports.indexOf(piece.supports[0]!);
    const firstStation = stationsIn.indexOf(inside[0]!);
    continuousBeam(beam, loads).forEach((state, k) => {
      const { part, end } = own[k]!;
      state.reactionsLb.forEach((lb, n) => (reactions[firstSupport + n]![part]![end] += lb));
      state.stations.forEach(({ momentLbIn, sagIn }, n) => {
        moments[part]![end][firstStation + n] = momentLbIn;
        sags[part]![end][firstStation + n] = sagIn;
      });
    });
  }
  return {
    cos,
    sin: Math.sin(theta),
    slopeLengthIn,
    parts,
    segments: rafterSegments(rafter),
    supportLines: rafter.supports.map((s) => s.line),
    reactions,
    stationsIn,
    moments,
    sags,
  };
}

const unitLoad = (part: RafterPart, end: keyof AtEnds, fromIn: number): RollerLoads => ({
  lines: [
    {
      fromIn: part.fromIn - fromIn,
      toIn: part.toIn - fromIn,
      fromLbPerIn: end === 'low' ? 1 : 0,
      toLbPerIn: end === 'high' ? 1 : 0,
    },
  ],
  points: [],
});

function boundaries(length: number, supports: readonly number[], more: readonly number[]): readonly number[] {
  return [0, ...supports, ...more.filter((s) => s > 0 && s < length), length]
    .sort((a, b) => a - b)
    .filter((s, i, all) => i === 0 || s - all[i - 1]! > 1e-6);
}

function partsOf(length: number, supports: readonly number[], cutsIn: readonly number[]): readonly RafterPart[] {
  const cuts = boundaries(length, supports, [length / 2, ...cutsIn]);
  const edges = boundaries(length, supports, []);
  return cuts.slice(1).map((toIn, i) => {
    const fromIn = cuts[i]!;
    const middle = (fromIn + toIn) / 2;
    return {
      fromIn,
      toIn,
      segment: edges.findIndex((e, k) => k > 0 && middle < e) - 1,
      onHighHalf: middle > length / 2,
    };
  });
}

/** Overhangs and spans of a rafter, low to high. */
export function rafterSegments(rafter: RafterGeometry): RafterRun['segments'] {
  const cos = Math.cos(radiansFromDegrees(rafter.slopeDeg));
  const length = rafter.runIn / cos;
  const supports = rafter.supports.map((s) => s.atIn / cos);
  const lines = rafter.supports.map((s) => s.line);
  const edges = boundaries(length, supports, []);
  return edges.slice(1).map((toIn, i) => {
    const fromIn = edges[i]!;
    const low = supports.findIndex((s) => Math.abs(s - fromIn) < 1e-6);
    const high = supports.findIndex((s) => Math.abs(s - toIn) < 1e-6);
    const kind = low >= 0 && high >= 0 ? ('span' as const) : ('overhang' as const);
    const name =
      kind === 'span' ? `${lines[low]}~${lines[high]}` : low < 0 ? `eave~${lines[high]}` : `${lines[low]}~top`;
    return { kind, fromIn, toIn, name };
  });
}

function simplePieces(
  length: number,
  supports: readonly number[],
): readonly { readonly fromIn: number; readonly toIn: number; readonly supports: readonly number[] }[] {
  return supports.slice(1).map((high, i) => ({
    fromIn: i === 0 ? 0 : supports[i]!,
    toIn: i === supports.length - 2 ? length : high,
    supports: [supports[i]!, high],
  }));
}

function stationsOf(length: number, supports: readonly number[], cutsIn: readonly number[]): readonly number[] {
  const edges = boundaries(length, supports, [length / 2, ...cutsIn]);
  return edges.flatMap((to, i) => {
    if (i === 0) return [to];
    const from = edges[i - 1]!;
    const n = Math.ceil((to - from) / STATION_STEP_IN);
    return Array.from({ length: n }, (_, k) => from + ((to - from) * (k + 1)) / n);
  });
}

/** Stiffness along the rafter; without a stick the reactions of a two-line rafter need none, so an even one stands in. */
function sectionPieces(
  stick: Stick | null,
  fromIn: number,
  toIn: number,
): { readonly toIn: number; readonly section: BeamElement['section'] }[] {
  if (stick?.kind === 'round') {
    const within = (s: number): number =>
      diameterAt(stick, Math.min(Math.max(s, stick.profile[0]!.atIn), stick.profile[stick.profile.length - 1]!.atIn)) ??
      1;
    const stops = [
      fromIn,
      ...stick.profile.map((p) => p.atIn).filter((a) => a > fromIn + 1e-6 && a < toIn - 1e-6),
      toIn,
    ];
    return stops.slice(1).map((to, i) => ({
      toIn: to - fromIn,
      section: { kind: 'round', fromDiameterIn: within(stops[i]!), toDiameterIn: within(to) },
    }));
  }
  const inertiaIn4 =
    stick?.kind === 'sawn' ? (stick.breadthIn * stick.depthIn ** 3) / 12 : stick?.kind === 'typed' ? stick.EIPsiIn4 : 1;
  return [{ toIn: toIn - fromIn, section: { kind: 'prismatic', areaIn2: 1, inertiaIn4 } }];
}
