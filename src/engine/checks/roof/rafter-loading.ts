import type { RoofZone } from '../../../data/loads/free-roof-components.ts';
import type { RafterGeometry } from '../../geometry/shelter.ts';
import type { LoadCase } from '../../loads/cases.ts';
import { componentLive, componentWind, type ComponentWind } from '../../loads/component-cases.ts';
import { atEnds, squareLoads, type Pressure } from '../../loads/rafter-reactions.ts';
import type { AtEnds, RafterRun } from '../../loads/rafter-run.ts';
import { rafterOwnWeight, surfaceWeight } from '../../loads/roof-weights.ts';
import { snowCases } from '../../loads/snow-cases.ts';
import { areaClass } from '../../loads/site/components.ts';
import type { TwoWeights } from '../../loads/weights.ts';
import { edgeWidthIn, zoneOfPart } from '../../loads/zones.ts';
import type { Step } from '../../note.ts';
import type { RoofPlane } from '../../project/model.ts';
import { feetFromInches } from '../../units.ts';
import { boredRows } from '../joints/bored-members.ts';
import type { BoredRow } from '../joints/fastened/bored.ts';
import { ownDeadOnRafter, ownOnRafter, personOnRafter } from './rafter-guests.ts';
import { shakenCase, shakenRafter, type Shaken } from './rafter-shaken.ts';
import { placedPlane, purlinsOn, writtenPlane, type RoofCheckContext } from './context.ts';

/** An overhang or a span of a rafter. */
export type Segment = RafterRun['segments'][number];

/** One load case on one rafter: loads square to the slope on each part of its run. */
export interface RafterCase {
  readonly loadCase: LoadCase;
  readonly isWind: boolean;
  /** on each part [lb/in] */
  readonly loads: readonly AtEnds[];
  /** pressure on each part, of level area or, wind, square to the slope [psf] */
  readonly psf: readonly AtEnds[];
  /** zone of the roof that each part lies in, of wind on components */
  readonly zones?: readonly RoofZone[];
  /** how the pressure at an end of a part came about */
  readonly steps: (part: number, end: keyof AtEnds) => readonly Step[];
}

/** All that acts on a rafter and on every rafter like it. */
export interface RafterLoading {
  readonly rafter: RafterGeometry;
  readonly plane: RoofPlane;
  readonly run: RafterRun;
  /** dead load square to the slope on each part [lb/in] */
  readonly dead: readonly TwoWeights[];
  readonly surfacePsf: TwoWeights;
  readonly cases: readonly RafterCase[];
  readonly wind: ComponentWind;
  /** null where no earthquake is run */
  readonly shaken: Shaken | null;
  /** what the hardware of its joints takes out of it */
  readonly bored: readonly BoredRow[];
  /** supports along the slope from the eave, low to high [in] */
  readonly supportsAtIn: readonly number[];
}

/**
 * Loads of a rafter as a component: its own run, its own areas, never the main frame's wind.
 * @source ASCE7 chapters 3, 4, 7, 30 (7-16)
 */
export function rafterLoading(context: RoofCheckContext, rafter: RafterGeometry): RafterLoading {
  const { project, site, form, weights } = context;
  const run = context.runOf(rafter);
  const plane = writtenPlane(context, rafter.plane);
  const surfacePsf = surfaceWeight(
    project,
    placedPlane(context, rafter.plane),
    purlinsOn(context, rafter.plane),
    weights,
  );
  const own = rafterOwnWeight(project, rafter, run, weights);
  const width = rafter.tributaryWidthIn;
  const square = (weight: keyof TwoWeights, part: number): number =>
    ((surfacePsf[weight] * width) / 144 + own[part]![weight]) * run.cos;

  const ownDead = ownDeadOnRafter(context, rafter, run);

  const spans = run.segments.filter((s) => s.kind === 'span');
  // the shortest span has the smallest area, and the smaller area the harder wind
  const spanIn = Math.min(...spans.map((s) => s.toIn - s.fromIn));
  const effectiveAreaFt2 = (spanIn * Math.max(width, spanIn / 3)) / 144;
  const wind = componentWind(
    site,
    form,
    rafter.slopeDeg,
    areaClass(effectiveAreaFt2, feetFromInches(edgeWidthIn(site))),
  );
  const zones = rafterZones(context, rafter);

  const plumb = (loadCase: LoadCase, psf: readonly Pressure[], steps: RafterCase['steps']): RafterCase => ({
    loadCase,
    isWind: false,
    psf: psf.map(atEnds),
    loads: squareLoads(run, width, (i) => ({ plumbPsf: psf[i]!, squarePsf: 0 }), 'plumbPsf'),
    steps,
  });
  const live = componentLive(
    project,
    rafter.id,
    plane.risePer12,
    (width * rafter.runIn) / 144 / spans.length,
    run.segments.length,
    site.figures.unreducedRoofLive.value ?? 0,
  );
  const snow = snowCases(site, run.segments.length);
  const cases: RafterCase[] = [
    ...live.map((c) =>
      plumb(
        c,
        run.parts.map((p) => c.psf[p.segment]!),
        c.steps,
      ),
    ),
    ...snow.map((c) =>
      plumb(
        c,
        run.parts.map((p) => c.pressure(rafter, p).plumbPsf),
        (part, end) => c.stepsAt(rafter, run.parts[part]!, end),
      ),
    ),
    ...(wind.ok ? wind.cases : []).map((c): RafterCase => {
      const psf = zones.map((zone) => c.psf[zone]);
      const loads = squareLoads(run, width, (i) => ({ plumbPsf: 0, squarePsf: psf[i]! }), 'squarePsf');
      return { loadCase: c, isWind: true, psf: psf.map(atEnds), zones, loads, steps: (part) => c.steps(zones[part]!) };
    }),
  ];
  const dead = run.parts.map((_, i) => ({
    heavy: square('heavy', i) + ownDead[i]!.heavy,
    light: square('light', i) + ownDead[i]!.light,
  }));
  const shaken = shakenRafter(context, rafter, run, dead);
  return {
    rafter,
    plane,
    run,
    dead,
    surfacePsf,
    cases: [
      ...cases,
      ...personOnRafter(run, width),
      ...ownOnRafter(context, rafter, run, cases),
      ...(shaken ? [shakenCase(run, shaken)] : []),
    ],
    wind,
    shaken,
    bored: boredRows(context, rafter.id),
    supportsAtIn: rafter.supports.map((s) => s.atIn / run.cos),
  };
}

/** Zone of the roof that each part of a rafter's run lies in. */
export function rafterZones(context: RoofCheckContext, rafter: RafterGeometry): readonly RoofZone[] {
  const plane = placedPlane(context, rafter.plane);
  return context.runOf(rafter).parts.map((part) => zoneOfPart(plane, rafter, part, edgeWidthIn(context.site)));
}
