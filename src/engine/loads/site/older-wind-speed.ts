import { FASTEST_MILE_TO_GUST } from '../../../data/loads/wind-speeds.ts';
import { clause } from '../../../data/sources.ts';
import { positive } from '../../errors.ts';
import { message, type Message } from '../../message.ts';
import { put, type Note } from '../../note.ts';
import { straight } from './between-slopes.ts';

export type OlderSpeedAnswer =
  | { readonly ok: true; readonly gustMph: number; readonly strengthMph: number; readonly caution: Message }
  | { readonly ok: false; readonly reason: Message };

/**
 * A fastest-mile speed of an older code in today's terms. For reading old papers only: today's map has other speeds for
 * other return periods, so the caution that comes with it is part of the answer, and only the department's number counts.
 * @param fastestMileMph  as an older code or drawing gives it [mph]
 * @returns three-second gust at allowable-stress level, and the strength-level speed that it stands for [mph]; outside
 *   the printed 70 to 150 mph why there is none
 * @throws MisuseError  if the speed is not finite and above zero
 * @source IBC_2000 Table 1609.3.1, straight between rows; IBC 1609.3.1 (2018): Vasd = V sqrt(0.6)
 */
export function olderWindSpeed(fastestMileMph: number, note?: Note): OlderSpeedAnswer {
  const { rows } = FASTEST_MILE_TO_GUST;
  const mph = positive('fastestMileMph', fastestMileMph);
  const upper = rows.findIndex(([printed]) => mph <= printed);
  const [highMile, highGust] = rows[upper] ?? [0, 0];
  const [lowMile, lowGust] = rows[Math.max(upper - 1, 0)] ?? [0, 0];
  if (upper < 0 || mph < rows[0][0]) {
    const limits = { least: rows[0][0], greatest: rows[rows.length - 1]![0] };
    return { ok: false, reason: message('olderSpeedOutside', { mph, ...limits }) };
  }
  const gustMph = upper === 0 ? highGust : straight(lowGust, highGust, (mph - lowMile) / (highMile - lowMile));
  note?.({
    symbol: 'V3s',
    words: 'The same wind as a three-second gust, still at allowable-stress level',
    formula: 'table, straight between rows',
    put: [put('Vfm', mph, 'mph', 'fastest mile of the older code')],
    result: { value: gustMph, unit: 'mph' },
    clause: clause('IBC_2000', 'Table 1609.3.1'),
  });
  const strengthMph = gustMph / Math.sqrt(0.6);
  note?.({
    symbol: 'V',
    words: 'The same wind at strength level, as today’s maps give theirs',
    formula: 'V3s / sqrt(0.6)',
    put: [put('V3s', gustMph, 'mph', 'three-second gust')],
    result: { value: strengthMph, unit: 'mph' },
    clause: clause('IBC', '1609.3.1'),
  });
  return { ok: true, gustMph, strengthMph, caution: message('olderSpeedCaution') };
}
