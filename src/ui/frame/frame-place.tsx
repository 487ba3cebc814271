import '../styles/frame.css';
import '../styles/cord.css';
import { Cord } from '../cord/cord.tsx';
import { useOpenProject, useWorkbench } from '../state/use-workbench.ts';
import { DrawingSheet } from './drawing-sheet.tsx';

/** Draw, load, check: the drawing and beside it the cord. Without figures the notices at the edge say why. */
export function FramePlace() {
  const project = useOpenProject();
  const evaluation = useWorkbench((state) => state.evaluation);
  const stale = useWorkbench((state) => state.stale);
  if (!evaluation)
    return <p className="no-figures">This project has no figures yet. What must be mended is named below.</p>;
  return (
    <div className="frame-place">
      <DrawingSheet project={project} evaluation={evaluation} stale={stale} />
      <Cord evaluation={evaluation} stale={stale} />
    </div>
  );
}
