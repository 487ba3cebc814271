import { describe, expect, test } from 'vitest';
import { holderAt } from '../../../../src/engine/checks/joints/holder.ts';
import type { RoofCheckContext } from '../../../../src/engine/checks/roof/context.ts';
import { roofChecks } from '../../../../src/engine/checks/roof/roof-checks.ts';
import { at, listAt, type Raw } from '../../project/raw.ts';
import { leanToWith, rowOf } from './roof.ts';

const KEY = 'ledger.fixing/ledger/whole';

/** Two lag screws 1/2 in. by 5 at each fixing, driven dry through a dry ledger of 1-1/2 in. and 1/2 in. of cover. */
function fastened(grain: 'upright' | 'level', plies: number): (raw: Raw) => void {
  return (raw) => {
    const wood = { kind: 'sawn', lay: 'edge', species: 'Douglas Fir-Larch', grade: 'No. 2', use: 'dry' };
    Object.assign(at(raw, 'supportLines', 'ledger'), {
      stock: { ...wood, breadthIn: 1.5, depthIn: 9.25, plies: 1 },
      behind: { stock: { ...wood, breadthIn: 1.5, depthIn: 9.25, plies }, grain, coverIn: 0.5 },
    });
    const row = {
      fastener: 'lag',
      diameterIn: 0.5,
      lengthIn: 5,
      count: 2,
      rows: 1,
      spacingIn: 4,
      endIn: null,
      washerIn: 2,
      acts: 'both',
      driven: 'dry',
    };
    const list = listAt(raw, 'joints', 'defaults');
    const others = list.filter((joint) => at({ joint: joint ?? null }, 'joint')['kind'] !== 'ledgerWall');
    list.splice(0, Infinity, ...others, {
      kind: 'ledgerWall',
      capacity: { kind: 'fasteners', rows: [row], shoulder: false },
    });
  };
}

const holderOf = (context: RoofCheckContext) => holderAt(context, 'ledgerWall', 'ledgerWall/ledger');

describe('a ledger on wood of the wall', () => {
  // NDS Table 12.2A: 378 lb for each inch of thread, 1/2 in., G 0.50; App. L: of a lag 5 in. long 3 in. is thread, its tip 5/16 in.
  test('[ledger.fixing] lag screws hold outward by the thread in the wood behind the cover', () => {
    const context = leanToWith(fastened('level', 2));
    const pull = holderOf(context).part('pull', 1.6);
    expect(pull.ok && pull.capacityLb / (2 * 378 * (3 - 5 / 16) * 1.6)).toBeCloseTo(1, 2);
  });

  test('[ledger.fixing] adds the shares of all directions, each of what the screws hold that way', () => {
    const context = leanToWith(fastened('level', 2));
    const row = rowOf(context, KEY);
    const asked = roofChecks(context).ledgers[0]!.forces;
    const share = (way: string, part: 'across' | 'pull' | 'along'): number => {
      const held = holderOf(context).part(part, 1.15);
      if (!held.ok) throw new Error(part);
      return asked.find((f) => f.way === way)!.onFixingLb! / held.capacityLb;
    };
    const [down, out, along] = [share('down', 'across'), share('out', 'pull'), share('along', 'along')];
    // down comes with snow, out and along with wind, which lasts less: never under the first alone, never over all together
    expect(row.ratio!).toBeGreaterThanOrEqual(down - 1e-9);
    expect(row.ratio!).toBeLessThanOrEqual(down + out + along);
  });

  test('[ledger.fixing] screws in a stud stand too near to its edge for a push along the wall', () => {
    const row = rowOf(leanToWith(fastened('upright', 1)), KEY);
    expect([row.status, row.reason?.code]).toEqual(['fail', 'fastenerNearLoadedEdge']);
  });

  test('[ledger.fixing] screws are not computed while nobody says what wood the wall is of', () => {
    const open = leanToWith((raw) => {
      fastened('level', 2)(raw);
      delete at(raw, 'supportLines', 'ledger')['behind'];
    });
    const row = rowOf(open, KEY);
    expect([row.status, row.reason?.code]).toEqual(['notGiven', 'ledgerAsks']);
  });
});
