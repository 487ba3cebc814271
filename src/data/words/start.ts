/** One page to read before anything is cut, dug or handed in. */
export const START_WORDS = {
  title: 'Before you start',
  permit: 'Does it need a permit?',
  permitLead:
    'The model codes ask for no permit up to these floor areas. Departments change them, and some count what lies under the roof, some what lies inside the posts: both are given. Exempt from permit is not exempt from code: the shelter must stand all the same. Ask yours. {mark} marks what was not compared with the printed edition.',
  attached: 'It hangs on a building, so it does not stand by itself: the sizes above do not free it.',
  height: 'Neither code names a height beside one story; many departments do.',
  questions: 'Questions for the building department',
  questionsLead:
    'What they answer belongs to the field of that name. A guess stands as not given until somebody has answered.',
  toAsk: 'Ask also',
  signs: 'Signs that a licensed designer is wanted',
  signsLead: 'One is enough. What the figures here can tell is told; the rest is yours to answer.',
  dig: 'Before anyone digs',
  digWords:
    'Have buried lines located and marked: gas, power, water, telephone. In the United States one call to 811 some days ahead brings those who mark them; private lines, to a well or a barn, you find yourself. Common practice, and in many places the law.',
  cautions: 'Cautions',
  fill: 'Write down what they said',
  practice: 'common practice',
  blank: '______________________',
} as const;

/** What the office is asked, by the field of the project that the answer fills. */
export const OFFICE_QUESTIONS: readonly (readonly [path: string, words: string])[] = [
  ['code.building', 'Which building code is adopted, which year?'],
  ['code.loads', 'Which edition of the load standard?'],
  ['code.wood', 'Which edition of the wood standard?'],
  ['site.riskCategory', 'Which risk category is this use?'],
  ['site.groundSnowPsf', 'Ground snow here?'],
  ['site.leastRoofSnowPsf', 'Is there a least roof snow? (0 if none)'],
  ['site.roofLivePsf', 'Is there a roof live load of your own? (0 if none)'],
  ['site.windMph', 'Design wind speed, 3-second gust?'],
  ['site.exposure', 'Exposure to wind here?'],
  ['site.frostDepthIn', 'Frost depth?'],
  ['site.soil.bearingPsf', 'May presumptive soil values be used, and which bearing?'],
  ['site.soil.lateralPsfPerFt', 'And side bearing?'],
];

/** What no field of the project holds. */
export const OFFICE_ASIDES = [
  'Does a shelter of this size and use need a permit, and do you count the roof or the posts?',
  'Do you take logs from the owner’s woods without a stamp; do you ask for an agency’s certificate?',
  'How far from lines, wells, septic fields and other buildings must it stand?',
  'Does it lie in a flood, landslide or wildfire zone, and is a covering prescribed?',
  'Do you take a calculation that is not stamped? Who may draw it?',
  'What do you want to see before concrete is poured, and before it is used?',
] as const;

export const SIGN_WORDS = {
  snow: 'Ground snow is over {limit} psf',
  soil: 'The soil is soft, filled, wet or on a steep bank; it bears less than {limit} psf',
  ledger: 'It hangs on a building that must take its load',
  span: 'Posts stand farther apart than {limit} ft',
  outside: 'A check fails or lies outside the method',
  logs: 'Logs carry no stamp and nobody who grades has looked at them',
  people: 'People gather under it, or it serves the public or a business',
  earthquake: 'Earthquakes or hurricanes are counted with here',
  other: 'It is to be closed in, heated, lived in, or to carry a hoist, a swing or animals',
} as const;

export const ANSWER_WORDS = { here: 'here', not: 'not here', yours: 'yours to tell' } as const;
