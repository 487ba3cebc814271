import { LEAST_RAISING_PUSH } from '../../data/loads/raising.ts';
import { clause, remembered } from '../../data/sources.ts';
import { MisuseError, notNegative, positive } from '../errors.ts';
import { put, type Note } from '../note.ts';
import { quantity, radiansFromDegrees } from '../units.ts';
import type { WindPart } from './wind-on-post.ts';

/** Strength-level wind at allowable-stress level. @source ASCE7 2.4.1 */
const WIND_FACTOR = 0.6;

/** What turns a post over about its foot, allowable-stress level. */
export interface Overturning {
  readonly windLb: number;
  readonly windMomentLbIn: number;
  /** push of people at work and its lever, in place of the wind */
  readonly leastLb: number;
  readonly leastMomentLbIn: number;
}

/**
 * Turning about a pinned foot from the wind on what one post must hold, and from the least push at its top while people
 * work on it. One or the other, not both.
 * @param parts  wind, strength level, with its heights
 * @param footZIn  level of the foot [in]
 * @param topZIn  level where people push: the highest place that stands [in], above the foot
 * @param heavyLb  heavy weight that the post carries [lb]
 * @throws MisuseError if the top is not above the foot or the weight below zero
 * @source ASCE7 2.4.1 and 29.4; ASCE37 4.4 from memory; MECHANICS moments about the foot
 */
export function overturning(
  parts: readonly WindPart[],
  footZIn: number,
  topZIn: number,
  heavyLb: number,
  note?: Note,
): Overturning {
  const z = positive('height of the top', topZIn - footZIn);
  const G = notNegative('heavyLb', heavyLb);
  const windLb = WIND_FACTOR * parts.reduce((sum, p) => sum + p.forceLb, 0);
  const windMomentLbIn = WIND_FACTOR * parts.reduce((sum, p) => sum + p.forceLb * (p.atZIn - footZIn), 0);
  const leastLb = Math.max(LEAST_RAISING_PUSH.personLb, LEAST_RAISING_PUSH.shareOfWeight * G);
  if (note) tellWind(parts, footZIn, windLb, windMomentLbIn, note);
  note?.({
    symbol: 'L',
    words: 'least level push at the top while people work on it, in place of the wind',
    formula: 'max(P, 0.02 × G)',
    put: [
      put('P', LEAST_RAISING_PUSH.personLb, 'lb', 'one person who leans on it'),
      put('G', G, 'lb', 'heavy weight that the post carries, its own with it'),
    ],
    result: quantity(leastLb, 'lb'),
    clause: remembered('ASCE37', '4.4'),
  });
  return { windLb, windMomentLbIn, leastLb, leastMomentLbIn: leastLb * z };
}

const PART_WORDS: Readonly<Record<WindPart['name'], string>> = {
  post: 'wind on the post above ground',
  beam: 'wind on its share of the beam',
  braces: 'wind on a knee brace of it',
  ties: 'wind on half of a tie log',
  rafters: 'wind on its share of the bare rafters',
  eaves: 'wind on its share of an eave edge',
  roof: 'its share of the level part of the wind on the roof, at least the least wind on its rise',
  finished: 'its share of what the finished line is asked beyond its areas',
};

function tellWind(
  parts: readonly WindPart[],
  footZIn: number,
  windLb: number,
  windMomentLbIn: number,
  note: Note,
): void {
  parts.forEach(({ name, areaFt2, psf, forceLb, steps }, i) =>
    note({
      symbol: `F${i + 1}`,
      words: `${PART_WORDS[name]}, strength level`,
      formula: areaFt2 === null ? `F${i + 1}` : 'A × p',
      put:
        areaFt2 === null
          ? [put(`F${i + 1}`, forceLb, 'lb', 'from the finished shelter')]
          : [
              put('A', areaFt2, 'ft2', 'area that the wind meets'),
              put('p', psf, 'psf', 'wind on a part of an open frame', steps()),
            ],
      result: quantity(forceLb, 'lb'),
      clause: areaFt2 === null ? remembered('ASCE7', '27.3.2, 27.1.5, 28.3.5') : clause('ASCE7', '29.4, Table 29.4-2'),
    }),
  );
  note({
    symbol: 'W',
    words: 'level push of the wind, allowable-stress level',
    formula: `0.6 × (${parts.map((_, i) => `F${i + 1}`).join(' + ')})`,
    put: parts.map((p, i) => put(`F${i + 1}`, p.forceLb, 'lb', PART_WORDS[p.name])),
    result: quantity(windLb, 'lb'),
    clause: clause('ASCE7', '2.4.1'),
  });
  note({
    symbol: 'Mw',
    words: 'how the wind turns the post over about its foot',
    formula: `0.6 × (${parts.map((_, i) => `F${i + 1} z${i + 1}`).join(' + ')})`,
    put: parts.flatMap((p, i) => [
      put(`F${i + 1}`, p.forceLb, 'lb', PART_WORDS[p.name]),
      put(`z${i + 1}`, p.atZIn - footZIn, 'in', 'its height above the foot'),
    ]),
    result: quantity(windMomentLbIn, 'lb·in'),
    clause: clause('MECHANICS', 'moments about the foot'),
  });
}

