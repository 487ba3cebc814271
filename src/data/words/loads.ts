/** What is said of site values, of the range of the load figures, of load patterns and of combinations. */
export const LOAD_MESSAGES = {
  missingLoadEdition:
    'The edition of the load standard is not given. Ask the building department which one it has adopted.',
  missingRiskCategory: 'The risk category is not given. A minor storage shed is I, most other buildings are II.',
  missingGroundSnow: 'Ground snow is not given. Ask the building department.',
  missingRoofSnow: 'The department is said to give the snow on the roof itself: write it, or take the line away.',
  missingLeastRoofSnow: 'Nobody has said whether the county sets a least roof snow. Ask; write 0 if it sets none.',
  missingRoofLive: 'Nobody has said whether the county sets its own roof live load. Ask; write 0 if it sets none.',
  missingSnowExposure: 'The exposure of the roof to wind that carries snow off (Ce) is not given.',
  missingSnowThermal: 'The thermal factor for snow (Ct) is not given. An open-air roof has 1.2.',
  missingWindSpeed:
    'The design wind speed is not given. Ask the building department or read the map for your risk category.',
  missingWindExposure: 'The exposure to wind is not given: B in woods or suburbs, C in open country, D on a shore.',
  missingHillFactor: 'The factor for hills and ridges (Kzt) is not given. Level ground has 1.0.',
  missingElevationFactor: 'Neither the ground elevation factor (Ke) nor the altitude is given. 1.0 may always be used.',
  editionNotOffered:
    '{edition} is not offered yet; ASCE 7-16 is computed. Snow and wind of another edition are other numbers: take this sheet to the building department as a comparison only.',
  codeOfAnotherEdition:
    '{building} goes with {edition}, but {computed} is computed here: its snow and wind are other numbers. Ask the building department whether it takes {computed}.',
  slopeOverFigure: 'The roof rises at {slopeDeg} degrees; the figures for free roofs end at {limitDeg}.',
  wallOnFrameNotComputed:
    'The wind on {walls} wall(s) goes into the frame: that push is not computed yet. Let the walls stand by themselves, or have somebody add it.',
  walledComponents:
    'Coefficients for parts of a roof over walls are not available: those of an obstructed free roof are used.',
  beyondFigureAcross:
    'Height over depth of the roof is {ratio}, beyond 0.25 to 1 of the wind figures: tabulated value used all the same.',
  beyondFigureAlong:
    'Height over length of the roof is {ratio}, beyond 0.25 to 1 of the wind figures: tabulated value used all the same.',
  zoneLayoutAssumed:
    'Zone layout assumed for wind on sheet, purlins and rafters: corners where two edges meet, edges {edgeFt} ft wide along eaves, gable ends and both sides of a ridge. What reaches into a harder zone counts as all in it.',
  solidityOverTable:
    'The frame is solid to {solidity} of its outline; the table for open frames ends at {limit}: its greatest coefficient is used.',
  warmSlipperyTakenRough:
    'A warm roof sheds snow early only when it is well insulated, which is not known here: the slope factor of a rough roof is used.',
  snowEndFull: 'Full snow on stretch {segment}, half on the others',
  snowEndHalf: 'Half the snow on stretch {segment}, in full on the others',
  snowPairFull: 'Full snow on stretches {segment} and {next}, half on the others',
  livePairOnly: 'Roof live on stretches {segment} and {next} only',
  liveOddOnly: 'Roof live on every other stretch, from the first',
  liveEvenOnly: 'Roof live on every other stretch, from the second',
  combinationDead: 'Dead load alone',
  combinationOwnLive: 'Dead and own live load',
  combinationRoofLive: 'Dead and roof live',
  combinationSnow: 'Dead and snow',
  combinationOwnAndRoofLive: 'Dead, three quarters of own live and roof live',
  combinationOwnLiveAndSnow: 'Dead, three quarters of own live and snow',
  combinationWind: 'Dead and wind',
  combinationWindAndRoofLive: 'Dead, wind and roof live',
  combinationWindAndSnow: 'Dead, wind and snow',
  combinationUplift: 'Light dead load and wind',
  combinationNotional: 'Dead and the one per cent push sideways',
  combinationNotionalAndRoofLive: 'Dead, the one per cent push sideways and roof live',
  combinationNotionalAndSnow: 'Dead, the one per cent push sideways and snow',
  combinationNotionalLight: 'Light dead load and the one per cent push sideways',
  combinationEarthquake: 'Dead and earthquake, pressing down as well',
  combinationEarthquakeAndSnow: 'Dead, earthquake and snow',
  combinationEarthquakeLight: 'Light dead load and earthquake, lifting as well',
  combinationSag: 'One load alone, for sag',
  combinationYears: 'Creep of the dead load and one short load, for sag after years',
  caseSnowBalanced: 'Snow, balanced over the whole roof',
  caseSnowLeast: 'Least snow on a low slope',
  caseSnowRain: 'Balanced snow with rain on it',
  caseSnowDrift: 'Balanced snow with a drift against the step to the higher roof',
  caseSnowDriftLee: 'Balanced snow with a drift that wind carries over the gap from the higher roof',
  caseSnowDriftWindward: 'Balanced snow with the end of a drift that wind builds against the higher roof',
  caseSnowSliding: 'Balanced snow with snow slid off the higher roof',
  caseSnowUnbalanced: 'Snow carried over the ridge onto the slope that falls toward {toward}',
  overhangIce:
    'Snow that melts on a warm roof freezes on its overhangs: twice the flat-roof snow may be asked there, which is not computed. An open shelter has Ct 1.2, not {ct}.',
  noHigherRoof: 'No drifted or sliding snow: no higher roof stands beside the shelter.',
  driftWithoutSnow: 'No drifted snow: ground snow is none.',
  driftWithoutStep: 'No drifted snow: the building beside is no higher than this roof.',
  driftBuried: 'No drifted snow: balanced snow fills the step of {stepFt} ft to the higher roof.',
  driftOverGap:
    'No drifted snow: none comes over a gap of {gapFt} ft below a step of {stepFt} ft. The limits are {limitFt} ft and six times the step.',
  upperLengthNotGiven:
    'How far the higher roof reaches away from the step is not given: the drift that comes off it is not known.',
  upperWidthNotGiven:
    'How far it is from the higher roof’s eave to its ridge is not given: what slides off is not known.',
  slideHeldBack:
    'No sliding snow: guards or a parapet of the higher roof are said to hold it. They must be designed for that.',
  slidesElsewhere: 'No sliding snow: the higher roof does not slope this way.',
  tooFlatToSlide: 'No sliding snow: the higher roof rises {rise} in 12, and snow slides above {limit} in 12.',
  slidesIntoGap:
    'No sliding snow: it falls into the gap of {gapFt} ft below a step of {stepFt} ft. It reaches across less than {limitFt} ft where the gap is less than the step.',
  unbalancedWithoutRidge: 'No unbalanced snow: a single slope has no ridge that wind could carry it over.',
  partialFromRidgeToEave:
    'No partial snow up and down the rafters: members from ridge to eave of a gable need none from {least} in 12 on.',
  unbalancedBySlope:
    'No unbalanced snow: the roof rises {rise} in 12; wind carries snow over ridges from {least} to {greatest} in 12.',
  caseSnowAcross: 'Partial snow up the rafters, counted from the eave ({pattern})',
  caseSnowAlong: 'Partial snow along the beam, counted from the left ({pattern})',
  caseRoofLive: 'Roof live load',
  caseRoofLivePattern: 'Roof live load on part of the beam, counted from the left ({pattern})',
  casePerson: 'A person at work on the roof, 300 lb, {place}',
  caseOwnLive: 'Own live loads',
  caseOwnLiveWay: 'Own live loads ({way})',
  caseOwnSnow: 'Balanced snow with own snow loads',
  caseOwnWind: 'Own wind loads ({way})',
  caseWindWithOwn: 'Wind of the site with own wind loads ({way})',
  caseWindAcross: 'Wind from {from}, case {windCase}, {flow} flow',
  caseWindFlat: 'Wind from {from} on a long flat roof, in bands, case {windCase}, {flow} flow',
  caseWindAlong: 'Wind from {from}, case {windCase}, {flow} flow',
  caseWindWalled:
    'Wind from {from}, {sense}: the harder of {enclosure} building and obstructed free roof on each part ({governs})',
  olderSpeedCaution:
    'For reading old papers only. Today’s maps give other speeds for other return periods: the number that counts is the one of your building department.',
  olderSpeedOutside: 'The table of fastest-mile speeds runs from {least} to {greatest} mph; {mph} mph is not in it.',
  caseSeismicRafter: 'Earthquake across the lines',
  caseSeismic: 'Earthquake, pushing to the {way}',
  caseNotional: 'One per cent of the dead load sideways, to the {way}',
} as const;
