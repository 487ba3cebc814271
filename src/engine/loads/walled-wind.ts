import type { RoofForm, WindDirection } from '../../data/loads/free-roof-main.ts';
import { INTERNAL_PRESSURE, WALLED_ROOF, type Enclosure } from '../../data/loads/wind-walled.ts';
import type { RafterGeometry, Shelter } from '../geometry/shelter.ts';
import { message } from '../message.ts';
import { radiansFromDegrees } from '../units.ts';
import { atEnds } from './rafter-reactions.ts';
import type { RafterPart } from './rafter-run.ts';
import type { RoofCase } from './roof-cases.ts';
import { slopeBeyondFigure } from './site/free-roof.ts';
import type { SitePressures } from './site/site-pressures.ts';
import {
  walledBandCoefficients,
  walledPressure,
  walledRoofCoefficients,
  type WalledCoefficients,
} from './site/walled-roof.ts';
import { blowsToward, fromWindwardEdge, sideMet, stripFromWindward } from './wind-places.ts';

type Place = Pick<RafterPart, 'fromIn' | 'toIn' | 'onHighHalf'>;
type Sense = 'lifting' | 'pressing';

/** One way in which the wind blows at the shelter, and what it finds there. */
interface Blow {
  readonly id: string;
  /** the side that the wind meets, in words */
  readonly from: string;
  readonly windAlong: 1 | -1 | 0;
  readonly windAcross?: 1 | -1;
  readonly coefficients: (rafter: RafterGeometry, place: Place) => WalledCoefficients;
  /** part of the roof past the walls on the side that the wind meets: it gets underneath */
  readonly isWindwardOverhang: (rafter: RafterGeometry, place: Place) => boolean;
}

/**
 * Wind on a shelter with walls: on every part of the roof the harder of its enclosure class and of the obstructed free
 * roof, once lifting and once pressing, from each side. The cases of the free roof stay beside them.
 * @param free  cases of the free roof, obstructed flow among them
 * @source ASCE7 26.2, 27.3.1, 27.3.3 (7-16); the larger of the two is an own rule
 */
export function walledWindCases(
  site: SitePressures,
  shelter: Shelter,
  form: RoofForm,
  enclosure: Enclosure,
  free: readonly RoofCase[],
): readonly RoofCase[] {
  const q = site.figures.velocityPressure.value;
  if (q === null || enclosure === 'open' || free.length === 0) return [];
  const wind = { velocityPressurePsf: q, gustFactor: site.gustFactor };
  const insides = [INTERNAL_PRESSURE[enclosure], -INTERNAL_PRESSURE[enclosure]];
  const walled = (blow: Blow, sense: Sense, rafter: RafterGeometry, place: Place): number => {
    const { lift, press } = blow.coefficients(rafter, place);
    const pressures = [lift, press].flatMap((external) => [
      ...insides.map((inside) => walledPressure(wind, external, inside, false)),
      ...(blow.isWindwardOverhang(rafter, place)
        ? [walledPressure(wind, external, WALLED_ROOF.undersideOfOverhang, true)]
        : []),
    ]);
    return sense === 'lifting' ? Math.min(...pressures) : Math.max(...pressures);
  };
  return blowsAt(shelter, form).flatMap((blow): readonly RoofCase[] => {
    const beside = free.filter((c) => c.id === `${blow.id}-A-obstructed` || c.id === `${blow.id}-B-obstructed`);
    // past the slopes of the figures there is neither of the two
    if (beside.length === 0) return [];
    return (['lifting', 'pressing'] as const).map((sense) => {
      const harder = sense === 'lifting' ? Math.min : Math.max;
      const answer = (rafter: RafterGeometry, part: RafterPart) => {
        const byWalls = walled(blow, sense, rafter, part);
        const psf = harder(byWalls, ...beside.map((c) => atEnds(c.pressure(rafter, part).squarePsf).low));
        return { psf, byWalls: psf === byWalls };
      };
      const { id, from, windAlong, windAcross } = blow;
      const said = { from, sense, enclosure: ENCLOSURE_WORDS[enclosure], governs: governing(shelter, answer) };
      return {
        id: `${id}-${sense}-walled`,
        kind: 'wind',
        words: message('caseWindWalled', said),
        swaysAlong: windAlong !== 0,
        windAlong,
        ...(windAcross ? { windAcross } : {}),
        spansPattern: null,
        pressure: (rafter, part) => ({ plumbPsf: 0, squarePsf: answer(rafter, part).psf }),
      };
    });
  });
}

