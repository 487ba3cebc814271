import { purlinLoading } from '../checks/roof/purlin-loading.ts';
import { rafterLoading } from '../checks/roof/rafter-loading.ts';
import type { PlaneGeometry } from '../geometry/shelter.ts';
import type { Prepared } from '../givens.ts';
import type { LoadCase } from '../loads/cases.ts';
import { componentWind } from '../loads/component-cases.ts';
import { personCase } from '../loads/person.ts';
import { edgeWidthIn, reachesEave, reachesGableEnd, zoneAt } from '../loads/zones.ts';
import { radiansFromDegrees } from '../units.ts';
import { emptyPicture, type LoadPicture, type LoadStrip } from './picture.ts';
import { joined, stripOn } from './strips.ts';

/** A case with what it puts on the roof by way of one kind of part. */
interface Share {
  readonly loadCase: LoadCase;
  readonly isDrawn: boolean;
  readonly strips: readonly LoadStrip[];
}

/**
 * What acts on sheet, purlins and rafters by their own areas: wind, zone by zone, harder than on the frame and never mixed
 * with it; a person at work.
 */
export function componentPictures(givens: Prepared): {
  readonly pictures: readonly LoadPicture[];
  readonly cases: readonly LoadCase[];
} {
  const parts = [
    { actsOn: 'sheet', shares: onSheet(givens) },
    { actsOn: 'purlins', shares: onPurlins(givens) },
    { actsOn: 'rafters', shares: onRafters(givens) },
  ] as const;
  return {
    pictures: parts.flatMap(({ actsOn, shares }) => byCase(shares).map((picture) => ({ ...picture, actsOn }))),
    cases: parts.flatMap(({ shares }) => shares.map((share) => share.loadCase)),
  };
}

/** Shares of one case put together, in the order in which the cases come. */
function byCase(shares: readonly Share[]): readonly LoadPicture[] {
  const drawn = shares.filter((share) => share.isDrawn);
  const cases = new Map(drawn.map(({ loadCase }) => [loadCase.id, loadCase] as const));
  return [...cases.values()].map((loadCase) => ({
    ...emptyPicture(loadCase),
    strips: joined(drawn.filter((share) => share.loadCase.id === loadCase.id).flatMap((share) => share.strips)),
  }));
}

/** Sheet and screws have the smallest area; the zones of each slope as they lie. */
function onSheet({ shelter, site, form }: Prepared): readonly Share[] {
  return shelter.planes.flatMap((plane): readonly Share[] => {
    const wind = componentWind(site, form, plane.slopeDeg, 'upToA2');
    if (!wind.ok) return [];
    const cells = zoneCells(plane, edgeWidthIn(site));
    return wind.cases.map((loadCase) => ({
      loadCase,
      isDrawn: true,
      strips: cells.map(({ zone, cell }) => ({ ...cell, lowPsf: loadCase.psf[zone], highPsf: loadCase.psf[zone] })),
    }));
  });
}

/** The slope cut where its edge strips end. */
function zoneCells(plane: PlaneGeometry, edgeIn: number) {
  const cos = Math.cos(radiansFromDegrees(plane.slopeDeg));
  const xs = cuts(plane.fromXIn, plane.toXIn, edgeIn);
  const levels = cuts(0, plane.runIn, edgeIn);
  return xs.slice(1).flatMap((toXIn, i) =>
    levels.slice(1).map((toLevelIn, k) => {
      const fromXIn = xs[i]!;
      const fromLevelIn = levels[k]!;
      const zone = zoneAt(
        reachesGableEnd(plane, fromXIn, toXIn, edgeIn),
        reachesEave(plane, fromLevelIn, toLevelIn, edgeIn),
      );
      const along = { fromIn: fromLevelIn / cos, toIn: toLevelIn / cos };
      return { zone, cell: { planeId: plane.id, fromXIn, toXIn, ...along, acts: 'square' as const } };
    }),
  );
}

const cuts = (from: number, to: number, edge: number): readonly number[] =>
  to - from > 2 * edge ? [from, from + edge, to - edge, to] : [from, to];

/** Each purlin over its own strip of the slope; the strips follow each other from the eave. */
function onPurlins(givens: Prepared): readonly Share[] {
  const context = { ...givens, valuesOf: givens.materials.of };
  return givens.shelter.planes.flatMap((plane) => {
    const purlins = givens.shelter.purlins
      .filter((p) => p.plane === plane.id)
      .toSorted((a, b) => a.upSlopeIn - b.upSlopeIn);
    let toIn = 0;
    return purlins.flatMap((purlin) => {
      const fromIn = toIn;
      toIn += purlin.tributaryWidthIn;
      const { cases, wind } = purlinLoading(context, purlin);
      const strip = {
        planeId: plane.id,
        fromXIn: plane.fromXIn,
        toXIn: plane.toXIn,
        fromIn,
        toIn,
        acts: 'square',
      } as const;
      const persons = cases.filter((c) => c.on && c.id === personCase(c.on).id).map((c) => personCase(c.on!));
      return [...persons, ...(wind.ok ? wind.cases : [])].map((loadCase): Share => {
        const psf = cases.find((c) => c.id === loadCase.id)?.psf ?? 0;
        return { loadCase, isDrawn: loadCase.kind === 'wind', strips: [{ ...strip, lowPsf: psf, highPsf: psf }] };
      });
    });
  });
}

/** Each rafter over the strip that it carries; a person stands on one rafter at a time, drawn on a middle one. */
function onRafters(givens: Prepared): readonly Share[] {
  const context = { ...givens, valuesOf: givens.materials.of };
  const { rafters } = givens.shelter;
  const middle = rafters[Math.floor(rafters.length / 2)];
  return rafters.flatMap((rafter) => {
    const { cases, run } = rafterLoading(context, rafter);
    return cases.map(({ loadCase, isWind, psf }): Share => {
      const strips = run.parts.map((part, i) => stripOn(rafter, part, psf[i]!, isWind ? 'square' : 'level'));
      const isPerson = loadCase.id.startsWith('person-') && rafter === middle;
      return { loadCase, isDrawn: isWind || isPerson, strips: strips.filter((s) => s.lowPsf !== 0 || s.highPsf !== 0) };
    });
  });
}
