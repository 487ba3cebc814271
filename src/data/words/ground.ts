/** What the ground and the foot of a post say. */
export const GROUND_MESSAGES = {
  clearOfGround: 'The wood ends {haveIn} in above the ground; {needIn} in are asked of wood that is not treated.',
  clearOverCover:
    'The pier stands {haveIn} in out of earth that is covered; {needIn} in are asked under a post that is not treated.',
  earthCoverNotSaid:
    'The wood ends {haveIn} in above the ground. That will do only where a sheet that keeps water down covers the earth around the pier: say whether it does, or raise the wood to {needIn} in.',
  tooNearGround:
    'The wood ends {haveIn} in above the ground and the pier {pierIn} in: {needIn} in are asked of the wood, or {coverIn} in of the pier with the earth around it covered. Make the pier higher.',
  standsOff: 'The wood stands {haveIn} in off the concrete; {needIn} in are asked.',
  barrierLies: 'A sheet that keeps water out lies between the wood and the concrete, as said.',
  barrierNotSaid:
    'The wood stands less than {needIn} in off the concrete: say whether a sheet that keeps water out lies between them.',
  woodOnConcrete:
    'End grain on bare concrete drinks from it. Stand the post {needIn} in off it on its hardware, or lay a sheet that keeps water out between.',
  useCategoryNotSaid: 'Say for which use category the post is treated: in the ground UC4B or better.',
  treatedTooWeakly:
    'Treated for {category}: a post that carries a roof may stand in the ground only if it is treated for UC4B or better.',
  holeTooNarrow: 'The hole is {holeIn} in wide; for this post, its fill and its pad it must be {needIn} in.',
  nothingHoldsDown:
    'It is lifted and nothing holds it down: soil and bare concrete let go of a post. Key it into concrete with bars or lags.',
  doubledSoil:
    'Twice the lateral value of the soil counts in wind and earthquake: half an inch of movement of the post at the ground must do no harm.',
  dryInGround: 'Values for dry wood do not hold in the ground: say that the post is used wet.',
} as const;
