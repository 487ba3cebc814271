import type { Evaluation, RowReport } from '../../../engine/evaluation.ts';
import { sentenceCase } from '../letter-case.ts';
import type { Names } from '../places.ts';
import { TiePieces } from './tie-piece.tsx';

/** Every row that holds the shelter across in a sentence, then the tie logs that it is made of. */
export function FramesAcross({ evaluation, names }: { readonly evaluation: Evaluation; readonly names: Names }) {
  return (
    <>
      {evaluation.rows.map((row) => (
        <p key={row.rowId} className="sentence">
          {rowInWords(row, evaluation)}
        </p>
      ))}
      <TiePieces shelter={evaluation.shelter} names={names} />
    </>
  );
}

/** `Row A1 B1 stands on 1 tie log and 2 braces; its tops move 0.42 of what they may.` */
export function rowInWords(
  { rowId, label, postIds, tieIds, rafterIds = [] }: RowReport,
  { shelter, checks }: Pick<Evaluation, 'shelter' | 'checks'>,
): string {
  const braces = shelter.braces.filter((b) => postIds.includes(b.postId) && [...tieIds, ...rafterIds].includes(b.toId));
  const fixed = shelter.posts.filter((p) => postIds.includes(p.id) && p.foot.fixity.across !== 'pinned');
  const parts = [
    ...counted(tieIds.length, 'tie log', 'tie logs'),
    ...counted(rafterIds.length, 'braced rafter', 'braced rafters'),
    ...counted(braces.length, 'brace', 'braces'),
    ...counted(fixed.length, 'fixed foot', 'fixed feet'),
  ];
  const stands = `${sentenceCase(label)} stands on ${parts.length > 0 ? listed(parts) : 'nothing that holds it'}`;
  const moves = checks.flatMap((c) => (c.ruleId === 'sway.across' && c.memberId === rowId ? (c.ratio ?? []) : []));
  if (moves.length === 0) return `${stands}.`;
  return `${stands}; its tops move ${Math.max(...moves).toFixed(2)} of what they may.`;
}

const counted = (many: number, one: string, several: string): readonly string[] =>
  many === 0 ? [] : [`${many} ${many === 1 ? one : several}`];

const listed = (parts: readonly string[]): string =>
  parts.length < 2 ? parts.join('') : `${parts.slice(0, -1).join(', ')} and ${parts.at(-1)}`;