const ENCLOSURE_WORDS: Readonly<Record<Enclosure, string>> = {
  open: 'open',
  partiallyOpen: 'partially open',
  partiallyEnclosed: 'partially enclosed',
  enclosed: 'enclosed',
};

function blowsAt(shelter: Shelter, form: RoofForm): readonly Blow[] {
  const { planes, planAcrossIn, planAlongIn, meanRoofHeightIn } = shelter;
  const across = ([0, 180] as const).map((direction: WindDirection): Blow => {
    const toward = blowsToward(form, planes, direction);
    const heightOverLength = meanRoofHeightIn / planAcrossIn;
    // one pair for each slope; flatter ones take bands, steeper ones have no case across
    const onSlope = new Map(
      planes
        .filter((p) => p.slopeDeg >= WALLED_ROOF.slopeFigureFromDeg && slopeBeyondFigure(p.slopeDeg) === null)
        .map((p) => [
          p.id,
          walledRoofCoefficients(p.downY === toward ? 'leeward' : 'windward', p.slopeDeg, heightOverLength),
        ]),
    );
    return {
      id: `wind-${direction}`,
      from: sideMet('y', toward),
      windAlong: 0,
      windAcross: toward,
      coefficients: (rafter, place) =>
        onSlope.get(rafter.plane) ??
        walledBandCoefficients(fromWindwardEdge(shelter, toward, rafter, place) / meanRoofHeightIn, heightOverLength),
      isWindwardOverhang: (rafter, place) => isOverhangToward(rafter, place, toward),
    };
  });
  const along = ([1, -1] as const).map((toward): Blow => {
    const posts = shelter.posts.map((p) => p.xIn);
    const isPastPosts = (x: number): boolean =>
      posts.length > 0 && (toward === 1 ? x < Math.min(...posts) : x > Math.max(...posts));
    return {
      id: `wind-along-${toward === 1 ? 'plus' : 'minus'}`,
      from: sideMet('x', toward),
      windAlong: toward,
      coefficients: (rafter) =>
        walledBandCoefficients(
          stripFromWindward(shelter, toward, rafter).nearIn / meanRoofHeightIn,
          meanRoofHeightIn / planAlongIn,
        ),
      isWindwardOverhang: (rafter) => isPastPosts(rafter.xIn),
    };
  });
  return [...across, ...along];
}

/** Past the outermost support on the side that the wind comes from. */
function isOverhangToward(rafter: RafterGeometry, place: Place, toward: 1 | -1): boolean {
  const cos = Math.cos(radiansFromDegrees(rafter.slopeDeg));
  const first = rafter.supports[0];
  const last = rafter.supports[rafter.supports.length - 1];
  if (!first || !last) return false;
  return rafter.downY === toward
    ? place.fromIn * cos >= last.atIn - SAME_PLACE_IN
    : place.toIn * cos <= first.atIn + SAME_PLACE_IN;
}

const SAME_PLACE_IN = 1e-6;

/** Which of the two governs, told at the low and the high end of the first rafter of each slope. */
function governing(
  shelter: Shelter,
  answer: (rafter: RafterGeometry, part: RafterPart) => { readonly byWalls: boolean },
): string {
  const told = shelter.planes.flatMap((plane) => {
    const rafter = shelter.rafters.find((r) => r.plane === plane.id);
    if (!rafter) return [];
    const lengthIn = rafter.runIn / Math.cos(radiansFromDegrees(rafter.slopeDeg));
    const by = (fromIn: number, toIn: number, onHighHalf: boolean): string =>
      answer(rafter, { fromIn, toIn, onHighHalf, segment: 0 }).byWalls ? 'walls' : 'free roof';
    return [`${by(0, 0, false)} at the eave, ${by(lengthIn, lengthIn, true)} at the top`];
  });
  return told.join('; ');
}
