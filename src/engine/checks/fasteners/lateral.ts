import type { FastenerKind } from '../../../data/fasteners/kind.ts';
import { LEAST_HOLD, PRINTED_GRAVITY } from '../../../data/fasteners/withdrawal.ts';
import { clause, remembered } from '../../../data/sources.ts';
import { positive } from '../../errors.ts';
import { put, stepsOf, type Note, type Step } from '../../note.ts';
import { quantity } from '../../units.ts';
import { dowelBearingOnSteel, dowelBearingOnWood, type PlateSteel } from './dowel-bearing.ts';
import { reductionTerm } from './reduction-term.ts';
import { refused, type Refused } from './refused.ts';
import { bendingYieldOf } from './shank.ts';
import type { Grain } from './withdrawal.ts';
import { MODE_WORDS, yieldLoads, type PressedPiece, type YieldMode } from './yield-modes.ts';

const LEAST_OF_MODES = clause('NDS', '12.3.1');
const BEARING_LENGTH = remembered('NDS', '12.3.5');
/** The equations are for shanks up to this diameter. @source NDS 12.3.1, from memory */
const THICKEST_IN = 1;
/**
 * Least length in the piece that holds the point, in diameters; a lag screw without its tip. The standard prints no number
 * for drift pins: that of spikes is taken (own rule). A bolt goes through.
 */
const LEAST_IN_MAIN: Readonly<Record<FastenerKind, number>> = { ...LEAST_HOLD, bolt: 0, driftPin: LEAST_HOLD.spike };
/**
 * Nails, spikes and wood screws have full value from this many diameters on; between the least and it the value falls
 * straight. The standard asks that of the printed tables and lets the equations go without it.
 * @source NDS notes of Tables 12L to 12R, from memory
 */
const FULL_VALUE_FROM: Partial<Readonly<Record<FastenerKind, number>>> = { screw: 10, nail: 10, spike: 10 };
const SHORT = remembered('NDS', 'Tables 12L to 12R, notes');
const IN_TWO_PLANES: readonly FastenerKind[] = ['bolt', 'driftPin'];

export type JoinedPiece =
  | {
      readonly material: 'wood';
      /** of the shank in it, its tip included */
      readonly lengthIn: number;
      /** specific gravity for fasteners */
      readonly gravity: number;
      /** between load and grain */
      readonly angleDeg: number;
      /** that the shank meets; driven along the fibres, it bears as across the grain whatever the angle */
      readonly grain: Grain;
    }
  | { readonly material: 'steel'; readonly lengthIn: number; readonly steel: PlateSteel };

export interface LateralFastener {
  readonly kind: FastenerKind;
  readonly nominalIn: number;
  /** that bears and bends: see `bearingDiameter` */
  readonly diameterIn: number;
  /** tapered tip; 0 of a bolt */
  readonly tipIn: number;
  /** holds the point, or lies between two side pieces */
  readonly main: JoinedPiece;
  readonly side: JoinedPiece;
  /** between the pieces; 0 where they touch */
  readonly gapIn: number;
  readonly planes: 1 | 2;
}

export interface LateralValue {
  readonly ok: true;
  /** reference lateral value of one fastener */
  readonly ZLb: number;
  readonly mode: YieldMode;
}

/**
 * Reference lateral value Z of one fastener and the mode in which it yields.
 * @returns Z [lb], or why the equations do not reach it
 * @throws MisuseError if a diameter, length or specific gravity is not above zero or an angle not from 0 to 90
 * @limits shank square to the plane of shear, up to 1 in. thick; two planes for bolts and drift pins only
 * @source NDS 12.3.1
 * @departs wood heavier than any printed row counts as the heaviest one; nails and screws under 10 diameters lose as in the
 * printed tables although the equations see their length already (own rules, safe side)
 */
export function lateralValue(fastener: LateralFastener, note?: Note): LateralValue | Refused {
  const { kind, nominalIn, diameterIn, main, side } = fastener;
  const reason = beyondEquations(fastener);
  if (reason) return reason;
  const strength = bendingYieldOf(kind, nominalIn, note);
  if (!strength.ok) return strength;
  const loads = yieldLoads(
    {
      main: pressedPiece(main, nominalIn, bearingLength(fastener, note), note),
      side: pressedPiece(side, nominalIn, side.lengthIn, note),
      diameterIn,
      FybPsi: strength.FybPsi,
      gapIn: fastener.gapIn,
      planes: fastener.planes,
    },
    note,
  );
  const shank = { nominalIn, diameterIn, angleDeg: Math.max(angleOf(main), angleOf(side)) };
  const values = loads.map(({ mode, loadLb }) => {
    const Rd = reductionTerm(mode, shank);
    return { mode, loadLb, Rd, ZLb: loadLb / Rd };
  });
  const least = values.reduce((low, next) => (next.ZLb < low.ZLb ? next : low));
  if (note) {
    for (const value of values)
      note(reducedStep(value, stepsOf((tell) => reductionTerm(value.mode, shank, tell)).steps));
  }
  note?.({
    symbol: 'Z',
    words: `lateral value of one fastener, mode ${least.mode}: ${MODE_WORDS[least.mode]}`,
    formula: `min(${values.map(({ mode }) => `Z(${mode})`).join(', ')})`,
    put: values.map(({ mode, ZLb }) => put(`Z(${mode})`, ZLb, 'lb', MODE_WORDS[mode])),
    result: quantity(least.ZLb, 'lb'),
    clause: LEAST_OF_MODES,
  });
  return { ok: true, ZLb: least.ZLb * shortShare(fastener, least.ZLb, note), mode: least.mode };
}

