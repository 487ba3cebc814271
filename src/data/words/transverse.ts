/** What is said of frames across the lines: rows of posts, their tie logs and braces. */
export const TRANSVERSE_MESSAGES = {
  caseNotionalAcross: 'One per cent of the dead load across the lines, toward {side}',
  caseSeismicAcross: 'Earthquake across the lines, toward {side}',
  rowNothingHolds:
    'Nothing holds {row} across the lines: no brace to a tie log, no fixed foot. Add a brace or name what holds it.',
  rowLetsGo:
    'Nothing holds {row} across the lines in every combination: braces that can only push let go. Give the brace joints a pull capacity.',
  rowIsMechanism: 'The frame of {row} is a mechanism before any brace works. Let each tie log join two posts.',
  rowsWithoutMembers:
    'Said to be held across by {system}, but no tie log joins posts of different lines and no foot is fixed across.',
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
  braceToRafter:
    'The {brace} runs to a rafter: how the rafter bends under it is not computed. Let it run to a tie log between the posts.',
  typedTieSideways:
    'Typed sections are judged for bending up and down alone: how far the push along the lines bends this tie to the side is not computed.',
  assumeRowShares:
    'Each frame across takes the push of every line by length, half way to the next frames: the sheet shares nothing. The level part of the wind on the roof is held by one line at a time, the hardest counts.',
  assumeFeetShare:
    'The fixed feet of {row} share the push by their stiffness: tie the rafters to every line, they hand it on.',
} as const;
