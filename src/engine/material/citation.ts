import { clause, remembered, type ClauseRef, type Seen, type SourceKey } from '../../data/sources.ts';
import { quantity, type Unit } from '../units.ts';
import type { Step } from '../note.ts';

/** Points at a table row, marked when the row is known from memory only. */
export const cited = (source: SourceKey, where: string, seen: Seen): ClauseRef =>
  seen === 'memory' ? remembered(source, where) : clause(source, where);

/** A step that a table printed, a person typed or a rule fixes: nothing is put in, the formula says which it is. */
export const givenStep = (
  symbol: string,
  words: string,
  value: number,
  unit: Unit,
  where: ClauseRef,
  formula: 'table value' | 'as typed' | 'stated value' | 'as measured' = 'table value',
): Step => ({ symbol, words, formula, put: [], result: quantity(value, unit), clause: where });
