import '../styles/raising.css';
import { useDeferredValue, useMemo, useState } from 'react';
import { TEMPORARY_BRACE_ANGLES, USUAL_BRACE_ANGLE, type StageId } from '../../data/loads/raising.ts';
import { RAISING_WORDS, STAGE_CAUTIONS, STAGE_WORDS } from '../../data/words/raising-stages.ts';
import { explainRaising } from '../../engine/stages/explain.ts';
import { raisingStages, type RaisingPlace, type RaisingStage } from '../../engine/stages/raising-stages.ts';
import { say, useOpenProject, useWorkbench } from '../state/use-workbench.ts';
import type { Names } from './places.ts';
import { hardestInWords, holdersInWords, leastForce, overnightInWords, windInWords } from './raising-sentences.ts';
import { StepList } from './steps.tsx';
import { useEscape } from './use-escape.ts';

interface RaisingProps {
  readonly way: 'along' | 'across';
  readonly names: Names;
}

/** Stage by stage: what the wind pushes on what stands, and what temporary braces must hold until it holds itself. */
export function Raising({ way, names }: RaisingProps) {
  const project = useDeferredValue(useOpenProject());
  const [angleDeg, setAngle] = useState<number>(USUAL_BRACE_ANGLE);
  const [open, setOpen] = useState<StageId | null>(null);
  const answer = useMemo(() => raisingStages(project, angleDeg), [project, angleDeg]);
  if (!answer.ok) return answer.faults.map((fault) => <p key={fault.path}>{say(fault)}</p>);
  return (
    <>
      <p className="sentence">
        Two temporary braces hold each post {way === 'along' ? 'along the line' : 'across the line'}, one to each side,
        at <AngleChoice angleDeg={angleDeg} onChoose={setAngle} /> with the ground, from two thirds of its height to a
        stake.
      </p>
      <p className="aside">{RAISING_WORDS.whole}</p>
      <ol className="raising-stages" aria-label={`Stages of raising, ${way}`}>
        {answer.stages.map((stage) => (
          <Stage
            key={stage.id}
            stage={stage}
            way={way}
            names={names}
            angleDeg={angleDeg}
            isOpen={stage.id === open}
            onOpen={(isOpen) => setOpen(isOpen ? stage.id : null)}
          />
        ))}
      </ol>
      <p className="aside">{RAISING_WORDS.notComputed}</p>
      {[RAISING_WORDS.temporary, RAISING_WORDS.lifting].map((words) => (
        <p key={words} className="caution">
          <strong>Mind:</strong> {words}
        </p>
      ))}
    </>
  );
}

interface AngleChoiceProps {
  readonly angleDeg: number;
  readonly onChoose: (angleDeg: number) => void;
}

function AngleChoice({ angleDeg, onChoose }: AngleChoiceProps) {
  return (
    <span className="yours-field">
      <select
        className="yours"
        aria-label="Angle of the temporary braces with the ground"
        value={angleDeg}
        onChange={({ currentTarget }) => onChoose(Number(currentTarget.value))}
      >
        {TEMPORARY_BRACE_ANGLES.map((angle) => (
          <option key={angle} value={angle}>
            {angle}°
          </option>
        ))}
      </select>
    </span>
  );
}

interface StageProps extends RaisingProps {
  readonly stage: RaisingStage;
  readonly angleDeg: number;
  readonly isOpen: boolean;
  readonly onOpen: (isOpen: boolean) => void;
}

function Stage({ stage, way, names, angleDeg, isOpen, onOpen }: StageProps) {
  const system = useWorkbench((state) => state.system);
  const { id, ways, reason } = stage;
  const caution = STAGE_CAUTIONS[id];
  const hardest = ways?.[way].braced[0];
  return (
    <li>
      <h4>{STAGE_WORDS[id]}</h4>
      {hardest && (
        <span className="raising-force">
          each brace{' '}
          <button type="button" className="opens" aria-expanded={isOpen} onClick={() => onOpen(!isOpen)}>
            {leastForce(hardest.braceLb, system)}
            <span className="unseen">, steps of the brace, {STAGE_WORDS[id]}</span>
          </button>
        </span>
      )}
      {ways && !hardest && <span className="raising-force">holds itself</span>}
      {reason && <p>{say(reason)}</p>}
      {ways && (
        <p>
          {windInWords(ways[way], way, system)} {hardest && hardestInWords(hardest, names, system)}
        </p>
      )}
      {ways && holdersInWords(ways[way], names).map((words) => <p key={words}>{words}</p>)}
      <p>
        {overnightInWords(stage, system)} {caution}
      </p>
      {hardest && isOpen && (
        <BraceSteps
          place={{ stage: id, way, postId: hardest.postId }}
          angleDeg={angleDeg}
          onClose={() => onOpen(false)}
        />
      )}
    </li>
  );
}

interface BraceStepsProps {
  readonly place: RaisingPlace;
  readonly angleDeg: number;
  readonly onClose: () => void;
}

/** Worked out only while they are open. */
function BraceSteps({ place, angleDeg, onClose }: BraceStepsProps) {
  const project = useDeferredValue(useOpenProject());
  const inside = useEscape<HTMLElement>(onClose);
  const { stage, way, postId } = place;
  const steps = useMemo(
    () => explainRaising(project, angleDeg, { stage, way, postId }),
    [project, angleDeg, stage, way, postId],
  );
  const label = `Steps of the brace, ${STAGE_WORDS[stage]}`;
  return (
    <section ref={inside} className="explained" aria-label={label}>
      <StepList steps={steps} label={label} />
      <button type="button" className="tool" onClick={onClose}>
        close the steps
      </button>
    </section>
  );
}
