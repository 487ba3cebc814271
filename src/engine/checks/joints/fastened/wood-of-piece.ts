import type { Moisture } from '../../../../data/fasteners/moisture.ts';
import type { Stick } from '../../../geometry/shelter.ts';
import { sawnValues } from '../../../material/sawn-values.ts';
import { findSpecies } from '../../../material/species.ts';
import type { DesignValues, MaterialAnswer } from '../../../material/values.ts';
import type { Note } from '../../../note.ts';
import type { Project } from '../../../project/model.ts';
import { fastenerGravity } from '../../fasteners/specific-gravity.ts';
import type { JointPiece } from '../joint-setting.ts';

/** What fasteners find in a piece. */
export interface PieceWood {
  readonly values: DesignValues;
  readonly isHardwood: boolean;
  /** specific gravity for fasteners */
  readonly gravity: (note?: Note) => number;
  /** in use: under the roof it dries; what is said to be used wet may still dry, so both are asked */
  readonly used: readonly Moisture[];
}

export interface WoodSource {
  readonly project: Project;
  readonly valuesOf: (memberId: string) => MaterialAnswer;
}

/** The wood of a piece; null where it has none, or its values are not known. */
export function woodOf({ project, valuesOf }: WoodSource, { id, stick }: JointPiece): PieceWood | null {
  const answer = stick?.kind === 'sawn' ? sawnValues(stick) : valuesOf(id);
  const species = speciesOf(project, stick);
  if (!answer.ok || species === null) return null;
  const { values } = answer;
  let known: number | null = null;
  return {
    values,
    isHardwood: findSpecies(species)?.kind === 'hardwood',
    gravity: (note) =>
      note
        ? fastenerGravity(species, values.specificGravity, note)
        : (known ??= fastenerGravity(species, values.specificGravity)),
    used: stick?.kind === 'sawn' && stick.use === 'wet' ? ['wet', 'dry'] : ['dry'],
  };
}

function speciesOf(project: Project, stick: Stick | null): string | null {
  if (stick?.kind === 'sawn') return stick.species;
  if (stick?.kind !== 'round') return null;
  return project.woods.find((wood) => wood.id === stick.woodId)?.species ?? null;
}
