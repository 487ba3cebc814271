import { listMaker } from '../lists.ts';
import { once } from '../once.ts';
import { readyBuckling, type BucklingFrame, type BucklingMode } from '../solver/buckling.ts';
import { bucklingMesh, type BucklingMesh } from './buckling-mesh.ts';
import type { LineFrame, LineResponse } from './line-frame.ts';

/** How a line buckles under the thrust of one response. */
export interface LineBuckling {
  /** the thrust may grow so many times, at least; Infinity where nothing is pushed */
  readonly factor: number;
  /** the same until the line sways; Infinity where it is held sideways */
  readonly swayFactor: number;
  /** what it is worked out from: the hardest thrust in each place that any combination brings while the same braces work */
  readonly envelope: {
    readonly factor: number;
    readonly swayFactor: number;
    /** how far each post moves in the lowest mode, beside the farthest of all; in the order of the line's posts */
    readonly postMoves: readonly number[];
  };
  /** greatest share of that hardest thrust, over all places, that this response reaches */
  readonly share: number;
}

/** Each place counts as pushed by this share of the hardest push in the line at least: what hardly pushes decides no share. */
const LEAST_THRUST = 0.01;
/** A mode sways where a seat moves sideways by at least this much of its farthest movement (own rule). */
const SWAYS = 0.5;
/** Modes looked through for one that sways where the lowest does not. */
const MODES = 6;
/** How far one over the factor may be above the truth before a response is asked again: two hundredths of second order. */
const CLOSE = 0.02;
/** The same as a share of it, where a line is so soft that hundredths do not matter. */
const CLOSE_SHARE = 0.1;

/**
 * Buckling of a line in every strength response with braces both ways or only pushing; where they are idle the line is
 * held and posts keep the smaller factor of the other models of that combination.
 *
 * One problem stands for many responses in which the same braces work and the line is held alike, so that their elastic
 * stiffness K is one. It is asked with G of the greatest thrust in each place. One over the lowest factor is the greatest of
 * x'Gx / x'Kx over all movements x. No place of a response has more thrust than s times the greatest, s its greatest share, so
 * x'Gx is for every x no more than s times that of the greatest, and the factor of the response no less than
 * the factor found over s: on the safe side, and no combination is left out. The quotient of the found mode under the thrust of
 * the response itself says how far off that can be at most; responses that may be farther off than {@link CLOSE} are asked
 * again among themselves, at last one by one. The same goes for the sway where the lowest mode is a sway, since no sway comes
 * before it; where it is not, each response is asked by itself.
 * @source MECHANICS greatest value of a quotient (Rayleigh); pull counts as none (safe side)
 */
export function lineBuckling(
  frame: LineFrame,
  stabilityShare: (memberId: string) => number,
): (response: LineResponse) => LineBuckling | null {
  const found = new Map<LineResponse, LineBuckling>();
  const lines = {
    free: once(() => readyLine(frame, stabilityShare, true)),
    held: once(() => readyLine(frame, stabilityShare, false)),
  };
  const newList = listMaker(placesOf(frame));
  for (const group of workingAlike(frame.responses).values()) {
    askTogether(
      braced(frame, group[0]!, group[0]!.held ? lines.held() : lines.free()),
      group.map((response) => ({ response, thrust: thrustOf(frame, response, newList()) })),
      found,
    );
  }
  const worstOf = new Map<string, LineBuckling>();
  for (const [{ combination }, buckling] of found) {
    const other = worstOf.get(combination.id);
    if (!other || buckling.factor < other.factor) worstOf.set(combination.id, buckling);
  }
  return (r) => found.get(r) ?? (isStrength(r) ? (worstOf.get(r.combination.id) ?? null) : null);
}

const isStrength = (r: LineResponse): boolean => r.combination.purpose === 'strength';

