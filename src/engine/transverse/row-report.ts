import type { RowReport } from '../evaluation.ts';
import { buckledLine } from '../frame/buckled-shape.ts';
import { lineReport } from '../line-report.ts';
import type { RowAnswer } from './row-frame.ts';

/** A row across as the report has it. */
export function rowReport(answer: RowAnswer): RowReport {
  const { row } = answer;
  return {
    rowId: row.id,
    label: row.label,
    postIds: row.posts.map((p) => p.id),
    tieIds: row.ties.map((t) => t.id),
    ...(row.rafters.length > 0 ? { rafterIds: row.rafters.map((r) => r.id) } : {}),
    frame: answer.ok ? frameReport(answer.frame) : null,
  };
}

const frameReport = ({ context, share, pushOf }: Extract<RowAnswer, { ok: true }>['frame']): RowReport['frame'] =>
  lineReport(
    context,
    () => buckledLine(context.frame, share),
    (r) => {
      const push = pushOf(r);
      return push ? [push.id] : [];
    },
  );

/** Unbalanced force over applied force in any solved state of a row. */
export const residualOf = (answer: RowAnswer): number => (answer.ok ? answer.frame.context.frame.residual : 0);
