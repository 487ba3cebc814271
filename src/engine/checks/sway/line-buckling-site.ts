import { clause } from '../../../data/sources.ts';
import { breaks, outside } from '../../check.ts';
import type { LineResponse } from '../../frame/line-frame.ts';
import { message } from '../../message.ts';
import { put } from '../../note.ts';
import { quantity } from '../../units.ts';
import type { LineCheckContext } from '../line-context.ts';
import type { CheckSite } from '../site-of-check.ts';

/** Under this many times its loads until it sways a line is called soft, under the other it is not judged (own rules). */
const SOFT = 3;
const LEAST = 1.5;

/**
 * How many times the loads of a combination may grow until the line sways over; asked wherever nothing else holds it.
 * @source MECHANICS elastic buckling of a plane frame; own rule: warned under 3, outside under 1.5, failed at or under 1
 */
export function lineBucklingSite({ line }: LineCheckContext): CheckSite<LineResponse> {
  const factorIn = (r: LineResponse): number => r.buckling?.swayFactor ?? Infinity;
  return {
    ruleId: 'frame.buckling',
    memberId: line.id,
    place: { kind: 'whole', name: '' },
    unit: '1',
    purpose: 'strength',
    applies: (r) => !r.held && Number.isFinite(factorIn(r)),
    stops: (r) => {
      const factor = factorIn(r);
      if (factor >= LEAST) return null;
      const values = { line: line.label, factor };
      return factor > 1
        ? outside(message('swaysTooSoon', { ...values, least: LEAST }))
        : breaks(message('swaysUnderLoad', values));
    },
    demand: (_, note) => {
      note?.({
        symbol: 'n',
        words: 'the loads of this combination, as they are',
        formula: 'n',
        put: [put('n', 1, '1', 'once')],
        result: quantity(1, '1'),
        clause: clause('OWN', 'the line must hold more than its loads once'),
      });
      return 1;
    },
    capacity: (r, note) => {
      const { envelope, share, swayFactor } = r.buckling!;
      note?.({
        symbol: 'λ',
        words: 'so many times the loads of this combination until the line sways over',
        formula: 'λe / s',
        put: [
          put('λe', envelope.swayFactor, '1', 'until the line sways under the hardest thrust that its braces so bring'),
          put('s', share, '1', 'greatest share of that thrust in this combination'),
        ],
        result: quantity(swayFactor, '1'),
        clause: clause('MECHANICS', 'elastic buckling of a plane frame, stiffness for stability'),
      });
      return swayFactor;
    },
    reason: (r) => (factorIn(r) < SOFT ? message('swaysSoftly', { line: line.label, least: SOFT }) : null),
  };
}
