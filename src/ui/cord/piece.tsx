import type { ReactNode } from 'react';
import { look, useFrameView } from '../frame/frame-view.ts';
import type { Evaluation } from '../../engine/evaluation.ts';
import type { CordLink } from './links.ts';
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
import { PieceChooser } from './piece-chooser.tsx';
import type { Names } from './places.ts';

interface PieceProps {
  readonly link: CordLink;
  readonly evaluation: Evaluation;
  readonly names: Names;
}

/** What a link is made of, in sentences whose quantities are edited where they stand. */
export function Piece({ link, evaluation, names }: PieceProps) {
  const { shelter } = evaluation;
  switch (link.link) {
    case 'site':
      return <SitePiece loads={evaluation.loads} />;
    case 'sheet':
      return <SheetPiece />;
    case 'purlin':
      return <PurlinPiece shelter={shelter} />;
    case 'rafter':
      return <RafterPiece shelter={shelter} />;
    case 'ledger':
      return <LedgerPiece />;
    case 'strip':
      return <StripPiece names={names} />;
    case 'beam':
      return (
        <OneOf
          link={link}
          names={names}
          ids={shelter.beams.filter(({ line }) => line === link.lineId).map(({ id }) => id)}
          of={(id) => <BeamPiece memberId={id} shelter={shelter} name={names.get(id) ?? id} />}
        />
      );
    case 'brace':
      return (
        <OneOf
          link={link}
          names={names}
          ids={shelter.braces.map(({ id }) => id)}
          of={(id) => <BracePiece memberId={id} name={names.get(id) ?? id} />}
        />
      );
    case 'post':
      return (
        <OneOf
          link={link}
          names={names}
          ids={shelter.posts.map(({ id }) => id)}
          of={(id) => <PostPiece memberId={id} shelter={shelter} name={names.get(id) ?? id} />}
        />
      );
    case 'pier':
      return (
        <OneOf
          link={link}
          names={names}
          ids={shelter.posts.map(({ id }) => id)}
          of={(id) => <PierPiece memberId={id} name={names.get(id) ?? id} />}
        />
      );
    case 'swayAlong':
      return <SwayPiece way="along" names={names} />;
    case 'swayAcross':
      return <SwayPiece way="across" names={names} />;
  }
}

interface OneOfProps {
  readonly link: CordLink;
  readonly names: Names;
  readonly ids: readonly string[];
  readonly of: (memberId: string) => ReactNode;
}

/** The chosen piece, else the one with the greatest ratio, else the first. */
function OneOf({ link, names, ids, of }: OneOfProps) {
  const selected = useFrameView(({ memberId }) => memberId);
  const worst = link.worst?.memberId;
  const chosen = [selected, worst, ids[0]].find((id) => id !== undefined && id !== null && ids.includes(id));
  if (chosen === undefined || chosen === null) return null;
  return (
    <>
      <PieceChooser
        name={`Which ${link.words}`}
        ids={ids}
        chosen={chosen}
        names={names}
        onChoose={(memberId) => look({ memberId })}
      />
      {of(chosen)}
    </>
  );
}
