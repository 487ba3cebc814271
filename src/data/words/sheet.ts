import { SYSTEM_WORDS } from './lateral.ts';

/** What the check sheet says of itself. Fixed sentences; figures are filled in by the sheet. */
export const SHEET_WORDS = {
  title: 'Check sheet',
  prepared: 'Prepared by the owner with the help of a program; not the work of a licensed professional.',
  stamp: 'For the department or a licensed professional: name, date, stamp',
  notStamped: 'Not stamped.',
  stampedAsTyped: 'Not stamped, save as the letter or stamp behind c says.',
  polesInspected: 'poles inspected by',
  valuesGiven: 'values given by',
  nobodyNamed: 'nobody named',
  certificate: 'Certificate number of an agency (many departments require it):',
  toIdentify: 'Species told by (bark, needles, cones; who, when):',
  identified: 'Species told by',
  lookedAt: 'Looked at by',
  contactOnly: 'contact only, as said',
  shoulder: 'a shoulder',
  together: 'all together',
  pushed: 'push',
  anchor: 'beside it',
  concreteEach: 'each takes',
  bags: 'bags of dry mix',
  heldAlong: 'Held along:',
  heldAcross: 'Held across:',
  clear: 'Clear',
  betweenAxes: 'Between axes (working points); clear: faces.',
  snowCases: 'Snow that the higher roof brings, with the balanced snow',
  inCalculation: 'in the calculation.',
  memoryMark: '†',
  /** in a column of units: a pure number */
  noUnit: '–',
  computedTo: 'ASCE/SEI 7-16 and NDS 2018 allowable stress',
} as const;

/** Headings of the texts on the sheet. */
export const TEXT_HEADS = {
  sideways: 'What holds it sideways',
  notCovered: 'Not covered',
  assumed: 'Assumed',
  cautions: 'Cautions',
} as const;

/** How far the design values of a log can be trusted: one of three phrases, no others. */
export const BASIS_PHRASES = {
  derived: 'derived from what was seen',
  poles: 'published pole values, owner’s own inspection',
  typed: 'values typed from a stamp or letter',
} as const;

export const GIVEN_BY = {
  department: 'department',
  map: 'map',
  owner: 'owner',
  guess: 'to be confirmed by the building department',
} as const;

/** What holds a direction, as somebody said; that nothing does was said too. */
export const HELD_BY = { ...SYSTEM_WORDS, none: 'nothing, as said' } as const;

export const LOAD_KINDS: Readonly<Record<string, string>> = {
  dead: 'dead',
  ownLive: 'own live',
  roofLive: 'roof live',
  snow: 'snow',
  wind: 'wind',
  notional: '1 % push',
  seismic: 'earthquake, level and upright',
  person: 'a person at work',
};

/** What is asked of a pier, as short as a reviewer looks for it. */
export const PIER_WORDS: Readonly<Record<string, string>> = {
  'pier.bearing': 'bearing',
  'pier.sideways': 'tilting, depth',
  'pier.embedded': 'tilting, depth',
  'pier.sliding': 'sliding',
  'pier.uplift': 'uplift',
  'pier.pad': 'pad',
  'pier.width': 'width',
  'pier.frost': 'below frost',
};

/** Snow that lies on the balanced snow, where a higher roof or a ridge brings it. */
export const UNEVEN_SNOW_WORDS = {
  snowDrift: 'Drift at the higher roof',
  snowDriftLee: 'Drift over the gap',
  snowDriftWindward: 'Drift at the roof edge',
  snowSliding: 'Snow slid off above',
} as const;

/** Of a ledger on its wall. */
export const LEDGER_WORDS = { every: 'every', onEachFixing: 'on each fixing' } as const;

/** Names of the fields that a message may point at. */
export const SITE_FIELDS: Readonly<Record<string, string>> = {
  'code.loads': 'The edition of the load standard',
  'code.wood': 'The edition of the wood standard',
  'code.building': 'The adopted building code',
  'site.altitudeFt': 'The altitude of the site',
  'site.riskCategory': 'The risk category',
  'site.groundSnowPsf': 'Ground snow',
  'site.leastRoofSnowPsf': 'The least roof snow of the county',
  'site.roofLivePsf': 'The roof live load of the county',
  'site.snowExposureCe': 'The snow exposure factor Ce',
  'site.snowThermalCt': 'The thermal factor Ct',
  'site.windMph': 'The wind speed',
  'site.exposure': 'The exposure to wind',
  'site.kzt': 'The factor for hills Kzt',
  'site.ke': 'The factor for altitude Ke',
  'site.soil.bearingPsf': 'The bearing of the soil',
  'site.soil.lateralPsfPerFt': 'The side bearing of the soil',
  'site.frostDepthIn': 'The frost depth',
};

export const NOT_COVERED =
  'Setbacks and zoning; fire separation; the fire class of the covering; flood; wildfire; {earthquake}ice at the eaves; ' +
  'electrical work; drainage; decay and insects; what the existing building can take beyond what is written here; ' +
  'the quality of the work.';

export const CAUTIONS =
  'Local code and licensed practice decide. Many departments accept no unstamped log without an agency’s certificate. ' +
  'Felling, lifting heavy logs and standing a frame have dangers of their own: brace it both ways until roof and ' +
  'braces are on. Every tie must be in before wind: an open roof is lifted. A frame that sways is not finished. That ' +
  'checks pass says nothing about what is not checked.';

/** Joints by what they join, upper part first. */
export const JOINT_NAMES = {
  sheetPurlin: 'sheet to purlin, each foot',
  sheetRafter: 'sheet to rafter, each foot',
  purlinRafter: 'purlin to rafter',
  rafterStrip: 'rafter to strip',
  rafterLedger: 'rafter to ledger',
  stripBeam: 'strip to beam',
  beamPost: 'beam to post',
  beamSplice: 'beam splice',
  braceTop: 'brace, both ends',
  bracePost: 'brace, both ends',
  tiePost: 'tie to post',
  postFoot: 'post to pier',
  ledgerWall: 'ledger to wall',
  rafterRafter: 'rafter to rafter',
} as const;
