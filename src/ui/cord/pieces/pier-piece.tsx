import { leansForEver } from '../../../engine/checks/pier/short-push.ts';
import type { Evaluation } from '../../../engine/evaluation.ts';
import { setAt } from '../../../engine/project/edits/set-at.ts';
import type { Foot, PierFoot } from '../../../engine/project/model.ts';
import { traitsOf } from '../../../engine/project/traits.ts';
import { YoursChoice } from '../../fields/choice.tsx';
import { CommandButton, CommandChoice } from '../../fields/command-choice.tsx';
import { Yours } from '../../fields/yours.tsx';
import { useOpenProject } from '../../state/use-workbench.ts';
import { UpliftOfPost } from '../joint-uplift.tsx';
import { isOwn, memberIn, sharersOf, traitPath } from '../own.ts';
import { madeLikeOthers, madeOwn } from '../own-edits.ts';
import { BuriedSentences, START_BURIED } from './buried-post-sentences.tsx';
import { ConcreteLine, ReactionLine } from './pier-lines.tsx';
import { SoilSentences } from './soil-sentences.tsx';

const SHAPES = [
  { value: 'round', words: 'round' },
  { value: 'square', words: 'square' },
];
const BARRIERS = [
  { value: undefined, words: 'something not said yet' },
  { value: true, words: 'a sheet that keeps water out' },
  { value: false, words: 'nothing' },
];
const COVERS = [
  { value: undefined, words: 'as nobody has said yet' },
  { value: true, words: 'under a sheet that keeps water down' },
  { value: false, words: 'bare' },
];
const TIES = [
  { value: true, words: 'tied to the shaft by bars' },
  { value: false, words: 'not tied to the shaft' },
];
const START_PIER: Omit<PierFoot, 'fixity'> = {
  kind: 'pier',
  standOffIn: 1,
  hardware: 'stand-off base',
  shaft: { shape: 'round', acrossIn: 24, lengthIn: 48 },
  pad: null,
  concretePcf: 145,
};

interface PierPieceProps {
  readonly memberId: string;
  readonly evaluation: Evaluation;
  readonly name: string;
}

export function PierPiece({ memberId, evaluation, name }: PierPieceProps) {
  const project = useOpenProject();
  const member = memberIn(project, memberId);
  if (member?.role !== 'post') return null;
  const { foot } = traitsOf(project, member);
  const path = traitPath(project, memberId, 'foot');
  return (
    <>
      <ReactionLine memberId={memberId} evaluation={evaluation} name={name} />
      <UpliftOfPost memberId={memberId} name={name} />
      <FootChoice path={path} name={name} foot={foot} />
      {foot.kind === 'pier' ? (
        <PierSentences path={path} name={name} foot={foot} />
      ) : (
        <BuriedSentences
          path={path}
          name={name}
          foot={foot}
          isPushedBriefly={!leansForEver(project, evaluation.shelter, member)}
        />
      )}
      <ConcreteLine memberId={memberId} evaluation={evaluation} />
      <SharedFoot memberId={memberId} name={name} />
      <SoilSentences />
    </>
  );
}

/** A pier, or the post itself in the ground: what is typed for one says nothing of the other. */
function FootChoice({ path, name, foot }: { readonly path: string; readonly name: string; readonly foot: Foot }) {
  const { fixity } = foot;
  return (
    <p className="sentence">
      {name} stands{' '}
      <CommandChoice
        label={`What ${name} stands on`}
        chosen={foot.kind === 'pier' ? 0 : 1}
        options={[
          { words: 'on a pier', perform: (p) => setAt(p, path, { ...START_PIER, fixity }) },
          { words: 'in the ground', perform: (p) => setAt(p, path, { ...START_BURIED, fixity }) },
        ]}
      />
      .
    </p>
  );
}

interface PierSentencesProps {
  readonly path: string;
  readonly name: string;
  readonly foot: PierFoot;
}

function PierSentences({ path, name, foot }: PierSentencesProps) {
  const label = (what: string): string => `Pier of ${name}: ${what}`;
  return (
    <>
      <p className="sentence">
        A <YoursChoice path={`${path}.shaft.shape`} label={label('shape')} choices={SHAPES} /> pier{' '}
        <Yours path={`${path}.shaft.acrossIn`} label={label('width')} /> across and{' '}
        <Yours path={`${path}.shaft.lengthIn`} label={label('length')} /> long, of concrete of{' '}
        <Yours path={`${path}.concretePcf`} label={label('weight of the concrete')} />. The post stands{' '}
        <Yours path={`${path}.standOffIn`} label={label('stand-off')} /> above it, held by{' '}
        <Yours path={`${path}.hardware`} label={label('hardware')} kind="text" />, with{' '}
        <YoursChoice path={`${path}.barrier`} label={label('between wood and concrete')} choices={BARRIERS} /> between
        wood and concrete. The earth around it is{' '}
        <YoursChoice path={`${path}.earthCovered`} label={label('earth around it')} choices={COVERS} />.
      </p>
      <p className="sentence">
        {foot.pad ? (
          <>
            It widens to a pad <Yours path={`${path}.pad.acrossIn`} label={label('width of the pad')} /> across and{' '}
            <Yours path={`${path}.pad.thickIn`} label={label('thickness of the pad')} /> thick,{' '}
            <YoursChoice path={`${path}.pad.tied`} label={label('pad and shaft')} choices={TIES} />.{' '}
            <CommandButton words="without a pad" perform={(p) => setAt(p, `${path}.pad`, null)} />
          </>
        ) : (
          <>
            It has no pad.{' '}
            <CommandButton
              words="give it a pad"
              perform={(p) => setAt(p, `${path}.pad`, { acrossIn: foot.shaft.acrossIn + 12, thickIn: 8, tied: true })}
            />
          </>
        )}
      </p>
    </>
  );
}

function SharedFoot({ memberId, name }: { readonly memberId: string; readonly name: string }) {
  const project = useOpenProject();
  if (isOwn(project, memberId, 'foot')) {
    return (
      <p className="aside">
        What {name} stands on is its own.{' '}
        <CommandButton
          words="as the others"
          name={`pier of ${name} as the others`}
          perform={(p) => madeLikeOthers(p, memberId, ['foot'])}
        />
      </p>
    );
  }
  const sharers = sharersOf(project, memberId, 'foot');
  if (sharers < 2) return null;
  return (
    <p className="aside">
      {sharers} posts stand alike; what they stand on changes together.{' '}
      <CommandButton
        words="only this one"
        name={`pier of ${name} of its own`}
        perform={(p) => madeOwn(p, memberId, ['foot'])}
      />
    </p>
  );
}
