import { FASTENER_WORDS } from '../../data/words/fasteners-pulled.ts';
import { ACTS_WORDS, DRIVEN_WORDS, FASTENERS_WORDS, HARDWARE_ASIDES } from '../../data/words/hardware.ts';
import { setAt } from '../../engine/project/edits/set-at.ts';
import type { JointSetting } from '../../engine/checks/joints/joint-setting.ts';
import type { FastenerRow } from '../../engine/project/model.ts';
import { YoursChoice } from '../fields/choice.tsx';
import { CommandButton, CommandChoice } from '../fields/command-choice.tsx';
import { Yours } from '../fields/yours.tsx';
import { acts, useWorkbench } from '../state/use-workbench.ts';
import { Flats, mayHaveFlats, WhatAFlatIs } from './flat-sentence.tsx';
import { HardwarePlate } from './hardware-plate.tsx';
import { ListedLength, OfferedSize, TypedSize } from './hardware-size.tsx';
import {
  isSameSize,
  listedDiameters,
  listedLengths,
  listedWashers,
  namedSizes,
  sizeInWords,
} from './hardware-sizes.ts';
import { ofThickness, underWasher } from './hardware-flats.ts';
import { asKind, kindsFor } from './hardware-usual.ts';
import { Slant } from './slant-choice.tsx';

const choicesOf = (words: Readonly<Record<string, string>>) =>
  Object.entries(words).map(([value, each]) => ({ value, words: each }));
const ACTS = choicesOf(ACTS_WORDS);
const DRIVEN = choicesOf(DRIVEN_WORDS);

interface HardwareRowProps {
  readonly row: FastenerRow;
  readonly path: string;
  /** what it is called in labels */
  readonly of: string;
  readonly setting: JointSetting | null;
  readonly onTakeAway: Parameters<typeof CommandButton>[0]['perform'];
}

/** One row of fasteners as a sentence: which, how many, how they stand, under what, and what they are counted for. */
export function HardwareRow({ row, path, of, setting, onTakeAway }: HardwareRowProps) {
  const label = (what: string): string => `${of}: ${what}`;
  const isSheet = setting?.upper.of === 'sheet';
  const isHeadless = row.fastener === 'driftPin' && row.headFlatIn === undefined;
  const hasFlats = !isSheet && !row.slanted && !isHeadless && mayHaveFlats(row, setting);
  const sentence = (
    <p className="sentence">
      <Yours path={`${path}.count`} label={label('how many')} /> <KindChoice {...{ row, path, setting }} of={of} />{' '}
      <Size row={row} path={path} of={of} setting={setting} />
      <Standing row={row} path={path} of={of} isSheet={isSheet} />,{' '}
      <Slant row={row} path={path} of={of} setting={setting} />
      <HardwarePlate row={row} path={path} of={of} setting={setting} />
      {(isSheet || row.plate === undefined) && !row.slanted && row.fastener !== 'driftPin' && (
        <Washer row={row} path={path} of={of} setting={setting} />
      )}
      {hasFlats && <Flats row={row} path={path} of={of} setting={setting} />}. They count{' '}
      <YoursChoice path={`${path}.acts`} label={label('which way they count')} choices={ACTS} />, driven into{' '}
      <YoursChoice path={`${path}.driven`} label={label('driven into')} choices={DRIVEN} />.{' '}
      <CommandButton words="take these away" name={`${of} taken away`} perform={onTakeAway} />
    </p>
  );
  return (
    <>
      {sentence}
      {row.slanted && <p className="aside">{HARDWARE_ASIDES.slanted}</p>}
      {hasFlats && <WhatAFlatIs isForPlates={row.plate !== undefined} />}
    </>
  );
}

type RowProps = Pick<HardwareRowProps, 'row' | 'path' | 'of'>;
type SetRowProps = Pick<HardwareRowProps, 'row' | 'path' | 'of' | 'setting'>;

/** Another kind comes with a usual size of its own. */
function KindChoice({ row, path, of, setting }: SetRowProps) {
  const kinds = kindsFor(setting);
  return (
    <CommandChoice
      label={`${of}: kind of fastener`}
      chosen={kinds.findIndex((kind) => kind === row.fastener)}
      unchosen="of another kind"
      options={kinds.map((kind) => ({
        words: (row.count === 1 ? FASTENER_WORDS : FASTENERS_WORDS)[kind],
        perform: (p) => setAt(p, path, asKind(row, kind, setting)),
      }))}
    />
  );
}

/** Thickness and length; nails and spikes go by one name for both. */
function Size({ row, path, of, setting }: SetRowProps) {
  const system = useWorkbench((state) => state.system);
  const diameters = listedDiameters(row.fastener, system);
  const lengths = listedLengths(row.fastener, system);
  const thick = { path: `${path}.diameterIn`, label: `${of}: thickness` };
  const long = { path: `${path}.lengthIn`, label: `${of}: length` };
  const both = (
    <>
      {diameters.length > 0 ? (
        <ListedLength
          {...thick}
          listed={diameters}
          take={(p, sizeIn) => setAt(p, path, ofThickness(row, sizeIn ?? row.diameterIn, setting))}
        />
      ) : (
        <TypedSize {...thick} />
      )}{' '}
      thick and {lengths.length > 0 ? <ListedLength {...long} listed={lengths} /> : <TypedSize {...long} />} long
    </>
  );
  const named = namedSizes(row.fastener);
  if (named.length === 0) return both;
  const label = `${of}: size`;
  const options = named.map(({ name, diameterIn, lengthIn }) => ({
    words: `${pennyOf(name)}, ${sizeInWords(diameterIn, system)} by ${sizeInWords(lengthIn, system)}`,
    isIt: isSameSize(diameterIn, row.diameterIn) && isSameSize(lengthIn, row.lengthIn),
    take: () =>
      acts().perform({ name: label, perform: (p) => setAt(p, path, { ...row, diameterIn, lengthIn }), undo: 'now' }),
  }));
  return (
    <OfferedSize label={label} options={options} typedPaths={[thick.path, long.path]}>
      {both}
    </OfferedSize>
  );
}

/** `16d common nail` beside the word nail. */
const pennyOf = (name: string): string => name.replace(/ (common nail|spike)$/, '');

/** How far they stand from one another and, where the joint does not say it itself, from the end. */
function Standing({ row, path, of, isSheet }: RowProps & { readonly isSheet: boolean }) {
  const apart = <Yours path={`${path}.spacingIn`} label={`${of}: apart`} />;
  if (isSheet) return <> in every {apart} along each row</>;
  const isGroup = row.count > 1 || row.spacingIn !== null;
  const saysEnd = row.plate !== undefined || row.endIn !== null;
  return (
    <>
      {isGroup && (
        <>
          {' '}
          in <Yours path={`${path}.rows`} label={`${of}: lines beside one another`} /> {row.rows > 1 ? 'lines' : 'line'}
          , {apart} apart
        </>
      )}
      {saysEnd && (
        <>
          , the first <Yours path={`${path}.endIn`} label={`${of}: from the end`} /> from the end
        </>
      )}
    </>
  );
}

function Washer({ row, path, of, setting }: SetRowProps) {
  const system = useWorkbench((state) => state.system);
  return (
    <>
      ; under the head{' '}
      <ListedLength
        path={`${path}.washerIn`}
        label={`${of}: washer`}
        listed={listedWashers(row.fastener, system)}
        without="no washer"
        take={(p, sizeIn) => setAt(p, path, underWasher(row, sizeIn ?? null, setting))}
      />
    </>
  );
}
