import { describe, expect, it } from 'vitest';
import { purlinSection } from '../../../../src/engine/checks/roof/purlin-least-diameter.ts';
import { purlinLoading } from '../../../../src/engine/checks/roof/purlin-loading.ts';
import { rafterSections } from '../../../../src/engine/checks/roof/rafter-least-diameter.ts';
import type { RafterResponse } from '../../../../src/engine/checks/roof/rafter-responses.ts';
import { rafterStations } from '../../../../src/engine/checks/roof/rafter-stations.ts';
import { at, listAt, type Raw } from '../../project/raw.ts';
import { leastOf } from '../least-of.ts';
import { analysedRafters, plainRoof, shedWith } from './roof.ts';

const LIVE = '3-roofLive+roof-live';
/** 20 psf of roof live and 4 psf of dead load on a level roof; 36 in. of it to a rafter [lb/in] */
const gravity = ((4 + 20) * 36) / 144;

/** The plain level roof with rafters and purlins of an even pole of 6 in., seats 1 in. deep. */
const poles =
  (overhangIn: number) =>
  (raw: Raw): void => {
    plainRoof(0)(raw);
    at(raw, 'roofPlanes', 'plane-1')['lowOverhangIn'] = overhangIn;
    const even = [0, 240].map((fromButtIn) => ({ fromButtIn, diameterIn: 6 }));
    listAt(raw, 'logs').push({ ...at(raw, 'logs', 'size-brace'), id: 'pole', stations: even });
    const stock = { kind: 'log', logId: 'pole', fromButtIn: 0, buttAt: 'start' };
    Object.assign(at(raw, 'groups', 'rafters'), { stock, seatCutIn: 1 });
    at(raw, 'groups', 'purlins')['stock'] = stock;
  };

function rafter(overhangIn: number) {
  const context = shedWith(poles(overhangIn));
  const { loading, responses } = analysedRafters(context)[0]!;
  const { stick } = loading.rafter;
  const answer = context.valuesOf(loading.rafter.id);
  if (!answer.ok || stick?.kind !== 'round') throw new Error('the rafter is no pole with values');
  const { values } = answer;
  const stations = rafterStations(loading, stick);
  const indexAt = (place: number): number => stations.findIndex((s) => Math.abs(s.atIn - place) < 1e-6);
  const least = (asked: readonly RafterResponse[]) => leastOf(rafterSections(stations, stick, values, asked));
  return { responses, values, indexAt, least };
}

describe('the thinnest pole rafter that would do with its loads held', () => {
  const { responses, values, indexAt, least } = rafter(0);
  const live = responses.filter(({ combination }) => combination.id === LIVE);

  // M = w L2 / 8 = Fb CD pi d3 / 32 turned round over 120 in. (NDS 3.3; circle)
  it('[rafter.bending] is (32 M / (pi Fb CD))^(1/3) in the middle of a simple span', () => {
    const M = (gravity * 120 * 120) / 8;
    expect(least(live)[indexAt(60)]).toBeCloseTo(Math.cbrt((32 * M) / (Math.PI * values.FbPsi * 1.25)), 5);
  });

  // a seat at an end may be a quarter deep (NDS 4.4.3, from memory): 1 in. asks for 4 in.
  it('[rafter.shear] is four times the seat cut at an end, where its shear asks for less', () => {
    expect(least(live)[indexAt(0)]).toBe(4);
  });

  // 2/3 Fv An (dn/d)2 = V (NDS 3.4.3.2, from memory)
  it('[rafter.shear] is where the wood over the seat cut would just carry the shear', () => {
    const heavy = live.map((r) => ({ ...r, shearsAfter: r.shearsAfter.map((V) => 12 * V) }));
    const d = least(heavy)[indexAt(0)]!;
    const R = d / 2;
    const An = Math.PI * R * R - (R * R * Math.acos((R - 1) / R) - (R - 1) * Math.sqrt(2 * R - 1));
    expect(d).toBeGreaterThan(4);
    expect((2 / 3) * values.FvPsi * 1.25 * An * ((d - 1) / d) ** 2).toBeCloseTo(12 * gravity * 60, 2);
  });

  it('[rafter.bending] has no answer where a seat cut away from the ends is stretched, however thick the pole', () => {
    const long = rafter(24);
    const seat = long.indexAt(24);
    const sagging = long.responses.map((r) => ({ ...r, moments: r.moments.map((M, i) => (i === seat ? 100 : M)) }));
    expect(long.least(sagging)[seat]).toBe(Infinity);
    // pressed, a seat away from the ends may be a sixth deep: 1 in. asks for 6 in.
    const hogging = long.responses.map((r) => ({ ...r, moments: r.moments.map((M, i) => (i === seat ? -100 : M)) }));
    expect(long.least(hogging)[seat]).toBe(6);
  });
});

describe('the thinnest log purlin that would do with its loads held', () => {
  const context = shedWith(poles(0));
  const purlin = context.shelter.purlins[2]!;
  const answer = context.valuesOf(purlin.id);
  if (!answer.ok || purlin.stick?.kind !== 'round') throw new Error('the purlin is no log with values');
  const { stick } = purlin;
  const { values } = answer;
  const whole = purlinLoading(context, purlin);
  const loading = { ...whole, responses: whole.responses.filter(({ combination }) => combination.id === LIVE) };

  // M = w L2 / 8 over 36 in. with 24 in. of roof to the purlin; the ends do not reach past the outer rafters
  it('[purlin.bending] is (32 M / (pi Fb CD))^(1/3) of the widest gap', () => {
    const M = ((((4 + 20) * 24) / 144) * 36 ** 2) / 8;
    const d = purlinSection({ ...loading, overhangIn: 0 }, stick, values)!.leastIn();
    expect(d).toBeCloseTo(Math.cbrt((32 * M) / (Math.PI * values.FbPsi * 1.25)), 5);
  });

  // V = 5/8 w L (own allowance for continuity) = Fv CD 3 A / 4 turned round (NDS 3.4.2)
  it('[purlin.shear] is sqrt(16 V / (3 pi Fv CD)) where shear decides', () => {
    const V = 0.625 * (((4 + 20) * 24) / 144) * 36;
    const weak = { ...values, FbPsi: 1e6 };
    const d = purlinSection({ ...loading, overhangIn: 0 }, stick, weak)!.leastIn();
    expect(d).toBeCloseTo(Math.sqrt((16 * V) / (3 * Math.PI * values.FvPsi * 1.25)), 5);
  });
});
