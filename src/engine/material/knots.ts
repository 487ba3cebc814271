import { clause } from '../../data/sources.ts';
import { MisuseError, positive } from '../errors.ts';
import { put, type Note } from '../note.ts';
import { quantity, type Inches } from '../units.ts';

const KNOT_CLAUSE = clause('OWN', 'knots as wedges, after D2899');

/** Knots of one width: each takes a wedge from pith to bark, of this half angle. */
interface Wedges {
  readonly count: number;
  readonly widthIn: number;
  readonly halfAngle: number;
}

function wedgesOf(widthsIn: readonly number[], diameter: Inches): readonly Wedges[] {
  positive('diameterAtKnots', diameter);
  const counts = new Map<number, number>();
  for (const width of widthsIn) {
    if (!(width > 0) || width > diameter) throw new MisuseError('knotWidth', width, 'above zero, at most the diameter');
    counts.set(width, (counts.get(width) ?? 0) + 1);
  }
  return [...counts].map(([widthIn, count]) => ({ widthIn, count, halfAngle: Math.asin(widthIn / diameter) }));
}

/**
 * What the knots in one foot of a round log leave of its section modulus.
 * Each knot is counted as if it sat at the extreme fibre, wherever it is.
 * @param widthsIn widths of the knots on the surface [in], each above zero and at most the diameter
 * @param diameter wood diameter where they sit [in]
 * @returns strength ratio in bending; zero or less when the knots take everything
 * @throws MisuseError  on a width or a diameter that is not above zero, or a knot wider than the log
 * @source own rule after the principle of D2899 (2003): section modulus of the knot's wedge over that of the circle
 */
export function knotBendingRatio(widthsIn: readonly number[], diameter: Inches, note?: Note): number {
  return whatIsLeft(widthsIn, diameter, 'bending', note);
}

/** The same for compression along the grain: share of the area that the knots leave. */
export function knotCompressionRatio(widthsIn: readonly number[], diameter: Inches, note?: Note): number {
  return whatIsLeft(widthsIn, diameter, 'compression', note);
}

const SHARE = {
  bending: {
    of: (a: number) => (a + Math.sin(a) * Math.cos(a)) / Math.PI,
    formula: (a: string) => `(${a} + sin(${a}) × cos(${a})) / pi`,
    words: 'share of the section modulus that one such knot takes',
    result: 'SR_knots_b',
  },
  compression: {
    of: (a: number) => a / Math.PI,
    formula: (a: string) => `${a} / pi`,
    words: 'share of the area that one such knot takes',
    result: 'SR_knots_c',
  },
} as const;

function whatIsLeft(widthsIn: readonly number[], diameter: Inches, kind: keyof typeof SHARE, note?: Note): number {
  const wedges = wedgesOf(widthsIn, diameter);
  const share = SHARE[kind];
  const ratio = wedges.reduce((left, wedge) => left - wedge.count * share.of(wedge.halfAngle), 1);
  if (!note) return ratio;
  wedges.forEach((wedge, i) => noteWedge(wedge, `${i + 1}`, diameter, kind, note));
  note({
    symbol: share.result,
    words: `what the knots leave in ${kind}`,
    formula: ['1', ...wedges.map((wedge, i) => `${wedge.count} × w_${i + 1}`)].join(' − '),
    put: wedges.map((wedge, i) => put(`w_${i + 1}`, share.of(wedge.halfAngle), '1', 'share of one knot')),
    result: quantity(ratio, '1'),
    clause: KNOT_CLAUSE,
  });
  return ratio;
}

function noteWedge(wedge: Wedges, number: string, diameter: Inches, kind: keyof typeof SHARE, note: Note): void {
  const share = SHARE[kind];
  note({
    symbol: `a_${number}`,
    words: `half angle of the wedge of a knot (${wedge.count} of this width), in radians`,
    formula: 'asin(k / d)',
    put: [put('k', wedge.widthIn, 'in', 'width of the knot'), put('d', diameter, 'in', 'diameter where it sits')],
    result: quantity(wedge.halfAngle, '1'),
    clause: KNOT_CLAUSE,
  });
  note({
    symbol: `w_${number}`,
    words: share.words,
    formula: share.formula(`a_${number}`),
    put: [put(`a_${number}`, wedge.halfAngle, '1', 'half angle')],
    result: quantity(share.of(wedge.halfAngle), '1'),
    clause: KNOT_CLAUSE,
  });
}
