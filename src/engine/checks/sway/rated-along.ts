import { notGiven } from '../../check.ts';
import type { CheckRow } from '../../evaluation.ts';
import { message } from '../../message.ts';
import type { Lateral } from '../../project/model.ts';
import { quantity } from '../../units.ts';
import { plainRow } from '../site-of-check.ts';
import { ratedVerdict } from './sway-checks.ts';

/** A frame line that a building or a rated wall holds along its length. */
export interface HeldLine {
  readonly lineId: string;
  readonly label: string;
  readonly system: Lateral;
  /** what must hold it, allowable-stress level; null where its forces are not known [lb] */
  readonly demandLb: number | null;
}

/**
 * One rating holds all the lines it names: each of their rows asks for the sum of what they lean on it. The greatest of
 * every line is taken, whether they come together or not (safe side).
 */
export function ratedAlongRows(held: readonly HeldLine[]): readonly CheckRow[] {
  return held.map(({ lineId, system }) => {
    const sharing = held.filter((other) => other.system === system);
    const unknown = sharing.find((other) => other.demandLb === null);
    const verdict = unknown
      ? notGiven(message('lineLeansUnknown', { line: unknown.label }))
      : ratedVerdict(
          quantity(
            sharing.reduce((sum, other) => sum + (other.demandLb ?? 0), 0),
            'lb',
          ),
          [system],
          system.by!,
        );
    return plainRow('sway.alongRated', lineId, { kind: 'whole', name: '' }, verdict);
  });
}
