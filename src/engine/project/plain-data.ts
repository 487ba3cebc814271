import { type Fault, fault } from '../message.ts';
import { type Step, writePath } from './paths.ts';

const DEEPEST = 40;
const MOST_VALUES = 500_000;
const FORBIDDEN_KEYS: ReadonlySet<string> = new Set(['__proto__', 'constructor', 'prototype']);

interface Visit {
  readonly value: unknown;
  readonly steps: readonly Step[];
}

/**
 * Faults of a value that is not plain data within bounds: functions, dates and the like, numbers that are not finite,
 * nesting past {@link DEEPEST}, keys that would reach into the program's own objects. Walks without recursion, so that
 * no nesting can exhaust the stack; a loop in the data reads as nesting without end.
 */
export function plainDataFaults(root: unknown): readonly Fault[] {
  const faults: Fault[] = [];
  const waiting: Visit[] = [{ value: root, steps: [] }];
  let seen = 0;
  for (let visit = waiting.pop(); visit; visit = waiting.pop()) {
    seen += 1;
    const { value, steps } = visit;
    if (seen > MOST_VALUES) return [fault('', 'tooManyValues', { limit: MOST_VALUES })];
    if (steps.length > DEEPEST) return [fault(writePath(root, steps.slice(0, 3)), 'tooDeep', { limit: DEEPEST })];
    const kind = kindOf(value);
    if (kind === 'other') faults.push(fault(writePath(root, steps), 'notPlainData', { got: typeof value }));
    if (kind === 'notFinite') faults.push(fault(writePath(root, steps), 'notFiniteNumber', { got: String(value) }));
    if (Array.isArray(value)) value.forEach((element, i) => waiting.push({ value: element, steps: [...steps, i] }));
    if (kind !== 'record') continue;
    for (const [key, inside] of Object.entries(value as object)) {
      if (FORBIDDEN_KEYS.has(key)) faults.push(fault(writePath(root, [...steps, key]), 'forbiddenKey', { key }));
      else waiting.push({ value: inside, steps: [...steps, key] });
    }
  }
  return faults;
}

function kindOf(value: unknown): 'simple' | 'record' | 'notFinite' | 'other' {
  if (value === null || value === undefined || Array.isArray(value)) return 'simple';
  if (typeof value === 'string' || typeof value === 'boolean') return 'simple';
  if (typeof value === 'number') return Number.isFinite(value) ? 'simple' : 'notFinite';
  return Object.prototype.toString.call(value) === '[object Object]' ? 'record' : 'other';
}
