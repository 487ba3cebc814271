import { EXPOSURE_WORDS, GIVER_WORDS, RISK_WORDS } from '../../../data/words/cord.ts';
import { YoursChoice, type Choice } from '../../fields/choice.tsx';
import { Yours } from '../../fields/yours.tsx';

const choicesOf = (words: Readonly<Record<string, string>>): readonly Choice[] =>
  Object.entries(words).map(([value, said]) => ({ value, words: said }));
const asWritten = (...values: readonly string[]): readonly Choice[] => values.map((value) => ({ value, words: value }));
const GIVERS = choicesOf(GIVER_WORDS);
/** Values that are one of a few. */
const CHOICES: Readonly<Record<string, readonly Choice[]>> = {
  'code.loads': asWritten('ASCE 7-16', 'ASCE 7-22'),
  'code.wood': asWritten('NDS 2018', 'NDS 2024'),
  'site.exposure': choicesOf(EXPOSURE_WORDS),
  'site.riskCategory': choicesOf(RISK_WORDS),
};

interface GivenLineProps {
  readonly path: string;
  readonly words: string;
}

/** A value of the site, who says so and when, each a field where it stands. */
export function GivenLine({ path, words }: GivenLineProps) {
  const choices = CHOICES[path];
  return (
    <li>
      <span className="asked-words">{words}</span>
      <span className="asked-value">
        {choices ? (
          <YoursChoice path={`${path}.value`} label={words} choices={choices} />
        ) : (
          <Yours path={`${path}.value`} label={words} />
        )}
      </span>
      <span className="quiet">
        said by <YoursChoice path={`${path}.givenBy`} label={`${words}: said by`} choices={GIVERS} /> on{' '}
        <Yours path={`${path}.date`} label={`${words}: day, like 2026-05-11`} kind="text" />
      </span>
    </li>
  );
}
