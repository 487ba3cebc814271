import type { Fault, Message } from '../../engine/message.ts';
import type { Opening } from '../state/opening.ts';
import { acts, say, useWorkbench } from '../state/use-workbench.ts';
import { saveOpenProject } from './save-file.ts';

/** What a person should know before reading on: kept elsewhere, not kept, unfinished, refused. Polite, above the place. */
export function Notices({ opening }: { readonly opening: Opening }) {
  return (
    <div className="notices" aria-live="polite">
      <Saving opening={opening} />
      <Missing />
      <Unfinished />
      <RefusedChange />
      <NoFigures />
      <Told />
    </div>
  );
}

function Saving({ opening }: { readonly opening: Opening }) {
  const saving = useWorkbench((state) => state.saving);
  if (saving.kind === 'failed') {
    return (
      <p>
        <span className="marked">This device does not keep the project</span> ({saving.why}).{' '}
        <button type="button" className="tool" onClick={saveOpenProject}>
          save it to a file
        </button>
      </p>
    );
  }
  if (saving.kind !== 'elsewhere') return null;
  return (
    <p>
      <span className="marked">This project was changed in another tab.</span> Nothing is written over. Go on here with{' '}
      <button type="button" className="tool" onClick={opening.keepCopy}>
        a copy of what is on this screen
      </button>{' '}
      or with{' '}
      <button type="button" className="tool" onClick={() => void opening.takeOther()}>
        what the other tab saved
      </button>
    </p>
  );
}

function Missing() {
  const missing = useWorkbench((state) => state.missing);
  if (!missing) return null;
  return (
    <p>
      <span className="marked">The program is not complete yet.</span> {say(missing)} Until it is there the figures on
      the screen stand, and every change waits.{' '}
      <button type="button" className="tool" onClick={acts().askForProgram}>
        try again
      </button>
    </p>
  );
}

function Unfinished() {
  const drafts = useWorkbench((state) => state.drafts);
  const typingIn = useWorkbench((state) => state.typingIn);
  const entries = Object.entries(drafts).filter(([path]) => path !== typingIn);
  if (entries.length === 0) return null;
  return (
    <ul className="unfinished">
      {entries.map(([path, { name, text, said }]) => (
        <li key={path}>
          <span className="marked">Not in the figures:</span> {name}
          {say(said).includes(text) ? '' : `, “${text}”`}: {say(said)}{' '}
          <button type="button" className="tool" onClick={() => acts().abandon({ path, name })}>
            drop it
          </button>
        </li>
      ))}
    </ul>
  );
}

function RefusedChange() {
  const refused = useWorkbench((state) => state.refusedChange);
  if (!refused) return null;
  return (
    <p>
      <span className="marked">Not done:</span> {refused.name}. {refused.faults.slice(0, 1).map(say)}
    </p>
  );
}

function NoFigures() {
  const faults = useWorkbench((state) => state.faults);
  if (faults.length === 0) return null;
  return (
    <>
      <p className="marked">This project has no figures yet:</p>
      <FaultList faults={faults} />
    </>
  );
}

function Told() {
  const notice = useWorkbench((state) => state.notice);
  if (notice === null) return null;
  return (
    <p>
      {notice}{' '}
      <button type="button" className="tool" onClick={() => acts().tell(null)}>
        read
      </button>
    </p>
  );
}

/** Every fault with the path where it sits. */
export function FaultList({ faults }: { readonly faults: readonly (Fault | Message)[] }) {
  return (
    <ul className="faults">
      {faults.map((each, i) => (
        <li key={i}>
          {say(each)} {'path' in each && each.path !== '' && <code>{each.path}</code>}
        </li>
      ))}
    </ul>
  );
}
