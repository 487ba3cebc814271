import { useEffect, useId, useRef, type KeyboardEvent } from 'react';
import { say } from '../../data/words/say.ts';
import type { LoadPicture } from '../../engine/load-pictures/picture.ts';
import { sayCase } from '../cord/combination.ts';
import type { Names } from '../cord/places.ts';
import { lookAtLoads } from './loads-view.ts';

interface CaseStepsProps {
  readonly pictures: readonly LoadPicture[];
  readonly at: number;
  readonly names: Names;
}

const KEYS: Readonly<Record<string, (at: number, count: number) => number>> = {
  ArrowRight: (at, count) => (at + 1) % count,
  ArrowLeft: (at, count) => (at + count - 1) % count,
  Home: () => 0,
  End: (_, count) => count - 1,
};

/** From case to case: by two buttons, by the arrow keys on them, or straight from the list of all. */
export function CaseSteps({ pictures, at, names }: CaseStepsProps) {
  const listId = useId();
  const next = useRef<HTMLButtonElement>(null);
  // what was opened from below the drawing, on a phone, is brought into sight
  useEffect(() => next.current?.focus(), []);
  const go = (to: number): void => {
    const picture = pictures[to];
    if (picture) lookAtLoads({ by: 'case', id: picture.id, forLine: picture.forLine, actsOn: picture.actsOn });
  };
  const step = (key: string): void => {
    const to = KEYS[key]?.(at, pictures.length);
    if (to !== undefined) go(to);
  };
  const onKeyDown = (event: KeyboardEvent): void => {
    if (!(event.key in KEYS)) return;
    event.preventDefault();
    step(event.key);
  };
  return (
    <div className="loads-steps">
      <button type="button" className="tool" onClick={() => step('ArrowLeft')} onKeyDown={onKeyDown}>
        previous case
      </button>
      <button ref={next} type="button" className="tool" onClick={() => step('ArrowRight')} onKeyDown={onKeyDown}>
        next case
      </button>
      <label htmlFor={listId}>or</label>
      <select id={listId} aria-label="Load case" value={at} onChange={(event) => go(Number(event.target.value))}>
        {groupsOf(pictures).map(({ words, places }) => (
          <optgroup key={words} label={words}>
            {places.map((place) => (
              <option key={place} value={place}>
                {pictures[place] && nameOfPicture(pictures[place], names)}
              </option>
            ))}
          </optgroup>
        ))}
      </select>
    </div>
  );
}

/** A case by its name, and the line for which it is drawn where lines differ. */
export function nameOfPicture({ words, forLine, actsOn }: LoadPicture, names: Names): string {
  const name = `${say(sayCase(words))}${ON_WORDS[actsOn]}`;
  return forLine === null ? name : `${name}, for ${names.get(forLine) ?? forLine}`;
}

const ON_WORDS: Readonly<Record<LoadPicture['actsOn'], string>> = {
  frame: '',
  sheet: ', on sheet and screws',
  purlins: ', on the purlins',
  rafters: ', on the rafters',
};

const KIND_WORDS: Readonly<Record<LoadPicture['kind'], string>> = {
  dead: 'Always there',
  ownLive: 'What you hang there',
  roofLive: 'Roof live load',
  snow: 'Snow',
  wind: 'Wind on the frame',
  notional: 'Sideways',
  seismic: 'Sideways',
  across: 'Sideways',
};
const ON_PARTS = 'On parts of the roof by their own areas';

interface Group {
  readonly words: string;
  readonly places: readonly number[];
}

function groupsOf(pictures: readonly LoadPicture[]): readonly Group[] {
  const named = pictures.map(({ kind, actsOn }) => (actsOn === 'frame' ? KIND_WORDS[kind] : ON_PARTS));
  return [...new Set(named)].map((words) => ({
    words,
    places: named.flatMap((each, place) => (each === words ? [place] : [])),
  }));
}