/** Strength responses by which braces work and whether the line is held. */
function workingAlike(responses: readonly LineResponse[]): ReadonlyMap<string, readonly LineResponse[]> {
  const groups = new Map<string, LineResponse[]>();
  for (const r of responses) {
    if (!isStrength(r) || r.braceModel === 'idle') continue;
    const key = `${r.held} ${r.working.join()}`;
    const group = groups.get(key);
    if (group) group.push(r);
    else groups.set(key, [r]);
  }
  return groups;
}

interface ReadyLine {
  readonly mesh: BucklingMesh;
  readonly ready: (idle: ReadonlySet<number>) => BucklingFrame;
}

function readyLine(frame: LineFrame, stabilityShare: (memberId: string) => number, free: boolean): ReadyLine {
  const mesh = bucklingMesh(frame.mesh, stabilityShare, free);
  return { mesh, ready: readyBuckling(mesh.model) };
}

/** A line with one set of working braces. */
interface BracedLine extends BucklingFrame {
  readonly mesh: BucklingMesh;
  readonly held: boolean;
  /** of the line's own mesh */
  readonly elements: number;
}

interface Asked {
  readonly response: LineResponse;
  /** in each place, push + [lb] */
  readonly thrust: Float64Array;
}

function braced(frame: LineFrame, { held, working }: LineResponse, { mesh, ready }: ReadyLine): BracedLine {
  const idle = new Set(working.flatMap((on, j) => (on ? [] : [mesh.firstBrace + j])));
  return { ...ready(idle), mesh, held, elements: frame.mesh.model.elements.length };
}

/**
 * The lowest mode of one response, for the drawing.
 * @param response  one in which something is pushed
 */
export function lowestMode(
  frame: LineFrame,
  stabilityShare: (memberId: string) => number,
  response: LineResponse,
): { readonly mesh: BucklingMesh; readonly mode: BucklingMode } {
  const line = braced(frame, response, readyLine(frame, stabilityShare, !response.held));
  const own = thrustOf(frame, response, new Float64Array(placesOf(frame)));
  const thrust = greatestInEachPlace([{ response, thrust: own }]);
  return { mesh: line.mesh, mode: line.modes(thrustOfModel(line, thrust!), 1)[0]! };
}

/** Writes the buckling of every response into `found`. */
function askTogether(line: BracedLine, asked: readonly Asked[], found: Map<LineResponse, LineBuckling>): void {
  const hardest = greatestInEachPlace(asked);
  const thrust = hardest && thrustOfModel(line, hardest);
  const [lowest] = thrust ? line.modes(thrust, 1) : [];
  if (!hardest || !thrust || !lowest) {
    for (const { response } of asked) found.set(response, NEVER);
    return;
  }
  const isSway = sways(line.mesh, lowest);
  const isAlone = asked.length === 1;
  if (!line.held && !isSway && !isAlone) {
    for (const one of asked) askTogether(line, [one], found);
    return;
  }
  const sway = line.held ? null : isSway ? lowest : lowestSway(line, thrust);
  const envelope = {
    factor: lowest.factor,
    swayFactor: sway?.factor ?? Infinity,
    postMoves: line.mesh.postNodes.map((nodes) => farthestOf(nodes, lowest.moves)),
  };
  const far: (Asked & { readonly quotient: number })[] = [];
  for (const one of asked) {
    const share = greatestShare(one.thrust, hardest);
    const times = (factor: number): number => (share > 0 ? factor / share : Infinity);
    found.set(one.response, {
      factor: times(envelope.factor),
      swayFactor: times(envelope.swayFactor),
      envelope,
      share,
    });
    const quotient = quotientOf(line, lowest, one.thrust);
    const bound = share / envelope.factor;
    if (!isAlone && bound - quotient > Math.max(CLOSE, CLOSE_SHARE * bound)) far.push({ ...one, quotient });
  }
  if (far.length === 0) return;
  // the hardest asked are among themselves; where none was near, halves are
  far.sort((a, b) => b.quotient - a.quotient);
  const half = far.length === asked.length ? Math.ceil(far.length / 2) : far.length;
  askTogether(line, far.slice(0, half), found);
  if (half < far.length) askTogether(line, far.slice(half), found);
}

