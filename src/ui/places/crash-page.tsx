import { Component, type ReactNode } from 'react';
import { present } from '../state/use-workbench.ts';
import { saveOpenProject } from './save-file.ts';

interface Crash {
  readonly error: Error | null;
}

/** When drawing the page breaks, the person still gets their project: last thing on the screen that may fail. */
export class CrashPage extends Component<{ readonly children: ReactNode }, Crash> {
  override state: Crash = { error: null };

  static getDerivedStateFromError(error: unknown): Crash {
    return { error: error instanceof Error ? error : new Error(String(error)) };
  }

  override render(): ReactNode {
    const { error } = this.state;
    if (!error) return this.props.children;
    const { project } = present();
    return (
      <main className="crash">
        <h1>The page broke</h1>
        <p>
          Something in this program failed while drawing the page. Your project is whole: take it with you as a file.
        </p>
        <p>
          {project && (
            <button type="button" className="tool" onClick={saveOpenProject}>
              save the project to a file
            </button>
          )}{' '}
          <button type="button" className="tool" onClick={() => location.reload()}>
            load the page again
          </button>
        </p>
        <p className="quiet">
          {error.name}: {error.message}
        </p>
      </main>
    );
  }
}
