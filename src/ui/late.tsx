import { useEffect, type ComponentType } from 'react';
import { useStore } from 'zustand';
import { createStore } from 'zustand/vanilla';

/** Every late part of the page, in the order in which it is named. */
const parts: (() => Promise<void>)[] = [];

interface Arrival<Props> {
  readonly Part: ComponentType<Props> | null;
  readonly hasFailed: boolean;
}

/**
 * A part of the page that is opened by a hand, so that its code can come after the first figures. Once it is there it
 * shows at once; until then a few words stand in its place, and a way to try again when it could not be fetched.
 */
export function late<Props extends object>(fetchPart: () => Promise<ComponentType<Props>>): ComponentType<Props> {
  const arrival = createStore<Arrival<Props>>(() => ({ Part: null, hasFailed: false }));
  const bring = async (): Promise<void> => {
    if (arrival.getState().Part) return;
    arrival.setState({ hasFailed: false });
    try {
      arrival.setState({ Part: await fetchPart() });
    } catch {
      arrival.setState({ hasFailed: true });
    }
  };
  parts.push(bring);
  return function Late(props: Props) {
    const { Part, hasFailed } = useStore(arrival);
    useEffect(() => {
      // what is there already is shown first
      const soon = setTimeout(() => void bring(), 0);
      return () => clearTimeout(soon);
    }, []);
    if (Part) return <Part {...props} />;
    if (!hasFailed) return <p className="quiet">opening</p>;
    return (
      <p>
        This part of the page could not be fetched.{' '}
        <button type="button" className="tool" onClick={() => void bring()}>
          try again
        </button>
      </p>
    );
  };
}

/** Fetches the late parts one after another, so that a click seldom waits for one. */
export async function bringLateParts(): Promise<void> {
  for (const bring of parts) await bring();
}
