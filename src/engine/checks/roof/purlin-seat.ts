import { clause } from '../../../data/sources.ts';
import { notGiven, outside } from '../../check.ts';
import type { SawnStick } from '../../geometry/shelter.ts';
import type { DesignValues } from '../../material/values.ts';
import { message } from '../../message.ts';
import { put, type Note } from '../../note.ts';
import { quantity } from '../../units.ts';
import type { CheckSite } from '../site-of-check.ts';
import { adjustedAcrossGrain, bearingStress } from '../wood/bearing.ts';
import { raftersOn, type RoofCheckContext } from './context.ts';
import type { PurlinLoading, PurlinResponse } from './purlin-loading.ts';
import type { JudgedStick } from './purlin-stick.ts';
import { handedOn, hardestCrossing, PRESS } from './purlin-tie.ts';

/**
 * Bearing of a sawn purlin on a sawn rafter, across the grain of both. Where a purlin is pieced is not known, so no help
 * from the wood beside the bearing is counted. Poles touch along a line: outside the method.
 * @source NDS 3.10.2
 */
export function purlinSeatSite(
  context: RoofCheckContext,
  loading: PurlinLoading,
  { stick, values }: JudgedStick,
): CheckSite<PurlinResponse> {
  const rafter = raftersOn(context, loading.purlin.plane)[0]!;
  const ofRafter = context.valuesOf(rafter.id);
  const contact =
    stick.kind === 'sawn' && rafter.stick?.kind === 'sawn' ? { purlin: stick, rafter: rafter.stick } : null;
  const weaker = weakerOf(values, ofRafter.ok ? ofRafter.values : null);
  const press = handedOn(loading, hardestCrossing(loading), PRESS);
  return {
    ruleId: 'purlin.seat',
    memberId: loading.purlin.id,
    place: { kind: 'whole', name: '' },
    unit: 'psi',
    purpose: 'strength',
    isByDuration: true,
    applies: (r) => r.square > 0,
    stops: () => {
      if (stick.kind === 'typed') return notGiven(message('typedWithoutBearing', { name: stick.name }));
      return contact && weaker ? null : outside(message('purlinNotFlat', { purlin: loading.purlin.label }));
    },
    demand: (r, note) => bearingStress(press(r, note), areaOf(contact!, note), note),
    capacity: (_, note) => {
      for (const step of note ? weaker!.steps('Fcp') : []) note?.(step);
      return adjustedAcrossGrain(weaker!.FcPerpPsi, 1, note);
    },
  };
}

const weakerOf = (a: DesignValues | null, b: DesignValues | null): DesignValues | null =>
  a && b ? (b.FcPerpPsi < a.FcPerpPsi ? b : a) : null;

function areaOf({ purlin, rafter }: { readonly purlin: SawnStick; readonly rafter: SawnStick }, note?: Note): number {
  const area = purlin.breadthIn * rafter.breadthIn;
  note?.({
    symbol: 'A',
    words: 'contact of purlin and rafter',
    formula: 'bp × br',
    put: [
      put('bp', purlin.breadthIn, 'in', 'breadth of the purlin as it lies'),
      put('br', rafter.breadthIn, 'in', 'breadth of the rafter'),
    ],
    result: quantity(area, 'in2'),
    clause: clause('MECHANICS', 'contact area'),
  });
  return area;
}
