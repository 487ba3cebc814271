/** What is said of the parts of the roof: sheet, purlins, rafters, ledger. */
export const ROOF_MESSAGES = {
  caseWindDown: 'Wind pressing on the roof, zone by zone, {flow} flow',
  caseWindUp: 'Wind lifting the roof, zone by zone, {flow} flow',
  rollsOver: 'Too slender between the places that hold it sideways: its slenderness ratio in bending passes 50.',
  seatStretched:
    'The seat cut is stretched in this combination: its net section counts with twice the bending stress (own rule).',
  seatStretchedDeep:
    'The seat cut is {depthIn} in deep and is stretched in this combination: over an eighth of the depth, {limitIn} in, is outside the method. Make the seat cut shallower.',
  handCutOnRoof: 'Cuts made by hand on {member} are not computed in this version.',
  typedWithoutBearing: 'The typed section ({name}) says nothing of bearing across its grain. Ask its maker.',
  ledgerAsks:
    'Along the ledger: down {downPlf} lb/ft, up {upPlf} lb/ft, outward {outPlf} lb/ft, along {alongPlf} lb/ft. Type what each fixing is rated for, or say what wood of the wall it ends in and with what.',
  ledgerBothSides: 'Two slopes fall away from one ledger: what both bring to it and its wall is not in this method.',
  ledgerNotSawn:
    'A ledger is computed between its fixings where it is sawn. How a log lies flat on its wall, or how a typed section bends outward, is not in this method.',
  ledgerSpacingNotGiven: 'The spacing of what holds the ledger to the wall is not given.',
} as const;
