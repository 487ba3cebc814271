import { YoursChoice } from '../../fields/choice.tsx';
import { Yours } from '../../fields/yours.tsx';
import { useOpenProject } from '../../state/use-workbench.ts';
import { JointSentences } from '../joint-sentences.tsx';
import type { Names } from '../places.ts';
import { SawnSentence } from '../sawn-sentences.tsx';

const SHIMS = [
  { value: 'shims', words: 'shims under it' },
  { value: 'tapered', words: 'a tapered strip' },
  { value: 'seats', words: 'seats cut into the log' },
  { value: 'none', words: 'nothing' },
];

/** The strip on each beam that makes the rafter seats level. */
export function StripPiece({ names }: { readonly names: Names }) {
  const { supportLines } = useOpenProject();
  return (
    <>
      {supportLines.map((line) => {
        if (line.kind !== 'frame' || !line.strip) return null;
        const path = `supportLines[${line.id}].strip`;
        const of = `Strip on ${names.get(line.id) ?? line.id}`;
        return (
          <div key={line.id}>
            <p className="sentence">
              {of}: <Yours path={`${path}.thicknessIn`} label={`${of}: thickness`} /> thick, levelled with{' '}
              <YoursChoice path={`${path}.shims`} label={`${of}: levelled with`} choices={SHIMS} />.
            </p>
            {line.strip.stock?.kind === 'sawn' && (
              <SawnSentence path={`${path}.stock`} of={of} stock={line.strip.stock} />
            )}
          </div>
        );
      })}
      <JointSentences kind="stripBeam" />
    </>
  );
}
