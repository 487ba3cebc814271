/** What the calculation says of itself. */
export const CALCULATION_WORDS = {
  title: 'The calculation',
  behind:
    'This is what stands behind the check sheet of the same inputs. Each step has a number; it names the steps from which its numbers come, so that it can be redone with a pocket calculator.',
  contents: 'Contents',
  notYetYours: 'values are those that the program began with; the owner has not touched them.',
  unusedLog: 'log that is not used',
  sections: {
    inputs: 'Inputs',
    loads: 'Loads',
    wood: 'What the wood is worth',
    forces: 'Forces in the frame',
    index: 'Where each check stands',
    site: 'Site and logs',
    members: 'Members along the load path',
    joints: 'Joints',
    piers: 'Piers',
    sideways: 'What holds it sideways',
    assumptions: 'Assumed and left out',
    memory: 'Figures not compared with the printed edition',
    sources: 'Sources',
  },
  toldBefore: 'told before',
  noSteps: 'No number is computed for this row.',
  worstOf: 'the worst of {count} alike',
  worstGroups:
    'Every rule stands here once for every group of members that do the same work: the row that comes out worst. The screen shows all.',
  rafterForces:
    'N is + where it pulls. The greatest of each by itself; they need not belong to one instant. Forces of purlins and rafters stand in the steps of their checks.',
  reactions: 'What each post brings to its foot, the greatest of each kind and the combination that brings it.',
  ledger: 'The greatest of each way and the combination that brings it; out is away from the wall.',
  noSpacing: 'spacing not given',
  cases: 'Load cases',
  combinations: 'Combinations',
  figures: 'Figures of the site',
  noneRemembered: 'None.',
  remembered:
    'The mark {mark} stands beside a clause whose figure or wording was not compared with the printed edition. Compare these before you rely on them.',
  telling: 'Telling the steps: {done} of {of} checks.',
  noSuchSteps: 'The steps could not be told: {why}',
} as const;

/** While pages are not there yet. */
export const PAPER_WORDS = {
  setting: 'Setting the pages.',
  notYet: 'Not for printing: the pages are not set yet.',
} as const;

/** How a source was read. */
export const SEEN_WORDS = {
  printed: 'compared with the printed edition',
  'public copy': 'read in a public copy',
  memory: 'from memory',
  own: 'own',
} as const;
