import type { PulledKind } from '../../../data/fasteners/kind.ts';
import { WET_CONNECTIONS, type Moisture } from '../../../data/fasteners/moisture.ts';
import { LAG_IN_END_GRAIN, PRINTED_GRAVITY, TOE_NAIL, WITHDRAWAL } from '../../../data/fasteners/withdrawal.ts';
import { remembered, type ClauseRef } from '../../../data/sources.ts';
import type { Cited } from '../../../data/wood/cited.ts';
import { FASTENER_WORDS } from '../../../data/words/fasteners-pulled.ts';
import { positive } from '../../errors.ts';
import { cited, givenStep } from '../../material/citation.ts';
import { put, type Note } from '../../note.ts';
import { quantity } from '../../units.ts';
import { holdingLength, type DrivenShank } from './holding-length.ts';
import { refused, type Refused } from './refused.ts';
import { TEMPERATURE_AT_ONE } from './temperature-step.ts';

export type Grain = 'side' | 'end';

/** What a fastener carries [lb], or why it is not taken. */
export type Pounds = { readonly ok: true; readonly pounds: number } | Refused;

/** A fastener that is pulled along its shank, and the stick that holds it. */
export interface PulledFastener extends DrivenShank {
  /** specific gravity for fasteners of the stick that holds it */
  readonly gravity: number;
  readonly grain: Grain;
  /** driven slantwise through the end of the other stick */
  readonly isToed: boolean;
  /** wood when put together, and in use */
  readonly made: Moisture;
  readonly used: Moisture;
}

const ADJUSTED = remembered('NDS', 'Table 11.3.1');

/**
 * What one inch of a fastener holds against pull in side grain, before any factor.
 * @param diameterIn nominal diameter [in]
 * @param gravity specific gravity for fasteners
 * @returns W [lb per in. of thread, or of plain shank]
 * @throws MisuseError if a value is not above zero
 * @source NDS 12.2.1 (lag screws), 12.2.2 (wood screws), 12.2.3 (plain nails and spikes)
 */
export function referenceWithdrawal(kind: PulledKind, diameterIn: number, gravity: number, note?: Note): number {
  const { coefficient, gravityPower, diameterPower, source, where, seen } = WITHDRAWAL[kind];
  const G = positive('gravity', gravity);
  const D = positive('diameterIn', diameterIn);
  const W = coefficient * G ** gravityPower * D ** diameterPower;
  note?.({
    symbol: 'W',
    words: `what one inch of a ${FASTENER_WORDS[kind]} holds against pull`,
    formula: `${coefficient} × G^${gravityPower} × D^${diameterPower}`,
    put: [put('G', G, '1', 'specific gravity for fasteners'), put('D', D, 'in', 'nominal diameter')],
    result: quantity(W, 'lb/in'),
    clause: cited(source, where, seen),
  });
  return W;
}

/**
 * What one driven fastener holds against pull, every factor in.
 * @param fastener the fastener and the stick that holds it
 * @param CD load duration factor
 * @returns pounds, or a refusal: end grain, too little in the wood, a wood that nothing is printed for
 * @throws MisuseError if a length, the gravity or CD is not above zero
 * @limits  the steel of a lag screw or wood screw at the root of its thread is asked on its own; so is the head
 * @source NDS 12.2, Tables 11.3.1 and 11.3.3; 12.5.4.1 (toe-nails)
 * @departs wood heavier than any printed row counts as the heaviest one (own rule, safe side)
 */
export function withdrawal(fastener: PulledFastener, CD: number, note?: Note): Pounds {
  const { kind, grain, isToed } = fastener;
  const refusal = refusedFor(fastener);
  if (refusal) return refusal;
  const holding = holdingLength(fastener, note);
  if (!holding.ok) return holding;
  const W = referenceWithdrawal(kind, fastener.diameterIn, Math.min(fastener.gravity, PRINTED_GRAVITY.most), note);
  const CM = wetFactor(fastener, note);
  const Ceg = grain === 'end' ? LAG_IN_END_GRAIN.Ceg : 1;
  const Ctn = isToed ? TOE_NAIL.Ctn : 1;
  const pounds = W * positive('CD', CD) * CM * Ceg * Ctn * holding.lengthIn;
  note?.(TEMPERATURE_AT_ONE);
  if (Ceg < 1) note?.(givenStep('Ceg', 'pulled along the grain', Ceg, '1', citedAs(LAG_IN_END_GRAIN)));
  if (Ctn < 1) note?.(givenStep('Ctn', 'driven slantwise', Ctn, '1', citedAs(TOE_NAIL)));
  note?.({
    symbol: "W'p",
    words: 'what the fastener holds against pull',
    formula: 'W × CD × CM × Ct × Ceg × Ctn × pt',
    put: [
      put('W', W, 'lb/in', 'per inch that holds'),
      put('CD', CD, '1', 'load duration factor'),
      put('CM', CM, '1', 'wet service factor'),
      put('Ct', 1, '1', 'temperature factor'),
      put('Ceg', Ceg, '1', grain === 'end' ? 'pulled along the grain' : 'square to the grain'),
      put('Ctn', Ctn, '1', isToed ? 'driven slantwise' : 'not driven slantwise'),
      put('pt', holding.lengthIn, 'in', 'length that holds'),
    ],
    result: quantity(pounds, 'lb'),
    clause: ADJUSTED,
  });
  return { ok: true, pounds };
}

const citedAs = ({ source, where, seen }: Cited): ClauseRef => cited(source, where, seen);

/** Under this angle to the grain a fastener counts as driven into end grain; at it a lag screw loses one per cent. */
const SQUARE_FROM_DEG = 80;

/**
 * The grain that a fastener meets.
 * @param angleDeg between shank and grain, 0 to 90 [deg]
 * @source OWN: the standard knows square to the grain and along it; what is between counts as along (safe side)
 */
export const grainMet = (angleDeg: number): Grain => (angleDeg >= SQUARE_FROM_DEG ? 'side' : 'end');

function refusedFor({ kind, gravity, grain, isToed }: PulledFastener): Refused | null {
  const fastener = FASTENER_WORDS[kind];
  const isNail = kind === 'nail' || kind === 'spike';
  if (gravity < PRINTED_GRAVITY.least) return refused('pulledWoodTooLight', { least: PRINTED_GRAVITY.least, gravity });
  if (isToed && !isNail) return refused('toedOnlyNails', { fastener });
  if (grain === 'end' && kind !== 'lag') return refused('pulledFromEndGrain', { fastener });
  return null;
}

/** CM of a pull. @source NDS Table 11.3.3; 12.5.4.1: of a toe-nail it is not asked */
function wetFactor({ kind, made, used, isToed }: PulledFastener, note?: Note): number {
  const { threadPulled, nailPulled } = WET_CONNECTIONS;
  const isThreaded = kind === 'lag' || kind === 'screw';
  const ofThread = used === 'wet' ? threadPulled.usedWet : 1;
  const ofNail = made !== used ? nailPulled.changes : nailPulled.staysWet;
  const CM = isThreaded ? ofThread : isToed ? 1 : ofNail;
  note?.(
    givenStep(
      'CM',
      isToed ? 'wet service: not asked of a slanted nail' : `wet service: made ${made}, used ${used}`,
      CM,
      '1',
      isToed ? citedAs(TOE_NAIL) : citedAs(WET_CONNECTIONS),
    ),
  );
  return CM;
}
