/** What is said of site values, of the range of the load figures, of load patterns and of combinations. */
export const LOAD_MESSAGES = {
  missingLoadEdition:
    'The edition of the load standard is not given. Ask the building department which one it has adopted.',
  missingRiskCategory: 'The risk category is not given. A minor storage shed is I, most other buildings are II.',
  missingGroundSnow: 'Ground snow is not given. Ask the building department.',
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
    'Only ASCE 7-16 is computed; {edition} was named. Snow and wind of another edition are other numbers.',
  slopeOverFigure: 'The roof rises at {slopeDeg} degrees; the figures for free roofs end at {limitDeg}.',
  closedSideNotComputed:
    '{sides} side(s) are closed: the roof is then no free roof, and wind on it is not computed yet.',
  beyondFigureAcross:
    'Height over depth of the roof is {ratio}, beyond 0.25 to 1 of the wind figures: tabulated value used all the same.',
  beyondFigureAlong:
    'Height over length of the roof is {ratio}, beyond 0.25 to 1 of the wind figures: tabulated value used all the same.',
  worstZoneEverywhere: 'Sheet, purlins and rafters are judged with the corner zone over the whole roof.',
  solidityOverTable: 'The frame is solid to {solidity} of its outline; the table for open frames ends at {limit}.',
  warmSlipperyTakenRough:
    'A warm roof sheds snow early only when it is well insulated, which is not known here: the slope factor of a rough roof is used.',
  snowEndFull: 'Snow in full on segment {segment}, half on the others',
  snowEndHalf: 'Half the snow on segment {segment}, in full on the others',
  snowPairFull: 'Snow in full on segments {segment} and {next}, half on the others',
  livePairOnly: 'Roof live on segments {segment} and {next} only',
  liveOddOnly: 'Roof live on every other segment, from the first',
  liveEvenOnly: 'Roof live on every other segment, from the second',
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
  combinationEarthquake: 'Dead and earthquake',
  combinationEarthquakeAndSnow: 'Dead, earthquake and snow',
  combinationEarthquakeLight: 'Light dead load and earthquake',
} as const;
