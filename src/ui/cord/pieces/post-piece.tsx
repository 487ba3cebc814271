import type { Shelter } from '../../../engine/geometry/shelter.ts';
import { stockOf, traitsOf } from '../../../engine/project/traits.ts';
import { postsOf } from '../../drawing/shelter-parts.ts';
import { Yours } from '../../fields/yours.tsx';
import { useOpenProject } from '../../state/use-workbench.ts';
import { JointSentences } from '../joint-sentences.tsx';
import { UpliftOfPost } from '../joint-uplift.tsx';
import { LookAtLog } from '../../log/look-at-log.tsx';
import { LogSentences } from '../log-sentences.tsx';
import { memberIn, traitPath } from '../own.ts';
import { withStock } from '../own-edits.ts';
import { SawnSentence, StockChoice } from '../sawn-sentences.tsx';

interface PostPieceProps {
  readonly memberId: string;
  readonly shelter: Shelter;
  readonly name: string;
}

export function PostPiece({ memberId, shelter, name }: PostPieceProps) {
  const project = useOpenProject();
  const member = memberIn(project, memberId);
  if (member?.role !== 'post') return null;
  const stock = stockOf(project, member);
  const line = shelter.lines.find(({ id }) => id === member.line);
  const before = line && postsOf(shelter, line).findLast(({ xIn, id }) => id !== memberId && xIn < member.xIn);
  return (
    <>
      <p className="sentence">
        Post {name} is{' '}
        <StockChoice
          project={project}
          stock={stock}
          of={`post ${name}`}
          write={(p, next) => withStock(p, memberId, next)}
        />{' '}
        and stands{' '}
        {before ? (
          <>
            <Yours
              path={`members[${memberId}].xIn`}
              label={`Post ${name}: from ${before.label}`}
              from={{ zeroIn: before.xIn, sign: 1 }}
            />{' '}
            from {before.label}
          </>
        ) : (
          <>
            <Yours path={`members[${memberId}].xIn`} label={`Post ${name}: from the mark`} /> from the mark of the line
          </>
        )}
        , axis to axis.{' '}
        {traitsOf(project, member).foot.kind === 'pier' && (
          <>
            The top of its pier lies{' '}
            <Yours path={`members[${memberId}].pierTopZIn`} label={`Post ${name}: top of the pier`} /> above the
            mark.{' '}
          </>
        )}
        The ground lies <Yours path={`members[${memberId}].gradeZIn`} label={`Post ${name}: ground`} /> above the mark.
      </p>
      {stock?.kind === 'log' && <LogSentences memberId={memberId} of={`post ${name}`} />}
      <LookAtLog memberId={memberId} />
      {stock?.kind === 'sawn' && (
        <SawnSentence path={traitPath(project, memberId, 'stock')} of={`Post ${name}`} stock={stock} />
      )}
      <JointSentences kind="postFoot" one={{ upper: memberId, words: `of ${name}` }} isRare />
      <UpliftOfPost memberId={memberId} name={name} />
    </>
  );
}
