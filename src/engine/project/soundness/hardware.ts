import { BENDING_YIELD } from '../../../data/fasteners/bending-yield.ts';
import { BOLTS } from '../../../data/fasteners/bolts.ts';
import { LAG_SCREWS } from '../../../data/fasteners/lag-screws.ts';
import { EDGE_DISTANCE, END_DISTANCE, IN_ROW } from '../../../data/fasteners/placement.ts';
import { WOOD_SCREWS } from '../../../data/fasteners/wood-screws.ts';
import { FASTENER_WORDS } from '../../../data/words/fasteners-pulled.ts';
import { fault, type Fault } from '../../message.ts';
import type { Capacity, FastenerRow, JointKind, Project } from '../model.ts';
import { thicknessesAt, type Thicknesses } from './joint-thickness.ts';

/**
 * Fasteners that cannot fit: a size that no table lists, a distance under the least one, a shank longer than both pieces
 * or shorter than the first, a stick too narrow for it. What only the placed joint shows is a row of the checks.
 */
export function hardwareFaults(project: Project): readonly Fault[] {
  const { defaults, own } = project.joints;
  return [
    ...defaults.flatMap(({ kind, capacity }) =>
      capacityFaults(project, kind, capacity, `joints.defaults[${kind}].capacity`),
    ),
    ...own.flatMap(({ key, capacity }) =>
      capacityFaults(project, key.split('/')[0] as JointKind, capacity, `joints.own[${key}].capacity`),
    ),
  ];
}

function capacityFaults(project: Project, kind: JointKind, capacity: Capacity, path: string): readonly Fault[] {
  if (capacity?.kind !== 'fasteners') return [];
  const thick = thicknessesAt(project, kind);
  return capacity.rows.flatMap((row, i) => rowFaults(row, thick, `${path}.rows[${i}]`));
}

/** One fault at most for each row: the first thing to mend. */
function rowFaults(row: FastenerRow, thick: Thicknesses, path: string): readonly Fault[] {
  for (const rule of [sizeFault, countFault, distanceFault, plateFault, lengthFault, widthFault]) {
    const found = rule(row, thick, path);
    if (found) return [found];
  }
  return [];
}

type Rule = (row: FastenerRow, thick: Thicknesses, path: string) => Fault | null;

const LISTED = { lag: LAG_SCREWS.rows, screw: WOOD_SCREWS.rows, bolt: BOLTS.rows } as const;
/** Listed sizes are printed to a few decimals. */
const SAME_SIZE_IN = 1e-3;
/** From this diameter on distances are counted in diameters by the standard itself. @source NDS 12.5.1 */
const THICK_FROM_IN = 0.25;

/** @source NDS Appendix L; Appendix I, Table I1 */
const sizeFault: Rule = ({ fastener, diameterIn }, _, path) => {
  if (fastener === 'strap') return null;
  const listed = fastener === 'lag' || fastener === 'screw' || fastener === 'bolt' ? LISTED[fastener] : null;
  if (listed && !listed.some((size) => Math.abs(size.nominalIn - diameterIn) < SAME_SIZE_IN)) {
    return fault(`${path}.diameterIn`, 'fastenerSizeNotListed', { fastener: FASTENER_WORDS[fastener], diameterIn });
  }
  const { fromIn, bands } = BENDING_YIELD[fastener];
  const thickestIn = Math.max(...bands.map(({ upToIn }) => upToIn));
  const isListed = diameterIn >= fromIn && diameterIn <= thickestIn + SAME_SIZE_IN;
  return isListed ? null : fault(`${path}.diameterIn`, 'fastenerYieldNotListed', { diameterIn });
};

const countFault: Rule = ({ count, rows }, _, path) =>
  rows <= count ? null : fault(`${path}.rows`, 'moreRowsThanFasteners', { rows, count });

/** @source NDS Tables 12.5.1A and B, from memory: the least distances of any load and wood */
const distanceFault: Rule = ({ diameterIn, spacingIn, endIn, count }, _, path) => {
  if (diameterIn < THICK_FROM_IN) return null;
  const inRow = IN_ROW.along.least;
  if (count > 1 && spacingIn !== null && spacingIn < inRow * diameterIn) {
    const values = { gotIn: spacingIn, leastIn: inRow * diameterIn, diameters: inRow };
    return fault(`${path}.spacingIn`, 'fastenersNearInRow', values);
  }
  const end = END_DISTANCE.softwood.awayFromEnd.least;
  if (endIn === null || endIn >= end * diameterIn) return null;
  return fault(`${path}.endIn`, 'fastenerNearEnd', { gotIn: endIn, leastIn: end * diameterIn, diameters: end });
};

const plateFault: Rule = ({ plate, rows, diameterIn, washerIn }, _, path) => {
  if (plate && plate.widthIn !== null && rows * diameterIn >= plate.widthIn) {
    return fault(`${path}.plate.widthIn`, 'strapHolesTakeAll', { holesIn: rows * diameterIn, widthIn: plate.widthIn });
  }
  return washerIn === undefined || washerIn > diameterIn
    ? null
    : fault(`${path}.washerIn`, 'washerUnderShank', { washerIn, diameterIn });
};

/** A driven shank ends in the second piece; a bolt goes through both. How deep a slanted nail goes its placed joint shows. */
const lengthFault: Rule = ({ fastener, lengthIn, plate, slanted }, { upper, lower, isSheet, isOpenBelow }, path) => {
  if (fastener === 'strap' || !upper || !lower) return null;
  if (plate) {
    if (fastener === 'bolt') return null;
    const woodIn = Math.max(isSheet ? 0 : upper.mostIn, lower.mostIn);
    const [roomIn, mostIn] = [plate.thicknessIn + woodIn, plate.thicknessIn + woodIn / 2];
    if (lengthIn > roomIn) return fault(`${path}.lengthIn`, 'shankComesOut', { lengthIn, roomIn });
    const isMet = plate.each === 2 && lengthIn > mostIn;
    return isMet ? fault(`${path}.lengthIn`, 'shanksMeet', { lengthIn, mostIn }) : null;
  }
  if (isOpenBelow || slanted) return null;
  if (lengthIn <= upper.leastIn)
    return fault(`${path}.lengthIn`, 'shankEndsEarly', { lengthIn, beginsIn: upper.leastIn });
  const roomIn = upper.mostIn + lower.mostIn;
  if (fastener === 'bolt' || lengthIn <= roomIn) return null;
  return fault(`${path}.lengthIn`, 'shankComesOut', { lengthIn, roomIn });
};

/** Both edges of a stick keep their least distance to a shank in its middle. @source NDS Table 12.5.1C, from memory */
const widthFault: Rule = ({ diameterIn }, { upper, lower, isSheet }, path) => {
  if (diameterIn < THICK_FROM_IN) return null;
  const widths = [...(isSheet ? [] : [upper]), lower].flatMap((t) => (t ? [t.widestIn] : []));
  const leastIn = EDGE_DISTANCE.along * diameterIn;
  const narrow = widths.find((widthIn) => widthIn / 2 < leastIn);
  return narrow === undefined
    ? null
    : fault(`${path}.diameterIn`, 'fastenerNearEdge', { gotIn: narrow / 2, leastIn, diameters: EDGE_DISTANCE.along });
};