/**
 * The lowest mode that sways. Where none of those looked through does, the last of them stands for it: every one after it has
 * a factor no smaller (safe side).
 */
function lowestSway(line: BracedLine, thrust: Float64Array): BucklingMode {
  const modes = line.modes(thrust, MODES);
  return modes.find((m) => sways(line.mesh, m)) ?? modes[modes.length - 1]!;
}

/** Nothing is pushed: no load makes it buckle. */
const NEVER: LineBuckling = {
  factor: Infinity,
  swayFactor: Infinity,
  envelope: { factor: Infinity, swayFactor: Infinity, postMoves: [] },
  share: 0,
};

/** Places where thrust is looked at: both ends of every element of the line's mesh, then every brace. */
const placesOf = ({ mesh }: LineFrame): number => 2 * mesh.model.elements.length + mesh.braces.length;

/** Writes the thrust in each place, push + [lb]. */
function thrustOf({ layout, mesh }: LineFrame, { values, working }: LineResponse, thrust: Float64Array): Float64Array {
  const count = mesh.model.elements.length;
  for (let i = 0; i < count; i++) {
    thrust[2 * i] = -values[6 * i]!;
    thrust[2 * i + 1] = -values[6 * i + 3]!;
  }
  for (let j = 0; j < working.length; j++) thrust[2 * count + j] = working[j] ? values[layout.bracesAt + j]! : 0;
  return thrust;
}

/** Null where nothing is pushed in any of them. */
function greatestInEachPlace(asked: readonly Asked[]): Float64Array | null {
  const most = asked[0]!.thrust.slice();
  for (const { thrust } of asked) for (let i = 0; i < most.length; i++) most[i] = Math.max(most[i]!, thrust[i]!);
  const least = LEAST_THRUST * most.reduce((a, b) => Math.max(a, b), 0);
  return least > 0 ? most.map((P) => Math.max(P, least)) : null;
}

/** @param hardest  above zero in every place */
function greatestShare(thrust: Float64Array, hardest: Float64Array): number {
  let most = 0;
  for (let i = 0; i < thrust.length; i++) most = Math.max(most, thrust[i]! / hardest[i]!);
  return most;
}

/** Thrust of every element of the buckling mesh, in its middle. */
function thrustOfModel(line: BracedLine, thrust: Float64Array): Float64Array {
  return Float64Array.from({ length: thrust.length - 2 * line.elements + line.mesh.parts.length }, (_, i) =>
    thrustInModel(line, thrust, i),
  );
}

function thrustInModel({ mesh: { parts }, elements }: BracedLine, thrust: Float64Array, i: number): number {
  if (i >= parts.length) return thrust[2 * elements + i - parts.length]!;
  const { element, from, to } = parts[i]!;
  const start = thrust[2 * element]!;
  return start + ((from + to) / 2) * (thrust[2 * element + 1]! - start);
}

/** One over the factor of a movement under a thrust (Rayleigh). */
function quotientOf(line: BracedLine, { sharePerLb }: BucklingMode, thrust: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < sharePerLb.length; i++) sum += sharePerLb[i]! * thrustInModel(line, thrust, i);
  return sum;
}

function farthestOf(nodes: readonly number[], moves: Float64Array): number {
  return nodes.reduce((most, node) => Math.max(most, Math.hypot(moves[3 * node]!, moves[3 * node + 1]!)), 0);
}

/** Some post's top moves sideways by half of the farthest movement, which is 1. */
const sways = ({ postNodes }: BucklingMesh, { moves }: BucklingMode): boolean =>
  postNodes.some((nodes) => Math.abs(moves[3 * nodes[nodes.length - 1]!]!) >= SWAYS);
