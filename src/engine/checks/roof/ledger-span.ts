import { clause } from '../../../data/sources.ts';
import type { RafterGeometry } from '../../geometry/shelter.ts';
import { put, type Note } from '../../note.ts';
import { quantity } from '../../units.ts';

/*
 * A ledger is taken as simple spans from fixing to fixing, with rafters anywhere on them: nobody says where the first
 * fixing stands. What a rafter brings is p times the width it carries. An influence line of straight pieces is greatest
 * under point loads where one of them stands on its peak; so the hardest place is a rafter right at the fixing.
 */
const MECHANICS = clause('MECHANICS', 'point loads on simple spans, influence lines');

export type RafterOnLedger = Pick<RafterGeometry, 'xIn' | 'tributaryFromXIn' | 'tributaryToXIn' | 'tributaryWidthIn'>;

/** A rafter of those that share a place, and how far off it stands. */
interface Sharing {
  readonly widthIn: number;
  readonly apartIn: number;
}

/**
 * Width of roof that one fixing holds: a rafter right at it and what its neighbours within a span hand over, the hardest
 * rafter of all; never less than the spacing.
 * @param rafters all that rest on the ledger
 * @param spacingIn of the fixings [in]
 * @returns width, to be multiplied by the force on each foot [in]
 * @source MECHANICS: reaction between two simple spans
 */
export function widthOnFixing(rafters: readonly RafterOnLedger[], spacingIn: number, note?: Note): number {
  const sharing = hardest(rafters, spacingIn, [() => true]);
  const widthIn = Math.max(spacingIn, shared(sharing, spacingIn));
  note?.({
    symbol: 'w',
    words: 'width of roof on one fixing: a rafter right at it, neighbours by how near they stand',
    formula: `max(s, ${sumOf(sharing)})`,
    put: [put('s', spacingIn, 'in', 'spacing of the fixings'), ...putsOf(sharing)],
    result: quantity(widthIn, 'in'),
    clause: MECHANICS,
  });
  return widthIn;
}

/**
 * Width of roof that shears the ledger beside a fixing: a rafter just off it and the others of that span.
 * @returns width, to be multiplied by the force on each foot [in]
 * @source MECHANICS: end reaction of a simple span
 */
export function widthInShear(rafters: readonly RafterOnLedger[], spacingIn: number, note?: Note): number {
  const sharing = hardest(rafters, spacingIn, [(offIn) => offIn >= 0, (offIn) => offIn <= 0]);
  const widthIn = shared(sharing, spacingIn);
  note?.({
    symbol: 'w',
    words:
      'width of roof in shear beside a fixing: a rafter just off it, the others of that span by how near they stand',
    formula: sumOf(sharing),
    put: [put('s', spacingIn, 'in', 'spacing of the fixings'), ...putsOf(sharing)],
    result: quantity(widthIn, 'in'),
    clause: MECHANICS,
  });
  return widthIn;
}

/** Widest gap between rafters; past the last of them twice as far as its roof reaches [in]. */
export const widestGap = (rafters: readonly RafterOnLedger[]): number =>
  Math.max(0, ...rafters.map((r) => 2 * Math.max(r.xIn - r.tributaryFromXIn, r.tributaryToXIn - r.xIn)));

/**
 * Greatest moment between two fixings, a bound for rafters at any gaps up to the widest and anywhere on the span.
 * Point loads that stand for a uniform one are a trapezoid rule over the influence line: it overshoots at the two ends, by
 * p r2 / 8 at most. In a span shorter than the gap the sharper bound is that of a span as long as the gap, scaled: p r s / 4.
 * @param plf force on each foot of ledger [lb/ft]
 * @param spacingIn of the fixings [in]
 * @param gapIn widest gap between rafters [in]
 * @returns moment [lb in]
 * @source MECHANICS: simple span
 */
export function spanMoment(
  plf: number,
  spacingIn: number,
  gapIn: number,
  way: { readonly symbol: string; readonly words: string },
  note?: Note,
): number {
  const isShort = spacingIn < gapIn;
  const areaIn2 = isShort ? (gapIn * spacingIn) / 4 : (spacingIn ** 2 + gapIn ** 2) / 8;
  const momentLbIn = (plf / 12) * areaIn2;
  note?.({
    symbol: way.symbol,
    words: way.words,
    formula: isShort ? 'p / 12 × r × s / 4' : 'p / 12 × (s^2 + r^2) / 8',
    put: [
      put('p', plf, 'lb/ft', 'on each foot of ledger'),
      put('s', spacingIn, 'in', 'spacing of the fixings'),
      put('r', gapIn, 'in', 'widest gap between rafters'),
    ],
    result: quantity(momentLbIn, 'lb·in'),
    clause: MECHANICS,
  });
  return momentLbIn;
}

/** Those within a span of the rafter that comes out hardest, itself first. */
function hardest(
  rafters: readonly RafterOnLedger[],
  spacingIn: number,
  sides: readonly ((offIn: number) => boolean)[],
): readonly Sharing[] {
  let worst: readonly Sharing[] = [];
  for (const here of rafters)
    for (const isOnSide of sides) {
      const sharing = rafters
        .filter((r) => isOnSide(r.xIn - here.xIn))
        .map((r) => ({ widthIn: r.tributaryWidthIn, apartIn: Math.abs(r.xIn - here.xIn) }))
        .filter(({ apartIn }) => apartIn < spacingIn)
        .sort((a, b) => a.apartIn - b.apartIn);
      if (shared(sharing, spacingIn) > shared(worst, spacingIn)) worst = sharing;
    }
  return worst;
}

const shared = (sharing: readonly Sharing[], spacingIn: number): number =>
  sharing.reduce((sum, { widthIn, apartIn }) => sum + widthIn * (1 - apartIn / spacingIn), 0);

const sumOf = (sharing: readonly Sharing[]): string =>
  sharing.map(({ apartIn }, i) => (apartIn === 0 ? `w${i + 1}` : `w${i + 1} × (1 - d${i + 1} / s)`)).join(' + ') || '0';

const putsOf = (sharing: readonly Sharing[]) =>
  sharing.flatMap(({ widthIn, apartIn }, i) => [
    put(`w${i + 1}`, widthIn, 'in', 'width of roof on a rafter'),
    ...(apartIn === 0 ? [] : [put(`d${i + 1}`, apartIn, 'in', 'how far it stands off')]),
  ]);
