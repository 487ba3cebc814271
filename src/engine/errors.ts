/**
 * A broken promise inside the engine. The doors (`parseProject`, `evaluate`, `explain`, each answer) catch these and
 * turn them into a typed problem; nothing outside the engine ever sees a throw.
 */
export class EngineError extends Error {
  readonly code: string;
  readonly actual: unknown;
  readonly expected: string;
  constructor(name: string, code: string, actual: unknown, expected: string) {
    super(`${code}: got ${String(actual)}, expected ${expected}`);
    this.name = name;
    this.code = code;
    this.actual = actual;
    this.expected = expected;
  }
}

/** A function was called with a value that its docstring forbids. */
export class MisuseError extends EngineError {
  constructor(code: string, actual: unknown, expected: string) {
    super('MisuseError', code, actual, expected);
  }
}

/** A table in `src/data` lacks or contradicts what a formula needs. */
export class DataError extends EngineError {
  constructor(code: string, actual: unknown, expected: string) {
    super('DataError', code, actual, expected);
  }
}

/** Throws unless the value is finite and above zero; returns it so that it can stand in an expression. */
export function positive<N extends number>(code: string, value: N): N {
  if (!(value > 0) || !Number.isFinite(value)) throw new MisuseError(code, value, 'a finite number above zero');
  return value;
}

/** Throws unless the value is finite and not below zero; returns it. */
export function notNegative<N extends number>(code: string, value: N): N {
  if (!(value >= 0) || !Number.isFinite(value)) throw new MisuseError(code, value, 'a finite number, zero or above');
  return value;
}

/** Throws unless the value is finite; returns it. */
export function finite<N extends number>(code: string, value: N): N {
  if (!Number.isFinite(value)) throw new MisuseError(code, value, 'a finite number');
  return value;
}
