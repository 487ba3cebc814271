import type { Evaluation } from '../../engine/evaluation.ts';
import type { Project } from '../../engine/project/model.ts';
import type { UnitSystem } from '../units/system.ts';
import { growWhileItFits } from './grow.ts';
import { layOutPage } from './lay-out-page.ts';
import type { SheetPaper } from './page-format.ts';
import { pageParts } from './page-parts.ts';
import type { Amounts, SheetPlan } from './sheet-plan.ts';

const FIRST_COMPLAINTS = 3;
const MOST_COMPLAINTS = 8;
/** Heights of a row of drawings: on the fullest page, the least that reads well, a fair one, the most it need be [pt]. */
const DRAWING = { tight: 48, least: 104, fair: 120, most: 220, step: 4 } as const;

/**
 * One page, always: what a reviewer needs first gets its room first, what finds none is counted in words.
 * Pure; widths and heights are reckoned from the typeface's own measures, so that no browser is asked.
 * @param system  units in which the sheet is read
 */
export function planSheet(project: Project, evaluation: Evaluation, paper: SheetPaper, system: UnitSystem): SheetPlan {
  const parts = pageParts(project, evaluation, paper, system);
  const { most, complaints, ranked, assumed } = parts;
  const least: Amounts = {
    complaints: Math.min(1, complaints.length),
    checks: Math.min(2, ranked.length),
    joints: Math.min(2, most.joints),
    logs: Math.min(1, most.logs),
    posts: Math.min(1, most.posts),
    assumed: Math.min(3, assumed.length),
    drawing: DRAWING.tight,
  };
  const amounts = growWhileItFits(
    least,
    [
      [{ part: 'drawing', upTo: DRAWING.least, step: DRAWING.step }],
      [
        { part: 'complaints', upTo: Math.min(FIRST_COMPLAINTS, complaints.length) },
        { part: 'checks', upTo: most.firstChecks },
        { part: 'joints', upTo: most.joints },
        { part: 'logs', upTo: most.logs },
        { part: 'posts', upTo: most.posts },
        { part: 'assumed', upTo: assumed.length },
        { part: 'drawing', upTo: DRAWING.fair, step: DRAWING.step },
      ],
      [
        { part: 'complaints', upTo: Math.min(MOST_COMPLAINTS, complaints.length) },
        { part: 'checks', upTo: ranked.length },
        { part: 'drawing', upTo: DRAWING.most, step: DRAWING.step },
      ],
    ],
    (next) => layOutPage(parts, next).height <= parts.room.height,
  );
  return layOutPage(parts, amounts);
}
