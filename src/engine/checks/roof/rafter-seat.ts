import { clause } from '../../../data/sources.ts';
import type { RoundStick, SawnStick } from '../../geometry/shelter.ts';
import { flatWidth } from '../../geometry/seats.ts';
import { notGiven } from '../../check.ts';
import type { DesignValues } from '../../material/values.ts';
import { message } from '../../message.ts';
import { put, type Note } from '../../note.ts';
import { quantity } from '../../units.ts';
import type { CheckSite } from '../site-of-check.ts';
import { adjustedAcrossGrain, bearingAreaFactor, bearingStress } from '../wood/bearing.ts';
import type { Bearer } from './bearers.ts';
import type { RafterLoading } from './rafter-loading.ts';
import type { Influence } from './rafter-influence.ts';
import type { RafterResponse } from './rafter-responses.ts';
import { tellReaction } from './rafter-telling.ts';
import { depthAt, squareSeatCut, type OnSlope } from './rafter-stations.ts';

/** Length of bearing along a rafter where nothing sawn lies under it: the flat of a strip as commonly laid. */
const COMMON_BEARING_IN = 3.5;
/** A roof flatter than this sits level enough without a cut. */
const LEVEL_BELOW_RISE = 1 / 4;
/** A cut that rises from nothing leaves a pointed flat on a round: at least two thirds of its greatest width, on the mean. */
const POINTED_FLAT = 2 / 3;

/**
 * Bearing of a rafter on one of its lines, across the grain of the rafter and of the sawn strip or ledger.
 * @source NDS 3.10.2, 3.10.4. The level cut is pressed at an angle to the grain; the lower value across it is taken.
 */
export function rafterSeatSite(
  loading: RafterLoading,
  influence: Influence,
  support: number,
  bearer: Bearer,
  stick: RoundStick | SawnStick,
  values: DesignValues,
): CheckSite<RafterResponse> {
  const atIn = loading.supportsAtIn[support]!;
  const lengthIn = seatLength(loading, bearer, atIn);
  const widthIn = contactWidth(loading, stick, atIn);
  const toEndIn = Math.max(0, Math.min(atIn, loading.run.slopeLengthIn - atIn) - lengthIn / 2);
  return {
    ruleId: 'rafter.seat',
    memberId: loading.rafter.id,
    place: { kind: 'support', name: loading.run.supportLines[support]! },
    unit: 'psi',
    purpose: 'strength',
    applies: (r) => r.greatest[support]! > 0,
    stops: () => {
      if (bearer.isMissing) return notGiven(message('memberNotGiven', { member: bearer.line.id }));
      return lengthIn > 0 && widthIn > 0 ? null : notGiven(message('seatLengthUnknown'));
    },
    demand: (r, note) => {
      if (note) {
        tellReaction(loading, influence, r, support, 'greatest', note);
        tellContact(loading, lengthIn, widthIn, note);
      }
      return bearingStress(r.greatest[support]!, lengthIn * widthIn, note);
    },
    capacity: (_, note) => {
      const ofRafter = values.FcPerpPsi * bearingAreaFactor(lengthIn, toEndIn);
      const isBearer = bearer.values !== null && bearer.values.FcPerpPsi < ofRafter;
      const weaker = isBearer && bearer.values ? bearer.values : values;
      for (const step of note ? weaker.steps('Fcp') : []) note?.(step);
      // where a strip is pieced is not known: no help from the wood beside the bearing is counted for it
      const Cb = isBearer ? 1 : bearingAreaFactor(lengthIn, toEndIn, note);
      return adjustedAcrossGrain(weaker.FcPerpPsi, Cb, note);
    },
    worstAt: () => atIn,
  };
}

/**
 * Level length of the seat: what the cut leaves, at most what lies under it. A rafter that ends over its line, as at a
 * ridge where another meets it, has only the half before its end [in].
 */
export function seatLength({ rafter, plane, run }: OnSlope, bearer: Pick<Bearer, 'breadthIn'>, atIn: number): number {
  const half = (bearer.breadthIn ?? COMMON_BEARING_IN) / 2;
  const toEndIn = Math.min(atIn, run.slopeLengthIn - atIn) * run.cos;
  const under = half + Math.min(half, toEndIn);
  if (plane.risePer12 < LEVEL_BELOW_RISE) return under;
  return Math.min(under, (rafter.seatCutIn * run.cos) / run.sin);
}

/** Mean width of the contact across the rafter [in]. */
export function contactWidth(loading: OnSlope, stick: RoundStick | SawnStick, atIn: number): number {
  return stick.kind === 'sawn'
    ? stick.breadthIn
    : POINTED_FLAT * flatWidth(depthAt(stick, atIn), squareSeatCut(loading));
}

function tellContact({ rafter, run }: RafterLoading, lengthIn: number, widthIn: number, note: Note): void {
  note({
    symbol: 'A',
    words: 'contact of the rafter on its line',
    formula: 'l × b, with l at most the seat cut over the rise of the slope',
    put: [
      put('l', lengthIn, 'in', 'level length of the seat'),
      put('b', widthIn, 'in', 'width of the contact'),
      put('h', rafter.seatCutIn, 'in', 'seat cut, plumb'),
      put('tan θ', run.sin / run.cos, '1', 'rise of the slope'),
    ],
    result: quantity(lengthIn * widthIn, 'in2'),
    clause: clause('MECHANICS', 'contact area'),
  });
}
