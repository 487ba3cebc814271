/** What is said under a field while a person types: what was read, what is wrong, what to write instead. */
export const FIELD_MESSAGES = {
  fieldEmpty: 'Nothing is written here. Write for example {example}.',
  fieldNotRead: '“{got}” cannot be read. Write for example {example}.',
  fieldComma: 'A comma can mean two things in “{got}”. Write a point for the fraction: {example}.',
  fieldZeroBelow: 'The fraction in “{got}” has a zero below the line. Write for example {example}.',
  fieldFractionTooLarge: 'The fraction in “{got}” is one or more. Write the whole number first, for example {example}.',
  fieldWhichIsFeet: '“{got}” has two numbers without units. Say which are feet: {suggestion}.',
  fieldInchesPastFoot: '{inches} inches after feet is a foot or more. Did you mean {suggestion}?',
  fieldFeetAndFraction: '“{got}” has a fraction of a foot and inches too. Write one of them: {example}.',
  fieldUnitUnknown: '“{unit}” is not a unit known here. Write for example {example}.',
  fieldUnitWrong: '“{unit}” does not measure {what}. Write for example {example}.',
  fieldGirthHere: 'A girth is read only where a diameter is asked. Write for example {example}.',
  fieldTooMuch: '{got} is too much here; at most {limit} is taken.',
  fieldTooLittle: '{got} is too little here; it must be at least {limit}.',
  fieldNotAbove: '{got} is too little here; it must be above {limit}.',
  fieldWhole: '“{got}” must be a whole number, for example {example}.',
  fieldTooLarge: '“{got}” is too large to be a number here. Write for example {example}.',
} as const;
