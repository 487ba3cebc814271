import { setAt } from '../../../engine/project/edits/set-at.ts';
import type { LedgerLine, Project } from '../../../engine/project/model.ts';
import { YoursChoice } from '../../fields/choice.tsx';
import { CommandButton } from '../../fields/command-choice.tsx';
import { Yours } from '../../fields/yours.tsx';
import { SawnSentence } from '../sawn-sentences.tsx';

const GRAINS = [
  { value: 'upright', words: 'a stud that stands upright' },
  { value: 'level', words: 'a band or a log that lies level' },
];

interface WallWoodProps {
  readonly line: LedgerLine;
  /** of the ledger in the file */
  readonly path: string;
}

/** The wood of the wall that the fixings of a ledger end in, as somebody has seen it. */
export function WallWood({ line, path }: WallWoodProps) {
  const behind = `${path}.behind`;
  if (!line.behind)
    return (
      <p className="sentence">
        What wood of the wall the fixings end in is not given. Fasteners into it are computed only where somebody has
        looked.{' '}
        <CommandButton
          words="say what wood is there"
          name="Ledger: wood of the wall"
          perform={(p) => withWood(p, behind)}
        />
      </p>
    );
  return (
    <>
      <p className="sentence">
        The fixings end in{' '}
        <YoursChoice path={`${behind}.grain`} label="Wall behind the ledger: grain" choices={GRAINS} />, under{' '}
        <Yours path={`${behind}.coverIn`} label="Wall behind the ledger: cover" /> of sheathing and siding.{' '}
        <CommandButton
          words="nobody has looked"
          name="Ledger: wood of the wall taken away"
          perform={(p) => withoutWood(p, behind)}
        />
      </p>
      <SawnSentence path={`${behind}.stock`} of="Wood of the wall" stock={line.behind.stock} isLaid={false} />
    </>
  );
}

/** A stud of the lightest group and a low grade behind thick cover, to be overwritten with what is seen; common practice. */
const FIRST_WOOD: NonNullable<LedgerLine['behind']> = {
  stock: {
    kind: 'sawn',
    breadthIn: 1.5,
    depthIn: 3.5,
    lay: 'edge',
    plies: 1,
    species: 'Spruce-Pine-Fir (South)',
    grade: 'No.3',
    use: 'wet',
  },
  grain: 'upright',
  coverIn: 1.5,
};
const TO_BE_SEEN = [
  'grain',
  'coverIn',
  'stock.breadthIn',
  'stock.depthIn',
  'stock.species',
  'stock.grade',
  'stock.use',
];

/** None of its figures is the person's own before it is touched. */
const withWood = (project: Project, behind: string): Project => ({
  ...setAt(project, behind, FIRST_WOOD),
  notYetYours: [...project.notYetYours, ...TO_BE_SEEN.map((name) => `${behind}.${name}`)],
});

const withoutWood = (project: Project, behind: string): Project => ({
  ...setAt(project, behind, undefined),
  notYetYours: project.notYetYours.filter((path) => !path.startsWith(`${behind}.`)),
});
