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
  heldByShape: 'The housing or the saddle itself holds the end of the brace sideways, which is not computed.',
  strapWithoutFasteners:
    'A strap holds by what fastens it: choose its nails, screws, lag screws or bolts, and give it the measures of the strap.',
  standsOnItsPier:
    'The post stands on its pier with its whole end: what presses it is asked of its end grain, among the sections of the post.',
  wallOnlyRated: 'What the wall holds is not computed: only a rating for the whole fixing counts here.',
  ledgerNotProposed:
    'Fasteners of a ledger are computed where the wood of its wall is known, but not proposed: write them down, and the row of the ledger says what share is asked.',
  fastenersNeedPlate:
    'No fastener reaches from one of these pieces straight into the other: give the row a plate or strap, or a rating.',
  headFlatTooDeep: 'The flat under the head is {flatIn} in deep, in wood {thicknessIn} in thick.',
  boltTooShort: 'The bolt is {lengthIn} in long; through both pieces with its nut it wants at least {leastIn} in.',
  boltTooLong:
    'The bolt is {lengthIn} in long: its thread ends before its nut meets the wood. Here it may be at most {mostIn} in.',
  plateNotFlush:
    'The plates do not lie on both pieces: {piece} is off by {stepIn} in on a side. Cut flats for them in the wider piece, as deep as the step, or pack them and take a rating: bolts over a gap like this are not computed.',
  sheetThicknessNotGiven: 'Give the thickness of the sheet: what its screws hold depends on it.',
  endNotGiven: 'Say how far from the end of {piece} the fasteners of the plate stand.',
  spacingNotGiven: 'Say how far the fasteners of a row stand from one another.',
  driftPinNotPulled: 'Nothing is printed for what a drift pin holds against pull: it counts sideways only.',
  fastenersDoNotPush: 'What presses two pieces together is borne by their contact, not by fasteners.',
  strapOnlyPulls:
    'A strap holds against pull along its length only. For this direction add other fasteners or a rating.',
  rowDoesNotAct: 'These fasteners are said not to act in this direction.',
  strapWidthNotGiven: 'Give the width of the strap.',
  fastenersNone: 'No fastener is written down for this joint.',
  anchorNotRated: 'What holds the base to its concrete is not computed: give its rating beside the fasteners.',
  anchorsTakeTurning:
    'The push stands above the pier and turns the base: its plates are asked for that, the rating of its anchors must cover it.',
  footSidewaysByRating:
    'This way the post presses flat on a plate of its base: the rating counts alone and must cover the bending of the plates.',
  noFastenersFit:
    'No screws, lag screws, straps or pins of the listed sizes hold all that is asked here: take a rated part, or a heavier joint.',
  tieOnlyRated:
    'Fasteners of a tie log between its posts are not proposed: take a rated part, or write them down and see what they hold.',
  noSuchJoint: 'This shelter has no such joint.',
  chainNotLifted: 'No combination lifts any link over post {post}.',
  chainNotAsked: 'What lifts the links over post {post} is not known: no row asks any of them.',
  chainNotTold:
    'Weakest over post {post}: the {link}. What it is asked or holds cannot be told; its row in the list of checks says why.',
  chainNotGiven: 'Weakest over post {post}: nobody has said what the {link} can carry. It is asked {demand} {unit}.',
  chainHoldMore:
    'Weakest over post {post}: the {link}. It is asked {demand} {unit} and holds {holds} {unit}: stronger hardware there raises the chain.',
  chainPostThicker: 'Weakest over post {post}: the post itself, pulled and bent. A thicker log raises the chain.',
  chainPierHeavier:
    'Weakest over post {post}: the pier. {moreLb} lb more of concrete that hangs together would hold what lifts it.',
} as const;
