import { useId, useRef, useState } from 'react';
import type { Project } from '../../engine/project/model.ts';
import { leanToTemplate } from '../../engine/project/templates/lean-to.ts';
import { shedTemplate } from '../../engine/project/templates/shed.ts';
import type { Opening } from '../state/opening.ts';
import type { OnShelf } from '../state/shelf.ts';
import { newId, present } from '../state/use-workbench.ts';
import { EXAMPLES } from './examples.ts';
import { saveProjectFile } from './save-file.ts';

/** A template counts its members from 1; only the project's own id must be new on this device. */
function numbered(): (prefix: string) => string {
  const count = new Map<string, number>();
  return (prefix) => {
    const next = (count.get(prefix) ?? 0) + 1;
    count.set(prefix, next);
    return `${prefix}-${next}`;
  };
}

const withNewId = (project: Project): Project => ({
  ...project,
  title: { ...project.title, id: `project-${newId()}` },
});

const whenSaved = new Intl.DateTimeFormat('en-US', { dateStyle: 'medium', timeStyle: 'short' });

/** Save, open, start anew: everything that concerns the project as a whole. */
export function ProjectMenu({ opening }: { readonly opening: Opening }) {
  const id = useId();
  const menu = useRef<HTMLDivElement>(null);
  const file = useRef<HTMLInputElement>(null);
  const [kept, setKept] = useState<readonly OnShelf[]>([]);

  const then = (action: () => unknown) => (): void => {
    menu.current?.hidePopover();
    action();
  };
  const start = (template: typeof shedTemplate) => then(() => opening.openProject(withNewId(template(numbered()))));
  const item = (words: string, action: () => unknown, note?: string) => (
    <li key={words + (note ?? '')}>
      <button type="button" onClick={then(action)}>
        {words} {note !== undefined && <span className="quiet">{note}</span>}
      </button>
    </li>
  );

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
      <div
        ref={menu}
        id={id}
        popover="auto"
        className="menu"
        onToggle={({ newState }) => {
          if (newState === 'open') opening.onShelf().then(setKept, () => setKept([]));
        }}
      >
        <h2>This project</h2>
        <ul>
          {item('Save to a file', () => {
            const { project } = present();
            if (project) saveProjectFile(project);
          })}
          {item('Open a file', () => file.current?.click())}
        </ul>
        <h2>Start a new one</h2>
        <ul>
          <li>
            <button type="button" onClick={start(shedTemplate)}>
              Free-standing shed roof
            </button>
          </li>
          <li>
            <button type="button" onClick={start(leanToTemplate)}>
              Lean-to
            </button>
          </li>
        </ul>
        <h2>Look at an example</h2>
        <ul>{EXAMPLES.map((example) => item(example.words, () => opening.openExample(example.file)))}</ul>
        {kept.length > 0 && (
          <>
            <h2>On this device</h2>
            <ul>
              {kept.map((each) =>
                item(each.name, () => opening.openShelved(each.id), `saved ${whenSaved.format(each.savedAt)}`),
              )}
            </ul>
          </>
        )}
      </div>
    </>
  );
}
