import { useSyncExternalStore } from 'react';

interface KeyRowProps {
  /** id of the text box that the keys write into */
  readonly boxId: string;
  readonly keys: readonly string[];
  readonly onType: (text: string) => void;
}

const WRITES: Readonly<Record<string, string>> = {
  space: ' ',
  '/': '/',
  '.': '.',
  '°': '°',
  '%': ' %',
  girth: 'girth ',
};

/** The screen's keyboard covers the lower edge of the page: the part of the page that is still seen tells how much. */
const seen = (): VisualViewport | null => window.visualViewport;
const listen = (changed: () => void): (() => void) => {
  seen()?.addEventListener('resize', changed);
  seen()?.addEventListener('scroll', changed);
  return () => {
    seen()?.removeEventListener('resize', changed);
    seen()?.removeEventListener('scroll', changed);
  };
};
const coveredPx = (): number => {
  const view = seen();
  return view ? Math.max(0, Math.round(window.innerHeight - view.height - view.offsetTop)) : 0;
};

/** The keys that a telephone's number pad lacks. Shown on touch screens only; the box keeps the focus. */
export function KeyRow({ boxId, keys, onType }: KeyRowProps) {
  const covered = useSyncExternalStore(listen, coveredPx);
  const write = (key: string): void => {
    const box = document.getElementById(boxId);
    if (!(box instanceof HTMLInputElement)) return;
    const text = WRITES[key] ?? ` ${key} `;
    const [from, to] = key === 'girth' ? [0, 0] : [box.selectionStart ?? 0, box.selectionEnd ?? 0];
    const before = box.value.slice(0, from);
    const after = box.value.slice(to);
    onType(`${before.endsWith(' ') ? before + text.trimStart() : before + text}${after}`);
  };
  return (
    <span className="key-row" style={{ insetBlockEnd: covered }}>
      {keys.map((key) => (
        <button
          key={key}
          type="button"
          tabIndex={-1}
          onPointerDown={(event) => event.preventDefault()}
          onClick={() => write(key)}
        >
          {key}
        </button>
      ))}
    </span>
  );
}
