import type { JointKind, Member, Project, Stock } from '../model.ts';
import { stockPlaceOf } from './at.ts';

/** How thick the sticks of one side of a joint can be where a fastener goes through them [in]. */
export interface Thickness {
  readonly leastIn: number;
  readonly mostIn: number;
  /** of the widest of them, the wider side */
  readonly widestIn: number;
}

/** Both sides of a kind of joint, over all joints of that kind; null where a stick is not known yet. */
export interface Thicknesses {
  readonly upper: Thickness | null;
  readonly lower: Thickness | null;
  readonly isSheet: boolean;
  /** a wall or a pier lies below: nobody says how deep */
  readonly isOpenBelow: boolean;
}

type Side = Member['role'] | 'strip' | 'ledger' | 'sheet' | 'ground';

const SIDES: Readonly<Record<JointKind, readonly [upper: Side, lower: Side]>> = {
  sheetPurlin: ['sheet', 'purlin'],
  sheetRafter: ['sheet', 'rafter'],
  purlinRafter: ['purlin', 'rafter'],
  rafterStrip: ['rafter', 'strip'],
  rafterLedger: ['rafter', 'ledger'],
  rafterRafter: ['rafter', 'rafter'],
  stripBeam: ['strip', 'beam'],
  beamPost: ['beam', 'post'],
  beamSplice: ['beam', 'beam'],
  bracePost: ['brace', 'post'],
  braceTop: ['brace', 'beam'],
  tiePost: ['tie', 'post'],
  postFoot: ['post', 'ground'],
  ledgerWall: ['ledger', 'ground'],
};

/** A fastener goes aslant through a stick at most this many times its thickness, and at least through half of a brace. */
const ASLANT = { most: 2, least: 0.5 } as const;
/** Packing under a strip that a screw may have to bridge [in]; own choice, far over any shim. */
const PACKING_IN = 6;

export function thicknessesAt(project: Project, kind: JointKind): Thicknesses {
  const [upper, lower] = SIDES[kind];
  const tops = kind === 'braceTop' ? stocksOf(project, 'tie') : [];
  const isOpenBelow = lower === 'ground';
  const under = isOpenBelow ? NO_THICKNESS : thicknessOf(project, [...stocksOf(project, lower), ...tops]);
  return {
    upper: upper === 'sheet' ? NO_THICKNESS : aslant(thicknessOf(project, stocksOf(project, upper))),
    // a post is met by its end grain: as deep as the post is long
    lower: kind === 'beamPost' ? under && { ...under, mostIn: Infinity } : kind === 'stripBeam' ? packed(under) : under,
    isSheet: upper === 'sheet',
    isOpenBelow,
  };
}

const NO_THICKNESS: Thickness = { leastIn: 0, mostIn: 0, widestIn: Infinity };

const aslant = (t: Thickness | null): Thickness | null =>
  t && { ...t, leastIn: ASLANT.least * t.leastIn, mostIn: ASLANT.most * t.mostIn };

const packed = (t: Thickness | null): Thickness | null => t && { ...t, mostIn: t.mostIn + PACKING_IN };

/** Every stock of a side; null for one that is not given. */
function stocksOf(project: Project, side: Side): readonly (Stock | null)[] {
  switch (side) {
    case 'sheet':
    case 'ground':
      return [];
    case 'strip':
      // rafters of a line without a strip lie on its beam
      return project.supportLines.flatMap((line) =>
        line.kind !== 'frame' ? [] : line.strip ? [line.strip.stock] : stocksOf(project, 'beam'),
      );
    case 'ledger':
      return project.supportLines.flatMap((line) => (line.kind === 'ledger' ? [line.stock] : []));
    default:
      return project.members
        .filter((member) => member.role === side)
        .map((member) => stockPlaceOf(project, member)?.stock ?? null);
  }
}

/** Null where one of the sticks is not known: then nothing can be said. */
function thicknessOf(project: Project, stocks: readonly (Stock | null)[]): Thickness | null {
  const all = stocks.map((stock) => stock && sizesOf(project, stock));
  const known = all.filter((sizes) => sizes !== null);
  if (known.length === 0 || known.length < all.length) return null;
  return {
    leastIn: Math.min(...known.map((s) => s.leastIn)),
    mostIn: Math.max(...known.map((s) => s.mostIn)),
    widestIn: Math.max(...known.map((s) => s.mostIn)),
  };
}

/** Thinner and wider side of a sawn stick, least and greatest diameter of a log; a typed section has no sides. */
function sizesOf(project: Project, stock: Stock): Pick<Thickness, 'leastIn' | 'mostIn'> | null {
  if (stock.kind === 'typed') return null;
  const log = stock.kind === 'log' ? project.logs.find(({ id }) => id === stock.logId) : undefined;
  if (stock.kind === 'log' && !log) return null;
  const sides =
    stock.kind === 'sawn'
      ? [stock.breadthIn, stock.depthIn, Math.min(stock.breadthIn, stock.depthIn) * stock.plies]
      : (log?.stations ?? []).map(({ diameterIn }) => diameterIn);
  return sides.length > 0 ? { leastIn: Math.min(...sides), mostIn: Math.max(...sides) } : null;
}
