/** Saved projects that come with the workbench; everything in them is invented. */
export const EXAMPLES = [
  { file: 'firewood-shed.shelter.json', words: 'Firewood and tools, a free-standing shed roof' },
  { file: 'framed-shed.shelter.json', words: 'The same shed, held across by tie logs and braces' },
  { file: 'lean-to.shelter.json', words: 'Lean-to against a house' },
  { file: 'snow-lean-to.shelter.json', words: 'Lean-to under a tall barn, in heavy snow' },
  { file: 'gable.shelter.json', words: 'Hay under a gable, on a windy bench' },
  { file: 'undersized-shed.shelter.json', words: 'A shed roof with logs that are too thin' },
] as const;
