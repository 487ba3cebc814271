import { SHEET_GAUGES } from '../../data/fasteners/sheet-steel.ts';
import { PLATE_WORDS } from '../../data/words/hardware.ts';
import type { JointSetting } from '../../engine/checks/joints/joint-setting.ts';
import { setAt } from '../../engine/project/edits/set-at.ts';
import type { FastenerRow, Project } from '../../engine/project/model.ts';
import { CommandChoice } from '../fields/command-choice.tsx';
import { useWorkbench } from '../state/use-workbench.ts';
import type { UnitSystem } from '../units/system.ts';
import { ListedLength, TypedSize } from './hardware-size.tsx';
import { sizeInWords, type ListedSize } from './hardware-sizes.ts';
import { needsPlate, plateOf, straightThrough, throughPlate } from './hardware-usual.ts';

const PLATES = (['strap', 'plate'] as const).flatMap((steel) =>
  ([1, 2] as const).map((each) => ({ steel, each, words: PLATE_WORDS[`${steel}${each}`] })),
);

interface PlateProps {
  readonly row: FastenerRow;
  readonly path: string;
  readonly of: string;
  readonly setting: JointSetting | null;
}

/** The steel that the fasteners go through: none, straps, side plates, or the sheet of the roof. */
export function HardwarePlate(props: PlateProps) {
  const { row, path, of, setting } = props;
  if (setting?.upper.of === 'sheet') return <SheetThickness {...props} />;
  const { plate } = row;
  const mayGoStraight = setting === null || !needsPlate(setting) || plate === undefined;
  const straight = {
    words: row.slanted ? 'through both pieces' : 'straight through both pieces',
    perform: (p: Project) => setAt(p, path, straightThrough(row, setting)),
  };
  const options = [
    ...(mayGoStraight ? [straight] : []),
    ...PLATES.map(({ steel, each, words }) => ({
      words,
      perform: (p: Project) => setAt(p, path, throughPlate(row, plateOf(steel, each, plate), setting)),
    })),
  ];
  const chosen = plate
    ? PLATES.findIndex(({ steel, each }) => steel === plate.steel && each === plate.each) +
      options.length -
      PLATES.length
    : 0;
  return (
    <>
      <CommandChoice label={`${of}: what they go through`} chosen={chosen} options={options} />
      {plate && (
        <>
          {' '}
          <TypedSize path={`${path}.plate.thicknessIn`} label={`${of}: thickness of the steel`} /> thick and{' '}
          <TypedSize path={`${path}.plate.widthIn`} label={`${of}: width of the steel`} /> wide
        </>
      )}
    </>
  );
}

const gauges = (system: UnitSystem): readonly ListedSize[] =>
  SHEET_GAUGES.rows.map(({ gauge, thicknessIn }) => ({
    valueIn: thicknessIn,
    words: `${gauge} gauge, ${sizeInWords(thicknessIn, system)}`,
  }));

/** Of the sheet only its thickness matters, and nobody knows it before it is given. */
function SheetThickness({ row, path, of }: PlateProps) {
  const system = useWorkbench((state) => state.system);
  const label = `${of}: thickness of the sheet`;
  if (row.plate) {
    return (
      <>
        through a sheet of <ListedLength path={`${path}.plate.thicknessIn`} label={label} listed={gauges(system)} />
      </>
    );
  }
  return (
    <>
      through a sheet of{' '}
      <CommandChoice
        label={label}
        chosen={-1}
        unchosen="no thickness given"
        options={gauges(system).map(({ valueIn, words }) => ({
          words,
          perform: (p) => setAt(p, `${path}.plate`, { thicknessIn: valueIn, widthIn: null, steel: 'strap', each: 1 }),
        }))}
      />
    </>
  );
}
