import { SOIL_CLASSES, type SoilClass } from '../../../data/loads/soil.ts';
import { GIVER_WORDS } from '../../../data/words/cord.ts';
import { setAt } from '../../../engine/project/edits/set-at.ts';
import type { Project, Site } from '../../../engine/project/model.ts';
import { YoursChoice } from '../../fields/choice.tsx';
import { CommandButton, CommandChoice } from '../../fields/command-choice.tsx';
import { Yours } from '../../fields/yours.tsx';
import { useOpenProject } from '../../state/use-workbench.ts';

const GIVERS = Object.entries(GIVER_WORDS).map(([value, words]) => ({ value, words }));
const PRESUMED = { givenBy: 'owner', date: null, from: 'presumptive value of the code' } as const;

/** What the ground is, by the code's classes or by values of one's own: every pier stands in the same. */
export function SoilSentences() {
  const { site } = useOpenProject();
  const { soil } = site;
  return (
    <p className="sentence">
      The ground is{' '}
      <CommandChoice
        label="What the ground is, by the code's classes"
        chosen={SOIL_CLASSES.findIndex((each) => isOf(soil, each))}
        unchosen="as somebody typed it"
        options={SOIL_CLASSES.map((each) => ({ words: each.words.toLowerCase(), perform: (p) => presumed(p, each) }))}
      />
      : it bears <Yours path="site.soil.bearingPsf.value" label="Soil bears" />, holds sideways{' '}
      <Yours path="site.soil.lateralPsfPerFt.value" label="Soil holds sideways" />, weighs{' '}
      <Yours path="site.soil.soilPcf" label="Weight of the soil" />
      {soil.friction && (
        <>
          , and rubs under a base with{' '}
          <Yours path="site.soil.friction.value" label="Coefficient of friction under a base" /> of the dead load, said
          by <YoursChoice path="site.soil.friction.givenBy" label="Friction: said by" choices={GIVERS} />
        </>
      )}
      {soil.cohesionPsf && (
        <>
          , and sticks to a base with <Yours path="site.soil.cohesionPsf.value" label="Cohesion of the soil" />, said by{' '}
          <YoursChoice path="site.soil.cohesionPsf.givenBy" label="Cohesion: said by" choices={GIVERS} />
        </>
      )}
      .{' '}
      {!soil.friction && !soil.cohesionPsf && (
        <CommandButton
          words="say what rubs under it"
          perform={(p) => setAt(p, 'site.soil.friction', { value: null, givenBy: 'owner', date: null })}
        />
      )}
    </p>
  );
}

const isOf = (soil: Site['soil'], { bearingPsf, lateralPsfPerFt, friction, cohesionPsf }: SoilClass): boolean =>
  soil.bearingPsf.value === bearingPsf &&
  soil.lateralPsfPerFt.value === lateralPsfPerFt &&
  (soil.friction?.value ?? null) === friction &&
  (soil.cohesionPsf?.value ?? null) === cohesionPsf;

/** All that the code presumes for a class, written where values of one's own would stand. */
function presumed(project: Project, { bearingPsf, lateralPsfPerFt, friction, cohesionPsf }: SoilClass): Project {
  const given = (value: number | null) => ({ ...PRESUMED, value });
  const values: readonly (readonly [string, unknown])[] = [
    ['bearingPsf', given(bearingPsf)],
    ['lateralPsfPerFt', given(lateralPsfPerFt)],
    ['friction', friction === null ? undefined : given(friction)],
    ['cohesionPsf', cohesionPsf === null ? undefined : given(cohesionPsf)],
  ];
  return values.reduce((so, [field, value]) => setAt(so, `site.soil.${field}`, value), project);
}