function beyondEquations({ kind, nominalIn, tipIn, main, side, planes }: LateralFastener): Refused | null {
  if (positive('nominalIn', nominalIn) > THICKEST_IN) {
    return refused('fastenerTooThick', { diameterIn: nominalIn, mostIn: THICKEST_IN });
  }
  if (planes === 2 && !IN_TWO_PLANES.includes(kind)) return refused('fastenerTwoPlanes');
  const lightest = Math.min(...[main, side].map((piece) => (piece.material === 'wood' ? piece.gravity : Infinity)));
  if (lightest < PRINTED_GRAVITY.least) {
    return refused('fastenerWoodTooLight', { gravity: lightest, least: PRINTED_GRAVITY.least });
  }
  const diameters = LEAST_IN_MAIN[kind];
  const reachIn = kind === 'lag' ? main.lengthIn - tipIn : main.lengthIn;
  const leastIn = diameters * nominalIn;
  return reachIn < leastIn - 1e-9 ? refused('fastenerTooShort', { reachIn, leastIn, diameters }) : null;
}

/** What a nail or screw keeps that is not in as deep as full value asks. */
function shortShare({ kind, nominalIn, main }: LateralFastener, ZLb: number, note?: Note): number {
  const diameters = FULL_VALUE_FROM[kind];
  if (diameters === undefined || main.lengthIn >= diameters * nominalIn) return 1;
  const share = main.lengthIn / (diameters * nominalIn);
  note?.({
    symbol: 'Zp',
    words: `lateral value, less for a penetration under ${diameters} diameters`,
    formula: `Z × p / (${diameters} × D)`,
    put: [
      put('Z', ZLb, 'lb', 'lateral value of one fastener'),
      put('p', main.lengthIn, 'in', 'length of the shank in the main piece'),
      put('D', nominalIn, 'in', 'nominal diameter'),
    ],
    result: quantity(ZLb * share, 'lb'),
    clause: SHORT,
  });
  return share;
}

/** Half of a tapered tip does not bear. */
function bearingLength({ main, tipIn }: LateralFastener, note?: Note): number {
  const l = main.lengthIn - tipIn / 2;
  note?.({
    symbol: 'lm',
    words: 'bearing length in the main piece: half of a tapered tip does not count',
    formula: 'p - E / 2',
    put: [
      put('p', main.lengthIn, 'in', 'length of the shank in it'),
      put('E', tipIn, 'in', 'length of the tapered tip'),
    ],
    result: quantity(l, 'in'),
    clause: BEARING_LENGTH,
  });
  return l;
}

const pressedPiece = (piece: JoinedPiece, nominalIn: number, lengthIn: number, note?: Note): PressedPiece => ({
  FePsi:
    piece.material === 'steel'
      ? dowelBearingOnSteel(piece.steel, note)
      : dowelBearingOnWood(Math.min(piece.gravity, PRINTED_GRAVITY.most), nominalIn, angleOf(piece), note),
  lengthIn,
});

/** @source NDS 12.3.3.4 (end grain), from memory */
const angleOf = (piece: JoinedPiece): number =>
  piece.material === 'steel' ? 0 : piece.grain === 'end' ? 90 : piece.angleDeg;

interface ReducedLoad {
  readonly mode: YieldMode;
  readonly loadLb: number;
  readonly Rd: number;
  readonly ZLb: number;
}

const reducedStep = ({ mode, loadLb, Rd, ZLb }: ReducedLoad, from: readonly Step[]): Step => ({
  symbol: `Z(${mode})`,
  words: `mode ${mode}, reduced`,
  formula: 'P / Rd',
  put: [put('P', loadLb, 'lb', 'load at which it yields'), put('Rd', Rd, '1', 'reduction term', from)],
  result: quantity(ZLb, 'lb'),
  clause: LEAST_OF_MODES,
});
