/** What the engine says of a shelter half way up. */
export const RAISING_MESSAGES = {
  caseWindRaising: 'Wind along the lines from the {from}, while it is being raised',
  raisingTypedSection: '{name} is a typed section: how wide it stands in the wind is not known.',
  raisingFeet: 'What fixed feet hold before the frame is complete is not computed.',
  raisingNotPassed: 'At this stage a check of it does not pass: {check}.',
  raisingNotAsked: 'No check of it is computed.',
} as const;
