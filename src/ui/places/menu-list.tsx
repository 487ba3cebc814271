import { useRef } from 'react';
import { createPortal } from 'react-dom';
import type { NewId, Project } from '../../engine/project/model.ts';
import { gableTemplate } from '../../engine/project/templates/gable.ts';
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

export interface MenuListProps {
  /** id of the menu, which closes when something is chosen */
  readonly menu: string;
  readonly opening: Opening;
  /** what lies on this device */
  readonly kept: readonly OnShelf[];
  readonly onChooseFile: () => void;
}

/** What the menu offers. */
export function MenuList({ menu, opening, kept, onChooseFile }: MenuListProps) {
  const paceOut = useRef<HTMLDialogElement>(null);
  const start = (template: (newId: NewId) => Project): void => void opening.openProject(fresh(template));
  return (
    <>
      <h2>This project</h2>
      <ul>
        <Item menu={menu} words="Save to a file" onClick={saveOpenProject} />
        <Item menu={menu} words="Open a file" onClick={onChooseFile} />
      </ul>
      <h2>Start a new one</h2>
      <ul>
        <Item menu={menu} words="Pace out your own" onClick={() => paceOut.current?.showModal()} />
        <Item menu={menu} words="Free-standing shed roof" onClick={() => start(shedTemplate)} />
        <Item menu={menu} words="Free-standing gable" onClick={() => start(gableTemplate)} />
        <Item menu={menu} words="Lean-to" onClick={() => start(leanToTemplate)} />
      </ul>
      <h2>Look at an example</h2>
      <ul>
        {EXAMPLES.map(({ file, words }) => (
          <Item key={file} menu={menu} words={words} onClick={() => void opening.openExample(file)} />
        ))}
      </ul>
      {kept.length > 0 && (
        <>
          <h2>On this device</h2>
          <ul>
            {kept.map(({ id, name, savedAt }) => (
              <Item
                key={id}
                menu={menu}
                words={name}
                note={`saved ${whenSaved.format(savedAt)}`}
                onClick={() => void opening.openShelved(id)}
              />
            ))}
          </ul>
        </>
      )}
      {/* a leaf inside the menu would vanish with it */}
      {createPortal(<PaceOut dialog={paceOut} newProject={start} />, document.body)}
    </>
  );
}

interface ItemProps {
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
