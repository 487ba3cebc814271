import { clause } from '../../../data/sources.ts';
import { put, type Note } from '../../note.ts';
import { quantity } from '../../units.ts';
import { centroidShift, flattenedArea, flattenedInertia } from './flat-section.ts';

const SHEAR = clause('NDS', '3.4.2');

/** Halvings of the search for the worst level: the stress is flat there, so that the last digits do not matter. */
const HALVINGS = 32;

/**
 * Greatest shear stress per pound of shear in a round section with two opposite flats: the largest Q / (I b) over all
 * levels. It depends on the section only; find it once for a station and multiply by each shear force.
 * @param diameterIn full wood diameter [in]
 * @param flatIn, oppositeIn depths of the flats [in]; together less than the diameter
 * @returns stress per force [1/in2]; 4 / (3 A) when nothing is cut
 * @throws MisuseError if a value is out of these bounds
 * @source NDS 3.4.2: fv = V Q / (I b)
 */
export function shearPerPound(diameterIn: number, flatIn: number, oppositeIn: number): number {
  const R = diameterIn / 2;
  const shallow = Math.min(flatIn, oppositeIn);
  const deep = Math.max(flatIn, oppositeIn);
  const I = flattenedInertia(diameterIn, flatIn, oppositeIn);
  const y = worstLevel(diameterIn, deep, shallow);
  return momentBelow(R, shallow, centroidShift(diameterIn, deep, shallow), y) / (I * 2 * Math.sqrt(R * R - y * y));
}

/**
 * Greatest shear stress in a section with known stress per pound.
 * @param shearLb shear force, either sign [lb]
 * @param perPound from `shearPerPound` [1/in2]
 * @returns stress [psi]
 * @source NDS 3.4.2
 */
export function flattenedShearStress(shearLb: number, perPound: number, note?: Note): number {
  const V = Math.abs(shearLb);
  const fv = V * perPound;
  note?.({
    symbol: 'fv',
    words: 'greatest shear stress of the round section with its flat',
    formula: 'V × k',
    put: [put('V', V, 'lb', 'shear force'), put('k', perPound, '1', 'largest Q/(I b) over the depth of the section, per in2')],
    result: quantity(fv, 'psi'),
    clause: SHEAR,
  });
  return fv;
}

/**
 * Level of the greatest Q / b, measured from the centre toward the deeper flat (so it is never above zero). The slope
 * of Q / b has the sign of (e + y) b3 (-1) + 4 y Q there; it falls from the shallow side to the centroid at y = -e.
 */
function worstLevel(diameterIn: number, deep: number, shallow: number): number {
  const R = diameterIn / 2;
  const e = centroidShift(diameterIn, deep, shallow);
  if (deep === shallow) return 0;
  let low = -(R - shallow);
  let high = -e;
  for (let i = 0; i < HALVINGS; i++) {
    const y = (low + high) / 2;
    const b = 2 * Math.sqrt(R * R - y * y);
    const slope = -(y + e) * b * b * b + 4 * y * momentBelow(R, shallow, e, y);
    if (slope > 0) low = y;
    else high = y;
  }
  return (low + high) / 2;
}

/** First moment, about the centroid at -e, of the wood between level y and the shallow side. */
function momentBelow(R: number, shallow: number, e: number, y: number): number {
  const edge = -(R - shallow);
  const aboutCentre = (2 / 3) * ((R * R - y * y) ** 1.5 - (R * R - edge * edge) ** 1.5);
  return aboutCentre - e * flattenedArea(2 * R, R - y, shallow);
}
