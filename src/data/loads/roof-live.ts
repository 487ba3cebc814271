/** Live load of an ordinary roof and its reduction by area and by slope. */
export const ROOF_LIVE = {
  unreducedPsf: 20,
  leastPsf: 12,
  /** no reduction up to the first area, all of it from the second [ft2] */
  fullToFt2: 200,
  leastFromFt2: 600,
  /** no reduction up to the first rise, all of it from the second [in of rise per ft] */
  fullToRise: 4,
  leastFromRise: 12,
  leastFactor: 0.6,
  source: 'ASCE7_10',
  seen: 'public copy',
} as const;
