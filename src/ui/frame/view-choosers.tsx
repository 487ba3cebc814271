import type { LineGeometry, Shelter } from '../../engine/geometry/shelter.ts';
import { look, useFrameView, type SheetView } from './frame-view.ts';

export const VIEWS: readonly { readonly view: SheetView; readonly words: string }[] = [
  { view: 'front', words: 'Front view' },
  { view: 'section', words: 'Section' },
  { view: 'plan', words: 'Plan' },
];

/** The frame lines in the order of their letters. */
const frameLines = (shelter: Shelter): readonly LineGeometry[] =>
  shelter.lines.filter(({ kind }) => kind === 'frame').toSorted((a, b) => a.label.localeCompare(b.label));

/** The chosen line, else the first that has a frame. */
export function useChosenLine(shelter: Shelter): LineGeometry | undefined {
  const chosen = useFrameView((state) => state.lineId);
  const frames = frameLines(shelter);
  return frames.find(({ id }) => id === chosen) ?? frames[0];
}

export function ViewTabs({ large }: { readonly large: SheetView }) {
  return (
    <fieldset className="chooser views">
      <legend className="unseen">View</legend>
      {VIEWS.map(({ view, words }) => (
        <label key={view} className={view === large ? 'chosen' : undefined}>
          <input
            type="radio"
            className="unseen"
            name="view"
            checked={view === large}
            onChange={() => look({ large: view })}
          />
          {words}
        </label>
      ))}
    </fieldset>
  );
}

export function LineChooser({
  shelter,
  chosen,
}: {
  readonly shelter: Shelter;
  readonly chosen: LineGeometry | undefined;
}) {
  const frames = shelter.lines
    .filter(({ kind }) => kind === 'frame')
    .toSorted((a, b) => a.label.localeCompare(b.label));
  if (frames.length < 2) return <span> of line {chosen?.label}</span>;
  return (
    <fieldset className="chooser lines">
      <legend>of line</legend>
      {frames.map(({ id, label }) => (
        <label key={id} className={id === chosen?.id ? 'chosen' : undefined}>
          <input
            type="radio"
            className="unseen"
            name="line"
            checked={id === chosen?.id}
            onChange={() => look({ lineId: id })}
          />
          {label}
        </label>
      ))}
    </fieldset>
  );
}
