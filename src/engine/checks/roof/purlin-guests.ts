import type { PurlinGeometry } from '../../geometry/shelter.ts';
import type { LoadCase } from '../../loads/cases.ts';
import { ownCase, ownOfKind, ownSets, type OwnSet } from '../../loads/own-loads.ts';
import { personAsEvenLoad, personCase } from '../../loads/person.ts';
import { message } from '../../message.ts';
import { stepsOf } from '../../note.ts';
import type { OwnLoad } from '../../project/model.ts';
import { raftersOn, type RoofCheckContext } from './context.ts';
import type { PurlinCase, PurlinStretchKind } from './purlin-loading.ts';

/** Widest gap between rafters and longer end beyond them [in]. */
export type PurlinLengths = Readonly<Record<PurlinStretchKind, number>>;

/** A case on a purlin that is not of the site, with the load case that combinations know. */
export interface PurlinGuest {
  readonly loadCase: LoadCase;
  readonly onPurlin: PurlinCase;
}

const KINDS = ['span', 'overhang'] as const;

/** A person at work in the middle of the widest gap, and at the longer end: each as the even load that bends as much. */
export function personOnPurlin(lengthsIn: PurlinLengths, levelWidthIn: number): readonly PurlinGuest[] {
  return KINDS.filter((on) => lengthsIn[on] > ROUNDING_IN).map((on) => {
    const load = personAsEvenLoad(on, levelWidthIn, lengthsIn[on]);
    const steps = () => stepsOf((note) => personAsEvenLoad(on, levelWidthIn, lengthsIn[on], note)).steps;
    const loadCase = personCase(on);
    return {
      loadCase,
      onPurlin: { id: loadCase.id, isWind: false, on, psf: (load * 144) / levelWidthIn, load, steps },
    };
  });
}

const ROUNDING_IN = 1e-6;

/**
 * What the person hangs on a purlin or lays on its strip of roof: live loads by themselves, snow on the balanced snow, wind
 * alone and with each wind of the site. A load at one place counts as the even load that bends as much wherever it hangs in
 * the widest gap; beyond the outer rafter by its distance. Own wind counts as square to the slope.
 * @param ofSite  cases of snow and wind on the purlin
 */
export function ownOnPurlin(
  context: RoofCheckContext,
  purlin: PurlinGeometry,
  lengthsIn: PurlinLengths,
  ofSite: readonly PurlinCase[],
): readonly PurlinGuest[] {
  const cos = Math.cos((purlin.slopeDeg * Math.PI) / 180);
  const balanced = ofSite.find((c) => c.id === 'snow');
  const winds = ofSite.filter((c) => c.isWind);
  const guest = (loadCase: LoadCase, load: number, on: PurlinStretchKind, isWind: boolean): PurlinGuest => ({
    loadCase,
    onPurlin: {
      id: loadCase.id,
      isWind,
      on,
      psf: (load * 144) / (purlin.tributaryWidthIn * (isWind ? 1 : cos)),
      load,
      steps: () => [],
    },
  });
  return (['live', 'snow', 'wind'] as const).flatMap((kind) =>
    ownSets(ownOfKind(context.project, context.shelter, kind)).flatMap((set) =>
      KINDS.flatMap((on): readonly PurlinGuest[] => {
        const load = evenLoadOf(context, purlin, set, on, lengthsIn[on]);
        if (load === 0) return [];
        const alone = ownCase(kind, set, on);
        if (kind !== 'wind') return [guest(alone, load + (kind === 'snow' ? (balanced?.load ?? 0) : 0), on, false)];
        const beside = winds.map((c) => {
          const id = `${c.id}-own-${set.name}-${on}`;
          const words = message('caseWindWithOwn', { way: set.words });
          return guest({ id, kind: 'wind', words, swaysAlong: false }, c.load + load, on, true);
        });
        return [guest(alone, load, on, true), ...beside];
      }),
    ),
  );
}

/** Own loads of a set as one even load on a stretch of a purlin, plumb, down + [lb/in]. */
function evenLoadOf(
  context: RoofCheckContext,
  purlin: PurlinGeometry,
  { loads }: OwnSet,
  on: PurlinStretchKind,
  lengthIn: number,
): number {
  if (!(lengthIn > ROUNDING_IN)) return 0;
  return loads.reduce((sum, own) => {
    const sign = own.direction === 'up' ? -1 : 1;
    return sum + sign * (onStrip(context, purlin, own) + atOnePlace(purlin, own, on, lengthIn));
  }, 0);
}

/** A load on the roof over the purlin's strip, as if it lay along the whole of it [lb/in]. */
function onStrip(context: RoofCheckContext, purlin: PurlinGeometry, { where }: OwnLoad): number {
  if (where.on !== 'plane' || where.plane !== purlin.plane) return 0;
  if (where.toXIn <= purlin.fromXIn || where.fromXIn >= purlin.toXIn) return 0;
  const rafter = raftersOn(context, purlin.plane)[0]!;
  const cos = Math.cos((purlin.slopeDeg * Math.PI) / 180);
  const strip = [-0.5, 0.5].map((half) => (purlin.upSlopeIn + half * purlin.tributaryWidthIn) * cos);
  const patch = [where.fromYIn, where.toYIn].map((yIn) => (rafter.eaveYIn - yIn) * rafter.downY);
  const overlapIn = Math.min(Math.max(...strip), Math.max(...patch)) - Math.max(Math.min(...strip), Math.min(...patch));
  return overlapIn > 0 ? (where.psf * overlapIn) / 144 : 0;
}

/**
 * A load at one place as the even load that bends a stretch as much and shears it no less.
 * @source MECHANICS: P L / 4 = w L2 / 8; P a = w c2 / 2, and P = w c
 */
function atOnePlace(purlin: PurlinGeometry, { where }: OwnLoad, on: PurlinStretchKind, lengthIn: number): number {
  if (where.on !== 'member' || where.member !== purlin.id) return 0;
  const first = purlin.rafterXIn[0]!;
  const last = purlin.rafterXIn[purlin.rafterXIn.length - 1]!;
  const beyondIn = Math.max(first - where.atIn, where.atIn - last);
  if (on === 'span') return beyondIn > 0 ? 0 : (2 * where.lb) / lengthIn;
  return beyondIn > 0 ? Math.max((2 * where.lb * beyondIn) / (lengthIn * lengthIn), where.lb / lengthIn) : 0;
}
