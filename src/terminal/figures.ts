import { say } from '../data/words/say.ts';
import { SOURCES } from '../data/source-list.ts';
import type { ClauseRef } from '../data/sources.ts';
import type { Message } from '../engine/message.ts';
import type { Quantity } from '../engine/units.ts';

/** Enough figures to redo a step with a pocket calculator. */
const FIGURES = 6;

/** A number in six figures, grouped by thousands; what is not a number shows as a dash. */
export function figure(value: number): string {
  if (!Number.isFinite(value)) return '-';
  return Number(value.toPrecision(FIGURES)).toLocaleString('en-US', { maximumFractionDigits: 12 });
}

/** A number with its unit; a pure number stands alone. */
export const amount = ({ value, unit }: Quantity): string =>
  unit === '1' ? figure(value) : `${figure(value)} ${unit}`;

/** A rounded number with its unit for a column that is only read over. */
export const roughly = (quantity: Quantity | null): string =>
  quantity === null ? '-' : amount({ ...quantity, value: Number(quantity.value.toPrecision(4)) });

/** Ratio in hundredths, rounded up: 1.00 is shown only for what passes. */
export function ratioText(ratio: number | null): string {
  if (ratio === null || !Number.isFinite(ratio)) return '-';
  const nearest = Math.round(ratio * 100) / 100;
  return (nearest < ratio ? nearest + 0.01 : nearest).toFixed(2);
}

/** `NDS 2018, 3.3`, with a mark where the figure was not compared with the printed edition. */
export function clauseText({ source, clause, memory }: ClauseRef): string {
  const { edition } = SOURCES[source];
  const name = edition === '-' ? source : `${source} ${edition}`;
  return `${name}, ${clause}${memory ? ' (figure not compared with the printed edition)' : ''}`;
}

/** A message as machines read it: code, values and the sentence they make. */
export const spelled = (message: Message) => ({
  code: message.code,
  values: message.values,
  words: say(message),
});
