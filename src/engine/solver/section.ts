import type { BeamElement } from './model.ts';

/** Bending stiffness EI at a fraction of the element's length, 0 at its start [lb·in2]. */
export function bendingStiffnessAt({ E, section }: BeamElement, fraction: number): number {
  if (section.kind === 'prismatic') return E * section.inertiaIn4;
  const d = section.fromDiameterIn + fraction * (section.toDiameterIn - section.fromDiameterIn);
  return (E * Math.PI * d ** 4) / 64;
}

/** Axial stiffness EA at a fraction of the element's length, 0 at its start [lb]. */
export function axialStiffnessAt({ E, section }: BeamElement, fraction: number): number {
  if (section.kind === 'prismatic') return E * section.areaIn2;
  const d = section.fromDiameterIn + fraction * (section.toDiameterIn - section.fromDiameterIn);
  return (E * Math.PI * d ** 2) / 4;
}

/**
 * How an element gives way when it lies on its two ends only, per inch of its length: turn of the start under a moment
 * there, of either end under a moment at the other, of the end under a moment there [1/(lb·in2)], and stretch [1/lb].
 */
export interface Flexibility {
  readonly start: number;
  readonly cross: number;
  readonly end: number;
  readonly stretch: number;
}

/**
 * With d straight between the ends the integrals of (1-x)^2, x(1-x) and x^2 over d^4, and of 1 over d^2, have closed
 * forms: put y = x·d2/d and they turn into those of a prismatic member.
 * @source MECHANICS closed forms of a tapered round member (compared with Simpson's rule in the tests)
 */
export function flexibilityOf({ E, section }: BeamElement): Flexibility {
  if (section.kind === 'prismatic') {
    const EI = E * section.inertiaIn4;
    return { start: 1 / (3 * EI), cross: -1 / (6 * EI), end: 1 / (3 * EI), stretch: 1 / (E * section.areaIn2) };
  }
  const d1 = section.fromDiameterIn;
  const d2 = section.toDiameterIn;
  const perInertia = 64 / (Math.PI * E);
  return {
    start: perInertia / (3 * d1 ** 3 * d2),
    cross: -perInertia / (6 * d1 ** 2 * d2 ** 2),
    end: perInertia / (3 * d1 * d2 ** 3),
    stretch: 4 / (Math.PI * E * d1 * d2),
  };
}
