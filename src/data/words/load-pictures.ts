/** Names of what the pictures of loads show beside the cases that the loads name themselves. */
export const LOAD_PICTURE_MESSAGES = {
  caseDead: 'Dead load, all that is always there',
  caseAcross: 'Push across the lines on the whole shelter',
  ownLoadsNone: 'Nothing hangs there: no loads of your own are typed in.',
  livePatternsLeftOut: 'No roof live load on parts of a beam: it is asked for only where the load is reduced.',
  snowNotKnown: 'No snow is drawn: what it is worked out from is not given.',
  leastSnowLeftOut: 'No least snow of low slopes: this roof is steeper, or ground snow is none.',
  windNotKnown: 'No wind is drawn: what it is worked out from is not given.',
  bandsLeftOut:
    'No wind across the lines in bands: that is for roofs under {slopeDeg} degrees whose height is less than {ratio} of their depth.',
  goodsNone: 'No goods catch the wind: none are said to be stored under the roof.',
  goodsStandAlone: 'Goods push no line: they are said to stand by themselves.',
} as const;
