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
import { stripContacts } from './line-joints.ts';

/** What the hardware of all joints takes out of a member where it crosses its grain; joints that are only rated say nothing of it. */
export function boredRows(source: JointSource, memberId: string): readonly BoredRow[] {
  const found = known.get(source.shelter);
  if (found) return found.get(memberId) ?? [];
  const byMember = new Map<string, BoredRow[]>();
  for (const joint of contactsOf(source)) {
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

/** Every contact of two pieces; where one joint of a line stands for those under all of its rafters, each of them. */
const contactsOf = ({ project, shelter }: JointSource): readonly JointSetting[] => [
  ...jointsOf(project, shelter).filter(({ kind }) => kind !== 'stripBeam'),
  ...shelter.lines.flatMap((line) => stripContacts(project, shelter, line)),
];

const isThick = ({ diameterIn }: FastenerRow): boolean => diameterIn >= THICK_FROM_IN;

function boredAt(source: JointSource, setting: JointSetting): readonly BoredRow[] {
  const capacity = capacityOf(source.project, setting.kind, setting.key);
  if (capacity?.kind !== 'fasteners' || !capacity.rows.some(isThick)) return [];
  const woods = { upper: woodOf(source, setting.upper), lower: woodOf(source, setting.lower) };
  // one contact of a sheet stands for all of them along its pieces
  const isRepeated = setting.upper.of === 'sheet';
  return capacity.rows.filter(isThick).flatMap((row) => {
    const placed = placeRow(setting, woods, row);
    return placed.ok ? placed.places.flatMap((there) => boredBy(there, isRepeated)) : [];
  });
}

/**
 * What is bored out at each station of a member: at one that lies among the holes of a row what lies there; at one without
 * holes of its own what lies between it and the next station, on the side that loses more.
 * @param atIn stations in order along the member, several at one place allowed [in]
 */
export function boredAtStations(
  rows: readonly BoredRow[],
  atIn: readonly number[],
  plane: 'upright' | 'inPlane',
): readonly (readonly Bored[])[] {
  if (rows.length === 0) return atIn.map(() => NONE);
  const places = [...new Set(atIn)].toSorted((a, b) => a - b);
  const isAt = (row: BoredRow, place: number): boolean =>
    row.fromIn <= place + SAME_PLACE_IN && row.toIn >= place - SAME_PLACE_IN;
  const lone = new Set(rows.filter((row) => !places.some((place) => isAt(row, place))));
  const found = new Map(
    places.map((place, i) => {
      const [before, after] = [places[i - 1] ?? -Infinity, places[i + 1] ?? Infinity];
      const here = rows.filter((row) => isAt(row, place));
      const near = here.length > 0 ? [...lone] : rows;
      const sides = [
        near.filter((row) => row.fromIn > place && row.fromIn < after),
        near.filter((row) => row.toIn < place && row.toIn > before),
      ].map((side) => side.flatMap((row) => row[plane]));
      const beside = sides.reduce((a, b) => (areaOf(b) > areaOf(a) ? b : a));
      return [place, [...here.flatMap((row) => row[plane]), ...beside]] as const;
    }),
  );
  return atIn.map((at) => found.get(at) ?? NONE);
}

const areaOf = (bored: readonly Bored[]): number => bored.reduce((sum, b) => sum + b.areaIn2, 0);

/** Places closer than this are one [in]. */
const SAME_PLACE_IN = 1e-6;

const NONE: readonly Bored[] = [];
