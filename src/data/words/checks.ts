/** Why a check stopped, departed or carries a caution. */
export const CHECK_MESSAGES = {
  notFinite: 'A number that this check needs could not be computed.',
  lineIsMechanism:
    'Line {line} is a mechanism before any brace works: a beam on it rests on one post only. Give each beam two posts.',
  nothingHoldsSideways:
    'Nothing holds line {line} sideways: no knee brace, no fixed foot. Add braces or name what holds it.',
  nothingHoldsWhilePulled:
    'Nothing holds line {line} sideways while the wind lifts: braces that can only push let go. Give the brace joints a pull capacity.',
  memberNotGiven: 'Not given yet: what {member} is made of.',
  weightNotGiven: 'The weight of {member} is not known: {detail}',
  lineNotAnalysed: 'Line {line} is not analysed: {detail}',
  capacityNotGiven:
    'Nobody has said what this joint can carry. Choose its fasteners, or type its rated capacity with a label.',
  partNotGiven: 'The rating of this joint ({label}) does not say what it carries in this direction.',
  nothingAsked: 'Said to be held by contact only: no combination asks more of it.',
  contactOnly: 'Said to be held by contact only: it cannot carry this.',
  ratedReduced: 'Rated value for a duration factor of {held}, reduced for the longer load of this combination.',
  cutTooDeep: 'A cut {depthIn} in deep is more than this place may lose ({limitIn} in).',
  cutThroughLog:
    'The cut of {member} at {atIn} in leaves no wood: {depthIn} in are taken where it is {diameterIn} in thick.',
  cutInTension:
    'Outside the method, as a cut on the side that is stretched, away from an end: {cut}. Rest the log whole on a saddled post, bolt on a bearing block, or saddle the end of the brace.',
  cutInMiddleThird: 'No cut may reach into the middle third of a span.',
  seatTurnsTension:
    'The seat flat is stretched only while the wind lifts or pushes: its net section is judged with twice the bending stress (own rule).',
  endCutCaution: 'The seat cut at the end is deeper than one eighth of the log: an item for an engineer.',
  crookNotLookedAt:
    'Nobody has written down how far this log strays from straight. Stretch a string from middle to middle of its ends and measure; until then it counts as bowed to the side, 1 in 10 ft.',
  crookPastLimit:
    'It strays further from straight than a pile may ({limitIn} in). Choose a straighter log, or cut the crook off.',
  crookSaid:
    'It strays more than 1 in 10 ft from straight ({saidIn} in here): a bow to the side turns the beam on its posts.',
  beamTurnsInSaddle:
    'In a saddle a round log can turn: what holds it there is not computed. Cut a flat for it to rest on.',
  beamBesidePost:
    'The bow of the log takes it past the edge of this post. Turn the bow up, or choose a straighter log.',
  beamRollsOff:
    'Wind lifts the beam here and nothing is left of its tie to keep it from rolling: give its joint to the post more pull.',
  shallowEndNotch: 'Seat at the end of the log: shear judged on what is left above the cut.',
  endPlateNeeded:
    'End grain is pressed to more than three quarters of its value: put a metal plate of 20 gauge or thicker between.',
  housingTooDeep:
    'The housing in {member} is {depthIn} in deep; a post may lose at most one sixth of its diameter, {limitIn} in.',
  bracesCross:
    'The braces between {left} and {right} cross: their runs add up to {runsIn} in and the posts stand {spanIn} in apart. Make the runs shorter.',
  braceTooThick: 'The brace is thicker than the flat or the log it lands on.',
  effectiveLengthAssumed: 'Effective length by table: Ke {ke}, {words}.',
  effectiveLengthTyped: 'Effective length typed in: {why}',
  frameAcrossAlong: 'A frame across the lines does not hold {line} along its length: say what does.',
  acrossNotDecided: 'Nobody has said what holds the shelter across the lines.',
  acrossNotKnown: 'Line {line} is not analysed, so the whole push across the lines is not known.',
  alongNotDecided: 'Nobody has said what holds line {line} along its length.',
  saidToBeUnheld: 'Said that nothing holds it in this direction.',
  ratingNotGiven: 'The rating of what holds it ({system}) is not given.',
  lineLeansUnknown: 'What line {line} leans on it with is not known, so neither is the whole of what it must hold.',
  systemWithoutMembers: 'Line {line} is said to be held by {system}, but it has none.',
  guessedValue: '{field} is still a guess. Ask the building department.',
  roofFormNotCovered:
    'The wind figures for open roofs cover one slope, or two equal slopes that meet all along one ridge.',
  seismicS1NotGiven:
    'S1 is not given. From SD1 it may be as much as {s1}, and from {limit} on posts of timber alone are not permitted (category E). Ask the building department for S1.',
  seismicCategoryE: 'Seismic category E (S1 of {limit} or more): posts of timber alone are not permitted there.',
  seismicRNotNamed:
    'A response modification R of {r} is typed in, but nobody answers for it: {used} is used. Write who set it.',
  seismicTooTall: 'The roof is {heightFt} ft high; posts of timber that hold an earthquake end at {limitFt} ft.',
  seismicCategoryA: 'Earthquake: seismic category A asks for no more than the one per cent push sideways, which runs.',
  seismicCantilever:
    'Fixed feet hold line {line} in an earthquake: the limit of 15 per cent on what presses on such posts, and the greater force on their footings, are not computed. Brace the line instead.',
  notionalLeftOut: 'The one per cent push sideways does not run: the earthquake stands in for it.',
  ownLoadIsNothing: 'How heavy {name} is stands at nothing: type it, or take it away.',
  ownAcross:
    'The own load {name} pushes across the lines: it would bend a log sideways, which is not computed. Have it looked at.',
  ownOnlyDown: 'The own load {name} is dead weight or snow, which only press down. Call a pull live or wind.',
  ownOnLedger:
    'The own load {name} hangs on a ledger: neither it nor its fixings are asked for that. Hang it on a frame line.',
  ownOnMember:
    'The own load {name} hangs on a tie or a brace, which is not computed. Hang it on a beam, a post or a rafter.',
  ownBendsSideways:
    'The own load {name} pushes a rafter or the roof along the lines: it would bend rafters sideways, which is not computed.',
  ownDeadOnPurlin:
    'The own load {name} is dead weight at one place of a purlin, which is not computed. Lay it on the roof or hang it on a rafter.',
  ownOffRoof: 'The own load {name} lies partly past the edge of the roof. Keep it on the covering.',
  assumeOwnLive:
    'Loads that somebody hangs here are judged as typed, at rest. Hoists, swings and animals pull harder than they weigh: a licensed designer sets those loads.',
  transverseNotComputed:
    'This tie log stands in no frame that is said to hold the shelter across: what it gets is not computed.',
  knotsOfFootUnlisted:
    'Only the widest knot of {log} is written down. List every knot in its worst foot; until then the lowest stated strength is used.',
  knotsNotMeasured: 'Knots or slope of grain of {log} are not measured: the lowest stated strength is used.',
  buildingNotShown: 'Nobody has said that the building can take the ledger. Write the name and date of who says so.',
  spanNotRated: 'The rated span of the covering is not given. Take it from its maker for your snow and wind.',
  needsBlocking: 'A deep rafter rolls over at its supports: block it between the rafters over each line.',
  seatLengthUnknown: 'The level seat of the rafter has no length: give the seat cut.',
  padTooWide:
    'The pad reaches {reachIn} in past the pier but is only {thickIn} in thick: without steel it may reach no farther than it is thick.',
  soilNotGiven: 'No bearing value is presumed for this soil. Have it looked at and type a value.',
  untreatedInSoil: 'An untreated log in soil or concrete is outside the method.',
  footTurningNotRated:
    'The foot is said to hold the post against turning; what its hardware and anchors hold of that moment is not computed. Have it designed, or let the foot turn freely and brace the line.',
  footTips:
    'The moment of the foot is more than what presses on its base can hold: how the soil beside the pier holds the rest is not computed here.',
  frostDepthNotGiven: 'The frost depth is not given. Ask the building department.',
  seatHasNoFlat:
    'The seat of {member} has no flat or no post under it: round on round touches along a line only. Cut a flat.',
  braceEndHasNoFlat: 'The end of {member} has neither a flat nor a saddle on the log: give the depth it is let in.',
  lineWithoutPosts: 'Line {line} has no post.',
  noSuchCheck: 'There is no check named {key} in this project, or not in that combination.',
  engineFault: 'The program broke one of its own promises ({detail}). Please keep the project file and report it.',
  seismicLeftOut:
    'Earthquake does not run: no values are typed in. The one per cent push sideways runs instead. Ask the building department for SDS and SD1.',
  pondingNotComputed:
    'A roof that rises less than {least} in 12 may hold water that bends it further and holds more water: this is not computed. Give it more slope.',
  pondingLeftOut:
    'Standing water is not asked: every slope rises at least {least} in 12 and drains over its free edge.',
  rainLeftOut: 'Rain on snow does not apply: more than 20 psf of ground snow, none, or too steep.',
  noBracesHoldItsSway:
    'Line {line} leans so far under its loads that no set of pushing braces holds it: stiffer braces or posts, or brace joints with a pull.',
  swaysSoftly:
    'Line {line} is soft: it sways over at less than {least} times these loads. Stiffer braces or posts help.',
  swaysTooSoon:
    'Line {line} sways over at {factor} times these loads; under {least} its forces are not judged. It needs stiffer braces or posts.',
  pushPastEuler:
    '{member} is pressed harder than it stays straight under: no sum of push and bending can be made. A thicker or shorter post helps.',
  swaysUnderLoad: 'Line {line} sways over under these loads: {factor} times them is all that it holds.',
  assumeFirstOrder:
    'Forces of first order; the sway of a line that holds itself is made larger by what its loads do on the moved frame. Sag stays first order.',
  assumeEffectiveLengths:
    'Posts in a line, and across in a row, that its own braces or fixed feet hold: Euler stress from the buckling of that line or row. Else effective length by table, pier top to seat: Ke 2.4 where knee braces hold or nothing is decided, 2.1 embedded, 1.0 where a building or rated wall holds. Slenderness always by table.',
  assumeBoltHoles:
    'Bolts, pins, lag screws and the flats cut for them are taken off posts, beams, braces, ties and rafters, as if they lay where they harm most and stayed empty. Joints that are only rated, purlins, and the shear of rafters: nothing is taken off.',
  holesTakeAll:
    '{member} has no wood left beside its bolts, screws and their flats, {atIn} in from its start ({diameterIn} in thick there). Use fewer or thinner ones.',
  housingThroughPost:
    'Housings {depthIn} in deep together go through {member}, {diameterIn} in thick, {atIn} in above its foot. Cut them shallower, or let the braces in at different heights.',
  assumeNoDiaphragm: 'The sheet is not a diaphragm: each line takes its own share of wind along it.',
  assumeNoShelter: 'No part is sheltered by another from wind sideways.',
  assumeGoodsStand:
    'Goods that lean on a line hand the wind on them to it, in full; beyond that they are stacked so that they stand by themselves.',
  assumeTiesAcross:
    'Ties of rafters and strips are asked for lift, for level force across the lines and for wind along them on the broad sides of the rafters; ties of purlins and the screws of the sheet for lift and for the slide down the slope.',
  assumeBraceModels:
    'Braces are judged working both ways, only pushing and idle; the worst counts. Pull counts only where every brace joint of a line is given a pull capacity.',
  assumeNoThrust:
    'The rafters hang on the ridge beam, which stands on posts of its own: they push nothing outward at the eaves.',
  assumeRidgeNotTwisted:
    'Twisting of the ridge beam where one slope bears more than the other is not computed: tie its seats against rolling.',
  diametersAsTyped:
    'Ratios use the diameters as typed. What the stated error of measurement would make of them stands on screen beside each log.',
  cutsMadeNotRead: 'Cuts already made, written under as built, are not looked at.',
  doubledSoilShort:
    'The doubled lateral soil value is chosen: it counts for posts in the ground without braces, in wind and earthquake alone.',
  typedInstead: 'Typed instead of computed: {what} of {of} = {value} ({why}).',
  typedSection: "Typed section ({name}): its maker's values are used as typed.",
  attachedCanopy: 'Coefficients for attached canopies are not available: those of a free roof are used.',
  pierNotInGround: 'The pier of {post} does not reach into the ground. Make its shaft longer.',
  pierTopNotGiven: 'The top of the pier at {post} is not measured yet: taken level with the ground.',
} as const;
