/**
 * What a person reads and types. Stored numbers never change with it: the engine's inches, pounds and psi stay, only
 * the showing and the habit of a bare number differ.
 */
export type UnitSystem = 'feet' | 'metric';

/** Exact by definition: international foot and pound (1959), standard gravity (CGPM 1901). */
const METRES_PER_FOOT = 0.3048;
export const MM_PER_INCH = 25.4;
const NEWTONS_PER_POUND = 4.4482216152605;
const KILONEWTONS_PER_POUND = NEWTONS_PER_POUND / 1000;
const KPA_PER_PSF = KILONEWTONS_PER_POUND / METRES_PER_FOOT ** 2;

/** How many of the metric unit make one of ours. */
export const PER = {
  mmPerInch: MM_PER_INCH,
  metresPerFoot: METRES_PER_FOOT,
  kilonewtonsPerPound: KILONEWTONS_PER_POUND,
  kPaPerPsf: KPA_PER_PSF,
  MPaPerPsi: NEWTONS_PER_POUND / MM_PER_INCH ** 2,
  metresPerSecondPerMph: 1609.344 / 3600,
  kilonewtonsPerMetrePerPlf: KILONEWTONS_PER_POUND / METRES_PER_FOOT,
  kilonewtonsPerCubicMetrePerPcf: KILONEWTONS_PER_POUND / METRES_PER_FOOT ** 3,
  kPaPerMetrePerPsfPerFoot: KPA_PER_PSF / METRES_PER_FOOT,
} as const;
