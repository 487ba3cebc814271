import type { CheckRow } from '../evaluation.ts';
import type { SitePressures } from '../loads/site/site-pressures.ts';
import { message, type Message } from '../message.ts';
import type { Project } from '../project/model.ts';

const ACROSS = /wind-(0|180)-/;
const ALONG = /wind-along-/;
const ON_A_COMPONENT = /wind-(up|down)-/;

/**
 * Coefficients used beyond their figure keep pass or fail, but every check that they govern says so (own rule): height
 * over length outside the figure, a canopy on a wall or parts of a roof over walls judged as of a free roof, or a frame
 * more solid than its table. A row that has a reason keeps its own.
 */
export function withWindDepartures(
  rows: readonly CheckRow[],
  project: Project,
  site: Pick<SitePressures, 'departures'>,
): readonly CheckRow[] {
  const found = (code: Message['code']): Message | undefined => site.departures.find((d) => d.code === code);
  const across = found('beyondFigureAcross');
  const along = found('beyondFigureAlong');
  const canopy = project.supportLines.some((l) => l.kind === 'ledger') ? message('attachedCanopy') : undefined;
  const solid = found('solidityOverTable');
  const walled = found('walledComponents');
  if (!across && !along && !canopy && !solid && !walled) return rows;
  const reasonFor = (combinationId: string): Message | undefined => {
    const isOfComponent = ON_A_COMPONENT.test(combinationId);
    if (across && (isOfComponent || ACROSS.test(combinationId))) return across;
    if (along && (isOfComponent || ALONG.test(combinationId))) return along;
    if (!combinationId.includes('wind-')) return undefined;
    return canopy ?? (isOfComponent ? walled : solid);
  };
  return rows.map((row) => {
    if (row.reason || (row.status !== 'pass' && row.status !== 'fail')) return row;
    const reason = reasonFor(row.combinationId);
    return reason ? { ...row, reason } : row;
  });
}
