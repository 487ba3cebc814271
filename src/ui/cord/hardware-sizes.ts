import { PER } from '../../data/metric.ts';
import { BOLTS, CUT_WASHERS } from '../../data/fasteners/bolts.ts';
import { LAG_SCREWS, LAG_THREADS } from '../../data/fasteners/lag-screws.ts';
import { NAILS, SPIKES } from '../../data/fasteners/nails.ts';
import { WOOD_SCREWS } from '../../data/fasteners/wood-screws.ts';
import type { FastenerRow } from '../../engine/project/model.ts';
import { showLength } from '../units/show-length.ts';
import { showNumber } from '../units/show-quantity.ts';
import type { UnitSystem } from '../units/system.ts';

/** A size that is offered, with what it is called. */
export interface ListedSize {
  readonly valueIn: number;
  readonly words: string;
}

type Kind = FastenerRow['fastener'];

const SAME_SIZE_IN = 1e-3;
export const isSameSize = (aIn: number, bIn: number): boolean => Math.abs(aIn - bIn) < SAME_SIZE_IN;

/** A small size: in sixteenths where it is one, else in as many decimals as the tables print. */
export function sizeInWords(sizeIn: number, system: UnitSystem): string {
  if (system === 'metric') return `${showNumber(sizeIn * PER.mmPerInch, 1)} mm`;
  const isSixteenths = isSameSize(Math.round(sizeIn * 16) / 16, sizeIn) && sizeIn >= 1 / 16;
  return isSixteenths
    ? showLength(sizeIn, system, { nearest: 16, feetFrom: 'never' })
    : `${Number(sizeIn.toFixed(4))} in`;
}

/** Thicknesses that are listed of a kind; nails and spikes go by their whole size. */
export function listedDiameters(kind: Kind, system: UnitSystem): readonly ListedSize[] {
  const plain = ({ nominalIn }: { readonly nominalIn: number }): ListedSize => ({
    valueIn: nominalIn,
    words: sizeInWords(nominalIn, system),
  });
  switch (kind) {
    case 'lag':
      return LAG_SCREWS.rows.map(plain);
    case 'bolt':
    case 'driftPin':
      return BOLTS.rows.map(plain);
    case 'screw':
      return WOOD_SCREWS.rows.map(({ gauge, nominalIn }) => ({
        valueIn: nominalIn,
        words: `No. ${gauge}, ${sizeInWords(nominalIn, system)}`,
      }));
    case 'nail':
    case 'spike':
    case 'strap':
      return [];
  }
}

/** Lengths that are listed of a kind; of the others none is. */
export const listedLengths = (kind: Kind, system: UnitSystem): readonly ListedSize[] =>
  kind === 'lag'
    ? LAG_THREADS.rows.map(({ lengthIn }) => ({ valueIn: lengthIn, words: sizeInWords(lengthIn, system) }))
    : [];

/** Nails and spikes as they are bought: one name for thickness and length. */
export const namedSizes = (kind: Kind) => (kind === 'nail' ? NAILS.rows : kind === 'spike' ? SPIKES.rows : []);

/** Washers bonded to roofing screws, and put under wood screws [in]; common practice. */
const SCREW_WASHER_IN = 0.5;

/** Washers for the head of a kind: those of bolts and lag screws are listed with the shank that they belong to. */
export function listedWashers(kind: Kind, system: UnitSystem): readonly ListedSize[] {
  switch (kind) {
    case 'lag':
    case 'bolt':
      return CUT_WASHERS.rows.map(({ nominalIn, outsideIn }) => ({
        valueIn: outsideIn,
        words: `a ${sizeInWords(nominalIn, system)} washer, ${sizeInWords(outsideIn, system)} across`,
      }));
    case 'screw':
      return [{ valueIn: SCREW_WASHER_IN, words: `a washer ${sizeInWords(SCREW_WASHER_IN, system)} across` }];
    case 'nail':
    case 'spike':
    case 'driftPin':
    case 'strap':
      return [];
  }
}

/** The washer that comes with a fastener of a size, where one is listed. */
export function usualWasherIn(kind: Kind, diameterIn: number): number | null {
  if (kind === 'screw') return SCREW_WASHER_IN;
  const washer = CUT_WASHERS.rows.find(({ nominalIn }) => isSameSize(nominalIn, diameterIn));
  return kind === 'lag' || kind === 'bolt' ? (washer?.outsideIn ?? null) : null;
}
