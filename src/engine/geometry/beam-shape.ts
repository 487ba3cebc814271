import type { FrameLine, GroupOf, MemberOf, Project } from '../project/model.ts';
import { traitsOf } from '../project/traits.ts';
import { bowAt, bowOf } from './bow.ts';
import { diameterAt, type RoundStick, type Stick } from './shelter.ts';
import { stickOf } from './sticks.ts';

/** A beam before its line has found its height: levels are relative to the line's level edge. */
export interface BeamShape {
  readonly member: MemberOf<'beam'>;
  readonly traits: Omit<GroupOf<'beam'>, 'id' | 'role'>;
  readonly stick: Stick | null;
  readonly stations: readonly {
    readonly xIn: number;
    readonly diameterIn: number;
    readonly axisIn: number;
    readonly topIn: number;
    readonly undersideIn: number;
  }[];
}

/** Crown is drawn and shimmed on points no farther apart than this [in]. */
const CROWN_STEP_IN = 12;

/**
 * Shape of a tapering beam as it is set: top, axis or underside level; natural crown up, down or to the side.
 * Only tops and undersides follow the crown; the axis used for forces stays straight between stations.
 */
export function beamShape(
  project: Project,
  line: FrameLine,
  member: MemberOf<'beam'>,
  atX: readonly number[],
): BeamShape {
  const traits = traitsOf(project, member);
  const lengthIn = member.toXIn - member.fromXIn;
  const stick = stickOf(project, traits.stock, lengthIn, traits.topFlatIn);
  const crown = bowOf(project, stick, lengthIn, traits.crownTo).upIn;
  const xs = stationsOf(member, stick, atX, crown !== 0);
  const stations = xs.map((xIn) => {
    const s = xIn - member.fromXIn;
    const depth = depthAt(stick, s);
    const bow = bowAt(crown, member, xIn);
    const diameter = depth + traits.topFlatIn;
    const axis = line.set === 'axis' ? 0 : line.set === 'top' ? traits.topFlatIn - diameter / 2 : diameter / 2;
    return {
      xIn,
      diameterIn: diameter,
      axisIn: axis,
      topIn: axis + diameter / 2 - traits.topFlatIn + bow,
      undersideIn: axis - diameter / 2 + bow,
    };
  });
  return { member, traits, stick, stations };
}

/** Depth left under a planed top; a sawn beam has its depth, a missing or typed one none. */
function depthAt(stick: Stick | null, s: number): number {
  if (!stick || stick.kind === 'typed') return 0;
  if (stick.kind === 'sawn') return stick.depthIn;
  return roundDiameterWithin(stick, s) - stick.flatIn;
}

/** Diameter at s, or at the nearest place where the stick still has wood (geometry only; checks use `diameterAt`). */
export function roundDiameterWithin(stick: RoundStick, s: number): number {
  const last = stick.profile[stick.profile.length - 1]!;
  const first = stick.profile[0]!;
  return diameterAt(stick, Math.min(Math.max(s, first.atIn), last.atIn)) ?? 0;
}

function stationsOf(
  member: MemberOf<'beam'>,
  stick: Stick | null,
  atX: readonly number[],
  crowned: boolean,
): readonly number[] {
  const xs = new Set<number>([member.fromXIn, member.toXIn]);
  for (const x of atX) if (x > member.fromXIn && x < member.toXIn) xs.add(x);
  if (stick?.kind === 'round') for (const p of stick.profile) xs.add(member.fromXIn + p.atIn);
  if (crowned) for (let x = member.fromXIn + CROWN_STEP_IN; x < member.toXIn; x += CROWN_STEP_IN) xs.add(x);
  return [...xs].filter((x) => x >= member.fromXIn && x <= member.toXIn).sort((a, b) => a - b);
}

/** Value between two stations of a beam, straight. */
export function between<S extends { readonly xIn: number }>(
  stations: readonly S[],
  xIn: number,
  value: (s: S) => number,
): number {
  const first = stations[0]!;
  if (xIn <= first.xIn) return value(first);
  for (let i = 1; i < stations.length; i++) {
    const a = stations[i - 1]!;
    const b = stations[i]!;
    if (xIn <= b.xIn) return value(a) + ((xIn - a.xIn) / (b.xIn - a.xIn || 1)) * (value(b) - value(a));
  }
  return value(stations[stations.length - 1]!);
}
