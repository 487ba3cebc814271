import type { Shelter } from '../../geometry/shelter.ts';
import { capacityOf } from '../../project/joint-capacity.ts';
import type { FastenerRow } from '../../project/model.ts';
import { THICK_FROM_IN } from '../fasteners/dowel-bearing.ts';
import type { Bored } from '../wood/bored-section.ts';
import { boredBy, type BoredRow } from './fastened/bored.ts';
import { placeRow } from './fastened/row-holds.ts';
import { woodOf } from './fastened/wood-of-piece.ts';
import type { JointSource } from './holder.ts';
import type { JointSetting } from './joint-setting.ts';
import { jointsOf } from './joints.ts';

/** What the hardware of all joints takes out of a member where it crosses its grain; joints that are only rated say nothing of it. */
export function boredRows(source: JointSource, memberId: string): readonly BoredRow[] {
  const found = known.get(source.shelter);
  if (found) return found.get(memberId) ?? [];
  const byMember = new Map<string, BoredRow[]>();
  for (const joint of jointsOf(source.project, source.shelter)) {
    for (const row of boredAt(source, joint)) {
      const others = byMember.get(row.memberId);
      if (others) others.push(row);
      else byMember.set(row.memberId, [row]);
    }
  }
  known.set(source.shelter, byMember);
  return byMember.get(memberId) ?? [];
}

const known = new WeakMap<Shelter, ReadonlyMap<string, readonly BoredRow[]>>();

const isThick = ({ diameterIn }: FastenerRow): boolean => diameterIn >= THICK_FROM_IN;

function boredAt(source: JointSource, setting: JointSetting): readonly BoredRow[] {
  const capacity = capacityOf(source.project, setting.kind, setting.key);
  if (capacity?.kind !== 'fasteners' || !capacity.rows.some(isThick)) return [];
  const woods = { upper: woodOf(source, setting.upper), lower: woodOf(source, setting.lower) };
  // one contact of a strip or a sheet stands for all of them along its pieces
  const isRepeated = setting.kind === 'stripBeam' || setting.upper.of === 'sheet';
  return capacity.rows.filter(isThick).flatMap((row) => {
    const placed = placeRow(setting, woods, row);
    return placed.ok ? placed.places.flatMap((there) => boredBy(there, isRepeated)) : [];
  });
}

/**
 * What is bored out at each station of a member. Between two stations it counts at both: forces change little over a joint.
 * @param atIn stations in order along the member, several at one place allowed [in]
 */
export function boredAtStations(
  rows: readonly BoredRow[],
  atIn: readonly number[],
  plane: 'upright' | 'inPlane',
): readonly (readonly Bored[])[] {
  if (rows.length === 0) return atIn.map(() => NONE);
  const places = [...new Set(atIn)].toSorted((a, b) => a - b);
  const reach = new Map(
    places.map((at, i) => [at, { fromIn: places[i - 1] ?? -Infinity, toIn: places[i + 1] ?? Infinity }] as const),
  );
  return atIn.map((at) => {
    const { fromIn, toIn } = reach.get(at)!;
    return rows.flatMap((row) =>
      (row.fromIn < toIn && row.toIn > fromIn) || row.fromIn === at || row.toIn === at ? row[plane] : NONE,
    );
  });
}

const NONE: readonly Bored[] = [];
