import { MisuseError, positive } from '../../errors.ts';
import type { Id, MemberOf, NewId, Project, RoofPlane } from '../model.ts';
import { membersOf } from '../traits.ts';
import { removeMember } from './remove-member.ts';

const MOST_RAFTERS = 120;

/**
 * The project with the rafters of a plane spread evenly, no farther apart than asked, the outermost two where they are.
 * Each new place takes the nearest rafter there was, so that logs, overrides and joints stay with it; the rest is
 * removed, and what is missing is added like its nearest neighbour.
 * @param spacingIn  greatest distance from axis to axis [in], > 0
 * @param newId  gives the ids of added rafters
 * @throws MisuseError  if there is no such plane, it has fewer than two rafters, or the spacing asks for more than 120
 */
export function respaceRafters(project: Project, planeId: Id, spacingIn: number, newId: NewId): Project {
  positive('spacingIn', spacingIn);
  const plane = project.roofPlanes.find(({ id }) => id === planeId);
  if (!plane) throw new MisuseError('planeId', planeId, 'a roof plane of the project');
  const rafters = membersOf(project, 'rafter').filter((rafter) => rafter.plane === planeId);
  const places = evenPlaces(plane, rafters, spacingIn);
  const takers = nearestTo(places, rafters);
  const spread = places.map((xIn, i): MemberOf<'rafter'> => {
    const taker = takers.get(i);
    if (taker) return { ...taker, xIn };
    const like = rafters.reduce((a, b) => (Math.abs(b.xIn - xIn) < Math.abs(a.xIn - xIn) ? b : a));
    return { id: newId('rafter'), role: 'rafter', group: like.group, plane: planeId, xIn };
  });
  const kept = new Set(spread.map(({ id }) => id));
  const thinned = rafters.filter(({ id }) => !kept.has(id)).reduce((left, { id }) => removeMember(left, id), project);
  const others = thinned.members.filter((member) => member.role !== 'rafter' || member.plane !== planeId);
  return { ...thinned, members: [...others, ...spread] };
}

function evenPlaces(plane: RoofPlane, rafters: readonly MemberOf<'rafter'>[], spacingIn: number): readonly number[] {
  const xs = rafters.map(({ xIn }) => xIn);
  const fromIn = Math.min(...xs);
  const lengthIn = Math.max(...xs) - fromIn;
  if (rafters.length < 2) throw new MisuseError('planeId', plane.id, 'a plane with at least two rafters');
  // A length that is a whole number of spacings must not gain a bay from rounding.
  const bays = Math.max(1, Math.ceil(lengthIn / spacingIn - 1e-9));
  if (bays >= MOST_RAFTERS) throw new MisuseError('spacingIn', spacingIn, `at most ${MOST_RAFTERS} rafters`);
  return Array.from({ length: bays + 1 }, (_, i) => fromIn + (lengthIn * i) / bays);
}

/** Which rafter goes to which place: the closest pair first, ties by id. */
function nearestTo(
  places: readonly number[],
  rafters: readonly MemberOf<'rafter'>[],
): ReadonlyMap<number, MemberOf<'rafter'>> {
  const pairs = places.flatMap((xIn, place) =>
    rafters.map((rafter) => ({ place, rafter, awayIn: Math.abs(rafter.xIn - xIn) })),
  );
  pairs.sort((a, b) => a.awayIn - b.awayIn || (a.rafter.id < b.rafter.id ? -1 : 1));
  const takers = new Map<number, MemberOf<'rafter'>>();
  const taken = new Set<Id>();
  for (const { place, rafter } of pairs) {
    if (takers.has(place) || taken.has(rafter.id)) continue;
    takers.set(place, rafter);
    taken.add(rafter.id);
  }
  return takers;
}
