import { FASTENERS_WORDS, HARDWARE_ASIDES } from '../../data/words/hardware.ts';
import { setAt } from '../../engine/project/edits/set-at.ts';
import type { JointSetting } from '../../engine/checks/joints/joint-setting.ts';
import type { FastenedCapacity } from '../../engine/project/model.ts';
import { CommandButton, CommandChoice } from '../fields/command-choice.tsx';
import { useWorkbench } from '../state/use-workbench.ts';
import { HardwareRow } from './hardware-row.tsx';
import { sizeInWords } from './hardware-sizes.ts';
import { kindsFor, usualRow } from './hardware-usual.ts';
import { EMPTY_RATING, RatingWords } from './joint-rating.tsx';

interface HardwareRowsProps {
  readonly capacity: FastenedCapacity;
  readonly path: string;
  /** what the joint is called in labels */
  readonly of: string;
  readonly setting: JointSetting | null;
}

const MOST_ROWS = 10;

/** The fasteners of a joint, row by row, and what they hold on to beyond its two pieces. */
export function HardwareRows({ capacity, path, of, setting }: HardwareRowsProps) {
  const { rows } = capacity;
  const list = `${path}.rows`;
  return (
    <>
      {rows.map((row, i) => (
        <HardwareRow
          key={i}
          row={row}
          path={`${list}[${i}]`}
          of={rows.length > 1 ? `${of}, row ${i + 1}` : of}
          setting={setting}
          onTakeAway={(p) =>
            setAt(
              p,
              list,
              rows.filter((each) => each !== row),
            )
          }
        />
      ))}
      {rows.length < MOST_ROWS && (
        <p className="aside">
          {rows.length === 0 && 'No fastener is written down yet. '}
          <CommandChoice
            label={`${of}: add fasteners`}
            chosen={-1}
            unchosen={rows.length === 0 ? 'add fasteners' : 'add others beside them'}
            options={kindsFor(setting).map((kind) => ({
              words: FASTENERS_WORDS[kind],
              perform: (p) => setAt(p, list, [...rows, usualRow(kind, setting)]),
            }))}
          />
          {rows.length > 1 && ` ${HARDWARE_ASIDES.strongest}`}
        </p>
      )}
      <Shoulder capacity={capacity} path={path} setting={setting} />
      {(setting?.lower.of === 'pier' || capacity.alsoRated) && (
        <AlsoRated capacity={capacity} path={`${path}.alsoRated`} of={of} />
      )}
    </>
  );
}

/** A housing is set with the end of its brace and counts by its shape; one that a file merely names counts nothing. */
function Shoulder({ capacity, path, setting }: Omit<HardwareRowsProps, 'of'>) {
  const system = useWorkbench((state) => state.system);
  if (setting && setting.shoulderIn > 0)
    return (
      <p className="aside">
        Its housing, {sizeInWords(setting.shoulderIn, system)} deep, takes the push along the log by its shoulder.
      </p>
    );
  if (!capacity.shoulder) return null;
  return (
    <p className="aside">
      {HARDWARE_ASIDES.shoulder}{' '}
      <CommandButton words="take it away" perform={(p) => setAt(p, `${path}.shoulder`, false)} />
    </p>
  );
}

/** An anchor in concrete is never computed: what it is rated for stands beside the fasteners. */
function AlsoRated({ capacity, path, of }: Omit<HardwareRowsProps, 'setting'>) {
  const name = `${of}: base and anchor`;
  if (!capacity.alsoRated) {
    return (
      <p className="aside">
        {HARDWARE_ASIDES.foot}{' '}
        <CommandButton words="give their rating" name={name} perform={(p) => setAt(p, path, EMPTY_RATING)} />
      </p>
    );
  }
  return (
    <p className="sentence">
      Base and anchor in the concrete are rated <RatingWords path={path} of={name} />.{' '}
      <CommandButton words="no rating" name={name} perform={(p) => setAt(p, path, undefined)} />
    </p>
  );
}
