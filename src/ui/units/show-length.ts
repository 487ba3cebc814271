import { PER } from '../../data/metric.ts';
import type { UnitSystem } from './system.ts';

export interface LengthStyle {
  /** sixteenths for what is cut, eighths for what is set out */
  readonly nearest?: 8 | 16;
  /** `marks` on drawings (12' 5"), `words` in sentences (12 ft 5 in) */
  readonly style?: 'marks' | 'words';
  /** from this many inches on, feet are split off; `never` for diameters */
  readonly feetFrom?: number | 'never';
}

/**
 * A length for the eye: feet, inches and a fraction rounded to the nearest eighth or sixteenth, or metres and millimetres.
 * The stored number is not touched; a field that is not edited is never written back from this text.
 */
export function showLength(lengthIn: number, system: UnitSystem, how: LengthStyle = {}): string {
  if (!Number.isFinite(lengthIn)) return '';
  return system === 'metric' ? showMetric(lengthIn, how.feetFrom === 'never') : showFeet(lengthIn, how);
}

function showFeet(lengthIn: number, { nearest = 8, style = 'words', feetFrom }: LengthStyle): string {
  const parts = Math.round(Math.abs(lengthIn) * nearest);
  const sign = lengthIn < 0 && parts > 0 ? '−' : '';
  const from = feetFrom ?? (style === 'marks' ? 12 : 24);
  const feet = from === 'never' || parts < from * nearest ? 0 : Math.floor(parts / (12 * nearest));
  const whole = Math.floor(parts / nearest) - feet * 12;
  const fraction = fractionText(parts % nearest, nearest);
  const inchText =
    whole === 0 && fraction !== '' ? fraction : [whole, fraction].filter((part) => part !== '').join(' ');
  const [ft, inch] = style === 'marks' ? ["'", '"'] : [' ft', ' in'];
  if (feet === 0) return `${sign}${inchText}${inch}`;
  return style === 'words' && inchText === '0' ? `${sign}${feet}${ft}` : `${sign}${feet}${ft} ${inchText}${inch}`;
}

function fractionText(over: number, under: number): string {
  if (over === 0) return '';
  let [top, bottom] = [over, under];
  while (top % 2 === 0) [top, bottom] = [top / 2, bottom / 2];
  return `${top}/${bottom}`;
}

function showMetric(lengthIn: number, always: boolean): string {
  const mm = Math.round(Math.abs(lengthIn) * PER.mmPerInch);
  const sign = lengthIn < 0 && mm > 0 ? '−' : '';
  return always || mm < 1000 ? `${sign}${mm} mm` : `${sign}${(mm / 1000).toFixed(3)} m`;
}
