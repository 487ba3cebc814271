import type { Shelter } from '../../engine/geometry/shelter.ts';
import type { Project } from '../../engine/project/model.ts';
import { FrontView, type ViewProps } from '../drawing/FrontView.tsx';
import { onScreen, onSheet, type Paper } from '../drawing/paper.ts';
import { PlanView } from '../drawing/PlanView.tsx';
import type { LineDetail } from '../drawing/section-parts.ts';
import { SectionView } from '../drawing/SectionView.tsx';
import { lineDetailsOf } from '../frame/line-details.ts';
import { showLength } from '../units/show-length.ts';
import type { UnitSystem } from '../units/system.ts';
import { clearSpans } from './clear-spans.ts';
import { Lines } from './lines.tsx';
import type { DrawingOnSheet, SheetPlan } from './sheet-plan.ts';
import { NOTE } from './page-format.ts';
import { PHONE_HEIGHT, PHONE_WIDTH, useNarrowScreen } from './use-narrow-screen.ts';

interface SheetDrawingsProps {
  readonly plan: SheetPlan;
  readonly project: Project;
  readonly shelter: Shelter;
  readonly system: UnitSystem;
}

/** Front views, section and plan, on one line of the page; a phone draws them anew in a size that can be read there. */
export function SheetDrawings({ plan, project, shelter, system }: SheetDrawingsProps) {
  const isNarrow = useNarrowScreen();
  const views = { shelter, system, details: lineDetailsOf(project) };
  return (
    <div className="sheet-drawings">
      {plan.drawings.map((row, i) => (
        <div key={i} className="drawing-row for-paper">
          {row.map((drawing) => (
            <figure key={drawing.view + drawing.lineId} style={{ width: `${drawing.width}pt` }}>
              <Caption drawing={drawing} lines={most(row)} />
              <View drawing={drawing} paper={onSheet(drawing.width, plan.drawingHeight)} {...views} />
            </figure>
          ))}
        </div>
      ))}
      {isNarrow &&
        plan.drawings.flat().map((drawing) => (
          <figure key={drawing.view + drawing.lineId} className="for-screen">
            <Caption drawing={drawing} lines={drawing.says.length} />
            <View drawing={drawing} paper={onScreen(PHONE_WIDTH, PHONE_HEIGHT)} {...views} />
          </figure>
        ))}
    </div>
  );
}

const most = (row: readonly DrawingOnSheet[]): number => Math.max(...row.map(({ says }) => says.length));

/** Its name, and under it what it says; drawings of one row begin at one height. */
function Caption({ drawing, lines }: { readonly drawing: DrawingOnSheet; readonly lines: number }) {
  return (
    <figcaption>
      <span className="figure-name">{drawing.caption}</span>
      <p className="note" style={{ minHeight: `${lines * NOTE.line}pt` }}>
        <Lines lines={drawing.says} />
      </p>
    </figcaption>
  );
}

interface OneViewProps {
  readonly drawing: DrawingOnSheet;
  readonly paper: Paper;
  readonly shelter: Shelter;
  readonly system: UnitSystem;
  readonly details: readonly LineDetail[];
}

function View({ drawing, paper, shelter, system, details }: OneViewProps) {
  const common: ViewProps = {
    shelter,
    paper,
    showLength: (inches) => showLength(inches, system, { style: 'marks' }),
    showDiameter: (inches) => showLength(inches, system, { style: 'marks', feetFrom: 'never' }),
  };
  switch (drawing.view) {
    case 'front':
      return (
        <FrontView
          {...common}
          lineId={drawing.lineId}
          laidOver={clearSpans(shelter, drawing.lineId, common.showLength)}
        />
      );
    case 'section':
      return <SectionView {...common} lineDetails={details} />;
    case 'plan':
      return <PlanView {...common} units={system} />;
  }
}
