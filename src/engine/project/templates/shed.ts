import type { FrameLine, NewId, Project } from '../model.ts';
import {
  emptyParts,
  evenRafters,
  jointsToAskFor,
  lineOfTwoPosts,
  purlinRows,
  sawnStick,
  siteToAskFor,
  START_SPECIES,
  startGroups,
  startPlane,
} from './parts.ts';

/**
 * A free-standing shed roof on two frame lines of two posts each, about 12 ft by 18 ft, to start from.
 * @param newId  gives the ids
 */
export function shedTemplate(newId: NewId): Project {
  const woodId = newId('wood');
  const { groups, logs } = startGroups(newId, woodId);
  const strip = { stock: sawnStick(3.5, 1.5, 'flat', null), thicknessIn: 1.5, shims: 'shims' } as const;
  const line = (yIn: number, height: FrameLine['height']): FrameLine => ({
    id: newId('line'),
    kind: 'frame',
    yIn,
    height,
    set: 'top',
    strip,
  });
  const high = line(0, { of: 'bearing', zIn: 114 });
  const low = line(108, null);
  const plane = startPlane(newId('plane'), [high.id, low.id], 18, -30, 186);
  const frame = { firstXIn: 0, lastXIn: 156, pastIn: 30 };
  return {
    formatVersion: 1,
    title: {
      id: newId('project'),
      name: 'New shed roof',
      parcel: '',
      preparedBy: '',
      revision: { number: '1', date: null },
    },
    site: siteToAskFor(),
    surroundings: { neighbour: null, closed: [], goods: null },
    supportLines: [high, low],
    roofPlanes: [plane],
    woods: [{ id: woodId, species: START_SPECIES, basis: { kind: 'derived' }, weight: { by: 'species' } }],
    logs,
    groups: Object.values(groups),
    members: [
      ...lineOfTwoPosts(newId, groups, { ...frame, line: high.id }),
      ...lineOfTwoPosts(newId, groups, { ...frame, line: low.id }),
      ...evenRafters(newId, { group: groups.rafters.id, plane: plane.id, fromXIn: -25.5, toXIn: 181.5, count: 10 }),
      ...purlinRows(newId, { group: groups.purlins.id, plane: plane.id, upSlopeIn: [3, 31, 59, 87, 115, 143] }),
    ],
    joints: jointsToAskFor([
      'sheetPurlin',
      'purlinRafter',
      'rafterStrip',
      'stripBeam',
      'beamPost',
      'braceTop',
      'bracePost',
      'postFoot',
    ]),
    lateral: { along: [{ by: 'kneeBraces', lines: [high.id, low.id] }], across: [{ by: null }] },
    ...emptyParts(),
  };
}
