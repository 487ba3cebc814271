import { Fragment, useDeferredValue, useMemo, useState, type ReactNode } from 'react';
import { FIGURE_WORDS, SITE_VALUES } from '../../../data/words/cord.ts';
import type { Evaluation, LoadReport } from '../../../engine/evaluation.ts';
import { explainPressures } from '../../../engine/explain.ts';
import type { Step } from '../../../engine/note.ts';
import { setAt } from '../../../engine/project/edits/set-at.ts';
import { CommandButton } from '../../fields/command-choice.tsx';
import { useOpenProject, useWorkbench } from '../../state/use-workbench.ts';
import { showQuantity } from '../../units/show-quantity.ts';
import type { Names } from '../places.ts';
import { StepList } from '../steps.tsx';
import { Earthquake } from './earthquake-piece.tsx';
import { Folding } from './folding.tsx';
import { GivenLine } from './given-line.tsx';
import { OwnLoads } from './own-loads-piece.tsx';
import { Surroundings } from './surroundings-piece.tsx';
import { HillHelper, OlderSpeedHelper } from './wind-helpers.tsx';

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
        <GivenLine path="code.loads" words="Standard for loads" />
        <GivenLine path="code.wood" words="Standard for wood" />
        <GivenLine path="code.building" words="Building code" />
        {SITE_VALUES.map(({ field, words }) => (
          <Fragment key={field}>
            <GivenLine path={`site.${field}`} words={words} />
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
