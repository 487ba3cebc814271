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

/** The keys that a telephone's number pad lacks. Shown on touch screens only; the box keeps the focus. */
export function KeyRow({ boxId, keys, onType }: KeyRowProps) {
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
    <span className="key-row" role="group" aria-label="Keys for this field">
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
