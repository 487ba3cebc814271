import { useId } from 'react';
import { SLANT_WORDS } from '../../data/words/hardware.ts';
import { toedReach } from '../../engine/checks/joints/fastened/toed.ts';
import { shankSize } from '../../engine/checks/joints/fastened/shank-size.ts';
import { commonPath, type JointSetting } from '../../engine/checks/joints/joint-setting.ts';
import { message, type Message } from '../../engine/message.ts';
import { setAt } from '../../engine/project/edits/set-at.ts';
import type { FastenerRow } from '../../engine/project/model.ts';
import { CommandChoice } from '../fields/command-choice.tsx';
import { FieldNote } from '../fields/field-note.tsx';
import { say } from '../state/use-workbench.ts';
import { isToed, needsPlate, slantwise, straightThrough } from './hardware-usual.ts';

interface SlantProps {
  readonly row: FastenerRow;
  readonly path: string;
  readonly of: string;
  readonly setting: JointSetting | null;
}

/** Whether the nails of a row are driven straight or slantwise, with the reason where they cannot be. */
export function Slant({ row, path, of, setting }: SlantProps) {
  const noteId = useId();
  if (!row.slanted && !mayBeSlanted(row, setting)) return null;
  const refusal = row.slanted && setting ? refusalOf(row, setting) : null;
  return (
    <>
      <CommandChoice
        label={`${of}: straight or slantwise`}
        chosen={row.slanted ? 1 : 0}
        options={[
          {
            words: SLANT_WORDS.square,
            perform: (p) =>
              row.plate ? setAt(p, `${path}.slanted`, undefined) : setAt(p, path, straightThrough(row, setting)),
          },
          { words: SLANT_WORDS.slanted, perform: (p) => setAt(p, path, slantwise(row)) },
        ]}
      />
      , <FieldNote id={noteId} fault={refusal && say(refusal)} echo={null} floats={false} />
    </>
  );
}

/** Nails through the side of a sawn stick that lies on another piece. */
const mayBeSlanted = ({ fastener, plate }: FastenerRow, setting: JointSetting | null): boolean =>
  isToed(fastener) &&
  plate === undefined &&
  setting !== null &&
  !needsPlate(setting) &&
  setting.upper.stick?.kind === 'sawn';

/** Why the checks do not take a slanted row as it is written; null where they do, or where its pieces are not known. */
function refusalOf(row: FastenerRow, setting: JointSetting): Message | null {
  if (row.plate) return message('toedNeedsSawn');
  const [size, path] = [shankSize(row), commonPath(setting)];
  if (!size.ok || !path?.ok) return null;
  const reach = toedReach(setting.upper, size.size, path);
  return reach.ok ? null : reach.reason;
}
