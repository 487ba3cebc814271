import { remembered } from '../../../data/sources.ts';
import { MisuseError, notNegative, positive } from '../../errors.ts';
import { put, type Note } from '../../note.ts';
import { quantity } from '../../units.ts';

/** Wood around a group of fasteners that is pulled along the grain. @source NDS Appendix E, from memory */
const NET = remembered('NDS', 'Appendix E.2');
const ROW = remembered('NDS', 'Appendix E.3');
const GROUP = remembered('NDS', 'Appendix E.4');

export interface Hole {
  readonly diameterIn: number;
  /** of the hole in the wood */
  readonly lengthIn: number;
}

/**
 * What is left of a section across a line of holes.
 * @param grossIn2 the section without holes [in2]
 * @param holes in the hardest section across the grain, drilled sizes
 * @returns net area [in2]
 * @throws MisuseError if a measure is not above zero or the holes leave nothing
 * @source NDS 3.1.2, from memory
 */
export function netArea(grossIn2: number, holes: readonly Hole[], note?: Note): number {
  positive('grossIn2', grossIn2);
  const lost = holes.reduce(
    (sum, hole) => sum + positive('diameterIn', hole.diameterIn) * positive('lengthIn', hole.lengthIn),
    0,
  );
  const net = grossIn2 - lost;
  if (net <= 0) throw new MisuseError('holes', lost, `holes that leave wood of ${grossIn2}`);
  note?.({
    symbol: 'An',
    words: 'net section across the holes',
    formula: 'A - Ah',
    put: [put('A', grossIn2, 'in2', 'whole section'), put('Ah', lost, 'in2', 'holes, width times length')],
    result: quantity(net, 'in2'),
    clause: remembered('NDS', '3.1.2'),
  });
  return net;
}

/**
 * Pull that the net section takes.
 * @param FtAllowablePsi Ft' along the grain [psi]
 * @returns allowable pull [lb]
 * @throws MisuseError if a value is not above zero
 * @source NDS Appendix E.2, from memory
 */
export function netSectionPull(FtAllowablePsi: number, netIn2: number, note?: Note): number {
  const allowable = positive('FtAllowablePsi', FtAllowablePsi) * positive('netIn2', netIn2);
  note?.({
    symbol: "Z'NT",
    words: 'pull that the net section takes',
    formula: "Ft' × An",
    put: [put("Ft'", FtAllowablePsi, 'psi', 'allowable tension'), put('An', netIn2, 'in2', 'net section')],
    result: quantity(allowable, 'lb'),
    clause: NET,
  });
  return allowable;
}

/** A row of fasteners along the grain, in one piece. */
export interface PulledRow {
  readonly count: number;
  /** of the shank in the wood */
  readonly thicknessIn: number;
  /** the least of the distance to the end and those in the row */
  readonly criticalIn: number;
}

/**
 * Pull at which a row tears out a strip of wood: shear on its two sides, on the average half of the peak.
 * @param FvAllowablePsi Fv' along the grain [psi]
 * @returns allowable pull of the row [lb]
 * @throws MisuseError if a value is not above zero
 * @source NDS Appendix E.3, equation E.3-2, from memory
 */
export function rowTearOut(FvAllowablePsi: number, row: PulledRow, note?: Note): number {
  const allowable =
    positive('count', row.count) *
    positive('FvAllowablePsi', FvAllowablePsi) *
    positive('thicknessIn', row.thicknessIn) *
    positive('criticalIn', row.criticalIn);
  note?.({
    symbol: "Z'RT",
    words: 'pull at which the row tears out',
    formula: "n × Fv' × t × s",
    put: [
      put('n', row.count, '1', 'fasteners in the row'),
      put("Fv'", FvAllowablePsi, 'psi', 'allowable shear along the grain'),
      put('t', row.thicknessIn, 'in', 'length of the shank in the wood'),
      put('s', row.criticalIn, 'in', 'least of end distance and spacing'),
    ],
    result: quantity(allowable, 'lb'),
    clause: ROW,
  });
  return allowable;
}

/**
 * Pull at which the wood between the outer rows tears out as one: half of each outer row in shear, the wood between them
 * in tension.
 * @param FvAllowablePsi, FtAllowablePsi Fv' and Ft' [psi]
 * @param first, last the outer rows
 * @param betweenIn2 net section between the outer rows; 0 with one row [in2]
 * @returns allowable pull of the group [lb]
 * @throws MisuseError if a strength or a row is not above zero or the section below zero
 * @source NDS Appendix E.4, equation E.4-1, from memory
 */
export function groupTearOut(
  FvAllowablePsi: number,
  FtAllowablePsi: number,
  rows: { readonly first: PulledRow; readonly last: PulledRow },
  betweenIn2: number,
  note?: Note,
): number {
  const first = rowTearOut(FvAllowablePsi, rows.first, note);
  const last = rowTearOut(FvAllowablePsi, rows.last, note);
  const Ft = positive('FtAllowablePsi', FtAllowablePsi);
  const allowable = first / 2 + last / 2 + Ft * notNegative('betweenIn2', betweenIn2);
  note?.({
    symbol: "Z'GT",
    words: 'pull at which the group tears out',
    formula: "Z1 / 2 + Z2 / 2 + Ft' × A",
    put: [
      put('Z1', first, 'lb', 'tear-out of the first row'),
      put('Z2', last, 'lb', 'tear-out of the last row'),
      put("Ft'", Ft, 'psi', 'allowable tension'),
      put('A', betweenIn2, 'in2', 'net section between the outer rows'),
    ],
    result: quantity(allowable, 'lb'),
    clause: GROUP,
  });
  return allowable;
}
