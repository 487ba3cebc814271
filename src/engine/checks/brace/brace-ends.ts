import { clause } from '../../../data/sources.ts';
import { diameterAt, type BraceGeometry } from '../../geometry/shelter.ts';
import { put, type Note } from '../../note.ts';
import { degreesFromRadians, quantity } from '../../units.ts';
import type { LineCheckContext } from '../line-context.ts';
import { braceContactArea } from '../wood/brace-end.ts';

/** One end of a brace on the log that receives it. */
export interface End {
  readonly which: 'post' | 'top';
  readonly kind: 'bracePost' | 'braceTop';
  readonly logId: string;
  readonly logDiameterIn: number;
  readonly braceDiameterIn: number;
  /** angle between the brace and the log's axis [deg] */
  readonly betaDeg: number;
  readonly cut: BraceGeometry['ends']['post'];
  /** wood beyond the shoulder, to the end of the log, the way a push slides [in] */
  readonly beyondIn: number;
}

/** A push slides down the post and, on the beam, away from the post. */
function woodBeyond(context: LineCheckContext, brace: BraceGeometry, which: End['which']): number {
  if (which === 'post') {
    const post = context.frame.members.posts.find((p) => p.id === brace.postId);
    return post ? brace.postPoint.zIn - post.woodFromZIn : 0;
  }
  const beam = context.frame.members.beams.find((b) => b.id === brace.toId);
  if (!beam) return 0;
  return brace.side === 'plus' ? beam.toXIn - brace.topPoint.xIn : brace.topPoint.xIn - beam.fromXIn;
}

export function endsOf(context: LineCheckContext, brace: BraceGeometry): readonly End[] {
  const stick = brace.stick;
  const d = (at: number): number =>
    stick?.kind === 'round'
      ? (diameterAt(stick, at) ?? 0)
      : stick?.kind === 'sawn'
        ? Math.min(stick.breadthIn, stick.depthIn)
        : 0;
  return [
    {
      which: 'post',
      kind: 'bracePost',
      logId: brace.postId,
      logDiameterIn: brace.postDiameterIn,
      braceDiameterIn: d(0),
      betaDeg: brace.phiDeg,
      cut: brace.ends.post,
      beyondIn: woodBeyond(context, brace, 'post'),
    },
    {
      which: 'top',
      kind: 'braceTop',
      logId: brace.toId,
      logDiameterIn: brace.topDiameterIn,
      braceDiameterIn: d(brace.lengthIn),
      betaDeg: angleAtTop(context, brace),
      cut: brace.ends.top,
      beyondIn: woodBeyond(context, brace, 'top'),
    },
  ];
}

/** Angle between a brace and the axis of the log that it carries, which may lie on a slope [deg]. */
function angleAtTop({ frame }: LineCheckContext, brace: BraceGeometry): number {
  const slope = frame.members.beams.find((b) => b.id === brace.toId)?.slope;
  if (!slope) return 90 - brace.phiDeg;
  const risesDeg = -slope.downX * (brace.side === 'plus' ? 1 : -1) * degreesFromRadians(Math.acos(slope.cos));
  const betaDeg = 90 - brace.phiDeg - risesDeg;
  return Math.min(betaDeg, 180 - betaDeg);
}

/** A saddled end bears on its whole ellipse; a housed or flat one on what the flat is wide. */
export function contactArea(end: End, note?: Note): number {
  if (end.cut.kind !== 'coped')
    return end.cut.depthIn > 0
      ? braceContactArea(end.braceDiameterIn, end.cut.depthIn, end.logDiameterIn, end.betaDeg, note)
      : 0;
  const d = Math.min(end.braceDiameterIn, end.logDiameterIn);
  const area = (Math.PI * d * d) / 4 / Math.sin((end.betaDeg * Math.PI) / 180);
  note?.({
    symbol: 'A',
    words: 'contact of the saddled end',
    formula: 'π d2 / (4 sin β)',
    put: [put('d', d, 'in', 'brace diameter there'), put('β', end.betaDeg, 'deg', 'angle between brace and log')],
    result: quantity(area, 'in2'),
    clause: clause('MECHANICS', 'ellipse'),
  });
  return area;
}
