import type { StageId } from '../loads/raising.ts';

/** Stages of raising a shelter, as they are listed. */
export const STAGE_WORDS: Readonly<Record<StageId, string>> = {
  posts: 'Posts alone',
  beams: 'Posts and beams',
  braces: 'Braces on',
  rafters: 'Rafters on',
  roof: 'Roof on',
};

/** What a stage needs beside its temporary braces. */
export const STAGE_CAUTIONS: Readonly<Partial<Record<StageId, string>>> = {
  beams: 'Tie each beam down to its posts before the sling comes off.',
  rafters: 'Battens across the rafters keep them from rolling over; that is not computed.',
  roof: 'Wind lifts a roof: every tie from sheet to pier is on before the first sheet stays overnight.',
};

export const RAISING_WORDS = {
  whole:
    'Each stage is looked at complete; one half done counts as the next. The full wind of your site is taken, nothing off for the short time.',
  notComputed:
    'Not computed: what a stake holds in your soil, what the board and its nails hold, how the post bends above the brace, and the lift itself.',
  lifting:
    'Lifting kills. A line on both ends of a log, props under it before the sling comes off, nobody below. Where a point is unclear, hire someone who does it for a living.',
  temporary:
    'Temporary braces stay until the roof is on, also where knee braces hold by the figures: a joint half fastened holds nothing.',
} as const;
