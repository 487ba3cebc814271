import { placeInFile, placeOnMember } from '../../engine/cuts-of-member.ts';
import type { Shelter } from '../../engine/geometry/shelter.ts';
import { addCut, removeCut } from '../../engine/project/edits/cuts.ts';
import { setAt } from '../../engine/project/edits/set-at.ts';
import type { Cut, Member, Project } from '../../engine/project/model.ts';
import { YoursChoice } from '../fields/choice.tsx';
import { CommandButton } from '../fields/command-choice.tsx';
import { CommandLength } from '../fields/command-length.tsx';
import { Yours } from '../fields/yours.tsx';
import type { LogShown } from './log-shown.ts';

interface HandCutsProps {
  readonly project: Project;
  readonly shelter: Shelter;
  readonly member: Member;
  readonly shown: LogShown;
  /** place looked at, from the butt [in], and in words */
  readonly atIn: number;
  readonly place: string;
}

const KINDS = ['flat', 'dap', 'notch', 'housing'].map((kind) => ({ value: kind, words: kind }));

/** Cuts by hand into a piece: what each is, and one more at the place that is looked at. */
export function HandCuts({ project, shelter, member, shown, atIn, place }: HandCutsProps) {
  const cuts = project.cuts.filter((cut) => cut.member === member.id);
  const inFile = (fromButtIn: number): number => placeInFile(shelter, member.id, shown.alongPiece(fromButtIn));
  const isOnPiece = atIn >= shown.used[0] && atIn <= shown.used[1];
  return (
    <>
      <p>{jointCutsInWords(shown)}</p>
      {cuts.map((cut, i) => {
        const name = `cut ${i + 1}`;
        return (
          <p key={cut.id} className="sentence">
            A <YoursChoice path={`cuts[${cut.id}].kind`} label={`${name}: kind`} choices={KINDS} />{' '}
            <Yours path={`cuts[${cut.id}].depthIn`} label={`${name}: depth`} /> deep and{' '}
            <Yours path={`cuts[${cut.id}].lengthIn`} label={`${name}: length`} /> long,{' '}
            <YoursChoice path={`cuts[${cut.id}].angleDeg`} label={`${name}: side`} choices={sidesOf(member, cut)} />,{' '}
            <CommandLength
              label={`${name}: middle, from the butt`}
              valueIn={shown.fromButt(placeOnMember(shelter, member.id, cut.centreIn))}
              perform={(p, fromButtIn) => setAt(p, `cuts[${cut.id}].centreIn`, inFile(fromButtIn))}
            />{' '}
            from the butt.{' '}
            <CommandButton words="remove" name={`remove ${name}`} perform={(p) => removeCut(p, cut.id)} />
          </p>
        );
      })}
      {isOnPiece && (
        <p>
          <CommandButton
            words={`one more cut ${place}`}
            name="one more cut"
            perform={(p) => addCut(p, member.id, inFile(atIn))}
          />
        </p>
      )}
    </>
  );
}

function jointCutsInWords({ cuts }: LogShown): string {
  const count = cuts.filter(({ madeBy }) => madeBy !== 'hand').length;
  if (count === 0) return 'Its joints cut no seat and no housing into it.';
  return count === 1
    ? 'One seat or housing follows from its joints.'
    : `${count} seats and housings follow from its joints.`;
}

/** The sides of a piece as it stands or lies, and the angle that a file has where it is none of them. */
function sidesOf({ role }: Member, { angleDeg }: Cut): readonly { readonly value: number; readonly words: string }[] {
  const runsAcross = role === 'rafter' || role === 'tie';
  const sides = [
    { value: 0, words: role === 'post' ? 'on its right' : 'above' },
    { value: 90, words: runsAcross ? 'on its side' : 'in front' },
    { value: 180, words: role === 'post' ? 'on its left' : 'below' },
    ...(runsAcross ? [] : [{ value: 270, words: 'behind' }]),
  ];
  return sides.some(({ value }) => value === angleDeg)
    ? sides
    : [...sides, { value: angleDeg, words: `turned ${angleDeg}°` }];
}