export interface BraceGivens extends Overturning {
  /** what presses on the foot whatever comes, factors in it [lb]; below zero where something lifts it */
  readonly pressingLb: number;
  /** from the foot up to where the temporary brace meets the post [in] */
  readonly heightIn: number;
  /** of the temporary brace with the ground [deg] */
  readonly angleDeg: number;
}

export interface TemporaryBrace {
  /** push or pull in the one brace that counts, and on its stake [lb] */
  readonly braceLb: number;
  /** level force that the foot must hold [lb] */
  readonly footLb: number;
  /** how hard the pushed brace lifts the post off its foot, beyond what presses on it [lb] */
  readonly liftLb: number;
}

/**
 * Force in a temporary brace of a post on a pinned foot, so that nothing turns: of the two in a direction only one counts,
 * since a stake may hold one way alone (own rule). It is pushed or pulled alike as the wind turns.
 * @throws MisuseError if a height or weight is not finite, a height not above zero, or the angle not between 0 and 90 degrees
 * @source MECHANICS equilibrium of the post
 */
export function temporaryBrace(givens: BraceGivens, note?: Note): TemporaryBrace {
  const { windLb, windMomentLbIn, leastLb, leastMomentLbIn, pressingLb } = givens;
  const h = positive('heightIn', givens.heightIn);
  if (!(givens.angleDeg > 0 && givens.angleDeg < 90)) {
    throw new MisuseError('angleDeg', givens.angleDeg, 'between 0 and 90 degrees');
  }
  const a = radiansFromDegrees(givens.angleDeg);
  const M = Math.max(windMomentLbIn, leastMomentLbIn);
  const T = M / (h * Math.cos(a));
  const H = Math.max(Math.abs(windLb - windMomentLbIn / h), Math.abs(leastLb - leastMomentLbIn / h));
  const U = Math.max(0, T * Math.sin(a) - pressingLb);
  note?.({
    symbol: 'M',
    words: 'greatest turning about the foot, of wind or of people at work',
    formula: 'max(Mw, L zt)',
    put: [
      put('Mw', windMomentLbIn, 'lb·in', 'of the wind'),
      put('L', leastLb, 'lb', 'least push'),
      put('zt', leastMomentLbIn / leastLb, 'in', 'top above the foot'),
    ],
    result: quantity(M, 'lb·in'),
    clause: clause('MECHANICS', 'moments about the foot'),
  });
  note?.({
    symbol: 'T',
    words: 'in each temporary brace: of the two in this direction only one counts',
    formula: 'M / (h cos α)',
    put: [
      put('M', M, 'lb·in', 'turning about the foot'),
      put('h', h, 'in', 'where the brace meets the post, above its foot'),
      put('α', givens.angleDeg, 'deg', 'angle of the brace with the ground'),
    ],
    result: quantity(T, 'lb'),
    clause: clause('OWN', 'one of two temporary braces counts'),
  });
  note?.({
    symbol: 'H',
    words: 'level force on the foot of the post, of wind or of people at work',
    formula: 'max(abs(W - Mw / h), abs(L - L zt / h))',
    put: [
      put('W', windLb, 'lb', 'push of the wind'),
      put('Mw', windMomentLbIn, 'lb·in', 'turning of the wind'),
      put('h', h, 'in', 'where the brace meets the post, above its foot'),
      put('L', leastLb, 'lb', 'least push'),
      put('zt', leastMomentLbIn / leastLb, 'in', 'top above the foot'),
    ],
    result: quantity(H, 'lb'),
    clause: clause('MECHANICS', 'equilibrium of the post'),
  });
  note?.({
    symbol: 'U',
    words: 'what the pushed brace lifts the post with, beyond what presses on its foot',
    formula: 'max(0, T sin α - N)',
    put: [
      put('T', T, 'lb', 'force in the brace'),
      put('α', givens.angleDeg, 'deg', 'angle of the brace with the ground'),
      put('N', pressingLb, 'lb', 'what presses on the foot whatever comes'),
    ],
    result: quantity(U, 'lb'),
    clause: clause('MECHANICS', 'equilibrium of the post'),
  });
  return { braceLb: T, footLb: H, liftLb: U };
}
