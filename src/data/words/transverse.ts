/** What is said of frames across the lines: rows of posts, their tie logs and braces. */
export const TRANSVERSE_MESSAGES = {
  caseNotionalAcross: 'One per cent of the dead load across the lines, toward {side}',
  caseSeismicAcross: 'Earthquake across the lines, toward {side}',
  rowNothingHolds:
    'Nothing holds {row} across the lines: no brace to a tie log or rafter, no fixed foot. Add a brace or name what holds it.',
  rowLetsGo:
    'Nothing holds {row} across the lines in every combination: braces that can only push let go. Give the brace joints a pull capacity.',
  rowIsMechanism: 'The frame of {row} is a mechanism before any brace works. Let each tie log join two posts.',
  rowsWithoutMembers:
    'Said to be held across by {system}, but no tie log joins posts of different lines, no brace runs to a rafter and no foot is fixed across.',
  postInNoFrame:
    'Post {post} stands in no frame across the lines: its beam would have to bend sideways to the next one, which is not computed. Join it to a post of another line by a tie log with a brace.',
  tieOfNoFrame:
    'The {tie} stands in no frame that is said to hold the shelter across: what it gets of the push is not computed. Name frames across, or take it away.',
  tieBeside:
    'The {tie} lies beside its posts and loads them off their axes, which is not computed. Set it between the posts, axes meeting.',
  tiesInOneBay:
    'Two tie logs lie over one another between the posts of {row}: how they share is not computed. Leave one.',
  tieMissesPost:
    'The {tie} does not meet the wood of post {post}: its axis lies {levelIn} in above the foot, and the post is free from 0 to {topIn} in. Change how far it hangs under the beam.',
  braceOfNoFrame:
    'The {brace} runs to a rafter of no frame that is said to hold the shelter across: what it gets of the push is not computed. Name frames across, or take it away.',
  rowOfTiesAndRafters:
    'A tie log and braces to {rafter} stand in {row}: how they share the push is not computed. Let all braces run to one of them.',
  rafterNotOnRow:
    'Braces of {row} run to {rafter}: computed is one rafter on two lines of a single slope, over one post of each. Set a post under it on both lines, or let the braces run to a tie log.',
  rafterOverSplice:
    'Two beams meet on a post of {row} under {rafter}: how they hand on the push between rafter and post is not computed. Let one beam run through.',
  rafterBesideRow:
    'The {rafter} lies beside a post of {row} by more than half the thickness of the {brace}, which would bend sideways. Lay the rafter over its posts.',
  braceLetIntoRafter:
    'The {brace} is let into the {rafter}: what it cuts away there is not computed. Let it end saddled and rate its joint along the rafter.',
  bracedRafterTyped:
    'The {rafter} of {row} is typed: what it bears pressed and bent together is not known. Give its wood and its sizes.',
  bracedRafterCut:
    'The {rafter} of {row} is cut by hand: a cut in a rafter that braces bend is not computed. Leave it whole.',
  ownOnBracedRafter:
    'Own loads rest on the {rafter} of {row}: what they do in a frame across is not computed. Hang them elsewhere, or let the braces run to a tie log.',
  rafterRollsOff:
    'The frame across lifts it here and nothing is left of its joint to keep it from rolling: give that joint more pull.',
  stripTurnsOnRound:
    'The strip lies on the round top of the {beam}: how it stands against the push between rafter and post is not computed. Plane the top of the beam, or lay the rafters on the beam itself.',
  typedTieSideways:
    'Typed sections are judged for bending up and down alone: how far the push along the lines bends this tie to the side is not computed.',
  assumeRowShares:
    'Each frame across takes the push of every line by length, half way to the next frames: the sheet shares nothing. The level part of the wind on the roof is held by one line at a time, the hardest counts.',
  assumeRafterHinge:
    'In the frame across of {row} rafter and posts are hinged at the axis of the rafter: the beam and the strip between answer for the push times their distance below it. What its feet push on one another with where they stand at unlike levels counts at the seats, not in posts and piers.',
  assumeFeetShare:
    'The fixed feet of {row} share the push by their stiffness: tie the rafters to every line, they hand it on.',
} as const;
