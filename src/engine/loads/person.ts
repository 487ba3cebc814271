import { PERSON } from '../../data/loads/person.ts';
import type { RafterGeometry } from '../geometry/shelter.ts';
import { positive } from '../errors.ts';
import { message } from '../message.ts';
import { put, type Note } from '../note.ts';
import { quantity, radiansFromDegrees } from '../units.ts';
import type { LoadCase } from './cases.ts';
import type { Combination } from './combination.ts';
import { rafterSegments, type RafterRun } from './rafter-run.ts';

const PERSON_ID = 'person-';
const ON_PURLIN = { span: 'between two rafters', overhang: 'beyond the outer rafter' } as const;

/**
 * A person at work, alone on a roof without other live load or snow; nobody stays for a sag.
 * @param at  of a purlin its span or its overhang, of a rafter the number of the stretch, counted from the eave
 */
export const personCase = (at: keyof typeof ON_PURLIN | number): LoadCase => ({
  id: `${PERSON_ID}${at}`,
  kind: 'roofLive',
  words: message('casePerson', { place: typeof at === 'number' ? `on stretch ${at} from the eave` : ON_PURLIN[at] }),
  swaysAlong: false,
  isAskedForSag: false,
});

/**
 * Even load on a span or an overhang of a small stick that bends it as a person does who stands in the middle of the span
 * or at the end: a square of 30 in., of which a narrower strip of roof carries its part.
 * @param widthIn  width of level roof that the stick carries [in], above zero
 * @param lengthIn  span, or length beyond the last support [in], above zero
 * @returns w, plumb, per inch of the stick [lb/in]
 * @throws MisuseError  if width or length is not above zero
 * @source ASCE7 Table 4.3-1 and 4.4 (7-16, from memory); MECHANICS load on a part of a span
 */
export function personAsEvenLoad(kind: 'span' | 'overhang', widthIn: number, lengthIn: number, note?: Note): number {
  const L = positive('lengthIn', lengthIn);
  const P = PERSON.lb * Math.min(1, positive('widthIn', widthIn) / PERSON.squareIn);
  const a = Math.min(PERSON.squareIn, L);
  const M = kind === 'span' ? P * (L / 4 - a / 8) : P * (L - a / 2);
  const w = kind === 'span' ? (8 * M) / (L * L) : (2 * M) / (L * L);
  note?.({
    symbol: 'w',
    words: 'even load that bends the stick as a person does',
    formula: kind === 'span' ? '8 × P × (L / 4 - a / 8) / L^2' : '2 × P × (L - a / 2) / L^2',
    put: [
      put('P', P, 'lb', '300 lb on 30 in. square, as far as it stands on this strip of roof'),
      put('a', a, 'in', 'length of the stick under it'),
      put('L', L, 'in', kind === 'span' ? 'span' : 'length beyond the support'),
    ],
    result: quantity(w, 'lb/in'),
    clause: PERSON.clause,
  });
  return w;
}

/**
 * What of a person stands on a strip of roof in a combination, plumb; none where nobody is at work.
 * @param widthIn  width of level roof that the stick carries [in]
 * @returns P [lb]
 * @source ASCE7 Table 4.3-1 and 4.4 (7-16, from memory)
 */
export function personOnStrip({ factors }: Pick<Combination, 'factors'>, widthIn: number): number {
  const stands = factors.find((f) => f.caseId.startsWith(PERSON_ID));
  return stands ? stands.factor * PERSON.lb * Math.min(1, widthIn / PERSON.squareIn) : 0;
}

/** Where a person stands on a rafter: along the slope from the eave, and how much of level roof that is [in]. */
export interface PersonPlace {
  readonly segment: number;
  readonly fromIn: number;
  readonly toIn: number;
  readonly levelIn: number;
}

/** The middle of every span and the end of every overhang: the worst places for bending. */
export function personPlaces({ segments, cos }: Pick<RafterRun, 'segments' | 'cos'>): readonly PersonPlace[] {
  return segments.map((s, segment) => {
    const spreadIn = Math.min(PERSON.squareIn / cos, s.toIn - s.fromIn);
    const middleIn = (s.fromIn + s.toIn - spreadIn) / 2;
    const fromIn = s.kind === 'span' ? middleIn : segment === 0 ? s.fromIn : s.toIn - spreadIn;
    return { segment, fromIn, toIn: fromIn + spreadIn, levelIn: spreadIn * cos };
  });
}

/** Where the places of a person on a rafter begin and end, along the slope from the eave [in]. */
export const personCuts = (rafter: RafterGeometry): readonly number[] =>
  personPlaces({
    segments: rafterSegments(rafter),
    cos: Math.cos(radiansFromDegrees(rafter.slopeDeg)),
  }).flatMap((p) => [p.fromIn, p.toIn]);

/**
 * Pressure under a person on the width that a rafter carries: the whole weight on one rafter.
 * @returns p on the level [psf]
 * @source ASCE7 Table 4.3-1 and 4.4 (7-16, from memory)
 */
export function personPressure(widthIn: number, levelIn: number, note?: Note): number {
  const psf = (PERSON.lb * 144) / (positive('widthIn', widthIn) * positive('levelIn', levelIn));
  note?.({
    symbol: 'p',
    words: 'a person at work, as a pressure on the width of roof of one rafter',
    formula: 'P × 144 / (b × a)',
    put: [
      put('P', PERSON.lb, 'lb', 'a person at work'),
      put('b', widthIn, 'in', 'width of roof of the rafter'),
      put('a', levelIn, 'in', 'length of the rafter under the person, on the level'),
    ],
    result: quantity(psf, 'psf'),
    clause: PERSON.clause,
  });
  return psf;
}
