import { clause, remembered } from '../../../data/sources.ts';
import { put, type Note } from '../../note.ts';
import { quantity } from '../../units.ts';

/** Wood that a hole or a flat beside it takes out of a section, for bending in one plane. */
export interface Bored {
  readonly areaIn2: number;
  /** its middle from the middle of the whole stick, in the plane of bending [in] */
  readonly offIn: number;
  /** its own inertia for bending in that plane, about its middle [in4] */
  readonly inertiaIn4: number;
  /** width that it takes where shear is greatest, square to the plane of bending; 0 where it does not reach there [in] */
  readonly widthIn: number;
}

/** A section before anything is bored out of it; places are from the middle of the whole stick. */
export interface Unbored {
  readonly areaIn2: number;
  /** about its own centroid [in4] */
  readonly inertiaIn4: number;
  readonly centroidIn: number;
  readonly topIn: number;
  readonly bottomIn: number;
}

/** What boring leaves. */
export interface NetSection {
  readonly areaIn2: number;
  readonly modulusIn3: number;
}

/**
 * A hole as it lies in the plane of bending: as long as it is deep there.
 * @param widthIn across that plane, all holes side by side [in]
 * @param fromIn, toIn where it begins and ends, from the middle of the stick [in]
 * @source MECHANICS: rectangle
 */
export function holeInPlane(widthIn: number, fromIn: number, toIn: number): Bored {
  const lengthIn = Math.abs(toIn - fromIn);
  return {
    areaIn2: widthIn * lengthIn,
    offIn: (fromIn + toIn) / 2,
    inertiaIn4: (widthIn * lengthIn ** 3) / 12,
    widthIn,
  };
}

/** A hole square to the plane of bending. @source MECHANICS: rectangle */
export const holeAcrossPlane = (diameterIn: number, lengthIn: number, offIn: number): Bored => ({
  areaIn2: diameterIn * lengthIn,
  offIn,
  inertiaIn4: (lengthIn * diameterIn ** 3) / 12,
  widthIn: 0,
});

/**
 * Area and section modulus of what holes leave: all that is bored out counts as projected on the section, however it is
 * filled again. The lesser modulus of both sides counts.
 * @returns null where nothing is left
 * @source NDS 3.1.2 (from memory); MECHANICS: parallel-axis theorem
 */
export function netSection(whole: Unbored, bored: readonly Bored[], note?: Note): NetSection | null {
  const sum = (of: (b: Bored) => number): number => bored.reduce((total, b) => total + of(b), 0);
  const Ah = sum((b) => b.areaIn2);
  const A = whole.areaIn2 - Ah;
  if (A <= 0) return null;
  const Qh = sum((b) => b.areaIn2 * b.offIn);
  const Ih = sum((b) => b.inertiaIn4 + b.areaIn2 * b.offIn ** 2);
  const z = (whole.areaIn2 * whole.centroidIn - Qh) / A;
  const I = whole.inertiaIn4 + whole.areaIn2 * whole.centroidIn ** 2 - Ih - A * z * z;
  const c = Math.max(whole.topIn - z, z - whole.bottomIn);
  if (I <= 0 || c <= 0) return null;
  note?.({
    symbol: 'An',
    words: 'area less what is bored out',
    formula: 'A0 - Ah',
    put: [
      put('A0', whole.areaIn2, 'in2', 'area before boring'),
      put('Ah', Ah, 'in2', 'holes, width times length, and flats for hardware'),
    ],
    result: quantity(A, 'in2'),
    clause: remembered('NDS', '3.1.2'),
  });
  note?.({
    symbol: 'S',
    words: 'section modulus less what is bored out',
    formula: '(I0 + A0 × z0^2 - Ih - An × z^2) / c',
    put: [
      put('I0', whole.inertiaIn4, 'in4', 'inertia before boring'),
      put('A0', whole.areaIn2, 'in2', 'area before boring'),
      put('z0', whole.centroidIn, 'in', 'its centroid from the middle of the stick'),
      put('Ih', Ih, 'in4', 'inertia of what is bored out, about the middle of the stick'),
      put('An', A, 'in2', 'area left'),
      put('z', z, 'in', 'centroid of what is left, from the middle of the stick'),
      put('c', c, 'in', 'from there to the farther side'),
    ],
    result: quantity(I / c, 'in3'),
    clause: clause('MECHANICS', 'parallel-axis theorem'),
  });
  return { areaIn2: A, modulusIn3: I / c };
}
