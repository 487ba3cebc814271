import type { LoadPicture, LoadStrip } from '../../engine/load-pictures/picture.ts';
import type { PlaneGeometry, Shelter } from '../../engine/geometry/shelter.ts';
import { showAmount, showQuantity } from '../units/show-quantity.ts';
import type { UnitSystem } from '../units/system.ts';
import type { LoadScale } from './load-scale.ts';

/** What the section and the plan are told of a load. */
export interface LoadToDraw {
  readonly picture: LoadPicture;
  readonly shelter: Shelter;
  readonly system: UnitSystem;
  /** lengths of pressures and of forces */
  readonly pressures: LoadScale;
  readonly forces: LoadScale;
  /** greatest pressure of any case [psf] */
  readonly greatestPsf: number;
  readonly title: string;
  readonly description: string;
}

/** Distance across the shelter of a place along the slope [in]. */
export const yOnSlope = (plane: PlaneGeometry, upSlopeIn: number): number =>
  plane.lowYIn - plane.downY * upSlopeIn * Math.cos((plane.slopeDeg * Math.PI) / 180);

export const planeOf = ({ planes }: Shelter, strip: LoadStrip): PlaneGeometry | undefined =>
  planes.find(({ id }) => id === strip.planeId);

export const strengthOf = ({ lowPsf, highPsf }: LoadStrip): number => Math.max(Math.abs(lowPsf), Math.abs(highPsf));

export const isEven = ({ lowPsf, highPsf }: LoadStrip): boolean => Math.abs(lowPsf - highPsf) < 1e-6;

/** `46.2 psf`; what is square to the slope says which way. */
export function pressureWords(psf: number, acts: LoadStrip['acts'], system: UnitSystem): string {
  const amount = showQuantity({ value: Math.abs(psf), unit: 'psf' }, system);
  if (acts !== 'square') return psf < 0 ? `lifts ${amount}` : amount;
  return `${psf < 0 ? 'lifts' : 'presses'} ${amount}`;
}

/** The number alone, less than nothing where it lifts, for a strip too narrow for words. */
export const pressureNumber = (psf: number, system: UnitSystem): string =>
  showAmount({ value: psf, unit: 'psf' }, system);

/** Where the section is cut: through the middle of the strongest strip [in]. */
export function cutAtX({ strips }: Pick<LoadPicture, 'strips'>, shelter: Shelter): number {
  const strongest = strips.reduce<LoadStrip | null>((a, b) => (a && strengthOf(a) >= strengthOf(b) ? a : b), null);
  if (strongest) return (strongest.fromXIn + strongest.toXIn) / 2;
  const plane = shelter.planes[0];
  return plane ? (plane.fromXIn + plane.toXIn) / 2 : 0;
}

/** True where the load is not alike from one end of the roof to the other. */
export const differsAlong = ({ strips }: Pick<LoadPicture, 'strips'>, shelter: Shelter): boolean =>
  strips.some((strip) => {
    const plane = planeOf(shelter, strip);
    return plane !== undefined && (strip.fromXIn > plane.fromXIn + 1e-6 || strip.toXIn < plane.toXIn - 1e-6);
  });
