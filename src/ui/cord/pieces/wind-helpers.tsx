import { useId, useState } from 'react';
import { say } from '../../../data/words/say.ts';
import type { HillShape, SideOfCrest } from '../../../data/loads/wind-topography.ts';
import { explainHill, explainOlderSpeed } from '../../../engine/explain.ts';
import type { Shelter } from '../../../engine/geometry/shelter.ts';
import { setAt } from '../../../engine/project/edits/set-at.ts';
import { CommandButton } from '../../fields/command-choice.tsx';
import { useOpenProject, useWorkbench } from '../../state/use-workbench.ts';
import { readMeasure } from '../../units/read-measure.ts';
import { showQuantity } from '../../units/show-quantity.ts';
import { StepList } from '../steps.tsx';

const today = (): string => new Date().toISOString().slice(0, 10);

const SHAPES: readonly (readonly [HillShape, string])[] = [
  ['ridge', 'a long ridge'],
  ['escarpment', 'the edge of a plateau'],
  ['hill', 'a round hill'],
];
const SIDES: readonly (readonly [SideOfCrest, string])[] = [
  ['upwind', 'on the side that the wind meets'],
  ['downwind', 'on the side behind the crest'],
];

/** Speed-up over a hill, worked out from what can be paced or read off a map; the person takes it over or leaves it. */
export function HillHelper({ shelter }: { readonly shelter: Shelter }) {
  const { site } = useOpenProject();
  const system = useWorkbench((state) => state.system);
  const [shape, setShape] = useState<HillShape>('hill');
  const [side, setSide] = useState<SideOfCrest>('upwind');
  const [texts, setTexts] = useState({ heightFt: '', halfLengthFt: '', distanceFt: '' });
  const feet = (text: string): number => {
    const reading = readMeasure('feet', text, system);
    return reading.ok ? reading.value : NaN;
  };
  const box = (name: keyof typeof texts, label: string) => (
    <Box label={label} text={texts[name]} onText={(text) => setTexts({ ...texts, [name]: text })} />
  );
  const exposure = site.exposure.value;
  const found =
    exposure === null
      ? null
      : explainHill({
          shape,
          side,
          exposure,
          heightFt: feet(texts.heightFt),
          halfLengthFt: feet(texts.halfLengthFt),
          distanceFt: feet(texts.distanceFt),
          roofHeightFt: shelter.meanRoofHeightIn / 12,
        });
  return (
    <details className="helper">
      <summary>work out Kzt of a hill</summary>
      <p className="sentence">
        It stands on <Choice label="Hill: shape" value={shape} choices={SHAPES} onChoose={setShape} />,{' '}
        <Choice label="Hill: side" value={side} choices={SIDES} onChoose={setSide} />,{' '}
        {box('distanceFt', 'Hill: from the crest')} from the crest. The crest is {box('heightFt', 'Hill: height')} above
        the country before it, and half way down {box('halfLengthFt', 'Hill: crest to half height')} before the crest.
      </p>
      {exposure === null && <p className="aside">How open the site is to the wind is not given yet.</p>}
      {found && (
        <>
          <p className="sentence">
            Kzt is {found.value.toFixed(3)}.{' '}
            <CommandButton
              words="use it"
              name="Kzt of the hill"
              perform={(p) => setAt(p, 'site.kzt', { value: found.value, givenBy: 'owner', date: today() })}
            />
          </p>
          <StepList steps={found.steps} label="Steps of Kzt" />
        </>
      )}
    </details>
  );
}

/** A speed of an old drawing in today's terms: to be compared, never taken over. */
export function OlderSpeedHelper() {
  const system = useWorkbench((state) => state.system);
  const [text, setText] = useState('');
  const reading = readMeasure('mph', text, system);
  const found = reading.ok ? explainOlderSpeed(reading.value) : null;
  return (
    <details className="helper">
      <summary>read a fastest-mile speed of an older code</summary>
      <p className="sentence">
        The old papers say <Box label="Fastest-mile wind speed" text={text} onText={setText} />.
      </p>
      {found && !found.value.ok && <p className="aside">{say(found.value.reason)}</p>}
      {found?.value.ok && (
        <>
          <p className="sentence">
            That is {showQuantity({ value: found.value.strengthMph, unit: 'mph' }, system)} as today’s maps count.
          </p>
          <p className="caution">
            <strong>Mind:</strong> {say(found.value.caution)}
          </p>
          <StepList steps={found.steps} label="Steps of the older speed" />
        </>
      )}
    </details>
  );
}

interface BoxProps {
  readonly label: string;
  readonly text: string;
  readonly onText: (text: string) => void;
}

function Box({ label, text, onText }: BoxProps) {
  return (
    <input
      type="text"
      className="plain-box short"
      aria-label={label}
      placeholder="not given"
      value={text}
      onChange={({ currentTarget }) => onText(currentTarget.value)}
    />
  );
}

interface ChoiceProps<T extends string> {
  readonly label: string;
  readonly value: T;
  readonly choices: readonly (readonly [T, string])[];
  readonly onChoose: (value: T) => void;
}

function Choice<T extends string>({ label, value, choices, onChoose }: ChoiceProps<T>) {
  const id = useId();
  return (
    <span className="yours-field">
      <select
        id={id}
        className="yours"
        aria-label={label}
        value={value}
        onChange={({ currentTarget }) => {
          const chosen = choices.find(([each]) => each === currentTarget.value);
          if (chosen) onChoose(chosen[0]);
        }}
      >
        {choices.map(([each, words]) => (
          <option key={each} value={each}>
            {words}
          </option>
        ))}
      </select>
    </span>
  );
}
