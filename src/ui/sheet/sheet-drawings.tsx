import type { Shelter } from '../../engine/geometry/shelter.ts';
import type { Project } from '../../engine/project/model.ts';
import { FrontView, type ViewProps } from '../drawing/FrontView.tsx';
import { onScreen, onSheet, type Paper } from '../drawing/paper.ts';
import { PlanView } from '../drawing/PlanView.tsx';
import type { LineDetail } from '../drawing/section-parts.ts';
import { SectionView } from '../drawing/SectionView.tsx';
import { showLength } from '../units/show-length.ts';
import type { UnitSystem } from '../units/system.ts';
import type { DrawingOnSheet, SheetPlan } from './sheet-plan.ts';
import { useNarrowScreen } from './use-narrow-screen.ts';

/** A narrow screen's drawings: a phone with some air beside them [px]. */
const PHONE_WIDTH = 358;
const PHONE_HEIGHT = 320;

interface SheetDrawingsProps {
  readonly plan: SheetPlan;
  readonly project: Project;
  readonly shelter: Shelter;
  readonly system: UnitSystem;
}

/** Front views, section and plan, on one line of the page; a phone draws them anew in a size that can be read there. */
export function SheetDrawings({ plan, project, shelter, system }: SheetDrawingsProps) {
  const isNarrow = useNarrowScreen();
  const views = { shelter, system, details: lineDetails(project) };
  return (
    <div className="sheet-drawings">
      {plan.drawings.map((row, i) => (
        <div key={i} className="drawing-row for-paper">
          {row.map((drawing) => (
            <figure key={drawing.view + drawing.lineId} style={{ width: `${drawing.width}pt` }}>
              <figcaption>{drawing.caption}</figcaption>
              <View drawing={drawing} paper={onSheet(drawing.width, plan.drawingHeight)} {...views} />
            </figure>
          ))}
        </div>
      ))}
      {isNarrow &&
        plan.drawings.flat().map((drawing) => (
          <figure key={drawing.view + drawing.lineId} className="for-screen">
            <figcaption>{drawing.caption}</figcaption>
            <View drawing={drawing} paper={onScreen(PHONE_WIDTH, PHONE_HEIGHT)} {...views} />
          </figure>
        ))}
    </div>
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
      return <FrontView {...common} lineId={drawing.lineId} />;
    case 'section':
      return <SectionView {...common} lineDetails={details} />;
    case 'plan':
      return <PlanView {...common} units={system} />;
  }
}

/** Strip and ledger sizes that the shelter's geometry does not carry. */
function lineDetails(project: Project): readonly LineDetail[] {
  return project.supportLines.map((line): LineDetail => {
    const stock = line.kind === 'ledger' ? line.stock : (line.strip?.stock ?? null);
    const sawn = stock?.kind === 'sawn' ? stock : null;
    return {
      lineId: line.id,
      stripBreadthIn: line.kind === 'frame' ? (sawn?.breadthIn ?? null) : null,
      wallFaceYIn: line.kind === 'ledger' ? line.wallFaceYIn : null,
      ledgerDepthIn: line.kind === 'ledger' ? (sawn?.depthIn ?? null) : null,
    };
  });
}
