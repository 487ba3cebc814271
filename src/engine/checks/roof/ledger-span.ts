import { clause } from '../../../data/sources.ts';
import type { RafterGeometry } from '../../geometry/shelter.ts';
import { put, type Note } from '../../note.ts';
import { quantity } from '../../units.ts';

/*
 * A ledger may go on over its fixings or be cut at each, and nobody says where the first fixing stands: rafters lie anywhere.
 * What bends it is taken of simple spans; what presses a fixing and shears the ledger beside it, of two equal spans over it,
 * which under loads all along give a support more than simple spans or more spans do. A rafter brings p times its width.
 */
const MECHANICS = clause('MECHANICS', 'point loads on spans, influence lines');

export type RafterOnLedger = Pick<RafterGeometry, 'xIn' | 'tributaryFromXIn' | 'tributaryToXIn' | 'tributaryWidthIn'>;

/** How much a load hands over, by how much of its span `t` it stands from the far end, and how that is written. */
interface Way {
  readonly of: (t: number) => number;
  readonly write: (t: string) => string;
}

/** Of the middle support of two equal spans. */
const PRESSES: Way = { of: (t) => (t * (3 - t * t)) / 2, write: (t) => `${t} × (3 - ${t}^2) / 2` };
/** Beside that support in the load's own span, and in the other one by the moment over the support. */
const SHEARS_OTHER: Way = { of: (t) => (t * (1 - t * t)) / 4, write: (t) => `${t} × (1 - ${t}^2) / 4` };
const SHEARS_OWN: Way = { of: (t) => t + SHEARS_OTHER.of(t), write: (t) => `(${t} + ${SHEARS_OTHER.write(t)})` };

/** A rafter within a span of the fixing. */
interface Sharing {
  readonly widthIn: number;
  readonly t: number;
  readonly way: Way;
}

/**
 * Width of roof that one fixing holds, placed where rafters press it hardest; never less than the spacing.
 * @param rafters all that rest on the ledger
 * @param spacingIn of the fixings [in]
 * @returns width, to be multiplied by the force on each foot [in]
 * @source MECHANICS: middle reaction of two equal spans, t (3 - t^2) / 2
 */
export function widthOnFixing(rafters: readonly RafterOnLedger[], spacingIn: number, note?: Note): number {
  const sharing = hardest(rafters, spacingIn, (xIn) => sharingAt(rafters, xIn, spacingIn, PRESSES, PRESSES));
  const widthIn = Math.max(spacingIn, sumOf(sharing));
  note?.({
    symbol: 'w',
    words: 'width of roof on one fixing, where rafters press it hardest; the ledger goes on over it',
    formula: `max(s, ${formulaOf(sharing)})`,
    put: [put('s', spacingIn, 'in', 'spacing of the fixings'), ...putsOf(sharing)],
    result: quantity(widthIn, 'in'),
    clause: MECHANICS,
  });
  return widthIn;
}

/**
 * Width of roof that shears the ledger beside a fixing.
 * @returns width, to be multiplied by the force on each foot [in]
 * @source MECHANICS: shear beside the middle support of two equal spans, t + t (1 - t^2) / 4, the other span t (1 - t^2) / 4
 */
export function widthInShear(rafters: readonly RafterOnLedger[], spacingIn: number, note?: Note): number {
  const left = hardest(rafters, spacingIn, (xIn) => sharingAt(rafters, xIn, spacingIn, SHEARS_OWN, SHEARS_OTHER));
  const right = hardest(rafters, spacingIn, (xIn) => sharingAt(rafters, xIn, spacingIn, SHEARS_OTHER, SHEARS_OWN));
  const sharing = sumOf(right) > sumOf(left) ? right : left;
  const widthIn = sumOf(sharing);
  note?.({
    symbol: 'w',
    words: 'width of roof in shear beside a fixing, where rafters shear it hardest; the ledger goes on over it',
    formula: formulaOf(sharing),
    put: putsOf(sharing),
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

/** What rafters within a span of a fixing hand over: those before it, those past it; one right at it counts whole. */
function sharingAt(
  rafters: readonly RafterOnLedger[],
  xIn: number,
  spacingIn: number,
  before: Way,
  past: Way,
): readonly Sharing[] {
  return rafters.flatMap((r) => {
    const apartIn = Math.abs(r.xIn - xIn);
    if (apartIn >= spacingIn) return [];
    const way = apartIn === 0 ? PRESSES : r.xIn < xIn ? before : past;
    return [{ widthIn: r.tributaryWidthIn, t: 1 - apartIn / spacingIn, way }];
  });
}

/** Places of the fixing that are tried within half a span of each rafter, the rafter's own among them. */
const PLACES = 64;

/** Between two places nothing is lost that could be told: what presses turns flat at its peak, what shears peaks at a rafter. */
function hardest(
  rafters: readonly RafterOnLedger[],
  spacingIn: number,
  sharing: (xIn: number) => readonly Sharing[],
): readonly Sharing[] {
  let worst: readonly Sharing[] = [];
  for (const { xIn } of rafters)
    for (let i = 0; i <= PLACES; i++) {
      const here = sharing(xIn + (i / PLACES - 0.5) * spacingIn);
      if (sumOf(here) > sumOf(worst)) worst = here;
    }
  return worst;
}

const sumOf = (sharing: readonly Sharing[]): number =>
  sharing.reduce((sum, { widthIn, t, way }) => sum + widthIn * way.of(t), 0);

const formulaOf = (sharing: readonly Sharing[]): string =>
  sharing.map(({ t, way }, i) => (t === 1 ? `w${i + 1}` : `w${i + 1} × ${way.write(`t${i + 1}`)}`)).join(' + ') || '0';

const putsOf = (sharing: readonly Sharing[]) =>
  sharing.flatMap(({ widthIn, t }, i) => [
    put(`w${i + 1}`, widthIn, 'in', 'width of roof on a rafter'),
    ...(t === 1 ? [] : [put(`t${i + 1}`, t, '1', 'one less its distance from the fixing over the spacing')]),
  ]);
