import { HARDWARE_ASIDES } from '../../data/words/hardware.ts';
import type { JointSetting } from '../../engine/checks/joints/joint-setting.ts';
import type { Capacity, FastenedCapacity, JointKind, Project } from '../../engine/project/model.ts';
import { CommandChoice } from '../fields/command-choice.tsx';
import { HardwareProposal } from './hardware-proposal.tsx';
import { HardwareRows } from './hardware-rows.tsx';
import { EMPTY_RATING, RatingWords } from './joint-rating.tsx';

interface CapacityProps {
  readonly kind: JointKind;
  /** of the one joint that it speaks of; left out for all of the kind */
  readonly jointKey?: string;
  /** which joints it speaks of, at the start of a sentence */
  readonly words: string;
  readonly capacity: Capacity;
  readonly path: string;
  readonly setting: JointSetting | null;
  readonly write: (project: Project, capacity: Capacity) => Project;
}

const NO_FASTENER: FastenedCapacity = { kind: 'fasteners', rows: [], shoulder: false };

/** What a joint holds: nobody has said, contact only, somebody's rating, or its fasteners, which are computed. */
export function CapacitySentence({ kind, jointKey, words, capacity, path, setting, write }: CapacityProps) {
  const isFastened = capacity?.kind === 'fasteners';
  const isWall = setting?.lower.of === 'wall';
  const kinds: readonly { readonly kind: string; readonly words: string; readonly capacity: Capacity }[] = [
    { kind: 'null', words: 'has no capacity given', capacity: null },
    { kind: 'none', words: 'is held by contact only', capacity: { kind: 'none' } },
    {
      kind: 'rated',
      words: 'is rated',
      capacity: capacity?.kind === 'rated' ? capacity : { kind: 'rated', ...EMPTY_RATING },
    },
    ...(isWall && !isFastened
      ? []
      : [{ kind: 'fasteners', words: 'is held by fasteners', capacity: isFastened ? capacity : NO_FASTENER }]),
  ];
  return (
    <>
      <p className="sentence">
        {words}{' '}
        <CommandChoice
          label={`${words}: what it can carry`}
          chosen={kinds.findIndex((each) => each.kind === (capacity?.kind ?? 'null'))}
          options={kinds.map((each) => ({ words: each.words, perform: (p) => write(p, each.capacity) }))}
        />
        {capacity?.kind === 'rated' && (
          <>
            {' '}
            <RatingWords path={path} of={words} />
          </>
        )}
        {!isFastened && '.'}
      </p>
      {isWall && <p className="aside">{HARDWARE_ASIDES.wall}</p>}
      {isFastened && <HardwareRows capacity={capacity} path={path} of={words} setting={setting} />}
      {setting && !isWall && capacity?.kind !== 'rated' && (
        <HardwareProposal kind={kind} jointKey={jointKey} of={words} write={write} />
      )}
    </>
  );
}
