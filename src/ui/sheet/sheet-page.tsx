import { SHEET_WORDS } from '../../data/words/sheet.ts';
import type { Shelter } from '../../engine/geometry/shelter.ts';
import type { Project } from '../../engine/project/model.ts';
import type { UnitSystem } from '../units/system.ts';
import { SheetTable } from './fitted-table.tsx';
import { Lines } from './lines.tsx';
import { SheetDrawings } from './sheet-drawings.tsx';
import { SheetHead } from './sheet-head.tsx';
import { SnowDrawings } from './snow-drawings.tsx';
import type { SheetPlan, TextBlock } from './sheet-plan.ts';
import '../styles/sheet-font.css';
import './sheet.css';

interface SheetPageProps {
  readonly plan: SheetPlan;
  readonly project: Project;
  readonly shelter: Shelter;
  readonly system: UnitSystem;
}

/** The one page. What it holds was planned; here it is only set. */
export function SheetPage({ plan, project, shelter, system }: SheetPageProps) {
  const { paper, sideWidths, footWidths } = plan;
  return (
    <article
      className="sheet"
      aria-label="Check sheet"
      // a point less than the paper: no rounding of a printer's starts a second page
      style={{ width: `${paper.widthPt}pt`, height: `${paper.heightPt - 1}pt` }}
    >
      <SheetHead head={plan.head} />
      <SheetDrawings plan={plan} project={project} shelter={shelter} system={system} />
      <div className="beside">
        <div style={{ width: `${sideWidths[0]}pt` }}>
          <SheetTable table={plan.site} name="site" />
        </div>
        <div className="stack" style={{ width: `${sideWidths[1]}pt` }}>
          <SheetTable table={plan.posts} name="posts" />
          <SnowDrawings snow={plan.snow} project={project} shelter={shelter} system={system} />
          <Texts blocks={plan.sideTexts} />
        </div>
      </div>
      <SheetTable table={plan.logs} name="logs" />
      <SheetTable table={plan.checks} name="checks" />
      <SheetTable table={plan.joints} name="joints" />
      <div className="beside last">
        <div className="stack" style={{ width: `${footWidths[0]}pt` }}>
          <Texts blocks={plan.footTexts} />
        </div>
        <div className="stamp" style={{ width: `${footWidths[1]}pt` }}>
          {SHEET_WORDS.stamp}
        </div>
      </div>
      <footer className="sheet-foot">
        {plan.footer.map((words, i) => (
          <span key={i}>{words}</span>
        ))}
      </footer>
    </article>
  );
}

const Texts = ({ blocks }: { readonly blocks: readonly TextBlock[] }) =>
  blocks.map(({ caption, indent, lines }) => (
    <section key={caption} className="text-block">
      <h3 className="run-in">{caption}</h3>
      <p className="note">
        <Lines lines={lines} indent={indent} />
      </p>
    </section>
  ));
