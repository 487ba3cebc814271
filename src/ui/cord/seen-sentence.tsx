import { SIGN_WORDS } from '../../data/words/species-signs.ts';
import { SPECIES_SIGNS } from '../../data/wood/species-signs.ts';
import { setAt } from '../../engine/project/edits/set-at.ts';
import type { Log, Project, Seen } from '../../engine/project/model.ts';
import { YoursChoice } from '../fields/choice.tsx';
import { CommandButton, CommandChoice } from '../fields/command-choice.tsx';
import { Yours } from '../fields/yours.tsx';
import { say, useWorkbench } from '../state/use-workbench.ts';

const UNSEEN: Seen = {
  worstKnotIn: null,
  grainSlope1In: null,
  spiral: null,
  checks: '',
  straightIn: null,
  by: '',
  date: null,
};
const SPIRALS = [
  { value: 'none', words: 'none' },
  { value: 'left', words: 'to the left' },
  { value: 'right', words: 'to the right' },
];

const THROUGH = [
  { value: false, words: 'none' },
  { value: true, words: 'yes' },
];

/** What the eye saw on the log, who looked and when, and what of it holds the log back. */
export function SeenSentence({ log, of }: { readonly log: Log; readonly of: string }) {
  const held = useWorkbench(({ evaluation }) => evaluation?.logs.find(({ logId }) => logId === log.id)?.heldBackBy);
  const seen = `logs[${log.id}].seen`;
  if (log.seen === null) {
    return (
      <p className="sentence">
        Nobody has looked at its knots and grain: the lowest stated strength is used.{' '}
        <CommandButton words="I have looked at it" perform={(p) => setAt(p, seen, UNSEEN)} />
      </p>
    );
  }
  const knots = log.seen.knotsInWorstFootIn ?? [];
  return (
    <p className="sentence">
      Widest knot <Yours path={`${seen}.worstKnotIn`} label={`${of}: widest knot`} />; in the worst foot of length{' '}
      {knots.length === 0 && 'no knot written down'}
      {knots.map((_, i) => (
        <span key={i}>
          <Yours path={`${seen}.knotsInWorstFootIn[${i}]`} label={`${of}: knot ${i + 1} of the worst foot`} />{' '}
        </span>
      ))}
      <CommandButton
        words="one more"
        name="one more knot"
        perform={(p) => setAt(p, `${seen}.knotsInWorstFootIn`, [...knots, 1])}
      />
      {knots.length > 0 && (
        <CommandButton
          words="one fewer"
          name="one knot fewer"
          perform={(p) => setAt(p, `${seen}.knotsInWorstFootIn`, knots.length > 1 ? knots.slice(0, -1) : undefined)}
        />
      )}
      . Grain <Yours path={`${seen}.grainSlope1In`} label={`${of}: slope of grain`} />, twist{' '}
      <YoursChoice path={`${seen}.spiral`} label={`${of}: twist of the grain`} choices={SPIRALS} />, rings to the inch
      at the butt <Yours path={`${seen}.ringsPerIn`} label={`${of}: rings to the inch`} />, out of straight{' '}
      <Yours path={`${seen}.straightIn`} label={`${of}: how far out of straight`} />, drying checks{' '}
      <Yours path={`${seen}.checks`} label={`${of}: drying checks`} kind="text" />, through from face to face at an end{' '}
      <YoursChoice path={`${seen}.throughCheckAtEnd`} label={`${of}: a check through at an end`} choices={THROUGH} />.{' '}
      <ToldBy told={log.seen.speciesToldBy} path={`${seen}.speciesToldBy`} of={of} /> Looked at by{' '}
      <Yours path={`${seen}.by`} label={`${of}: who looked`} kind="text" /> on{' '}
      <Yours path={`${seen}.date`} label={`${of}: day it was looked at`} kind="text" />. {held && say(held)}
    </p>
  );
}

interface ToldByProps {
  readonly told: Seen['speciesToldBy'];
  /** where it is stored */
  readonly path: string;
  readonly of: string;
}

/** By what the species was known; whoever looked at the log answers for it. */
function ToldBy({ told, path, of }: ToldByProps) {
  return (
    <>
      Species told by{' '}
      <CommandChoice
        label={`${of}: by what its species was told`}
        chosen={told ? SPECIES_SIGNS.indexOf(told.sign) + 1 : 0}
        options={[
          { words: 'not given', perform: (p) => setAt(p, path, undefined) },
          ...SPECIES_SIGNS.map((sign) => ({
            words: SIGN_WORDS[sign],
            perform: (p: Project) => setAt(p, `${path}.sign`, sign),
          })),
        ]}
      />
      {told && (
        <>
          , in own words <Yours path={`${path}.inWords`} label={`${of}: its species told, in own words`} kind="text" />
        </>
      )}
      .
    </>
  );
}
