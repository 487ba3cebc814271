import { METRIC, PER } from '../metric.ts';

/** Units in which a sentence tells its sizes. */
type Sizes = 'feet' | 'metric';

/** A blank that is a length in inches by its name, with the unit that follows it. */
const SIZE = /\{(\w+In)\}( in\b)?/g;
/** A blank that is a height, a force or a pressure by its name and the unit that follows it. */
const MEASURE = /\{(\w*(?:Ft|Lb|Plf|Psf|Psi))\} (lb\/ft|ft|lb|psf|psi)\b/g;
const BLANK = /\{(\w+)\}/g;

/**
 * A sentence with its blanks filled. Sizes are told as they are cut, in sixteenths or whole millimetres: what is needed at
 * least rounded up, what is allowed at most rounded down. Heights, forces and pressures in metric are told as in a table. Other
 * numbers in as many digits as are worth reading.
 */
export const fillIn = (
  sentence: string,
  values: Readonly<Record<string, string | number>>,
  sizes: Sizes = 'feet',
): string =>
  sentence
    .replace(SIZE, (blank, name: string, unit = '') => {
      const value = values[name];
      if (typeof value !== 'number' || !Number.isFinite(value)) return value === undefined ? blank : `${value}${unit}`;
      return sizes === 'metric'
        ? `${inMillimetres(value, roundingOf(name))} mm`
        : `${inInches(value, roundingOf(name))}${unit}`;
    })
    .replace(MEASURE, (blank, name: string, unit: keyof typeof METRIC) => {
      const value = values[name];
      return sizes === 'metric' && typeof value === 'number' && Number.isFinite(value)
        ? inMetric(value, unit, roundingOf(name))
        : blank;
    })
    .replace(BLANK, (blank, name: string) => {
      const value = values[name];
      if (value === undefined) return blank;
      return typeof value === 'number' ? sensible(value) : value;
    });

type Rounding = (value: number) => number;

/** A hair over a mark of the rule is that mark. */
const HAIR = 1e-6;

function roundingOf(name: string): Rounding {
  if (/^(least|need|more|startFrom)/.test(name)) return (value) => Math.ceil(value - HAIR);
  return /^(most|limit|room|greatest)/.test(name) ? (value) => Math.floor(value + HAIR) : Math.round;
}

/** Below this a size is steel or a gap, and between two marks it is told in decimals: as given, and as a limit [in]. */
const FINE_IN = { given: 1, limit: 0.25 } as const;

const isFine = (value: number, round: Rounding): boolean =>
  Math.abs(value) < (round === Math.round ? FINE_IN.given : FINE_IN.limit);

function inInches(value: number, round: Rounding): string {
  const parts = value * 16;
  const isMark = Math.abs(parts - Math.round(parts)) < 16 * HAIR;
  if (!isMark && isFine(value, round)) return String(Number(value.toPrecision(3)));
  const rounded = round(Math.abs(parts));
  const [whole, over] = [Math.floor(rounded / 16), rounded % 16];
  const sign = value < 0 && rounded > 0 ? '\u2212' : '';
  return sign + [...(whole > 0 || over === 0 ? [whole] : []), ...(over > 0 ? [fraction(over)] : [])].join(' ');
}

function fraction(over: number): string {
  const common = [8, 4, 2, 1].find((by) => over % by === 0) ?? 1;
  return `${over / common}/${16 / common}`;
}

function inMillimetres(value: number, round: Rounding): string {
  const mm = Math.abs(value * PER.mmPerInch);
  const shown = isFine(value, round) ? Number(mm.toPrecision(3)) : round(mm);
  return `${value < 0 && shown > 0 ? '\u2212' : ''}${shown}`;
}

function inMetric(value: number, unit: keyof typeof METRIC, round: Rounding): string {
  const { per, unit: metric, decimals } = METRIC[unit];
  const parts = 10 ** decimals;
  const shown = (round(value * per * parts) / parts).toFixed(decimals);
  return `${shown.replace('-', '\u2212')} ${metric}`;
}

/** Whole numbers as they are, others in three digits, never more than three decimals. */
function sensible(value: number): string {
  if (Number.isInteger(value) || !Number.isFinite(value)) return String(value);
  return String(Math.abs(value) >= 100 ? Math.round(value) : Number(Number(value.toPrecision(3)).toFixed(3)));
}
