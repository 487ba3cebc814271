import { setAt } from '../../../engine/project/edits/set-at.ts';
import type { EmbeddedFoot } from '../../../engine/project/model.ts';
import { YoursChoice } from '../../fields/choice.tsx';
import { CommandButton } from '../../fields/command-choice.tsx';
import { Yours } from '../../fields/yours.tsx';
import { useOpenProject, useWorkbench } from '../../state/use-workbench.ts';
import { sizeInWords } from '../hardware-sizes.ts';

const BACKFILLS = [
  { value: 'concrete', words: 'concrete' },
  { value: 'soil', words: 'soil, tamped in layers of 8 in' },
  { value: 'gravel', words: 'gravel, tamped in layers of 8 in' },
];
const CATEGORIES = [
  { value: undefined, words: 'not said yet' },
  { value: 'UC4A', words: 'UC4A, ground contact' },
  { value: 'UC4B', words: 'UC4B, ground contact of what matters' },
  { value: 'UC4C', words: 'UC4C, the hardest ground contact' },
];
const KEYS = [
  { value: undefined, words: 'nothing but contact holds' },
  { value: true, words: 'bars or lags hold' },
];
const TURNS = [
  { value: 'pinned', words: 'free to turn' },
  { value: 'fixed', words: 'held against turning' },
];
/** @source IBC 1806.3.4, from memory */
const MOVEMENTS = [
  { value: false, words: 'may do harm' },
  { value: true, words: 'does no harm' },
];

/** Where a post in the ground begins, before anybody types. */
export const START_BURIED: Omit<EmbeddedFoot, 'fixity'> = {
  kind: 'embedded',
  depthIn: 60,
  holeIn: 24,
  backfill: 'concrete',
  treatment: null,
  fixedBelowGradeIn: 20,
};

interface BuriedProps {
  readonly path: string;
  readonly name: string;
  readonly foot: EmbeddedFoot;
  /** nothing leans on the post for as long as it stands */
  readonly isPushedBriefly: boolean;
}

/** A post in the ground: hole and fill, what keeps it from rotting, what it stands on, how the frame takes it. */
export function BuriedSentences({ path, name, foot, isPushedBriefly }: BuriedProps) {
  const isDoubled = useOpenProject().calculation.doubledLateralSoil;
  const label = (what: string): string => `Foot of ${name}: ${what}`;
  return (
    <>
      <p className="sentence">
        Its butt lies <Yours path={`${path}.depthIn`} label={label('depth')} /> deep in a hole{' '}
        <Yours path={`${path}.holeIn`} label={label('hole')} /> wide, filled with{' '}
        <YoursChoice path={`${path}.backfill`} label={label('filled with')} choices={BACKFILLS} />
        {foot.backfill === 'concrete' && (
          <>
            ; <YoursChoice path={`${path}.keyed`} label={label('held in the concrete')} choices={KEYS} /> it in the
            concrete
          </>
        )}
        . It is treated with <Yours path={`${path}.treatment`} label={label('treatment')} kind="text" /> for use
        category <YoursChoice path={`${path}.useCategory`} label={label('use category')} choices={CATEGORIES} />.
      </p>
      <p className="sentence">
        {foot.pad ? (
          <>
            It stands on a round pad of concrete{' '}
            <Yours path={`${path}.pad.acrossIn`} label={label('width of the pad')} /> across and{' '}
            <Yours path={`${path}.pad.thickIn`} label={label('thickness of the pad')} /> thick.{' '}
            <CommandButton words="without a pad" perform={(p) => setAt(p, `${path}.pad`, undefined)} />
          </>
        ) : (
          <>
            It stands on the soil.{' '}
            <CommandButton
              words="give it a pad"
              perform={(p) => setAt(p, `${path}.pad`, { acrossIn: foot.holeIn, thickIn: 8 })}
            />
          </>
        )}
      </p>
      <p className="sentence">
        The frame takes it as held <Yours path={`${path}.fixedBelowGradeIn`} label={label('held below the ground')} />{' '}
        below the ground, along the line{' '}
        <YoursChoice path={`${path}.fixity.along`} label={label('turning along the line')} choices={TURNS} />, across it{' '}
        <YoursChoice path={`${path}.fixity.across`} label={label('turning across the line')} choices={TURNS} />.
      </p>
      {(isPushedBriefly || isDoubled) && <ShortPush isDoubled={isDoubled} counts={isPushedBriefly} />}
    </>
  );
}

/** The doubled lateral value of the soil: the code ties it to what half an inch of movement does, which only a person can say. */
function ShortPush({ isDoubled, counts }: { readonly isDoubled: boolean; readonly counts: boolean }) {
  const system = useWorkbench((state) => state.system);
  return (
    <p className="sentence">
      That the posts may move by {sizeInWords(0.5, system)} at the ground in wind or an earthquake{' '}
      <YoursChoice
        path="calculation.doubledLateralSoil"
        label="Soil against short pushes, of all posts in the ground"
        choices={MOVEMENTS}
      />
      {isDoubled ? ': the soil then holds twice as much sideways.' : ': the soil holds sideways as it does always.'}
      {!counts && ' It counts nothing for this post, since a brace or a load of your own leans on it all the time.'}
    </p>
  );
}
