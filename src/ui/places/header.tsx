import { Yours } from '../fields/yours.tsx';
import type { Opening } from '../state/opening.ts';
import { lastDraft } from '../state/open-work.ts';
import { savingInWords } from '../state/saving.ts';
import { acts, useWorkbench } from '../state/use-workbench.ts';
import type { UnitSystem } from '../units/system.ts';
import { Help } from './help.tsx';
import { PLACES, type PlaceId } from './place.ts';
import { ProjectMenu } from './project-menu.tsx';

/** The top line: what is open and whether it is kept, the five places, the few tools that belong to no place. */
export function Header({ place, opening }: { readonly place: PlaceId; readonly opening: Opening }) {
  const isOpen = useWorkbench(({ project }) => project !== null);
  const saving = useWorkbench((state) => state.saving);
  return (
    <header className="top">
      <h1 className="unseen">Log shelter workbench</h1>
      <div className="title">
        {isOpen && <Yours path="title.name" label="Name of the project" kind="text" />}
        <span
          className={saving.kind === 'failed' || saving.kind === 'elsewhere' ? 'marked' : 'quiet'}
          aria-live="polite"
        >
          {isOpen && savingInWords(saving)}
        </span>
      </div>
      <nav aria-label="Places" className="places">
        {PLACES.map(({ id, words }) => (
          <a key={id} href={`#${id}`} aria-current={id === place ? 'page' : undefined}>
            {words}
          </a>
        ))}
      </nav>
      <div className="tools">
        <UnitSwitch />
        <UndoRedo />
        <ProjectMenu opening={opening} />
        <Help />
      </div>
    </header>
  );
}

const SYSTEMS: readonly { readonly system: UnitSystem; readonly short: string; readonly words: string }[] = [
  { system: 'feet', short: 'ft in', words: 'feet and inches, pounds' },
  { system: 'metric', short: 'm', words: 'metres, kilonewtons' },
];

function UnitSwitch() {
  const shown = useWorkbench((state) => state.system);
  return (
    <fieldset className="units">
      <legend className="unseen">Units</legend>
      {SYSTEMS.map(({ system, short, words }) => (
        <label key={system} className={system === shown ? 'chosen' : undefined}>
          <input
            type="radio"
            name="units"
            className="unseen"
            checked={system === shown}
            onChange={() => acts().setSystem(system)}
          />
          {short}
          <span className="unseen">: {words}</span>
        </label>
      ))}
    </fieldset>
  );
}

function UndoRedo() {
  const undoName = useWorkbench(({ drafts, done }) => lastDraft(drafts)?.name ?? done.at(-1)?.name ?? null);
  const redoName = useWorkbench(({ undone }) => undone.at(-1)?.name ?? null);
  return (
    <>
      <button
        type="button"
        className="tool"
        disabled={undoName === null}
        title={undoName === null ? undefined : `undo: ${undoName}`}
        onClick={() => acts().undo()}
      >
        undo
      </button>
      <button
        type="button"
        className="tool"
        disabled={redoName === null}
        title={redoName === null ? undefined : `redo: ${redoName}`}
        onClick={() => acts().redo()}
      >
        redo
      </button>
    </>
  );
}
