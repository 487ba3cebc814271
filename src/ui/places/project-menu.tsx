import { useId, useRef, useState } from 'react';
import type { NewId, Project } from '../../engine/project/model.ts';
import { leanToTemplate } from '../../engine/project/templates/lean-to.ts';
import { shedTemplate } from '../../engine/project/templates/shed.ts';
import { PaceOut } from '../frame/pace-out.tsx';
import type { Opening } from '../state/opening.ts';
import type { OnShelf } from '../state/shelf.ts';
import { newId } from '../state/use-workbench.ts';
import { EXAMPLES } from './examples.ts';
import { saveOpenProject } from './save-file.ts';

/** A template counts its members from 1; only the project's own id must be new on this device. */
function numbered(): (prefix: string) => string {
  const count = new Map<string, number>();
  return (prefix) => {
    const next = (count.get(prefix) ?? 0) + 1;
    count.set(prefix, next);
    return `${prefix}-${next}`;
  };
}

const fresh = (template: (newId: NewId) => Project): Project => {
  const project = template(numbered());
  return { ...project, title: { ...project.title, id: `project-${newId()}` } };
};

const whenSaved = new Intl.DateTimeFormat('en-US', { dateStyle: 'medium', timeStyle: 'short' });

/** Save, open, start anew: everything that concerns the project as a whole. */
export function ProjectMenu({ opening }: { readonly opening: Opening }) {
  const id = useId();
  const file = useRef<HTMLInputElement>(null);
  const paceOut = useRef<HTMLDialogElement>(null);
  const [kept, setKept] = useState<readonly OnShelf[]>([]);

  return (
    <>
      <button type="button" className="tool" popoverTarget={id}>
        file
      </button>
      <input
        ref={file}
        type="file"
        hidden
        accept=".json,application/json"
        aria-label="Open a project file"
        onChange={async ({ currentTarget }) => {
          const chosen = currentTarget.files?.[0];
          if (chosen) await opening.openText(await chosen.text(), chosen.name);
          currentTarget.value = ''; // the same file can be chosen again after it was mended
        }}
      />
      <PaceOut dialog={paceOut} newProject={(build) => void opening.openProject(fresh(build))} />
      <div
        id={id}
        popover="auto"
        className="menu"
        onToggle={({ newState }) => {
          if (newState === 'open') opening.onShelf().then(setKept, () => setKept([]));
        }}
      >
        <h2>This project</h2>
        <ul>
          <Item menu={id} words="Save to a file" onClick={saveOpenProject} />
          <Item menu={id} words="Open a file" onClick={() => file.current?.click()} />
        </ul>
        <h2>Start a new one</h2>
        <ul>
          <Item menu={id} words="Pace out your own" onClick={() => paceOut.current?.showModal()} />
          <Item
            menu={id}
            words="Free-standing shed roof"
            onClick={() => void opening.openProject(fresh(shedTemplate))}
          />
          <Item menu={id} words="Lean-to" onClick={() => void opening.openProject(fresh(leanToTemplate))} />
        </ul>
        <h2>Look at an example</h2>
        <ul>
          {EXAMPLES.map((example) => (
            <Item
              key={example.file}
              menu={id}
              words={example.words}
              onClick={() => void opening.openExample(example.file)}
            />
          ))}
        </ul>
        {kept.length > 0 && (
          <>
            <h2>On this device</h2>
            <ul>
              {kept.map((each) => (
                <Item
                  key={each.id}
                  menu={id}
                  words={each.name}
                  note={`saved ${whenSaved.format(each.savedAt)}`}
                  onClick={() => void opening.openShelved(each.id)}
                />
              ))}
            </ul>
          </>
        )}
      </div>
    </>
  );
}

interface ItemProps {
  /** id of the menu, which closes when something is chosen */
  readonly menu: string;
  readonly words: string;
  readonly note?: string;
  readonly onClick: () => void;
}

function Item({ menu, words, note, onClick }: ItemProps) {
  return (
    <li>
      <button type="button" popoverTarget={menu} popoverTargetAction="hide" onClick={onClick}>
        {words} {note !== undefined && <span className="quiet">{note}</span>}
      </button>
    </li>
  );
}
