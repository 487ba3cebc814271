import { ROOF_MATERIALS } from '../../../data/loads/dead-materials.ts';
import { isUnlikeAcross, matchSlope } from '../../../engine/project/edits/match-slope.ts';
import { setAt } from '../../../engine/project/edits/set-at.ts';
import type { Shelter } from '../../../engine/geometry/shelter.ts';
import type { RoofPlane } from '../../../engine/project/model.ts';
import { YoursChoice } from '../../fields/choice.tsx';
import { CommandButton, CommandChoice } from '../../fields/command-choice.tsx';
import { Yours } from '../../fields/yours.tsx';
import { useOpenProject } from '../../state/use-workbench.ts';
import { JointSentences } from '../joint-sentences.tsx';
import { sentenceCase } from '../letter-case.ts';

const SLIPPERY = [
  { value: true, words: 'slippery' },
  { value: false, words: 'not slippery' },
];
const UNOBSTRUCTED = [
  { value: true, words: 'nothing holds snow back' },
  { value: false, words: 'something holds snow back' },
];
const SPANS = [
  { value: 'simple', words: 'a separate piece from line to line' },
  { value: 'continuous', words: 'one piece over all lines' },
];

/** The roof itself: pitch, edges, covering, weight of its layers. */
export function SheetPiece({ shelter }: { readonly shelter: Shelter }) {
  const { roofPlanes } = useOpenProject();
  const labelOf = (id: string): string => shelter.planes.find((p) => p.id === id)?.label ?? 'roof';
  return (
    <>
      {roofPlanes.map((plane) => (
        <Plane
          key={plane.id}
          plane={plane}
          name={roofPlanes.length > 1 ? sentenceCase(labelOf(plane.id)) : 'The roof'}
        />
      ))}
    </>
  );
}

function Plane({ plane, name }: { readonly plane: RoofPlane; readonly name: string }) {
  const isUnlike = isUnlikeAcross(useOpenProject(), plane);
  const path = `roofPlanes[${plane.id}]`;
  return (
    <>
      <p className="sentence">
        {name} rises <Yours path={`${path}.risePer12`} label={`${name}: pitch`} />, reaches{' '}
        <Yours path={`${path}.highOverhangIn`} label={`${name}: high overhang`} /> past the high line and{' '}
        <Yours path={`${path}.lowOverhangIn`} label={`${name}: low overhang`} /> past the low one, measured level, and
        from <Yours path={`${path}.fromXIn`} label={`${name}: left edge`} /> to{' '}
        <Yours path={`${path}.toXIn`} label={`${name}: right edge`} /> of the mark along the lines.
        {plane.onLines.length > 2 && (
          <>
            {' '}
            Its rafters are <YoursChoice path={`${path}.rafters`} label={`${name}: rafters`} choices={SPANS} />.
          </>
        )}
      </p>
      {isUnlike && (
        <p className="aside">
          The slope beyond the ridge rises or ends otherwise.{' '}
          <CommandButton
            words="make it like this one"
            name={`${name}: make the other slope like it`}
            perform={(p) => matchSlope(p, plane.id)}
          />
        </p>
      )}
      <p className="sentence">
        Covered with <Yours path={`${path}.covering.kind`} label={`${name}: covering`} kind="text" />,{' '}
        <YoursChoice path={`${path}.covering.slippery`} label={`${name}: slippery or not`} choices={SLIPPERY} />;{' '}
        <YoursChoice
          path={`${path}.covering.unobstructed`}
          label={`${name}: snow slides or not`}
          choices={UNOBSTRUCTED}
        />
        . It reaches <Yours path={`${path}.covering.pastRafterIn`} label={`${name}: past the rafters`} /> past the
        rafters. Its maker rates it to span{' '}
        <Yours path={`${path}.covering.ratedSpanIn`} label={`${name}: rated span`} />.
      </p>
      {plane.dead.by === 'parts' ? <Layers plane={plane} name={name} path={path} /> : <Total name={name} path={path} />}
      <JointSentences kind={plane.sheetOn === 'purlins' ? 'sheetPurlin' : 'sheetRafter'} />
    </>
  );
}

interface WeightProps {
  readonly name: string;
  readonly path: string;
}

function Layers({ plane, name, path }: WeightProps & { readonly plane: RoofPlane }) {
  const layers = plane.dead.by === 'parts' ? plane.dead.layers : [];
  const list = `${path}.dead.layers`;
  return (
    <p className="sentence">
      It weighs, beside rafters and purlins:{' '}
      {layers.map((_, i) => (
        <span key={i}>
          <Yours path={`${list}[${i}].name`} label={`${name}: layer ${i + 1}`} kind="text" />{' '}
          <Yours path={`${list}[${i}].lightPsf`} label={`${name}: layer ${i + 1}, light`} /> to{' '}
          <Yours path={`${list}[${i}].heavyPsf`} label={`${name}: layer ${i + 1}, heavy`} />;{' '}
        </span>
      ))}
      <CommandChoice
        label={`${name}: one more layer`}
        chosen={-1}
        unchosen="one more layer"
        options={ROOF_MATERIALS.map(({ words, psf }) => ({
          words: words.toLowerCase(),
          perform: (p) => setAt(p, list, [...layers, { name: words.toLowerCase(), heavyPsf: psf, lightPsf: psf }]),
        }))}
      />{' '}
      {layers.length > 0 && (
        <CommandButton words="take the last away" perform={(p) => setAt(p, list, layers.slice(0, -1))} />
      )}
    </p>
  );
}

function Total({ name, path }: WeightProps) {
  return (
    <p className="sentence">
      It weighs between <Yours path={`${path}.dead.lightPsf`} label={`${name}: light weight`} /> and{' '}
      <Yours path={`${path}.dead.heavyPsf`} label={`${name}: heavy weight`} />.
    </p>
  );
}
