import './log.css';
import { RULES } from '../../data/rules.ts';
import type { CheckRow } from '../../engine/evaluation.ts';
import { look, useFrameView } from '../frame/frame-view.ts';
import { useIsPhone } from '../frame/paper-size.ts';

/** The word that draws the thinnest log, and what its lines mean. */
export function SilhouetteSwitch({ wholeRow = null }: { readonly wholeRow?: CheckRow | null }) {
  const isPhone = useIsPhone();
  const isShown = useFrameView(({ silhouette }) => silhouette) ?? !isPhone;
  return (
    <p className="silhouette-words">
      <button type="button" className="tool" aria-pressed={isShown} onClick={() => look({ silhouette: !isShown })}>
        {isShown ? 'hide the thinnest log' : 'show the thinnest log'}
      </button>
      {isShown && (
        <>
          {' '}
          Dashed: the thinnest log whose sections would just pass with today’s forces, in bending, shear, crushing and
          the depth of their cuts. Dash and dot: the same for the whole piece,{' '}
          {wholeRow ? RULES[wholeRow.ruleId].words.toLowerCase() : 'sag and buckling'}. Hatched: wood that is missing,
          drawn to half a log at most. Trying such a log works the forces out again. Where no line is drawn, thickness
          there alone decides nothing.
        </>
      )}
    </p>
  );
}
