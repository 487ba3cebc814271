import type { LineDetail } from '../drawing/section-parts.ts';
import type { Project } from '../../engine/project/model.ts';

/** Sizes of strip and ledger that the section shows. */
export const lineDetailsOf = ({ supportLines }: Project): readonly LineDetail[] =>
  supportLines.map((line) => {
    const { id } = line;
    if (line.kind === 'ledger') {
      const depth = line.stock?.kind === 'sawn' ? line.stock.depthIn : null;
      return { lineId: id, stripBreadthIn: null, wallFaceYIn: line.wallFaceYIn, ledgerDepthIn: depth };
    }
    const breadth = line.strip?.stock?.kind === 'sawn' ? line.strip.stock.breadthIn : null;
    return { lineId: id, stripBreadthIn: breadth, wallFaceYIn: null, ledgerDepthIn: null };
  });
