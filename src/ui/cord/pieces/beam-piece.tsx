import type { Shelter } from '../../../engine/geometry/shelter.ts';
import { stockOf } from '../../../engine/project/traits.ts';
import { YoursChoice } from '../../fields/choice.tsx';
import { Yours } from '../../fields/yours.tsx';
import { useOpenProject } from '../../state/use-workbench.ts';
import { postsOf } from '../../drawing/shelter-parts.ts';
import { BowSentence } from '../bow-sentence.tsx';
import { JointSentences } from '../joint-sentences.tsx';
import { LookAtLog } from '../../log/look-at-log.tsx';
import { LogSentences } from '../log-sentences.tsx';
import { memberIn, traitPath } from '../own.ts';
import { withStock } from '../own-edits.ts';
import { SawnSentence, StockChoice, TypedStickSentence } from '../sawn-sentences.tsx';
import { sentenceCase } from '../letter-case.ts';

const SETS = [
  { value: 'top', words: 'tops' },
  { value: 'axis', words: 'axes' },
  { value: 'underside', words: 'undersides' },
];
const HEIGHTS = [
  { value: 'bearing', words: 'the rafter seats' },
  { value: 'beamAxis', words: 'the beam axis' },
  { value: 'underside', words: 'the underside of the beam' },
];
const SEATS = [
  { value: 'flat', words: 'flat' },
  { value: 'dap', words: 'dap' },
  { value: 'saddle', words: 'saddle in the post' },
];

interface BeamPieceProps {
  readonly memberId: string;
  readonly shelter: Shelter;
  readonly name: string;
}

export function BeamPiece({ memberId, shelter, name }: BeamPieceProps) {
  const project = useOpenProject();
  const member = memberIn(project, memberId);
  if (member?.role !== 'beam') return null;
  const stock = stockOf(project, member);
  const path = traitPath(project, memberId, 'stock');
  const line = shelter.lines.find(({ id }) => id === member.line);
  const beam = shelter.beams.find(({ id }) => id === memberId);
  const posts = line ? postsOf(shelter, line) : [];
  const seat = traitPath(project, memberId, 'seat');
  return (
    <>
      <p className="sentence">
        {sentenceCase(name)} is{' '}
        <StockChoice project={project} stock={stock} of={name} write={(p, next) => withStock(p, memberId, next)} />,{' '}
        {posts[0] && (
          <>
            reaching{' '}
            <Yours
              path={`members[${memberId}].fromXIn`}
              label={`${name}: past ${posts[0].label}`}
              from={{ zeroIn: posts[0].xIn, sign: -1 }}
            />{' '}
            past {posts[0].label} and{' '}
            <Yours
              path={`members[${memberId}].toXIn`}
              label={`${name}: past ${posts.at(-1)?.label}`}
              from={{ zeroIn: posts.at(-1)?.xIn ?? 0, sign: 1 }}
            />{' '}
            past {posts.at(-1)?.label}
          </>
        )}
        .
      </p>
      {stock?.kind === 'log' && <LogSentences memberId={memberId} of={name} />}
      {beam && <BowSentence beam={beam} name={name} />}
      <LookAtLog memberId={memberId} />
      {stock?.kind === 'sawn' && <SawnSentence path={path} of={sentenceCase(name)} stock={stock} />}
      {stock?.kind === 'typed' && <TypedStickSentence path={path} of={sentenceCase(name)} stock={stock} />}
      <p className="sentence">
        Set so that the{' '}
        <YoursChoice path={`supportLines[${member.line}].set`} label={`${name}: what is level`} choices={SETS} /> are
        level; a flat{' '}
        <Yours path={traitPath(project, memberId, 'topFlatIn')} label={`${name}: depth of the flat on top`} /> deep
        planed on top. Seats on the posts:{' '}
        <YoursChoice path={`${seat}.kind`} label={`${name}: kind of seat`} choices={SEATS} />,{' '}
        <Yours path={`${seat}.depthIn`} label={`${name}: depth of the seat`} /> deep.
      </p>
      <LineHeight lineId={member.line} name={name} />
      <JointSentences kind="beamPost" one={{ upper: memberId, words: `of ${name}` }} />
      <JointSentences kind="beamSplice" one={{ upper: memberId, words: `of ${name}` }} isRare />
    </>
  );
}

/** One line of a roof carries the height, the others follow from the pitch. */
function LineHeight({ lineId, name }: { readonly lineId: string; readonly name: string }) {
  const line = useOpenProject().supportLines.find(({ id }) => id === lineId);
  if (!line) return null;
  if (line.height === null)
    return <p className="aside">Its height follows from the pitch and the line that carries one.</p>;
  return (
    <p className="sentence">
      <YoursChoice path={`supportLines[${lineId}].height.of`} label={`${name}: height of what`} choices={HEIGHTS} /> at{' '}
      <Yours path={`supportLines[${lineId}].height.zIn`} label={`${name}: height`} /> above the mark.
    </p>
  );
}
