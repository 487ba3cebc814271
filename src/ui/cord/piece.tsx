import type { Evaluation } from '../../engine/evaluation.ts';
import type { Shelter } from '../../engine/geometry/shelter.ts';
import { look, useFrameView } from '../frame/frame-view.ts';
import type { CordLink } from './links.ts';
import { PieceChooser } from './piece-chooser.tsx';
import { BeamPiece } from './pieces/beam-piece.tsx';
import { BracePiece } from './pieces/brace-piece.tsx';
import { LedgerPiece } from './pieces/ledger-piece.tsx';
import { PierPiece } from './pieces/pier-piece.tsx';
import { PostPiece } from './pieces/post-piece.tsx';
import { PurlinPiece, RafterPiece } from './pieces/roof-stick-pieces.tsx';
import { SheetPiece } from './pieces/sheet-piece.tsx';
import { SitePiece } from './pieces/site-piece.tsx';
import { StripPiece } from './pieces/strip-piece.tsx';
import { SwayPiece } from './pieces/sway-piece.tsx';
import type { Names } from './places.ts';

interface PieceProps {
  readonly link: CordLink;
  readonly evaluation: Evaluation;
  readonly names: Names;
}

/** What a link is made of, in sentences whose quantities are edited where they stand. */
export function Piece(props: PieceProps) {
  switch (props.link.link) {
    case 'site':
      return <SitePiece {...props} />;
    case 'sheet':
      return <SheetPiece shelter={props.evaluation.shelter} />;
    case 'purlin':
      return <PurlinPiece shelter={props.evaluation.shelter} />;
    case 'rafter':
      return <RafterPiece shelter={props.evaluation.shelter} />;
    case 'ledger':
      return <LedgerPiece />;
    case 'strip':
      return <StripPiece names={props.names} />;
    case 'beam':
    case 'brace':
    case 'post':
    case 'pier':
      return <OneOfAlike {...props} />;
    case 'swayAlong':
      return <SwayPiece way="along" {...props} />;
    case 'swayAcross':
      return <SwayPiece way="across" {...props} />;
  }
}

/** One of several alike pieces: the chosen one, else the one with the greatest ratio, else the first. */
function OneOfAlike({ link, evaluation, names }: PieceProps) {
  const selected = useFrameView(({ memberId }) => memberId);
  const { shelter } = evaluation;
  const ids = alikeIds(link, shelter);
  const chosen = [selected, link.worst?.memberId, ids[0]].find((id) => typeof id === 'string' && ids.includes(id));
  if (typeof chosen !== 'string') return null;
  const name = names.get(chosen) ?? chosen;
  return (
    <>
      <PieceChooser
        name={`Which ${link.words}`}
        ids={ids}
        chosen={chosen}
        names={names}
        onChoose={(memberId) => look({ memberId })}
      />
      {link.link === 'beam' && <BeamPiece memberId={chosen} shelter={shelter} name={name} />}
      {link.link === 'brace' && <BracePiece memberId={chosen} name={name} />}
      {link.link === 'post' && <PostPiece memberId={chosen} shelter={shelter} name={name} />}
      {link.link === 'pier' && <PierPiece memberId={chosen} evaluation={evaluation} name={name} />}
    </>
  );
}

function alikeIds({ link, lineId }: CordLink, shelter: Shelter): readonly string[] {
  if (link === 'beam') return shelter.beams.filter(({ line }) => line === lineId).map(({ id }) => id);
  return (link === 'brace' ? shelter.braces : shelter.posts).map(({ id }) => id);
}
