import { SIDE_WORDS } from '../../../data/words/sides.ts';
import { YoursChoice } from '../../fields/choice.tsx';
import { Yours } from '../../fields/yours.tsx';
import { useOpenProject } from '../../state/use-workbench.ts';

const yesOrNo = (yes: string, no: string) => [
  { value: true, words: yes },
  { value: false, words: no },
];
const GUARDS = [
  { value: undefined, words: 'nothing holds it back' },
  { value: true, words: 'snow guards or a parapet hold it back' },
];
const SIDES = Object.entries(SIDE_WORDS).map(([value, words]) => ({ value, words }));
const NEIGHBOUR = 'surroundings.neighbour';

/** The taller roof from which snow drifts and slides. */
export function BuildingBeside() {
  const { neighbour } = useOpenProject().surroundings;
  if (!neighbour) return null;
  return (
    <p className="sentence">
      {neighbour.ledgerLine === null && (
        <>
          A taller roof stands at{' '}
          <YoursChoice path={`${NEIGHBOUR}.side`} label="Building: side at which it stands" choices={SIDES} />.{' '}
        </>
      )}
      {neighbour.ledgerLine === null ? 'Its' : 'The building’s'} eave is{' '}
      <Yours path={`${NEIGHBOUR}.stepFt`} label="Building: eave above this roof" /> above this roof
      {neighbour.ledgerLine === null && (
        <>
          {' '}
          and <Yours path={`${NEIGHBOUR}.gapFt`} label="Building: gap to this roof" /> from the edge of this one
        </>
      )}
      . Measured away from here it is <Yours path={`${NEIGHBOUR}.upperLengthFt`} label="Building: length of its roof" />{' '}
      long, <Yours path={`${NEIGHBOUR}.eaveToRidgeFt`} label="Building: eave to ridge" /> from eave to ridge, rises{' '}
      <Yours path={`${NEIGHBOUR}.upperRisePer12`} label="Building: pitch of its roof" />,{' '}
      <YoursChoice
        path={`${NEIGHBOUR}.upperSlippery`}
        label="Building: its roof"
        choices={yesOrNo('is slippery', 'is rough')}
      />{' '}
      and has Ct <Yours path={`${NEIGHBOUR}.upperCt`} label="Building: warmth under its roof, Ct" />;{' '}
      <YoursChoice
        path={`${NEIGHBOUR}.slidesThisWay`}
        label="Building: where its snow goes"
        choices={yesOrNo('its snow slides onto this roof', 'its snow does not slide this way')}
      />
      {neighbour.slidesThisWay && (
        <>
          {' '}
          where <YoursChoice path={`${NEIGHBOUR}.guards`} label="Building: what holds its snow back" choices={GUARDS} />
        </>
      )}
      .
    </p>
  );
}
