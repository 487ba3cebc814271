import { UNSEEN_STRAY } from '../../data/wood/straightness.ts';
import type { Project } from '../project/model.ts';
import { membersOf, traitsOf } from '../project/traits.ts';
import type { BeamGeometry, Stick } from './shelter.ts';

/** How far a beam bows from straight over its own length, as it is laid. */
export interface Bow {
  /** natural crown, up + [in] */
  readonly upIn: number;
  /** to one side or the other [in] */
  readonly sideIn: number;
  /** the most that the log strays from straight; null where nobody has looked [in] */
  readonly strayIn: number | null;
}

const STRAIGHT: Bow = { upIn: 0, sideIn: 0, strayIn: 0 };

/**
 * Bow of a stick over the length that a beam uses. The crown is a parabola over the whole log, which leaves the square of
 * the share over a part of it. What the log strays beyond its crown lies square to it; of a stray nobody knows where on
 * the log it is, so it counts in full on any part, and one that nobody has looked at counts to the side (own rules).
 * @source MECHANICS parabola; OWN as said
 */
export function bowOf(project: Project, stick: Stick | null, lengthIn: number, to: 'up' | 'down' | 'side'): Bow {
  const log = stick?.kind === 'round' ? project.logs.find((l) => l.id === stick.logId) : undefined;
  if (!log) return STRAIGHT;
  const wholeIn = log.stations[log.stations.length - 1]!.fromButtIn - log.stations[0]!.fromButtIn;
  const crownIn = log.crownIn * Math.min(1, lengthIn / wholeIn) ** 2;
  const seenIn = log.seen?.straightIn ?? null;
  const strayIn = seenIn === null ? null : Math.max(seenIn, crownIn);
  const unseenIn = UNSEEN_STRAY * lengthIn;
  if (to === 'side') return { upIn: 0, sideIn: Math.max(crownIn, seenIn ?? unseenIn), strayIn };
  const sideIn = seenIn === null ? unseenIn : Math.sqrt(Math.max(0, seenIn ** 2 - log.crownIn ** 2));
  return { upIn: to === 'up' ? crownIn : -crownIn, sideIn, strayIn };
}

/** Bow of a beam that is placed, or of a tie log laid like one, of which nobody says how: to the side. */
export function bowOfBeam(project: Project, beam: Pick<BeamGeometry, 'id' | 'stick' | 'fromXIn' | 'toXIn'>): Bow {
  const member = membersOf(project, 'beam').find((m) => m.id === beam.id);
  return bowOf(project, beam.stick, beam.toXIn - beam.fromXIn, member ? traitsOf(project, member).crownTo : 'side');
}

/** How far a parabolic bow of a beam lies from the line between its ends at a place [in]. */
export function bowAt(bowIn: number, { fromXIn, toXIn }: Pick<BeamGeometry, 'fromXIn' | 'toXIn'>, xIn: number): number {
  const share = (xIn - fromXIn) / (toXIn - fromXIn);
  return 4 * bowIn * share * (1 - share);
}

/**
 * How far the axis of a beam that bows to the side lies beside a post: the log is laid with its axis over its first and
 * its last post, and the posts stand in line [in].
 * @param postXsIn  of every post under the beam, this one too
 * @source MECHANICS parabola
 */
export function besidePost(
  beam: Pick<BeamGeometry, 'fromXIn' | 'toXIn'>,
  { sideIn }: Bow,
  postXsIn: readonly number[],
  xIn: number,
): number {
  const [first, last] = [Math.min(...postXsIn), Math.max(...postXsIn)];
  if (xIn === first || xIn === last) return 0;
  const share = (xIn - first) / (last - first);
  const straight = bowAt(sideIn, beam, first) * (1 - share) + bowAt(sideIn, beam, last) * share;
  return Math.abs(bowAt(sideIn, beam, xIn) - straight);
}
