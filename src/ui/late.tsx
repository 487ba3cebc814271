import { useEffect, type ComponentType } from 'react';
import { useStore } from 'zustand';
import { createStore } from 'zustand/vanilla';

/** Every late part of the page, in the order in which it is named. */
const parts: (() => Promise<void>)[] = [];

interface Arrival<Code> {
  readonly code: Code | null;
  readonly hasFailed: boolean;
}

/** What a fetch brings, to be read wherever it is there, and the way to ask for it. */
function arrivalOf<Code extends object>(fetchCode: () => Promise<Code>) {
  const arrival = createStore<Arrival<Code>>(() => ({ code: null, hasFailed: false }));
  const bring = async (): Promise<void> => {
    if (arrival.getState().code) return;
    arrival.setState({ hasFailed: false });
    try {
      const code = await fetchCode();
      arrival.setState({ code });
    } catch {
      arrival.setState({ hasFailed: true });
    }
  };
  parts.push(bring);
  return { arrival, bring };
}

/** What is there already is shown first. */
function soonAfter(bring: () => Promise<void>): () => void {
  const soon = setTimeout(() => void bring(), 0);
  return () => clearTimeout(soon);
}

/** Code that comes after the first figures: null until it is there. */
export function lateCode<Code extends object>(fetchCode: () => Promise<Code>): () => Code | null {
  const { arrival, bring } = arrivalOf(fetchCode);
  return function useLateCode() {
    useEffect(() => soonAfter(bring), []);
    return useStore(arrival, ({ code }) => code);
  };
}

/**
 * A part of the page that is opened by a hand, so that its code can come after the first figures. Once it is there it
 * shows at once; until then a few words stand in its place, and a way to try again when it could not be fetched.
 */
export function late<Props extends object>(fetchPart: () => Promise<ComponentType<Props>>): ComponentType<Props> {
  const { arrival, bring } = arrivalOf(async () => ({ Part: await fetchPart() }));
  return function Late(props: Props) {
    const { code, hasFailed } = useStore(arrival);
    useEffect(() => soonAfter(bring), []);
    if (code) return <code.Part {...props} />;
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
