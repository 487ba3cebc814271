import type { Link } from '../rules.ts';

/** Words of an open link of the cord: what the site is asked, what holds it, what to mind. */
export const GIVER_WORDS = {
  department: 'the building department',
  map: 'a map',
  owner: 'me, on the spot',
  guess: 'nobody: it is a guess',
} as const;

/** Values of the site in the order in which they are asked for, with what each means to the shelter. */
export const SITE_VALUES = [
  { field: 'groundSnowPsf', words: 'Ground snow' },
  { field: 'leastRoofSnowPsf', words: 'Least roof snow set by the county (0 if it sets none)' },
  { field: 'roofLivePsf', words: 'Roof live load set by the county (0 if it sets none)' },
  { field: 'windMph', words: 'Wind speed, 3-second gust' },
  { field: 'exposure', words: 'Open to the wind' },
  { field: 'riskCategory', words: 'Risk category' },
  { field: 'snowExposureCe', words: 'Snow carried off by wind, Ce' },
  { field: 'snowThermalCt', words: 'Warmth under the roof, Ct' },
  { field: 'kzt', words: 'Hill or ridge, Kzt' },
  { field: 'ke', words: 'Thin air up high, Ke' },
  { field: 'altitudeFt', words: 'Altitude of the site' },
  { field: 'frostDepthIn', words: 'Frost depth' },
] as const;

export const EXPOSURE_WORDS = {
  B: 'B, woods or suburbs around',
  C: 'C, open country',
  D: 'D, a shore',
} as const;
export const RISK_WORDS = {
  I: 'I, a minor storage shed',
  II: 'II, most other buildings',
  III: 'III, many people gather',
} as const;

/** Figures that follow from the site, as they are named beside their steps. */
export const FIGURE_WORDS: Readonly<Record<string, string>> = {
  exposureFactor: 'Exposure factor at roof height, Kz',
  elevationFactor: 'Elevation factor, Ke',
  velocityPressure: 'Wind pressure at roof height',
  earthquakePush: 'Share of its weight that an earthquake pushes sideways',
  allowableStressWindSpeed: 'Wind speed at allowable-stress level',
  edgeWidth: 'Width of the edge zones',
  flatRoofSnow: 'Snow on a flat roof here',
  slopeFactor: 'Slope factor',
  slopedRoofSnow: 'Snow on this slope',
  leastLowSlopeSnow: 'Least snow on a low slope',
  countyLeastSnow: 'Least roof snow of the county',
  balancedSnow: 'Balanced snow to design for',
  rainOnSnow: 'Rain on snow',
  snowDensity: 'Weight of the snow',
  snowDrift: 'Drift against the higher roof, at its highest',
  snowDriftLee: 'Drift over the gap from the higher roof, at its highest',
  snowDriftWindward: 'Drift against the higher roof, at our edge',
  snowSliding: 'Snow slid off the higher roof',
  snowUnbalanced: 'Snow carried over the ridge',
  unreducedRoofLive: 'Roof live load, not reduced',
};

export const JOINT_WORDS: Readonly<Record<string, string>> = {
  sheetPurlin: 'sheet to purlin',
  sheetRafter: 'sheet to rafter',
  purlinRafter: 'purlin to rafter',
  rafterStrip: 'rafter to strip',
  rafterLedger: 'rafter to ledger',
  rafterRafter: 'rafter to rafter at the ridge',
  stripBeam: 'strip to beam',
  beamPost: 'beam to post',
  beamSplice: 'beam to beam at a splice',
  braceTop: 'upper end of a brace',
  bracePost: 'lower end of a brace',
  tiePost: 'tie log to post',
  postFoot: 'post to pier',
  ledgerWall: 'ledger to wall',
};

/** What to mind where the act is. */
export const CAUTIONS: Readonly<Partial<Record<Link, readonly string[]>>> = {
  purlin: ['Until purlins and sheet are on, a rafter can roll over: stay it with temporary battens.'],
  rafter: ['Wind lifts an open roof: a rafter needs its tie before the sheet goes on, not after.'],
  beam: [
    'A green log of this size weighs more than a crew can hold. Lift it with gear rated for the weight, and nobody stands under it.',
    'Felling is the most dangerous part of this work. Learn it from someone who does it for a living, or have it done.',
    'A log carries no grade stamp. Many departments ask for an agency’s certificate, or for an engineer.',
  ],
  brace: [
    'Until its braces are on, the frame holds only by its props. Leave the temporary braces until the roof is on.',
  ],
  post: ['A post on a pier stands by itself only while it is propped: two temporary braces each way, staked.'],
  pier: [
    'Wind can lift the whole shelter: the pier must be as heavy as it is drawn and held to the post.',
    'Frozen soil grips concrete and lifts it, winter by winter: cast the shaft smooth and plumb, never wider at the top, and widen it only below the frost.',
  ],
  swayAlong: ['A frame that nothing holds sideways falls without a warning, also while it is being built.'],
  swayAcross: ['A frame that nothing holds sideways falls without a warning, also while it is being built.'],
};
