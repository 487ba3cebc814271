import type { LedgerLine, NewId, Project } from '../model.ts';
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
  startLine,
  startPlane,
  startTitle,
} from './parts.ts';

/**
 * A lean-to of about 10 ft by 18 ft: rafters from a ledger on a building's wall to one frame line of two posts.
 * @param newId  gives the ids
 */
export function leanToTemplate(newId: NewId): Project {
  const woodId = newId('wood');
  const { groups, logs } = startGroups(newId, woodId);
  const ledger: LedgerLine = {
    id: newId('ledger'),
    kind: 'ledger',
    yIn: 0,
    height: { of: 'bearing', zIn: 120 },
    stock: sawnStick(1.5, 9.25, 'edge', 'No. 2'),
    fromXIn: -30,
    toXIn: 186,
    wallFaceYIn: -1.5,
    fixingSpacingIn: null,
  };
  const line = startLine(newId, 102, null);
  const plane = startPlane(newId('plane'), [ledger.id, line.id], 1.5, -30, 186);
  return {
    formatVersion: 1,
    title: startTitle(newId, 'New lean-to'),
    site: siteToAskFor(),
    surroundings: {
      neighbour: {
        side: 'yMinus',
        ledgerLine: ledger.id,
        gapFt: 0,
        stepFt: 2,
        upperLengthFt: 30,
        eaveToRidgeFt: 15,
        upperRisePer12: null,
        upperSlippery: true,
        upperCt: 1.1,
        slidesThisWay: true,
        ableBy: null,
      },
      closed: [],
      goods: null,
    },
    supportLines: [ledger, line],
    roofPlanes: [plane],
    woods: [{ id: woodId, species: START_SPECIES, basis: { kind: 'derived' }, weight: { by: 'species' } }],
    logs,
    groups: Object.values(groups),
    members: [
      ...lineOfTwoPosts(newId, groups, { line: line.id, firstXIn: 0, lastXIn: 156, pastIn: 30 }),
      ...evenRafters(newId, { group: groups.rafters.id, plane: plane.id, fromXIn: -25.5, toXIn: 181.5, count: 10 }),
      ...purlinRows(newId, { group: groups.purlins.id, plane: plane.id, upSlopeIn: [3, 32, 61, 90, 119] }),
    ],
    joints: jointsToAskFor([
      'sheetPurlin',
      'purlinRafter',
      'rafterStrip',
      'rafterLedger',
      'stripBeam',
      'beamPost',
      'braceTop',
      'bracePost',
      'postFoot',
      'ledgerWall',
    ]),
    lateral: { along: [{ by: 'kneeBraces', lines: [line.id] }], across: [{ by: null }] },
    ...emptyParts(),
  };
}
