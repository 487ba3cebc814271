import { bowOfBeam, type Bow } from '../../engine/geometry/bow.ts';
import type { BeamGeometry } from '../../engine/geometry/shelter.ts';
import { YoursChoice } from '../fields/choice.tsx';
import { Yours } from '../fields/yours.tsx';
import { useOpenProject, useWorkbench } from '../state/use-workbench.ts';
import { showLength } from '../units/show-length.ts';
import type { UnitSystem } from '../units/system.ts';
import { logUnder, traitPath } from './own.ts';

const CROWNS = [
  { value: 'up', words: 'up' },
  { value: 'down', words: 'down' },
  { value: 'side', words: 'to the side' },
];

/** How far a log beam bows, how it is laid, and what that does to it. */
export function BowSentence({ beam, name }: { readonly beam: BeamGeometry; readonly name: string }) {
  const project = useOpenProject();
  const system = useWorkbench((state) => state.system);
  const log = logUnder(project, beam.id);
  if (!log) return null;
  return (
    <p className="sentence">
      All along, the log bows by <Yours path={`logs[${log.id}].crownIn`} label={`${name}: natural bow of the log`} />,
      laid <YoursChoice path={traitPath(project, beam.id, 'crownTo')} label={`${name}: crown`} choices={CROWNS} />.{' '}
      {whatItDoes(bowOfBeam(project, beam), system)}
    </p>
  );
}

function whatItDoes({ upIn, sideIn, strayIn }: Bow, system: UnitSystem): string {
  const inches = (value: number): string => showLength(value, system, { nearest: 16, feetFrom: 'never' });
  const shown = (value: number): boolean => Math.round(value * 16) !== 0;
  const up = `${inches(Math.abs(upIn))} ${upIn > 0 ? 'up, which relieves its sag but is not counted' : 'down, which counts as sag'}`;
  const side =
    strayIn === null
      ? `${inches(sideIn)} to the side until somebody has looked how far it strays, which turns it on its posts`
      : `${inches(sideIn)} to the side, which turns it on its posts`;
  const parts = [...(shown(upIn) ? [up] : []), ...(shown(sideIn) ? [side] : [])];
  return parts.length === 0 ? 'It lies straight.' : `As a beam it lies ${parts.join(', and ')}.`;
}
