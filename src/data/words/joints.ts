/** What is said of joints: where one is not computed in a direction, and why. */
export const JOINT_MESSAGES = {
  purlinNotFlat:
    'A pole touches the other stick along a line: how {purlin} bears on its rafters is not computed. Cut both flat where they cross.',
  footAcrossNotKnown:
    'What pushes this foot across the line is not known before it is said what holds the shelter across, and that is computed.',
} as const;
