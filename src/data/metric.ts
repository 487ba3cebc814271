/** Exact by definition: international inch, foot and pound (1959), standard gravity (CGPM 1901). */
const MM_PER_INCH = 25.4;
const METRES_PER_FOOT = 0.3048;
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

/** How a unit of ours reads in metric: what one of it is worth, its name, and decimals in the range a shelter meets. */
export const METRIC = {
  in: { per: PER.mmPerInch, unit: 'mm', decimals: 1 },
  ft: { per: PER.metresPerFoot, unit: 'm', decimals: 2 },
  in2: { per: PER.mmPerInch ** 2, unit: 'mm²', decimals: 0 },
  in3: { per: (PER.mmPerInch / 10) ** 3, unit: 'cm³', decimals: 0 },
  in4: { per: (PER.mmPerInch / 10) ** 4, unit: 'cm⁴', decimals: 0 },
  ft2: { per: PER.metresPerFoot ** 2, unit: 'm²', decimals: 2 },
  ft3: { per: PER.metresPerFoot ** 3, unit: 'm³', decimals: 3 },
  lb: { per: PER.kilonewtonsPerPound, unit: 'kN', decimals: 2 },
  'lb·in': { per: (PER.kilonewtonsPerPound * PER.mmPerInch) / 1000, unit: 'kN·m', decimals: 3 },
  'lb/in': { per: (PER.kilonewtonsPerPound * 1000) / PER.mmPerInch, unit: 'N/mm', decimals: 2 },
  'lb/ft': { per: PER.kilonewtonsPerMetrePerPlf, unit: 'kN/m', decimals: 3 },
  psi: { per: PER.MPaPerPsi, unit: 'MPa', decimals: 2 },
  psf: { per: PER.kPaPerPsf, unit: 'kPa', decimals: 3 },
  pcf: { per: PER.kilonewtonsPerCubicMetrePerPcf, unit: 'kN/m³', decimals: 2 },
  'psf/ft': { per: PER.kPaPerMetrePerPsfPerFoot, unit: 'kPa/m', decimals: 1 },
  mph: { per: PER.metresPerSecondPerMph, unit: 'm/s', decimals: 1 },
} as const;
