import { CONCRETE_BAGS } from '../../../data/loads/concrete.ts';
import { notNegative, positive } from '../../errors.ts';
import { diameterAt, type Stick } from '../../geometry/shelter.ts';
import type { EmbeddedFoot, Foot, PierFoot } from '../../project/model.ts';
import { CUBIC_INCHES_PER_CUBIC_FOOT } from '../../units.ts';
import { roundArea } from '../wood/round-section.ts';
import { padVolumeIn3, shaftAreaIn2 } from './pier.ts';

/**
 * Concrete that the foot of a post takes: shaft and pad of a pier; of a post in the ground its pad, and the fill of the
 * hole where that is concrete.
 * @param postAreaIn2 area of the wood that stands in the hole; of a pier none
 * @returns volume [ft3]
 * @throws MisuseError if a size is not above zero
 * @source MECHANICS: volumes of prism and cylinder
 */
export function concreteVolume(foot: Foot, postAreaIn2: number): number {
  return (foot.kind === 'pier' ? pierVolume(foot) : holeVolume(foot, postAreaIn2)) / CUBIC_INCHES_PER_CUBIC_FOOT;
}

const pierVolume = (foot: PierFoot): number =>
  shaftAreaIn2(foot.shaft) * positive('shaft.lengthIn', foot.shaft.lengthIn) + padVolumeIn3(foot, 'any');

function holeVolume(foot: EmbeddedFoot, postAreaIn2: number): number {
  const fill = foot.backfill === 'concrete' ? fillAreaIn2(foot.holeIn, postAreaIn2) * foot.depthIn : 0;
  return fill + (foot.pad ? roundArea(foot.pad.acrossIn) * foot.pad.thickIn : 0);
}

/** Area of a round hole around the wood in it [in2]; 0 where the wood fills it. */
export const fillAreaIn2 = (holeIn: number, postAreaIn2: number): number =>
  Math.max(0, roundArea(holeIn) - notNegative('postAreaIn2', postAreaIn2));

/** Area of the butt of a post, for the hole around it [in2]; a typed section or none takes nothing off the fill. */
export function postAreaInGround(stick: Stick | null): number {
  if (!stick || stick.kind === 'typed') return 0;
  return stick.kind === 'round' ? roundArea(diameterAt(stick, 0)!) : stick.breadthIn * stick.depthIn;
}

/** Whole bags of each size that make a volume. */
export const bagsFor = (volumeFt3: number): readonly { readonly lb: number; readonly count: number }[] =>
  CONCRETE_BAGS.map(({ lb, ft3 }) => ({ lb, count: Math.ceil(notNegative('volumeFt3', volumeFt3) / ft3 - 1e-9) }));
