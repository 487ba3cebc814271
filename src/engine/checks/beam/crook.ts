import { clause, remembered } from '../../../data/sources.ts';
import { STRAY } from '../../../data/wood/straightness.ts';
import { notGiven, outside } from '../../check.ts';
import type { LineResponse } from '../../frame/line-frame.ts';
import { bowOfBeam } from '../../geometry/bow.ts';
import { message } from '../../message.ts';
import { put } from '../../note.ts';
import { quantity } from '../../units.ts';
import type { LineCheckContext } from '../line-context.ts';
import type { CheckSite } from '../site-of-check.ts';

/**
 * How far a log beam strays from straight: said from 1 in. in 10 ft on, outside the method past the limit of piles. A log
 * that nobody has looked at is not given.
 * @source D25 straightness (from memory); OWN for what is said
 */
export function crookSites(context: LineCheckContext): readonly CheckSite<LineResponse>[] {
  return context.frame.members.beams
    .filter((beam) => beam.stick?.kind === 'round')
    .map((beam): CheckSite<LineResponse> => {
      const lengthIn = beam.toXIn - beam.fromXIn;
      const { strayIn } = bowOfBeam(context.project, beam);
      const limitIn = Math.min(STRAY.limit * lengthIn, STRAY.limitIn);
      return {
        ruleId: 'beam.crook',
        memberId: beam.id,
        place: { kind: 'whole', name: '' },
        unit: 'in',
        purpose: 'strength',
        isByDuration: true,
        stops: () => {
          if (strayIn === null) return notGiven(message('crookNotLookedAt'));
          return strayIn > limitIn ? outside(message('crookPastLimit', { limitIn }), quantity(strayIn, 'in')) : null;
        },
        demand: (_, note) => {
          const e = strayIn ?? NaN;
          note?.({
            symbol: 'e',
            words: 'how far the log strays from straight',
            formula: 'e',
            put: [put('e', e, 'in', 'as seen, or its crown over this length where that is more')],
            result: quantity(e, 'in'),
            clause: clause('OWN', 'a stray counts in full on any part of the log'),
          });
          return e;
        },
        capacity: (_, note) => {
          note?.({
            symbol: 'e max',
            words: 'as far as a pile may stray',
            formula: `min(${STRAY.limit} × L, ${STRAY.limitIn})`,
            put: [put('L', lengthIn, 'in', 'length of the beam')],
            result: quantity(limitIn, 'in'),
            clause: remembered('D25', 'straightness'),
          });
          return limitIn;
        },
        reason: () =>
          strayIn !== null && strayIn > STRAY.saidFrom * lengthIn
            ? message('crookSaid', { saidIn: STRAY.saidFrom * lengthIn })
            : null,
      };
    });
}
