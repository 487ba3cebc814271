import { clause } from '../../../data/sources.ts';
import type { RafterGeometry } from '../../geometry/shelter.ts';
import type { Combination } from '../../loads/combination.ts';
import { earthquakeOf, highestFt } from '../../loads/earthquake.ts';
import type { RafterRun } from '../../loads/rafter-run.ts';
import type { TwoWeights } from '../../loads/weights.ts';
import { message } from '../../message.ts';
import { put, type Note } from '../../note.ts';
import { quantity } from '../../units.ts';
import type { RoofCheckContext } from './context.ts';
import type { RafterCase } from './rafter-loading.ts';

/** A rafter in an earthquake: what it and its strip of roof weigh, and the share of that which pushes across the lines. */
export interface Shaken {
  readonly pushShare: number;
  readonly verticalShare: number;
  /** heavy dead load and the snow that moves with it [lb] */
  readonly massLb: number;
}

/** @param dead  square to the slope on each part [lb/in] */
export function shakenRafter(
  { project, shelter, site }: RoofCheckContext,
  rafter: RafterGeometry,
  run: RafterRun,
  dead: readonly TwoWeights[],
): Shaken | null {
  const earthquake = earthquakeOf(project.site, highestFt(shelter), site.figures.balancedSnow.value);
  if (!earthquake) return null;
  const { pushShare, verticalShare, movingSnowPsf } = earthquake;
  const deadLb = run.parts.reduce((sum, p, i) => sum + (dead[i]!.heavy / run.cos) * (p.toIn - p.fromIn), 0);
  const snowLb = (movingSnowPsf * rafter.tributaryWidthIn * rafter.runIn) / 144;
  return { pushShare, verticalShare, massLb: deadLb + snowLb };
}

const SHAKEN = 'seismic';

/** The earthquake as a case of its own: it loads the rafter by its vertical effect alone, and pushes at its ties. */
export const shakenCase = (run: RafterRun, { verticalShare }: Shaken): RafterCase => {
  const none = run.parts.map(() => ({ low: 0, high: 0 }));
  const words = message('caseSeismicRafter');
  return {
    loadCase: { id: SHAKEN, kind: 'seismic', words, swaysAlong: false, verticalShare },
    isWind: false,
    loads: none,
    psf: none,
    steps: () => [],
  };
};

/** Factor of the earthquake in a combination; 0 where there is none. */
const shakenFactor = ({ factors }: Pick<Combination, 'factors'>): number =>
  factors.find((f) => f.caseId === SHAKEN)?.factor ?? 0;

/**
 * Level push of a rafter and its strip of roof in an earthquake, whole on each line that may hold it (own rule, safe side).
 * @returns H [lb]
 * @source ASCE7 12.8 (7-16)
 */
export function shakenPush(shaken: Shaken | null, combination: Pick<Combination, 'factors'>, note?: Note): number {
  const factor = shakenFactor(combination);
  if (!shaken || factor === 0) return 0;
  const push = factor * shaken.pushShare * shaken.massLb;
  note?.({
    symbol: 'H',
    words: 'level push of the rafter and its strip of roof in an earthquake',
    formula: 'f × e × W',
    put: [
      put('f', factor, '1', 'factor of the earthquake in this combination'),
      put('e', shaken.pushShare, '1', 'share of the weight that pushes sideways'),
      put('W', shaken.massLb, 'lb', 'dead load of the rafter and its strip, and the snow that moves with it'),
    ],
    result: quantity(push, 'lb'),
    clause: clause('ASCE7', '12.8'),
  });
  return push;
}
