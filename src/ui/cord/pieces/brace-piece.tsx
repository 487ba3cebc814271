import { stockOf } from '../../../engine/project/traits.ts';
import { YoursChoice } from '../../fields/choice.tsx';
import { CommandButton } from '../../fields/command-choice.tsx';
import { Yours } from '../../fields/yours.tsx';
import { useOpenProject } from '../../state/use-workbench.ts';
import { JointSentences } from '../joint-sentences.tsx';
import { LookAtLog } from '../../log/look-at-log.tsx';
import { LogSentences } from '../log-sentences.tsx';
import { isOwn, memberIn, sharersOf, traitPath } from '../own.ts';
import { madeLikeOthers, madeOwn, withStock } from '../own-edits.ts';
import { SawnSentence, StockChoice } from '../sawn-sentences.tsx';
import { sentenceCase } from '../letter-case.ts';

const END_KINDS = [
  { value: 'housed', words: 'let in' },
  { value: 'coped', words: 'coped round the log' },
  { value: 'flat', words: 'on a flat' },
];
const LEGS = ['runIn', 'dropIn'] as const;

export function BracePiece({ memberId, name }: { readonly memberId: string; readonly name: string }) {
  const project = useOpenProject();
  const member = memberIn(project, memberId);
  if (member?.role !== 'brace') return null;
  const stock = stockOf(project, member);
  const ends = traitPath(project, memberId, 'ends');
  return (
    <>
      <p className="sentence">
        {sentenceCase(name)} is{' '}
        <StockChoice project={project} stock={stock} of={name} write={(p, next) => withStock(p, memberId, next)} />. It
        runs <Yours path={traitPath(project, memberId, 'runIn')} label={`${name}: run along the beam`} /> along the beam
        and drops <Yours path={traitPath(project, memberId, 'dropIn')} label={`${name}: drop down the post`} /> down the
        post, from axis to axis.
      </p>
      <Legs memberId={memberId} name={name} />
      {stock?.kind === 'log' && <LogSentences memberId={memberId} of={name} />}
      <LookAtLog memberId={memberId} />
      {stock?.kind === 'sawn' && (
        <SawnSentence path={traitPath(project, memberId, 'stock')} of={sentenceCase(name)} stock={stock} />
      )}
      <p className="sentence">
        Its lower end is <YoursChoice path={`${ends}.post.kind`} label={`${name}: lower end`} choices={END_KINDS} />{' '}
        <Yours path={`${ends}.post.depthIn`} label={`${name}: depth of the lower end`} /> deep, its upper end{' '}
        <YoursChoice path={`${ends}.top.kind`} label={`${name}: upper end`} choices={END_KINDS} />{' '}
        <Yours path={`${ends}.top.depthIn`} label={`${name}: depth of the upper end`} /> deep.
      </p>
      <JointSentences kind="bracePost" one={{ upper: memberId, words: `of ${name}` }} />
      <JointSentences kind="braceTop" one={{ upper: memberId, words: `of ${name}` }} />
    </>
  );
}

/** Whether run and drop are those of all braces or its own. */
function Legs({ memberId, name }: { readonly memberId: string; readonly name: string }) {
  const project = useOpenProject();
  if (LEGS.some((leg) => isOwn(project, memberId, leg))) {
    return (
      <p className="aside">
        Run and drop are its own.{' '}
        <CommandButton
          words="as the others"
          name={`${name} as the others`}
          perform={(p) => madeLikeOthers(p, memberId, LEGS)}
        />
      </p>
    );
  }
  const sharers = sharersOf(project, memberId, 'runIn');
  if (sharers < 2) return null;
  return (
    <p className="aside">
      Run and drop are those of {sharers} braces.{' '}
      <CommandButton
        words="only this one"
        name={`${name} with its own run and drop`}
        perform={(p) => madeOwn(p, memberId, LEGS)}
      />
    </p>
  );
}
