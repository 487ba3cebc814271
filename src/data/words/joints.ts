/** What is said of joints: where one is not computed in a direction, and why. */
export const JOINT_MESSAGES = {
  purlinNotFlat:
    'A pole touches the other stick along a line: how {purlin} bears on its rafters is not computed. Cut both flat where they cross.',
  footAcrossNotKnown:
    'What pushes this foot across the line is not known before it is said what holds the shelter across, and that is computed.',
  jointNotAsked: 'No combination asks anything of this joint in this direction.',
  sheetPressedBySpan:
    'What presses the sheet on its rows is covered by the rated span of its maker, not computed here.',
  sheetAcrossNotAsked:
    'No figure of this method pushes the sheet sideways along its rows: wind skims over it, and it is not counted on to brace the roof.',
  purlinAlongNotAsked:
    'No figure of this method pushes a purlin along its own length: wind along the roof is taken by the broad sides of the rafters, and an earthquake is asked of their ties.',
  levelHeldElsewhere: 'Another line is said to hold the level part of the wind on this roof.',
  ridgeBeamCarries:
    'Both rafters rest on the ridge beam and are tied to its line: nothing passes from one to the other.',
  stripPressedThrough:
    'A strip is packed solid between rafter and beam: how the packing bears on the round of the log is not computed. Pack it under every rafter, as wide as the rafter.',
  ledgerPressesWall: 'A ledger that is pressed against its wall asks nothing of its fixings.',
  heldByShape: 'The housing or the saddle itself holds the end of the brace sideways; how much is not computed.',
  tieAcrossNotAsked:
    'Nothing of this method pushes a tie log along the lines at its posts but the wind on its side, which the lines take with their own.',
} as const;
