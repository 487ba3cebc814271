import { setAt } from '../../../engine/project/edits/set-at.ts';
import { traitsOf } from '../../../engine/project/traits.ts';
import { YoursChoice } from '../../fields/choice.tsx';
import { CommandButton } from '../../fields/command-choice.tsx';
import { Yours } from '../../fields/yours.tsx';
import { useOpenProject } from '../../state/use-workbench.ts';
import { isOwn, memberIn, sharersOf, traitPath } from '../own.ts';
import { madeLikeOthers, madeOwn } from '../own-edits.ts';

const SHAPES = [
  { value: 'round', words: 'round' },
  { value: 'square', words: 'square' },
];
const BACKFILLS = [
  { value: 'concrete', words: 'concrete' },
  { value: 'soil', words: 'soil' },
  { value: 'gravel', words: 'gravel' },
];

export function PierPiece({ memberId, name }: { readonly memberId: string; readonly name: string }) {
  const project = useOpenProject();
  const member = memberIn(project, memberId);
  if (member?.role !== 'post') return null;
  const { foot } = traitsOf(project, member);
  const path = traitPath(project, memberId, 'foot');
  const label = (what: string): string => `Pier of ${name}: ${what}`;
  if (foot.kind === 'embedded') {
    return (
      <p className="sentence">
        {name} stands <Yours path={`${path}.depthIn`} label={label('depth')} /> deep in a hole{' '}
        <Yours path={`${path}.holeIn`} label={label('hole')} /> wide, filled with{' '}
        <YoursChoice path={`${path}.backfill`} label={label('filled with')} choices={BACKFILLS} />, treated with{' '}
        <Yours path={`${path}.treatment`} label={label('treatment')} kind="text" />.
      </p>
    );
  }
  return (
    <>
      <p className="sentence">
        A <YoursChoice path={`${path}.shaft.shape`} label={label('shape')} choices={SHAPES} /> pier{' '}
        <Yours path={`${path}.shaft.acrossIn`} label={label('width')} /> across and{' '}
        <Yours path={`${path}.shaft.lengthIn`} label={label('length')} /> long, of concrete of{' '}
        <Yours path={`${path}.concretePcf`} label={label('weight of the concrete')} />. The post stands{' '}
        <Yours path={`${path}.standOffIn`} label={label('stand-off')} /> above it on a{' '}
        <Yours path={`${path}.hardware`} label={label('hardware')} kind="text" />.
      </p>
      <p className="sentence">
        {foot.pad ? (
          <>
            It widens to a pad <Yours path={`${path}.pad.acrossIn`} label={label('width of the pad')} /> across and{' '}
            <Yours path={`${path}.pad.thickIn`} label={label('thickness of the pad')} /> thick.{' '}
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
      <SharedFoot memberId={memberId} name={name} />
    </>
  );
}

function SharedFoot({ memberId, name }: { readonly memberId: string; readonly name: string }) {
  const project = useOpenProject();
  if (isOwn(project, memberId, 'foot')) {
    return (
      <p className="aside">
        The pier of {name} is its own.{' '}
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
      {sharers} piers are alike and change together.{' '}
      <CommandButton
        words="only this one"
        name={`pier of ${name} of its own`}
        perform={(p) => madeOwn(p, memberId, ['foot'])}
      />
    </p>
  );
}
