import { LUMBER } from '../../data/wood/lumber.ts';
import { LUMBER_GROUPS } from '../../data/wood/lumber-groups.ts';
import { CLEAR_WOOD } from '../../data/wood/species.ts';
import type { Log, Project, SawnStock, Stock, TypedStock } from '../../engine/project/model.ts';
import { YoursChoice } from '../fields/choice.tsx';
import { CommandChoice } from '../fields/command-choice.tsx';
import { Yours } from '../fields/yours.tsx';
import { useWorkbench } from '../state/use-workbench.ts';
import { showField } from '../units/field-kind.ts';
import type { UnitSystem } from '../units/system.ts';

const SPECIES = [...CLEAR_WOOD.map(({ name }) => name), ...LUMBER_GROUPS.map(({ name }) => name)];
const GRADES = [...new Set(LUMBER.map(({ grade }) => grade))];
const LAYS = [
  { value: 'edge', words: 'on edge' },
  { value: 'flat', words: 'flat' },
];
const USES = [
  { value: 'wet', words: 'wet, or put in green' },
  { value: 'dry', words: 'dry, and it stays dry' },
];

interface StickProps {
  readonly path: string;
  readonly of: string;
}

interface SawnProps extends StickProps {
  readonly stock: SawnStock;
  /** left out where nobody may choose how it lies */
  readonly isLaid?: boolean;
}

/** A sawn stick: its true sizes, how it lies, what it was graded. */
export function SawnSentence({ path, of, stock, isLaid = true }: SawnProps) {
  const names = SPECIES.includes(stock.species) ? SPECIES : [stock.species, ...SPECIES];
  const grades = gradesWith(stock.grade);
  return (
    <p className="sentence">
      {of}: <Yours path={`${path}.breadthIn`} label={`${of}: thickness`} /> by{' '}
      <Yours path={`${path}.depthIn`} label={`${of}: depth`} /> true size,{' '}
      {isLaid && (
        <>
          <YoursChoice path={`${path}.lay`} label={`${of}: how it lies`} choices={LAYS} />,{' '}
        </>
      )}
      <YoursChoice
        path={`${path}.species`}
        label={`${of}: species`}
        choices={names.map((name) => ({ value: name, words: name }))}
      />
      ,{' '}
      <YoursChoice
        path={`${path}.grade`}
        label={`${of}: grade`}
        choices={[
          { value: null, words: 'home-sawn, no grade' },
          ...grades.map((grade) => ({ value: grade, words: `grade ${grade}` })),
        ]}
      />
      , used <YoursChoice path={`${path}.use`} label={`${of}: wet or dry`} choices={USES} />.
    </p>
  );
}

const bare = (grade: string): string => grade.toLowerCase().replace(/[^a-z0-9]/g, '');

/** The listed grades; one that is written with other dots and spaces stands in its place as it was written. */
function gradesWith(written: string | null): readonly string[] {
  if (written === null) return GRADES;
  const isListed = GRADES.some((grade) => bare(grade) === bare(written));
  return isListed ? GRADES.map((grade) => (bare(grade) === bare(written) ? written : grade)) : [written, ...GRADES];
}

/** A section whose values come from its maker. */
export function TypedStickSentence({ path, of, stock }: StickProps & { readonly stock: TypedStock }) {
  return (
    <p className="sentence">
      {of}: {stock.name}, bending <Yours path={`${path}.FbSIn3Psi`} label={`${of}: moment allowed`} /> lb·in, shear{' '}
      <Yours path={`${path}.VallowLb`} label={`${of}: shear allowed`} />, stiffness{' '}
      <Yours path={`${path}.EIPsiIn4`} label={`${of}: EI`} /> lb·in², weight{' '}
      <Yours path={`${path}.lightPlf`} label={`${of}: light weight`} /> to{' '}
      <Yours path={`${path}.heavyPlf`} label={`${of}: heavy weight`} />, as its maker gives them.
    </p>
  );
}

const FRESH_SAWN: SawnStock = {
  kind: 'sawn',
  breadthIn: 2,
  depthIn: 8,
  lay: 'edge',
  plies: 1,
  species: 'Western larch',
  grade: null,
  use: 'wet',
};

interface StockChoiceProps {
  readonly project: Project;
  readonly stock: Stock | null;
  readonly of: string;
  readonly write: (project: Project, stock: Stock) => Project;
}

/** `13 1/2 in to 10 in`: what tells one log from another on the pile. */
function sizeInWords({ stations }: Log, system: UnitSystem): string {
  const ends = [stations[0], stations.at(-1)].flatMap((station) => (station ? [station.diameterIn] : []));
  return ends.map((inches) => showField('diameter', inches, system)).join(' to ');
}

/** What a piece is made of: one of the logs, or a sawn stick. */
export function StockChoice({ project, stock, of, write }: StockChoiceProps) {
  const system = useWorkbench((state) => state.system);
  const fromLogs = project.logs.map((log, i) => ({
    words: `log ${i + 1}, ${sizeInWords(log, system)}, ${log.stands === 'log' ? 'one stem' : 'as many as needed'}`,
    isIt: stock?.kind === 'log' && stock.logId === log.id,
    stock: { kind: 'log', logId: log.id, fromButtIn: 0, buttAt: 'start' } satisfies Stock,
  }));
  const all = [
    ...fromLogs,
    { words: 'a sawn stick', isIt: stock?.kind === 'sawn', stock: stock?.kind === 'sawn' ? stock : FRESH_SAWN },
    ...(stock?.kind === 'typed' ? [{ words: 'a section from a maker', isIt: true, stock }] : []),
  ];
  return (
    <CommandChoice
      label={`${of}: made of`}
      chosen={all.findIndex(({ isIt }) => isIt)}
      options={all.map((each) => ({ words: each.words, perform: (p) => write(p, each.stock) }))}
    />
  );
}
