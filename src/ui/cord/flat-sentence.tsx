import type { JointSetting } from '../../engine/checks/joints/joint-setting.ts';
import { setAt } from '../../engine/project/edits/set-at.ts';
import type { FastenerRow } from '../../engine/project/model.ts';
import { CommandButton } from '../fields/command-choice.tsx';
import { Yours } from '../fields/yours.tsx';
import { firstFlatIn } from './hardware-flats.ts';
import { Shown } from './shown.tsx';

interface FlatsProps {
  readonly row: FastenerRow;
  readonly path: string;
  /** what the row is called in labels */
  readonly of: string;
  readonly setting: JointSetting | null;
}

/** A head wants a flat on the round piece that it lies on, or where it goes in aslant; a plate wherever one of both pieces is wider. */
export function mayHaveFlats({ plate, headFlatIn }: FastenerRow, setting: JointSetting | null): boolean {
  if (headFlatIn !== undefined) return true;
  const pieces = plate ? [setting?.upper, setting?.lower] : [setting?.upper];
  return pieces.some((piece) => piece?.stick?.kind === 'round');
}

/** How deep the flats of a row are cut, as the end of its sentence. */
export function Flats({ row, path, of, setting }: FlatsProps) {
  const flat = `${path}.headFlatIn`;
  const { label, none, before, after } = row.plate ? FOR_PLATES : UNDER_HEAD;
  if (row.headFlatIn === undefined)
    return (
      <>
        , {none}{' '}
        <CommandButton
          words={row.plate ? 'cut flats' : 'cut a flat'}
          name={`${of}: ${label}`}
          perform={(p) => setAt(p, flat, firstFlatIn(row, setting))}
        />
      </>
    );
  return (
    <>
      , {before} <Yours path={flat} label={`${of}: depth of the ${row.plate ? 'flats' : 'flat'}`} /> deep{after}{' '}
      <CommandButton
        words={row.plate ? 'take the flats away' : 'take the flat away'}
        name={`${of}: ${label}`}
        perform={(p) => setAt(p, flat, undefined)}
      />
    </>
  );
}

const UNDER_HEAD = { label: 'a flat under the head', none: 'no flat', before: 'on a flat', after: '' } as const;
const FOR_PLATES = {
  label: 'flats for the plates',
  none: 'no flats on the wider piece',
  before: 'on flats',
  after: ' on both sides of the wider piece',
} as const;

/** What a flat is, and how its depth is measured. */
export function WhatAFlatIs({ isForPlates }: { readonly isForPlates: boolean }) {
  return (
    <details className="how-to-measure">
      <summary>What a flat is</summary>
      {isForPlates ? (
        <Shown
          picture={
            <>
              <path d="M21 16 A34 34 0 0 1 75 16 M21 56 A34 34 0 0 0 75 56 M21 16 V56 M75 16 V56" />
              <path d="M17 4 H21 V68 H17 Z M75 4 H79 V68 H75 Z" />
              <path d="M21 16 A34 34 0 0 0 21 56" strokeDasharray="3 2" />
              <path className="measures" d="M2 36 H14 M11 34 L14 36 L11 38 M32 36 H21 M24 34 L21 36 L24 38" />
            </>
          }
        >
          Flats: the round is cut away on both sides of the wider piece until it is as wide as the other and the plates
          lie on both. The depth of one is half of what the pieces differ, at most a sixth of the log.
        </Shown>
      ) : (
        <Shown
          picture={
            <>
              <path d="M29 14 A30 30 0 1 0 67 14 Z" />
              <path d="M29 14 A30 30 0 0 1 67 14" strokeDasharray="3 2" />
              <path d="M38 14 V11 H58 V14 M43 11 V4 H53 V11 M46 14 V70 M50 14 V70" />
              <path
                className="measures"
                d="M84 0 V6 M82 4 L84 7 L86 4 M84 26 V14 M82 17 L84 14 L86 17 M62 7 H90 M67 14 H90"
              />
            </>
          }
        >
          Flat: a level place cut into the round, wide enough for the washer. Its depth is from the round down to the
          cut. A washer that stands square to a 10 in log wants 1/16 to 1/8 in; where the fastener goes in aslant, more,
          in sawn sticks too.
        </Shown>
      )}
    </details>
  );
}
