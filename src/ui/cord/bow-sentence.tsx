import { bowOfBeam, type Bow } from '../../engine/geometry/bow.ts';
import type { BeamGeometry } from '../../engine/geometry/shelter.ts';
import { YoursChoice } from '../fields/choice.tsx';
import { Yours } from '../fields/yours.tsx';
import { useOpenProject, useWorkbench } from '../state/use-workbench.ts';
import { showLength } from '../units/show-length.ts';
import type { UnitSystem } from '../units/system.ts';
import { logUnder, traitPath } from './own.ts';
import { Shown } from './shown.tsx';

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
    <>
      <p className="sentence">
        All along, the log bows by <Yours path={`logs[${log.id}].crownIn`} label={`${name}: natural bow of the log`} />,
        laid <YoursChoice path={traitPath(project, beam.id, 'crownTo')} label={`${name}: crown`} choices={CROWNS} />.{' '}
        {whatItDoes(bowOfBeam(project, beam), system)}
      </p>
      <BowAndStray />
    </>
  );
}

/** The two fields of one string: how far the log bows one way, and the farthest that it strays anywhere. */
function BowAndStray() {
  return (
    <details className="how-to-measure">
      <summary>Bow and out of straight: which is which</summary>
      <Shown
        picture={
          <>
            <path d="M3 24 Q48 2 93 24 M3 38 Q48 16 93 38 M3 24 V38 M93 24 V38" />
            <path d="M3 31 H93" strokeDasharray="3 2" />
            <path className="measures" d="M48 20 V31 M46 23 L48 20 L50 23 M46 28 L48 31 L50 28" />
            <path d="M3 52 Q30 52 48 52 T70 62 T93 52 M3 64 Q30 64 48 64 T70 72 T93 64 M3 52 V64 M93 52 V64" />
            <path d="M3 58 H93" strokeDasharray="3 2" />
            <path className="measures" d="M71 58 V67 M69 61 L71 58 L73 61 M69 64 L71 67 L73 64" />
          </>
        }
      >
        Stretch a string from middle to middle of the ends. Bow (crown): how far the middle of the log stands off it to
        the one side that you lay up, down or to the side. Out of straight (crook): the farthest that the log strays
        from it anywhere, whichever way; what that is more than the bow counts to the side.
      </Shown>
    </details>
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
