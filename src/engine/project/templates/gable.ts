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

/** From the ridge to an eave line, level [in]. */
const HALF_WIDTH_IN = 84;

/**
 * A free-standing gable of about 17 ft by 18 ft to start from: a ridge line between two eave lines, each of two posts.
 * The rafters hang on the ridge beam, which stands on posts of its own.
 * @param newId  gives the ids
 */
export function gableTemplate(newId: NewId): Project {
  const woodId = newId('wood');
  const { groups, logs } = startGroups(newId, woodId);
  const ridge = startLine(newId, HALF_WIDTH_IN, { of: 'bearing', zIn: 114 });
  const eaves = [startLine(newId, 0, null), startLine(newId, 2 * HALF_WIDTH_IN, null)];
  const lines = [eaves[0]!, ridge, eaves[1]!];
  // neither slope reaches past the ridge
  const planes = eaves.map((eave) => startPlane(newId('plane'), [ridge.id, eave.id], 0, -30, 186));
  const frame = { firstXIn: 0, lastXIn: 156, pastIn: 30 };
  return {
    formatVersion: 1,
    title: startTitle(newId, 'New gable'),
    site: siteToAskFor(),
    surroundings: { neighbour: null, closed: [], goods: null },
    supportLines: lines,
    roofPlanes: planes,
    woods: [{ id: woodId, species: START_SPECIES, basis: { kind: 'derived' }, weight: { by: 'species' } }],
    logs,
    groups: Object.values(groups),
    members: [
      ...lines.flatMap(({ id }) => lineOfTwoPosts(newId, groups, { ...frame, line: id })),
      ...planes.flatMap((plane) => [
        ...evenRafters(newId, { group: groups.rafters.id, plane: plane.id, fromXIn: -25.5, toXIn: 181.5, count: 10 }),
        ...purlinRows(newId, { group: groups.purlins.id, plane: plane.id, upSlopeIn: [3, 28, 53, 78, 102] }),
      ]),
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
    lateral: { along: [{ by: 'kneeBraces', lines: lines.map(({ id }) => id) }], across: [{ by: null }] },
    ...emptyParts(),
  };
}
