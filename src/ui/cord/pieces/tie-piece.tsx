import type { Shelter } from '../../../engine/geometry/shelter.ts';
import { canJoinRows, joinRows } from '../../../engine/project/edits/join-rows.ts';
import { stockOf } from '../../../engine/project/traits.ts';
import { YoursChoice } from '../../fields/choice.tsx';
import { CommandButton } from '../../fields/command-choice.tsx';
import { Yours } from '../../fields/yours.tsx';
import { look, useFrameView } from '../../frame/frame-view.ts';
import { newId, useOpenProject } from '../../state/use-workbench.ts';
import { JointSentences } from '../joint-sentences.tsx';
import { sentenceCase } from '../letter-case.ts';
import { LookAtLog } from '../../log/look-at-log.tsx';
import { LogSentences } from '../log-sentences.tsx';
import { memberIn, traitPath } from '../own.ts';
import { withStock } from '../own-edits.ts';
import { PieceChooser } from '../piece-chooser.tsx';
import type { Names } from '../places.ts';
import { SawnSentence, StockChoice } from '../sawn-sentences.tsx';

const ENDS = [
  { value: 'between', words: 'between the posts, axes meeting' },
  { value: 'beside', words: 'beside the posts' },
];

/** Tie logs across the lines: one of several is chosen, and rows that have none are joined. */
export function TiePieces({ shelter, names }: { readonly shelter: Shelter; readonly names: Names }) {
  const project = useOpenProject();
  const selected = useFrameView(({ memberId }) => memberId);
  const ids = shelter.ties.map(({ id }) => id);
  const chosen = ids.find((id) => id === selected) ?? ids[0];
  return (
    <>
      {canJoinRows(project) && (
        <p className="aside">
          <CommandButton
            words={ids.length > 0 ? 'join the other rows by tie logs too' : 'join the rows by tie logs with braces'}
            perform={(p) => joinRows(p, (what) => `${what}-${newId()}`)}
          />
        </p>
      )}
      {chosen !== undefined && (
        <>
          <PieceChooser
            name="Which tie log"
            ids={ids}
            chosen={chosen}
            names={names}
            onChoose={(memberId) => look({ memberId })}
          />
          <TiePiece memberId={chosen} name={names.get(chosen) ?? chosen} />
        </>
      )}
    </>
  );
}

function TiePiece({ memberId, name }: { readonly memberId: string; readonly name: string }) {
  const project = useOpenProject();
  const member = memberIn(project, memberId);
  if (member?.role !== 'tie') return null;
  const stock = stockOf(project, member);
  return (
    <>
      <p className="sentence">
        {sentenceCase(name)} is{' '}
        <StockChoice project={project} stock={stock} of={name} write={(p, next) => withStock(p, memberId, next)} />. Its
        axis lies <Yours path={traitPath(project, memberId, 'downIn')} label={`${name}: below the beam`} /> below that
        of the lower of the two beams,{' '}
        <YoursChoice
          path={traitPath(project, memberId, 'ends')}
          label={`${name}: how it meets its posts`}
          choices={ENDS}
        />
        .
      </p>
      {stock?.kind === 'log' && <LogSentences memberId={memberId} of={name} />}
      <LookAtLog memberId={memberId} />
      {stock?.kind === 'sawn' && (
        <SawnSentence path={traitPath(project, memberId, 'stock')} of={sentenceCase(name)} stock={stock} />
      )}
      <JointSentences kind="tiePost" one={{ upper: memberId, words: `of ${name}` }} />
    </>
  );
}
