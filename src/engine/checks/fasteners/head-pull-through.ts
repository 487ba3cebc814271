import type { FastenerKind } from '../../../data/fasteners/kind.ts';
import { WET_CONNECTIONS, type Moisture } from '../../../data/fasteners/moisture.ts';
import { HEAD_PULL_THROUGH, PRINTED_GRAVITY } from '../../../data/fasteners/withdrawal.ts';
import { remembered } from '../../../data/sources.ts';
import { FASTENER_WORDS } from '../../../data/words/fasteners-pulled.ts';
import { positive } from '../../errors.ts';
import { cited, givenStep } from '../../material/citation.ts';
import { put, type Note } from '../../note.ts';
import { quantity } from '../../units.ts';
import { refused } from './refused.ts';
import { TEMPERATURE_AT_ONE } from './temperature-step.ts';
import type { Pounds } from './withdrawal.ts';

/** A head and the stick under it. */
export interface PulledHead {
  readonly kind: FastenerKind;
  /** flat round head [in]; null: another head, or one that nobody measured */
  readonly headIn: number | null;
  /** of the stick under the head, along the shank [in] */
  readonly sideIn: number;
  /** specific gravity for fasteners of that stick */
  readonly gravity: number;
  readonly used: Moisture;
}

/**
 * Pull at which a flat round head goes through the stick under it, every factor in.
 * @param CD load duration factor
 * @returns pounds, or a refusal: nothing is printed for other heads, which want a washer
 * @throws MisuseError if a dimension, the gravity or CD is not above zero
 * @source NDS 12.2.5, equations 12.2-6 and 12.2-7; Tables 11.3.1 and 11.3.3 (from memory)
 * @departs wood heavier than any printed row counts as the heaviest one (own rule, safe side)
 */
export function headPullThrough(head: PulledHead, CD: number, note?: Note): Pounds {
  const { kind, headIn, used } = head;
  if (headIn === null || kind === 'lag' || kind === 'bolt') {
    return refused('headNotKnown', { fastener: FASTENER_WORDS[kind] });
  }
  if (head.gravity < PRINTED_GRAVITY.least) {
    return refused('pulledWoodTooLight', { least: PRINTED_GRAVITY.least, gravity: head.gravity });
  }
  const WH = referencePullThrough(headIn, head.sideIn, Math.min(head.gravity, PRINTED_GRAVITY.most), note);
  const { pullThrough, source, where, seen } = WET_CONNECTIONS;
  const CM = used === 'wet' ? pullThrough.usedWet : 1;
  const pounds = WH * positive('CD', CD) * CM;
  note?.(givenStep('CM', `wet service: used ${used}`, CM, '1', cited(source, where, seen)));
  note?.(TEMPERATURE_AT_ONE);
  note?.({
    symbol: "WH'",
    words: 'pull at which the head goes through',
    formula: 'WH × CD × CM × Ct',
    put: [
      put('WH', WH, 'lb', 'before factors'),
      put('CD', CD, '1', 'load duration factor'),
      put('CM', CM, '1', 'wet service factor'),
      put('Ct', 1, '1', 'temperature factor'),
    ],
    result: quantity(pounds, 'lb'),
    clause: remembered('NDS', 'Table 11.3.1'),
  });
  return { ok: true, pounds };
}

/**
 * Pull at which a flat round head goes through wood, before any factor.
 * @param headIn, sideIn diameter of the head, thickness of the stick under it [in]
 * @returns WH [lb]
 * @throws MisuseError if a value is not above zero
 * @source NDS 12.2.5, equations 12.2-6 and 12.2-7 (from memory)
 */
export function referencePullThrough(headIn: number, sideIn: number, gravity: number, note?: Note): number {
  const { thin, thick, thickFrom, source, where, seen } = HEAD_PULL_THROUGH;
  const DH = positive('headIn', headIn);
  const t = positive('sideIn', sideIn);
  const G = positive('gravity', gravity);
  const isThin = t <= thickFrom * DH;
  const WH = isThin ? thin * Math.PI * DH * G * G * t : thick * Math.PI * DH * DH * G * G;
  note?.({
    symbol: 'WH',
    words: 'pull at which the head goes through, before factors',
    formula: isThin ? `${thin} × π × DH × G^2 × t` : `${thick} × π × DH^2 × G^2`,
    put: [
      put('DH', DH, 'in', 'diameter of the head'),
      put('G', G, '1', 'specific gravity for fasteners, stick under the head'),
      put('t', t, 'in', 'thickness of that stick'),
    ],
    result: quantity(WH, 'lb'),
    clause: cited(source, where, seen),
  });
  return WH;
}
