import type { RoundStick, SawnStick, TypedStick } from '../../geometry/shelter.ts';
import type { DesignValues } from '../../material/values.ts';
import { message } from '../../message.ts';
import type { Note } from '../../note.ts';
import { sectionAt } from '../section.ts';
import type { CheckSite } from '../site-of-check.ts';
import { durationFactor } from '../wood/duration.ts';
import { flattenedInertia } from '../wood/flat-section.ts';
import { flattenedShearStress } from '../wood/flat-shear.ts';
import { sagLimit } from '../wood/sag.ts';
import { adjustedShear, rectangularShearStress } from '../wood/shear.ts';
import { roundPurlinBending, sawnPurlinBending, thinnestOf, typedPurlinBending } from './purlin-bending.ts';
import type { PurlinLoading, PurlinResponse } from './purlin-loading.ts';
import { actsOn, purlinShear, purlinStretches, stretchSag, type PurlinStretch } from './purlin-stretches.ts';
import { tellPurlinLoad } from './purlin-telling.ts';
import { typedCapacity } from './rafter-typed.ts';

type Site = CheckSite<PurlinResponse>;

/** A stick with what it is judged by: design values, or its maker's own. */
export type JudgedStick =
  | { readonly stick: TypedStick; readonly values: null }
  | { readonly stick: RoundStick | SawnStick; readonly values: DesignValues };

/** Bending, shear and sag of a purlin. */
export function purlinStickSites(loading: PurlinLoading, judged: JudgedStick): readonly Site[] {
  const stretches = purlinStretches(loading);
  return [
    ...stretches.map((stretch) => ({
      ...bendingSite(loading, stretch, judged),
      applies: (r: PurlinResponse) => actsOn(stretch, r),
    })),
    judged.values === null ? typedShearSite(loading, judged.stick) : shearSite(loading, judged.stick, judged.values),
    ...stretches.map((stretch) => ({
      ...sagSite(loading, stretch, judged),
      applies: (r: PurlinResponse) => actsOn(stretch, r),
    })),
  ];
}

function bendingSite(loading: PurlinLoading, stretch: PurlinStretch, judged: JudgedStick): Site {
  if (judged.values === null) return typedPurlinBending(loading, stretch, judged.stick);
  return judged.stick.kind === 'sawn'
    ? sawnPurlinBending(loading, stretch, judged.stick, judged.values)
    : roundPurlinBending(loading, stretch, judged.stick, judged.values);
}

const shearBase = (loading: PurlinLoading): Pick<Site, 'ruleId' | 'memberId' | 'place' | 'purpose'> => ({
  ruleId: 'purlin.shear',
  memberId: loading.purlin.id,
  place: { kind: 'whole', name: '' },
  purpose: 'strength',
});

function shearForce(loading: PurlinLoading, r: PurlinResponse, note?: Note): number {
  if (note) tellPurlinLoad(loading, r, note);
  return purlinShear(loading, Math.hypot(r.square, r.along), r.on, note);
}

/**
 * Shear of a purlin by the resultant of both directions.
 * @source NDS 3.4.2
 */
function shearSite(loading: PurlinLoading, stick: RoundStick | SawnStick, values: DesignValues): Site {
  const stress = (V: number, note?: Note): number =>
    stick.kind === 'sawn'
      ? rectangularShearStress(V, stick.breadthIn, stick.depthIn, note)
      : flattenedShearStress(V, sectionAt(stick, thinnestOf(stick), 0).shearAreaIn2, note);
  return {
    ...shearBase(loading),
    unit: 'psi',
    demand: (r, note) => stress(shearForce(loading, r, note), note),
    capacity: (r, note) => {
      if (note) {
        for (const step of values.steps('Fv')) note(step);
        durationFactor(r.combination.duration, note);
      }
      return adjustedShear(values.FvPsi, r.combination.durationFactor, note);
    },
    ...(stick.kind === 'round' ? { grows: { power: 2 as const, diameterAt: () => thinnestOf(stick) } } : {}),
  };
}

const typedShearSite = (loading: PurlinLoading, stick: TypedStick): Site => ({
  ...shearBase(loading),
  unit: 'lb',
  demand: (r, note) => shearForce(loading, r, note),
  capacity: (r, note) => typedCapacity('V', stick.VallowLb, 'lb', r, note),
  reason: () => message('typedSection', { name: stick.name }),
});

/** Stiffness square to the slope at the thinnest place [psi in4]. */
function stiffnessOf(judged: JudgedStick): number {
  if (judged.values === null) return judged.stick.EIPsiIn4;
  const { stick, values } = judged;
  const inertia =
    stick.kind === 'sawn'
      ? (stick.breadthIn * stick.depthIn ** 3) / 12
      : flattenedInertia(thinnestOf(stick), stick.flatIn, 0);
  return values.EPsi * inertia;
}

/** Of a log: its stiffness grows with the fourth power of the thinnest diameter. */
function growsWithStiffness({ stick }: JudgedStick): Pick<Site, 'grows'> {
  return stick.kind === 'round' ? { grows: { power: 4, diameterAt: () => thinnestOf(stick) } } : {};
}

/**
 * Sag of a purlin square to the slope under live, snow or wind alone.
 * @source IBC Table 1604.3 (roof without a ceiling)
 */
const sagSite = (loading: PurlinLoading, stretch: PurlinStretch, judged: JudgedStick): Site => ({
  ruleId: 'purlin.sag',
  memberId: loading.purlin.id,
  place: { kind: stretch.kind, name: stretch.kind },
  unit: 'in',
  purpose: 'sag',
  demand: (r, note) => {
    if (note) tellPurlinLoad(loading, r, note);
    return stretchSag(stretch, r.square, stiffnessOf(judged), note);
  },
  capacity: (r, note) => {
    const isLive = r.combination.factors.some((f) => f.caseId.startsWith('roof-live'));
    return sagLimit(stretch.lengthIn, isLive ? 'live' : 'snowOrWind', stretch.kind === 'overhang', note);
  },
  ...growsWithStiffness(judged),
});
