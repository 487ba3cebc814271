import { Fragment, useDeferredValue, useMemo, useState, type ReactNode } from 'react';
import { EXPOSURE_WORDS, FIGURE_WORDS, GIVER_WORDS, RISK_WORDS, SITE_VALUES } from '../../../data/words/cord.ts';
import type { Evaluation, LoadReport } from '../../../engine/evaluation.ts';
import { explainPressures } from '../../../engine/explain.ts';
import type { Step } from '../../../engine/note.ts';
import { setAt } from '../../../engine/project/edits/set-at.ts';
import { YoursChoice, type Choice } from '../../fields/choice.tsx';
import { CommandButton } from '../../fields/command-choice.tsx';
import { Yours } from '../../fields/yours.tsx';
import { useOpenProject, useWorkbench } from '../../state/use-workbench.ts';
import { showQuantity } from '../../units/show-quantity.ts';
import type { Names } from '../places.ts';
import { StepList } from '../steps.tsx';
import { Earthquake } from './earthquake-piece.tsx';
import { Folding } from './folding.tsx';
import { OwnLoads } from './own-loads-piece.tsx';
import { Surroundings } from './surroundings-piece.tsx';
import { HillHelper, OlderSpeedHelper } from './wind-helpers.tsx';

const choicesOf = (words: Readonly<Record<string, string>>): readonly Choice[] =>
  Object.entries(words).map(([value, said]) => ({ value, words: said }));
const GIVERS = choicesOf(GIVER_WORDS);
const CHOSEN: Readonly<Record<string, readonly Choice[]>> = {
  exposure: choicesOf(EXPOSURE_WORDS),
  riskCategory: choicesOf(RISK_WORDS),
};
const LOAD_EDITIONS = ['ASCE 7-16', 'ASCE 7-22'].map((value) => ({ value, words: value }));
const WOOD_EDITIONS = ['NDS 2018', 'NDS 2024'].map((value) => ({ value, words: value }));

const ROOF_SNOW = 'Snow on the roof itself, instead of a figure from ground snow';

interface SitePieceProps {
  readonly evaluation: Evaluation;
  readonly names: Names;
}

/** What the place asks of a roof: every value with who gave it and when, then what follows from them. */
export function SitePiece({ evaluation, names }: SitePieceProps) {
  const { loads, shelter } = evaluation;
  const { site } = useOpenProject();
  /** what helps with a value stands below it */
  const beside: Readonly<Record<string, ReactNode>> = {
    groundSnowPsf: <SnowOnRoof />,
    leastRoofSnowPsf: site.roofSnowPsf && <GivenLine path="site.roofSnowPsf" words={ROOF_SNOW} />,
    windMph: <OlderSpeedHelper />,
    kzt: <HillHelper shelter={shelter} />,
  };
  return (
    <>
      <ul className="asked">
        <GivenLine path="code.loads" words="Standard for loads" choices={LOAD_EDITIONS} />
        <GivenLine path="code.wood" words="Standard for wood" choices={WOOD_EDITIONS} />
        <GivenLine path="code.building" words="Building code" />
        {SITE_VALUES.map(({ field, words }) => (
          <Fragment key={field}>
            <GivenLine path={`site.${field}`} words={words} choices={CHOSEN[field]} />
            {beside[field] && <li className="beside">{beside[field]}</li>}
          </Fragment>
        ))}
        <GivenLine path="site.soil.bearingPsf" words="Soil bears" />
        <GivenLine path="site.soil.lateralPsfPerFt" words="Soil holds sideways" />
      </ul>
      <Folding words="Under, around and beside it">
        <Surroundings names={names} />
      </Folding>
      <Folding words="Earthquake, and loads of your own">
        <Earthquake />
        <OwnLoads shelter={shelter} names={names} />
      </Folding>
      <Folding words="What follows for this roof">
        <Figures loads={loads} />
      </Folding>
    </>
  );
}

/** Ground snow may be followed by what the department says of the roof itself. */
function SnowOnRoof() {
  const { site } = useOpenProject();
  return site.roofSnowPsf ? (
    <CommandButton
      words="no snow is given for the roof itself"
      perform={(p) => setAt(p, 'site.roofSnowPsf', undefined)}
    />
  ) : (
    <CommandButton
      words="the department gives the snow on the roof itself"
      perform={(p) => setAt(p, 'site.roofSnowPsf', { value: null, givenBy: 'department', date: null })}
    />
  );
}

interface GivenLineProps {
  readonly path: string;
  readonly words: string;
  readonly choices?: readonly Choice[] | undefined;
}

function GivenLine({ path, words, choices }: GivenLineProps) {
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

/** Each figure opens into its steps. */
function Figures({ loads }: { readonly loads: LoadReport }) {
  const system = useWorkbench((state) => state.system);
  const [open, setOpen] = useState<string | null>(null);
  const project = useDeferredValue(useOpenProject());
  const told = useMemo(() => explainPressures(project), [project]);
  const stepsOf = (name: string): readonly Step[] => told?.[name] ?? [];
  return (
    <>
      <ul className="figure-list">
        {loads.pressures.map(({ name, value, unit }) => (
          <li key={name}>
            <span>{FIGURE_WORDS[name] ?? name}</span>
            {value === null ? (
              <span>not given</span>
            ) : stepsOf(name).length === 0 ? (
              <span>{showQuantity({ value, unit }, system)}</span>
            ) : (
              <button
                type="button"
                className="opens"
                aria-expanded={open === name}
                onClick={() => setOpen(open === name ? null : name)}
              >
                {showQuantity({ value, unit }, system)}
                <span className="unseen">, steps</span>
              </button>
            )}
          </li>
        ))}
      </ul>
      {open !== null && <StepList steps={stepsOf(open)} label={`Steps of ${FIGURE_WORDS[open] ?? open}`} />}
    </>
  );
}
