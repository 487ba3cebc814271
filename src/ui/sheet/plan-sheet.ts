import type { Evaluation } from '../../engine/evaluation.ts';
import type { Project } from '../../engine/project/model.ts';
import type { UnitSystem } from '../units/system.ts';
import { growWhileItFits } from './grow.ts';
import { layOutPage } from './lay-out-page.ts';
import { BODY, NOTE, type SheetPaper } from './page-format.ts';
import { pageParts, type PageParts } from './page-parts.ts';
import type { Amounts, SheetPlan } from './sheet-plan.ts';

const FIRST_COMPLAINTS = 3;
const MOST_COMPLAINTS = 8;
/** Of the site's values so many stand on the fullest page. */
const LEAST_SITE = 8;
/** So many come before all other tables: the design criteria; what the person hangs there follows. */
const FIRST_SITE = 18;
/** Heights of a row of drawings: on the fullest page, the least that reads well, a fair one, the most it need be [pt]. */
const DRAWING = { tight: 44, least: 100, fair: 120, most: 220, step: 4 } as const;

/**
 * One page, always: what a reviewer needs first gets its room first, what finds none is counted in words. Tables are set
 * smaller where they do not hold all in the larger type.
 * Pure; widths and heights are reckoned from the typeface's own measures, so that no browser is asked.
 * @param system  units in which the sheet is read
 */
export function planSheet(project: Project, evaluation: Evaluation, paper: SheetPaper, system: UnitSystem): SheetPlan {
  const large = fillPage(pageParts(project, evaluation, paper, system, BODY));
  return large.isWhole ? large.plan : fillPage(pageParts(project, evaluation, paper, system, NOTE)).plan;
}

/** Gives out the room of the page; `isWhole` where every row of every table found its place. */
function fillPage(parts: PageParts): { readonly plan: SheetPlan; readonly isWhole: boolean } {
  const { most, complaints, ranked, assumed } = parts;
  const least: Amounts = {
    complaints: Math.min(1, complaints.length),
    site: Math.min(LEAST_SITE, most.site),
    checks: 0,
    joints: 0,
    logs: 0,
    posts: 0,
    assumed: 0,
    drawing: DRAWING.tight,
  };
  const amounts = growWhileItFits(
    least,
    [
      [
        { part: 'checks', upTo: Math.min(2, ranked.length) },
        { part: 'joints', upTo: Math.min(2, most.joints) },
        { part: 'logs', upTo: Math.min(1, most.logs) },
        { part: 'posts', upTo: Math.min(1, most.posts) },
      ],
      [{ part: 'drawing', upTo: DRAWING.least, step: DRAWING.step }],
      [{ part: 'site', upTo: Math.min(FIRST_SITE, most.site) }],
      [
        { part: 'complaints', upTo: Math.min(FIRST_COMPLAINTS, complaints.length) },
        { part: 'site', upTo: most.site },
        { part: 'posts', upTo: most.posts },
        { part: 'logs', upTo: most.logs },
        { part: 'joints', upTo: most.joints },
        { part: 'checks', upTo: most.firstChecks },
      ],
      [
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
  const isWhole =
    amounts.site === most.site &&
    amounts.posts === most.posts &&
    amounts.logs === most.logs &&
    amounts.joints === most.joints &&
    amounts.checks >= most.firstChecks;
  return { plan: layOutPage(parts, amounts), isWhole };
}
