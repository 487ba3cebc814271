/** Why a fastener does not go here, or is not computed: what was found, what is asked, what to do. */
export const FASTENER_MESSAGES = {
  fastenerTooThick:
    'A shank {diameterIn} in thick is past the equations, which end at {mostIn} in. Choose a thinner one.',
  fastenerSizeNotListed: 'No {fastener} {diameterIn} in thick is listed. Choose a size from the list.',
  fastenerYieldNotListed:
    'No bending strength is printed for this shank of {diameterIn} in. Choose a size from the list.',
  fastenerWoodTooLight:
    'What a shank may press on wood is printed from a specific gravity of {least} on; this one has {gravity}.',
  fastenerTooShort:
    'It goes {reachIn} in into the piece that holds it; at least {leastIn} in are needed, {diameters} times its diameter. Take a longer one.',
  fastenerTwoPlanes:
    'Two planes of shear are computed for bolts and drift pins only. Count one plane, or take a bolt that goes through.',
  fastenerNearEnd:
    'It stands {gotIn} in from the end of the wood; at least {leastIn} in are needed, {diameters} times its diameter. Move it in.',
  fastenerNearLoadedEdge:
    'It stands {gotIn} in from the edge that it is pressed toward; at least {leastIn} in are needed, {diameters} times its diameter.',
  fastenerNearEdge:
    'It stands {gotIn} in from the edge of the wood; at least {leastIn} in are needed, {diameters} times its diameter.',
  fastenerSlenderNearEdge:
    'It stands {gotIn} in from the edge of the wood. A shank this slender wants half the distance between its rows there: {leastIn} in.',
  fastenersNearInRow:
    'The fasteners of a row are {gotIn} in apart; at least {leastIn} in are needed, {diameters} times their diameter.',
  fastenerRowsNear:
    'The rows are {gotIn} in apart; at least {leastIn} in are needed, {diameters} times the diameter of the fasteners.',
  fastenerRowsApart:
    'The outer rows are {gotIn} in apart across the grain on one plate; more than {mostIn} in splits the wood as it dries. Give each row its own plate.',
  strapHolesTakeAll:
    'The holes across the strap take {holesIn} in of its {widthIn} in. Use a wider strap or fewer nails side by side.',
} as const;
