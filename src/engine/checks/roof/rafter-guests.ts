import type { RafterGeometry } from '../../geometry/shelter.ts';
import type { LoadCase } from '../../loads/cases.ts';
import { ownCase, ownOfKind, ownSets } from '../../loads/own-loads.ts';
import { ownPatches, patchLoads } from '../../loads/own-on-rafters.ts';
import { personCase, personPlaces, personPressure } from '../../loads/person.ts';
import type { AtEnds, RafterRun } from '../../loads/rafter-run.ts';
import type { TwoWeights } from '../../loads/weights.ts';
import { message } from '../../message.ts';
import { stepsOf } from '../../note.ts';
import type { OwnLoad } from '../../project/model.ts';
import type { RoofCheckContext } from './context.ts';
import type { RafterCase } from './rafter-loading.ts';

/** A person at work in the middle of each span and at the end of each overhang, one place at a time. */
export function personOnRafter(run: RafterRun, widthIn: number): readonly RafterCase[] {
  return personPlaces(run).map((place): RafterCase => {
    const psf = personPressure(widthIn, place.levelIn);
    const plumbLbPerIn = (psf * widthIn * run.cos) / 144;
    const loads = patchLoads(run, [{ ...place, plumbLbPerIn }]);
    return {
      loadCase: personCase(place.segment + 1),
      isWind: false,
      loads,
      psf: asPressure(run, widthIn, loads),
      steps: () => stepsOf((note) => personPressure(widthIn, place.levelIn, note)).steps,
    };
  });
}

/** Loads square to the slope as pressures of level area on the width of the rafter [psf]. */
const asPressure = (run: RafterRun, widthIn: number, loads: readonly AtEnds[]): readonly AtEnds[] => {
  const perPsf = (run.cos * run.cos * widthIn) / 144;
  return loads.map(({ low, high }) => ({ low: low / perPsf, high: high / perPsf }));
};

const noSteps = () => [];

/**
 * What the person hangs on a rafter or lays on its strip of roof, as it comes and goes: live loads by themselves, snow on
 * the balanced snow, wind alone and with each wind of the site.
 * @param ofSite  cases of snow and wind on the rafter
 */
export function ownOnRafter(
  { project, shelter }: RoofCheckContext,
  rafter: RafterGeometry,
  run: RafterRun,
  ofSite: readonly RafterCase[],
): readonly RafterCase[] {
  const sets = (kind: OwnLoad['kind']) =>
    ownSets(ownOfKind(project, shelter, kind)).flatMap((set) => {
      const patches = ownPatches(shelter, rafter, set.loads);
      return patches.length > 0 ? [{ set, loads: patchLoads(run, patches) }] : [];
    });
  const width = rafter.tributaryWidthIn;
  const plumb = (loadCase: LoadCase, loads: readonly AtEnds[]): RafterCase => ({
    loadCase,
    isWind: false,
    loads,
    psf: asPressure(run, width, loads),
    steps: noSteps,
  });
  const balanced = ofSite.find((c) => c.loadCase.id === 'snow');
  const winds = ofSite.filter((c) => c.isWind);
  return [
    ...sets('live').map(({ set, loads }) => plumb(ownCase('live', set), loads)),
    ...sets('snow').map(({ set, loads }) =>
      plumb(ownCase('snow', set), balanced ? summed(balanced.loads, loads) : loads),
    ),
    ...sets('wind').flatMap(({ set, loads }) => [
      plumb(ownCase('wind', set), loads),
      ...winds.map((c): RafterCase => ({
        loadCase: {
          ...c.loadCase,
          id: `${c.loadCase.id}-own-${set.name}`,
          words: message('caseWindWithOwn', { way: set.words }),
        },
        // beside the wind of the site it counts as square to the slope, like that wind
        isWind: true,
        loads: summed(c.loads, loads),
        psf: summed(c.loads, loads).map(({ low, high }) => ({ low: (low * 144) / width, high: (high * 144) / width })),
        steps: c.steps,
      })),
    ]),
  ];
}

const summed = (a: readonly AtEnds[], b: readonly AtEnds[]): readonly AtEnds[] =>
  a.map(({ low, high }, i) => ({ low: low + b[i]!.low, high: high + b[i]!.high }));

/** Own dead load on each part of a rafter, square to the slope [lb/in]; what may be taken away holds nothing down. */
export function ownDeadOnRafter({ project, shelter }: RoofCheckContext, rafter: RafterGeometry, run: RafterRun) {
  const loads = ownOfKind(project, shelter, 'dead');
  const heavy = patchLoads(run, ownPatches(shelter, rafter, loads));
  const light = patchLoads(
    run,
    ownPatches(
      shelter,
      rafter,
      loads.filter((own) => !own.removable),
    ),
  );
  return run.parts.map((_, i): TwoWeights => ({ heavy: heavy[i]!.low, light: light[i]!.low }));
}
