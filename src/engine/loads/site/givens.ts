import { MisuseError } from '../../errors.ts';

/** Throws unless the value is finite; returns it so that it can stand in an expression. */
export function finite(code: string, value: number): number {
  if (!Number.isFinite(value)) throw new MisuseError(code, value, 'a finite number');
  return value;
}

/** Throws unless the value is finite and at least zero. */
export function notNegative(code: string, value: number): number {
  if (!(value >= 0) || !Number.isFinite(value)) throw new MisuseError(code, value, 'a finite number, zero or above');
  return value;
}
