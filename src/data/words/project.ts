/** What is said of a project file or of a field that a person typed: what, got, allowed, what to do next. */
export const PROJECT_MESSAGES = {
  notJson:
    'This file is not a shelter project: it cannot be read as JSON ({detail}). Choose a file that ends in .shelter.json.',
} as const;
