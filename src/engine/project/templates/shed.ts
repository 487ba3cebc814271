import type { NewId, Project } from '../model.ts';
import {
  emptyParts,
  evenRafters,
  jointsToAskFor,
  lineOfTwoPosts,
  purlinRows,
  siteToAskFor,
  START_SPECIES,
  startGroups,
  startLine,
  startPlane,
  startTitle,
} from './parts.ts';

/**
 * A free-standing shed roof on two frame lines of two posts each, about 12 ft by 18 ft, to start from.
 * @param newId  gives the ids
 */
export function shedTemplate(newId: NewId): Project {
  const woodId = newId('wood');
  const { groups, logs } = startGroups(newId, woodId);
  const high = startLine(newId, 0, { of: 'bearing', zIn: 114 });
  const low = startLine(newId, 108, null);
  const plane = startPlane(newId('plane'), [high.id, low.id], 18, -30, 186);
  const frame = { firstXIn: 0, lastXIn: 156, pastIn: 30 };
  return {
    formatVersion: 1,
    title: startTitle(newId, 'New shed roof'),
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
