import { useState } from 'react';
import { proposeFor } from '../../engine/propose.ts';
import type { Capacity, JointKind, Project } from '../../engine/project/model.ts';
import { CommandButton } from '../fields/command-choice.tsx';
import { say, useOpenProject, useWorkbench } from '../state/use-workbench.ts';
import { showRatio } from '../units/show-quantity.ts';
import { rowInWords } from './hardware-words.ts';

type Proposal = ReturnType<typeof proposeFor>;

interface ProposalProps {
  readonly kind: JointKind;
  /** the one joint that it is for; left out for all of the kind */
  readonly jointKey?: string | undefined;
  /** what the joint is called in labels */
  readonly of: string;
  readonly write: (project: Project, capacity: Capacity) => Project;
}

/** The fewest fasteners that hold what is asked, on demand: what they would be and how hard they would be asked. */
export function HardwareProposal({ kind, jointKey, of, write }: ProposalProps) {
  const project = useOpenProject();
  const [found, setFound] = useState<{ readonly of: Project; readonly proposal: Proposal } | null>(null);
  const [isLooking, setLooking] = useState(false);
  const look = (): void => {
    setLooking(true);
    // the words are painted first: it takes a second on a slow machine
    setTimeout(() => {
      setFound({ of: project, proposal: proposeFor(project, kind, jointKey) });
      setLooking(false);
    }, 20);
  };
  if (isLooking) return <p className="aside">looking for the fewest that hold</p>;
  if (found?.of === project) return <Proposed proposal={found.proposal} of={of} write={write} />;
  return (
    <p className="aside">
      <button type="button" className="tool" aria-label={`propose fasteners, ${of}`} onClick={look}>
        propose fasteners
      </button>
    </p>
  );
}

function Proposed({ proposal, of, write }: Pick<ProposalProps, 'of' | 'write'> & { readonly proposal: Proposal }) {
  const system = useWorkbench((state) => state.system);
  if (!proposal.ok) {
    return (
      <output className="aside" aria-label={`${of}: no proposal`}>
        {say(proposal.reason)}
      </output>
    );
  }
  const { capacity, share } = proposal;
  return (
    <output className="aside" aria-label={`${of}: proposal`}>
      The fewest that hold: {capacity.rows.map((row) => rowInWords(row, system)).join('; and ')}. Ratio{' '}
      {showRatio(share)} at the hardest.{' '}
      <CommandButton words="take these" name={`${of}: as proposed`} perform={(p) => write(p, capacity)} />
    </output>
  );
}
