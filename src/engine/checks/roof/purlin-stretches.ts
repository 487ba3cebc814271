import { clause } from '../../../data/sources.ts';
import { put, type Note } from '../../note.ts';
import { quantity } from '../../units.ts';
import type { PurlinLoading, PurlinResponse, PurlinStretchKind } from './purlin-loading.ts';

/**
 * A stretch of a purlin. Own rule: every gap between rafters counts as a simple span, which bends and sags more than a
 * continuous one under the same load; an end beyond the last rafter as a cantilever whose back span is not loaded.
 */
export interface PurlinStretch {
  readonly kind: PurlinStretchKind;
  readonly lengthIn: number;
  /** the gap behind an overhang; the span itself otherwise [in] */
  readonly backIn: number;
}

/** The widest gap and the longer end: no other stretch is worse. */
export function purlinStretches({ spanIn, overhangIn }: PurlinLoading): readonly PurlinStretch[] {
  const span = { kind: 'span', lengthIn: spanIn, backIn: spanIn } as const;
  const overhang = { kind: 'overhang', lengthIn: overhangIn, backIn: spanIn } as const;
  return [...(spanIn > 0 ? [span] : []), ...(overhangIn > 1e-6 ? [overhang] : [])];
}

/** True where a response is one that acts on a stretch of this kind. */
export const actsOn = (stretch: PurlinStretch, { on }: PurlinResponse): boolean =>
  on === undefined || on === stretch.kind;

const SIMPLE = clause('OWN', 'purlin as a row of simple spans and an end cantilever');

/**
 * Greatest moment of a stretch.
 * @param load even load [lb/in]
 * @returns moment, pressing the top together + in a span and - in an overhang [lb·in]
 * @source MECHANICS: w L2 / 8 and w L2 / 2
 */
export function stretchMoment({ kind, lengthIn: L }: PurlinStretch, load: number, symbol: string, note?: Note): number {
  const M = kind === 'span' ? (load * L * L) / 8 : (-load * L * L) / 2;
  note?.({
    symbol,
    words: kind === 'span' ? 'moment in the middle of the widest gap' : 'moment at the outer rafter',
    formula: kind === 'span' ? 'w × L^2 / 8' : '-w × L^2 / 2',
    put: [
      put('w', load, 'lb/in', 'even load'),
      put('L', L, 'in', kind === 'span' ? 'gap' : 'length beyond the rafter'),
    ],
    result: quantity(M, 'lb·in'),
    clause: SIMPLE,
  });
  return M;
}

/** Shear of a continuous purlin beside an inner support over that of a simple span (own allowance). */
const CONTINUITY = 0.625;

/**
 * Greatest shear anywhere on a purlin.
 * @param load even load, either sign [lb/in]
 * @param on the kind of stretch that it acts on alone
 * @returns shear, never negative [lb]
 * @source MECHANICS: 5/8 w L beside the inner support of two equal spans; w L of a cantilever
 */
export function purlinShear(
  loading: PurlinLoading,
  load: number,
  on: PurlinStretchKind | undefined,
  note?: Note,
): number {
  const spanIn = on === 'overhang' ? 0 : loading.spanIn;
  const overhangIn = on === 'span' ? 0 : loading.overhangIn;
  const lengthIn = Math.max(CONTINUITY * spanIn, overhangIn);
  const V = Math.abs(load) * lengthIn;
  note?.({
    symbol: 'V',
    words: 'shear beside a rafter',
    formula: `w × max(${CONTINUITY} × L, c)`,
    put: [
      put('w', Math.abs(load), 'lb/in', 'even load'),
      put('L', spanIn, 'in', 'widest gap'),
      put('c', overhangIn, 'in', 'length beyond the outer rafter'),
    ],
    result: quantity(V, 'lb'),
    clause: SIMPLE,
  });
  return V;
}

/**
 * Greatest sag of a stretch.
 * @param load even load square to the slope, either sign [lb/in]
 * @param EI stiffness [psi in4]
 * @returns sag, never negative [in]
 * @source MECHANICS: 5 w L4 / (384 EI); w L4 / (8 EI) + w L3 B / (6 EI) with an unloaded span B behind it
 */
export function stretchSag(
  { kind, lengthIn: L, backIn: B }: PurlinStretch,
  load: number,
  EI: number,
  note?: Note,
): number {
  const w = Math.abs(load);
  const sag = kind === 'span' ? (5 * w * L ** 4) / (384 * EI) : (w * L ** 4) / (8 * EI) + (w * L ** 3 * B) / (6 * EI);
  note?.({
    symbol: 'Δ',
    words: kind === 'span' ? 'sag in the middle of the widest gap' : 'sag of the end, the span behind it not loaded',
    formula: kind === 'span' ? '5 × w × L^4 / (384 × EI)' : 'w × L^4 / (8 × EI) + w × L^3 × B / (6 × EI)',
    put: [
      put('w', w, 'lb/in', 'even load square to the slope'),
      put('L', L, 'in', kind === 'span' ? 'gap' : 'length beyond the rafter'),
      put('B', B, 'in', 'gap behind'),
      put('EI', EI, '1', 'modulus times inertia, psi × in4'),
    ],
    result: quantity(sag, 'in'),
    clause: SIMPLE,
  });
  return sag;
}
