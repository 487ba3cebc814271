import { useState } from 'react';
import { setAt } from '../../../engine/project/edits/set-at.ts';
import { CommandButton } from '../../fields/command-choice.tsx';
import { Yours } from '../../fields/yours.tsx';
import { useOpenProject } from '../../state/use-workbench.ts';
import { JointSentences } from '../joint-sentences.tsx';
import { SawnSentence } from '../sawn-sentences.tsx';
import { BuildingBeside } from './building-beside.tsx';
import { WallWood } from './wall-wood.tsx';

const NEIGHBOUR = 'surroundings.neighbour';

/** The ledger, its wall, and the building that must be able to take both. */
export function LedgerPiece() {
  const { supportLines, surroundings } = useOpenProject();
  return (
    <>
      {supportLines.map((line) => {
        if (line.kind !== 'ledger') return null;
        const path = `supportLines[${line.id}]`;
        return (
          <div key={line.id}>
            {line.stock?.kind === 'sawn' && <SawnSentence path={`${path}.stock`} of="Ledger" stock={line.stock} />}
            <p className="sentence">
              It runs from <Yours path={`${path}.fromXIn`} label="Ledger: left end" /> to{' '}
              <Yours path={`${path}.toXIn`} label="Ledger: right end" /> of the mark, fixed to the wall every{' '}
              <Yours path={`${path}.fixingSpacingIn`} label="Ledger: spacing of the fixings" />.
            </p>
            <WallWood line={line} path={path} />
          </div>
        );
      })}
      {surroundings.neighbour && (
        <>
          <BuildingBeside />
          <AbleBy isSaid={surroundings.neighbour.ableBy !== null} />
        </>
      )}
      <JointSentences kind="ledgerWall" />
      <JointSentences kind="rafterLedger" />
    </>
  );
}

function AbleBy({ isSaid }: { readonly isSaid: boolean }) {
  if (!isSaid) return <SaySo />;
  return (
    <p className="sentence">
      That the building can take it says <Yours path={`${NEIGHBOUR}.ableBy.name`} label="Who says so" kind="text" /> on{' '}
      <Yours path={`${NEIGHBOUR}.ableBy.date`} label="Day it was said" kind="text" />.{' '}
      <CommandButton words="nobody says so" perform={(p) => setAt(p, `${NEIGHBOUR}.ableBy`, null)} />
    </p>
  );
}

const today = (): string => new Date().toISOString().slice(0, 10);

/** Only a name makes it said; the day is today until it is changed. */
function SaySo() {
  const [name, setName] = useState('');
  return (
    <p className="sentence">
      Nobody has said that the building can take it. Who says so?{' '}
      <input
        type="text"
        className="plain-box"
        aria-label="Name of the person who says that the building can take it"
        value={name}
        onChange={({ currentTarget }) => setName(currentTarget.value)}
      />{' '}
      {name.trim() !== '' && (
        <CommandButton
          words="says so"
          name="the building can take it"
          perform={(p) => setAt(p, `${NEIGHBOUR}.ableBy`, { name: name.trim(), date: today() })}
        />
      )}
    </p>
  );
}
