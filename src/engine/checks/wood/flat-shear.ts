import { clause } from '../../../data/sources.ts';
import { positive } from '../../errors.ts';
import { put, type Note } from '../../note.ts';
import { quantity } from '../../units.ts';
import { centroidShift, flattenedArea, flattenedInertia } from './flat-section.ts';

const SHEAR = clause('NDS', '3.4.2');

/** Halvings of the search for the worst level: the stress is level there, so that the last digits do not matter. */
const HALVINGS = 32;

/**
 * Shear area of a round section with two opposite flats: the least I b / Q over all levels, by which a shear force is
 * divided for the greatest stress. It depends on the section only: find it once for a station, use it for every force.
 * @param diameterIn full wood diameter [in]
 * @param flatIn, oppositeIn depths of the flats [in]; together less than the diameter
 * @returns shear area [in2]; three quarters of the area when nothing is cut
 * @throws MisuseError if a value is out of these bounds
 * @source NDS 3.4.2: fv = V Q / (I b)
 */
export function shearArea(diameterIn: number, flatIn: number, oppositeIn: number, note?: Note): number {
  const R = diameterIn / 2;
  const shallow = Math.min(flatIn, oppositeIn);
  const deep = Math.max(flatIn, oppositeIn);
  const I = flattenedInertia(diameterIn, deep, shallow, note);
  const e = centroidShift(diameterIn, deep, shallow);
  const y = worstLevel(R, deep, shallow, e);
  const Q = momentBelow(R, shallow, e, y);
  const b = 2 * Math.sqrt(R * R - y * y);
  const area = (I * b) / Q;
  note?.({
    symbol: 'Av',
    words: 'shear area of the section with its flat, at the worst level',
    formula: 'I × b / Q',
    put: [
      put('I', I, 'in4', 'inertia of the section left'),
      put('b', b, 'in', 'width at the worst level'),
      put('Q', Q, 'in3', 'first moment of the wood beyond that level'),
      put('y', y, 'in', 'that level, from the centre of the circle, toward the deeper flat'),
    ],
    result: quantity(area, 'in2'),
    clause: SHEAR,
  });
  return area;
}

/**
 * Greatest shear stress in a section of known shear area.
 * @param shearLb shear force, either sign [lb]
 * @param shearAreaIn2 from `shearArea` [in2]
 * @returns stress [psi]
 * @throws MisuseError if the shear area is not above zero
 * @source NDS 3.4.2
 */
export function flattenedShearStress(shearLb: number, shearAreaIn2: number, note?: Note): number {
  const V = Math.abs(shearLb);
  const fv = V / positive('shearAreaIn2', shearAreaIn2);
  note?.({
    symbol: 'fv',
    words: 'greatest shear stress of the round section with its flat',
    formula: 'V / Av',
    put: [put('V', V, 'lb', 'shear force'), put('Av', shearAreaIn2, 'in2', 'shear area')],
    result: quantity(fv, 'psi'),
    clause: SHEAR,
  });
  return fv;
}

/**
 * Level of the greatest Q / b, from the centre toward the deeper flat (never above zero). The slope of Q / b has the
 * sign of 4 y Q - (y + e) b3, where y = -e is the centroid: positive beside the shallow side, negative at the centroid.
 */
function worstLevel(R: number, deep: number, shallow: number, e: number): number {
  if (deep === shallow) return 0;
  let low = shallow - R;
  let high = -e;
  for (let i = 0; i < HALVINGS; i++) {
    const y = (low + high) / 2;
    const b = 2 * Math.sqrt(R * R - y * y);
    if (4 * y * momentBelow(R, shallow, e, y) > (y + e) * b * b * b) low = y;
    else high = y;
  }
  return (low + high) / 2;
}

/** First moment about the centroid (at -e) of the wood between level y and the shallow side. */
function momentBelow(R: number, shallow: number, e: number, y: number): number {
  const edge = shallow - R;
  const aboutCentre = (2 / 3) * ((R * R - y * y) ** 1.5 - (R * R - edge * edge) ** 1.5);
  return aboutCentre - e * flattenedArea(2 * R, R - y, shallow);
}
