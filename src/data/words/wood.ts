/** What is said of a log, a wood or a sawn stick: what, got, allowed, what to do next. */
export const WOOD_MESSAGES = {
  woodSpeciesUnknown:
    'No clear-wood values are listed for "{species}". Choose a species from the list, or type design values and say who gave them.',
  woodTypedByNobody:
    'These values are typed, but nobody is named who gave them. Write down whose stamp or letter they are from, or choose values derived from clear wood.',
  woodPolesNotTicked:
    'Published pole values hold only for logs inspected item by item. Not ticked yet ({count}): {items}. Tick what you have seen, or choose values derived from clear wood.',
  woodPolesNotSigned:
    'Published pole values need the name of who inspected the logs and the day. Write both down, or choose values derived from clear wood.',
  woodNoPoleRow:
    'The pole table has no row for {species}. Choose values derived from clear wood, or type values from a stamp or letter.',
  woodPoleRowDoubtful:
    'The row of {species} in the pole table is remembered too loosely to design with. Choose values derived from clear wood, or type the row from the printed table and say so.',
  woodPolesOwnInspection:
    'Published pole values rest on an inspection by the owner, and on a table that was not compared with the printed edition. The building department decides whether both are enough.',
  logKnotPastPole:
    'A knot {knotIn} in wide is more than a pole may have here: {mostIn} in. Choose values derived from clear wood.',
  logKnotsPastPole:
    'The knots of the worst foot come to {sumIn} in together, more than a pole may have here: {mostIn} in. Choose values derived from clear wood.',
  logTwistPastPole:
    'The grain slopes 1 in {oneIn}; half a turn in 20 ft of this log is 1 in {leastIn}. Choose values derived from clear wood.',
  logRingsPastPole:
    'Its {rings} rings to the inch are fewer than the {least} of a pole. Choose values derived from clear wood.',
  logCrookPastPole:
    'It strays {crookIn} in from straight; a pole of this thickness may stray {mostIn} in. Choose values derived from clear wood.',
  woodGravityAssumed:
    'No specific gravity is listed for "{species}": {specificGravity} is taken for fasteners, the lightest listed wood.',
  woodCompressionCaution:
    'Tests on small logs found values derived from clear wood right in bending but not always on the low side in compression along the grain. Leave a margin in posts and braces.',
  woodWeightUnknown:
    'No green moisture is listed for {species}, so its weight cannot be worked out. Type a heavy (green) and a light (dry) weight per cubic foot.',
  woodSapwoodUnknown:
    'No sapwood moisture is listed for {species}, and a log {diameterIn} in through is mostly sapwood. Type a heavy (green) and a light (dry) weight per cubic foot.',
  logThroughCheck:
    'A check or shake runs through this log from face to face at an end. Cut the end back to sound wood, or choose another log.',
  logGrainTooSteep:
    'The grain slopes 1 in {oneIn}, steeper than 1 in 6. Such a log is past this method: choose another one.',
  logKnotTooWide:
    'A knot {knotIn} in wide is more than a third of the log, which is {diameterIn} in there. Choose another log, or cut so that this knot falls outside.',
  logKnotsTakeEverything:
    'The knots in the worst foot leave no sound wood by this method. Choose another log, or cut so that this foot falls outside.',
  logKnotsNotMeasured:
    'Knots were not measured on this log: the lowest stated strength is used. Measure every knot in the worst foot.',
  logFootUnlisted:
    'Only the widest knot of this log is written down: the lowest stated strength is used. List every knot in its worst foot.',
  logGrainNotRead:
    'The slope of grain was not read on this log: the lowest stated strength is used. Read it along a drying check.',
  logLookUnsigned: 'Who looked at this log, and on which day, is not written down. The building department will ask.',
  logHeldByNotLookedAt:
    'Nobody has looked at this log: the lowest stated strength is used. Measure its knots and read its grain.',
  logHeldByKnotsNotMeasured: 'Held back because its knots were not measured.',
  logHeldByFootUnlisted: 'Held back because the knots of its worst foot are not listed.',
  logHeldByGrainNotRead: 'Held back because its slope of grain was not read.',
  logHeldByKnots: 'Held back by its knots, the widest {knotIn} in where the log is {diameterIn} in.',
  logHeldByGrain: 'Held back by its slope of grain, 1 in {oneIn}.',
  logHeldByBestRatio: 'As strong as this method lets any log be: {ratio} of clear wood in bending.',
  sawnSpeciesUnknown:
    'No graded values are listed for "{species}". Type the name on the stamp, for example Douglas Fir-Larch, or leave the grade empty for a home-sawn stick.',
  sawnGradeUnknown:
    'No values are listed for grade "{grade}" of {group} in this size. Choose one of the listed grades, or leave the grade empty for a home-sawn stick.',
  sawnTooThin:
    'A graded stick {thicknessIn} in thick is thinner than the tables, which begin at 1-1/2 in. Use a thicker stick, or leave the grade empty for a home-sawn one.',
  sawnHomeSawnSpecies:
    'A home-sawn stick needs the name of one species from the list; "{species}" is none. Name the species, or type the grade on the stamp.',
  sawnHomeSawnCaution:
    'Home-sawn without a grade: the lowest stated strength is used. Set aside sticks with large knots, steep grain or splits.',
} as const;
