import { useState } from 'react';
import { SYSTEM_WORDS } from '../../../data/words/lateral.ts';
import type { Evaluation } from '../../../engine/evaluation.ts';
import type { Lateral, Project } from '../../../engine/project/model.ts';
import { YoursChoice } from '../../fields/choice.tsx';
import { CommandButton } from '../../fields/command-choice.tsx';
import { Yours } from '../../fields/yours.tsx';
import { late } from '../../late.tsx';
import { useOpenProject } from '../../state/use-workbench.ts';
import type { Names } from '../places.ts';
import { sentenceCase } from '../letter-case.ts';

const FramesAcross = late(async () => (await import('./frames-across.tsx')).FramesAcross);
const Raising = late(async () => (await import('../raising.tsx')).Raising);

const SYSTEMS = [
  { value: null, words: 'not decided' },
  ...Object.entries(SYSTEM_WORDS).map(([value, words]) => ({ value, words })),
];

/** Frames across hold nothing along: offered there only where a file says so, to be corrected. */
const systemsFor = (way: 'along' | 'across', by: Lateral['by']): typeof SYSTEMS =>
  way === 'across' || by === 'transverseFrame' ? SYSTEMS : SYSTEMS.filter(({ value }) => value !== 'transverseFrame');

interface SwayPieceProps {
  readonly way: 'along' | 'across';
  readonly evaluation: Evaluation;
  readonly names: Names;
}

/** What holds the shelter sideways is named by the person, never inferred. */
export function SwayPiece({ way, evaluation, names }: SwayPieceProps) {
  const project = useOpenProject();
  const systems = project.lateral[way];
  return (
    <>
      {systems.map((system, i) => (
        <p key={i} className="sentence">
          {wordsOf(system, way, names)} held {way} by{' '}
          <YoursChoice
            path={`lateral.${way}[${i}].by`}
            label={`What holds it ${way}, ${i + 1}`}
            choices={systemsFor(way, system.by)}
          />
          {(system.by === 'building' || system.by === 'ratedWalls') && (
            <>
              , rated for <Yours path={`lateral.${way}[${i}].ratedLb`} label={`Rating ${way}, ${i + 1}`} /> by{' '}
              <Yours path={`lateral.${way}[${i}].givenBy`} label={`Who rated it ${way}, ${i + 1}`} kind="text" />
            </>
          )}
          .
        </p>
      ))}
      {systems.length === 0 && (
        <p className="sentence">
          Nobody has said what holds it {way}. <CommandButton words="say it" perform={(p) => withSystem(p, way)} />
        </p>
      )}
      {way === 'across' && <FramesAcross evaluation={evaluation} names={names} />}
      <WhileRaised way={way} names={names} />
    </>
  );
}

/** Folded until it is asked for: its figures are worked out only while they are seen. */
function WhileRaised(props: Pick<SwayPieceProps, 'way' | 'names'>) {
  const [isOpen, setIsOpen] = useState(false);
  return (
    <details className="folding" open={isOpen} onToggle={({ currentTarget }) => setIsOpen(currentTarget.open)}>
      <summary>While it is being raised</summary>
      {isOpen && (
        <div className="folding-body">
          <Raising {...props} />
        </div>
      )}
    </details>
  );
}

function wordsOf({ lines }: Lateral, way: 'along' | 'across', names: Names): string {
  if (way === 'across' || !lines || lines.length === 0) return 'The shelter is';
  const named = lines.map((id) => names.get(id) ?? id).join(' and ');
  return `${sentenceCase(named)} ${lines.length > 1 ? 'are' : 'is'}`;
}

const withSystem = (project: Project, way: 'along' | 'across'): Project => ({
  ...project,
  lateral: { ...project.lateral, [way]: [{ by: null }] },
});
