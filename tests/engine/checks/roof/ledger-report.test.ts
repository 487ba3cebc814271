import { describe, expect, test } from 'vitest';
import { roofChecks } from '../../../../src/engine/checks/roof/roof-checks.ts';
import type { LedgerForce, LedgerReport } from '../../../../src/engine/evaluation.ts';
import { exampleText, soundProject } from '../../../support/files.ts';
import { at, type Raw } from '../../project/raw.ts';
import { evaluated } from '../../whole/whole.ts';
import { leanToWith } from './roof.ts';

const reportOf = (change: (raw: Raw) => void): LedgerReport => roofChecks(leanToWith(change)).ledgers[0]!;
const force = (report: LedgerReport, way: LedgerForce['way']): LedgerForce => report.forces.find((f) => f.way === way)!;

/** Level rafters 108 in. from wall to beam, 4 psf dead, 40 psf snow, least wind; a ledger that nobody describes weighs nothing. */
const hand = (raw: Raw): void => {
  const given = { groundSnowPsf: 0, leastRoofSnowPsf: 40, windMph: 60, exposure: 'B' };
  for (const [field, value] of Object.entries(given)) at(raw, 'site', field)['value'] = value;
  Object.assign(at(raw, 'surroundings', 'neighbour'), { stepFt: 0, slidesThisWay: false });
  Object.assign(at(raw, 'supportLines', 'ledger'), { stock: null, fixingSpacingIn: 16 });
  Object.assign(at(raw, 'roofPlanes', 'plane-1'), {
    risePer12: 0,
    highOverhangIn: 0,
    lowOverhangIn: 0,
    horizontalHeldBy: 'each-square',
    dead: { by: 'total', heavyPsf: 4, lightPsf: 2, includes: ['purlins', 'rafters'] },
  });
  at(raw, 'roofPlanes', 'plane-1', 'covering')['pastRafterIn'] = 0;
  at(raw, 'members', 'purlin-5')['upSlopeIn'] = 108;
};

describe('what a ledger brings to its wall', () => {
  // By hand: half of a simple span of 9 ft, 44 psf, on each foot; on a fixing right under a rafter 21 in. of it, since
  // no other stands within the 16 in. to the next fixing.
  test('a level roof presses with half of its span, for each foot and each fixing', () => {
    const down = force(reportOf(hand), 'down');
    expect(down.plf).toBeCloseTo((4 + 40) * 4.5, 9);
    expect(down.onFixingLb!).toBeCloseTo(((4 + 40) * 4.5 * 21) / 12, 9);
    expect(down.combinationId.startsWith('3')).toBe(true);
  });

  // ASCE 7-16 30.2.2: 16 psf at least, times 0.6, less 0.6 of the light 2 psf.
  test('the least wind lifts it with half of what it takes off the roof', () => {
    expect(force(reportOf(hand), 'up').plf).toBeCloseTo((0.6 * 16 - 0.6 * 2) * 4.5, 9);
  });

  test('without a spacing no fixing has a force', () => {
    const open = reportOf((raw) => {
      hand(raw);
      at(raw, 'supportLines', 'ledger')['fixingSpacingIn'] = null;
    });
    expect(open.forces.map((f) => f.onFixingLb)).toEqual([null, null, null, null]);
    expect(open.forces.map((f) => f.way)).toEqual(['down', 'up', 'out', 'along']);
  });

  test('a roof of rafters without stock has no forces and says why', () => {
    const { forces, reason } = reportOf((raw) => void (at(raw, 'groups', 'rafters')['stock'] = null));
    expect(forces).toEqual([]);
    expect(reason?.code).toBe('memberNotGiven');
  });

  test('a shelter reports one for each of its ledgers, and says what is missing while the snow is not given', () => {
    const project = soundProject(exampleText('lean-to'));
    const ids = project.supportLines.filter((l) => l.kind === 'ledger').map((l) => l.id);
    expect(evaluated(project).ledgers.map((l) => l.lineId)).toEqual(ids);
    const { site } = project;
    const bare = { ...project, site: { ...site, groundSnowPsf: { ...site.groundSnowPsf, value: null } } };
    expect(evaluated(bare).ledgers[0]!.reason?.code).toBe('missingGroundSnow');
    expect(evaluated(soundProject(exampleText('firewood-shed'))).ledgers).toEqual([]);
  });
});
