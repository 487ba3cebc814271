import { BASIS_PHRASES } from '../../data/words/sheet.ts';
import type { Evaluation, LogReport } from '../../engine/evaluation.ts';
import type { PieceNames } from '../sheet/piece-names.ts';
import { sentenceCase } from '../cord/letter-case.ts';
import { text, type Block } from '../paper/blocks.ts';
import { STEP_COLUMNS, type StepBook } from './step-book.ts';
import type { Told } from './tell-steps.ts';

/** Reference values of every log in use, each value with its steps; logs alike point to the steps of the first. */
export const woodBlocks = (
  { logs }: Pick<Evaluation, 'logs'>,
  told: Told,
  names: PieceNames,
  book: StepBook,
): readonly Block[] =>
  logs.flatMap((log): readonly Block[] => {
    const label = sentenceCase(`log of ${names.inShort(log.memberIds)}`);
    const rows = book.tell((told.values.get(log.logId) ?? []).flatMap(([, steps]) => steps));
    return [
      { kind: 'heading', id: `wood-${log.logId}`, level: 4, words: label },
      text(basisOf(log, names), { leads: true }),
      ...(rows.length > 0 ? [{ kind: 'table', label, columns: STEP_COLUMNS, rows } as const] : []),
    ];
  });

function basisOf({ values, reason, heldBackBy }: LogReport, names: PieceNames): string {
  const why = [reason, heldBackBy].flatMap((message) => (message ? [names.sayOf(message)] : []));
  const basis = values ? (Object.entries(BASIS_PHRASES).find(([kind]) => kind === values.basis)?.[1] ?? '') : '';
  return [...(basis === '' ? [] : [`${sentenceCase(basis)}.`]), ...why].join(' ');
}
