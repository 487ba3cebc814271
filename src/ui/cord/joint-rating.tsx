import type { RatedCapacity } from '../../engine/project/model.ts';
import { Yours } from '../fields/yours.tsx';

/** A rating starts empty, and as one that already counts on the ten minutes of a storm: never more than was meant. */
export const EMPTY_RATING: Omit<RatedCapacity, 'kind'> = {
  label: '',
  parts: { pushLb: null, pullLb: null, alongLb: null, acrossLb: null },
  durationIncluded: 1.6,
};

const PARTS = [
  { field: 'pullLb', words: 'pull' },
  { field: 'pushLb', words: 'push' },
  { field: 'alongLb', words: 'along' },
  { field: 'acrossLb', words: 'across' },
] as const;

/** What somebody rates a joint, or a part of it, to carry in each direction. */
export function RatingWords({ path, of }: { readonly path: string; readonly of: string }) {
  return (
    <>
      by <Yours path={`${path}.label`} label={`${of}: who rated it`} kind="text" />:{' '}
      {PARTS.map(({ field, words }, i) => (
        <span key={field}>
          {i > 0 && ', '}
          {words} <Yours path={`${path}.parts.${field}`} label={`${of}: rated ${words}`} />
        </span>
      ))}
      , with a load duration factor of{' '}
      <Yours path={`${path}.durationIncluded`} label={`${of}: duration factor in the rating`} /> already in it
    </>
  );
}
