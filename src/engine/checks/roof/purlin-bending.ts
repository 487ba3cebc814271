import type { RoundStick, SawnStick, TypedStick } from '../../geometry/shelter.ts';
import { outside } from '../../check.ts';
import { sawnValues } from '../../material/sawn-values.ts';
import type { DesignValues } from '../../material/values.ts';
import { message } from '../../message.ts';
import type { Note } from '../../note.ts';
import { sectionAt } from '../section.ts';
import type { CheckSite } from '../site-of-check.ts';
import { adjustedBending, bendingStress } from '../wood/bending.ts';
import { durationFactor } from '../wood/duration.ts';
import { rectangularPushAndBending, resultantMoment } from '../wood/interaction.ts';
import type { PurlinLoading, PurlinResponse } from './purlin-loading.ts';
import { stretchMoment, type PurlinStretch } from './purlin-stretches.ts';
import { tellPurlinLoad } from './purlin-telling.ts';
import { typedCapacity } from './rafter-typed.ts';
import { HELD, rollingOver, type Rolling } from './rolling-over.ts';

type Site = CheckSite<PurlinResponse>;
type Base = Pick<Site, 'ruleId' | 'memberId' | 'place' | 'purpose'>;

const baseOf = (loading: PurlinLoading, stretch: PurlinStretch): Base => ({
  ruleId: 'purlin.bending',
  memberId: loading.purlin.id,
  place: { kind: stretch.kind, name: stretch.kind },
  purpose: 'strength',
});

/**
 * Bending of a sawn purlin both ways at once: square to the slope and along it. The sheet holds the top edge sideways;
 * the bottom edge is held at the rafters only. Graded gain for lying flat counts only for the load on the wide face.
 * @source NDS 3.9.2 without push; 3.3.3
 */
export function sawnPurlinBending(
  loading: PurlinLoading,
  stretch: PurlinStretch,
  stick: SawnStick,
  values: DesignValues,
): Site {
  const alongFbPsi = otherAxisBending(stick, values);
  const squareS = (stick.breadthIn * stick.depthIn ** 2) / 6;
  const alongS = (stick.depthIn * stick.breadthIn ** 2) / 6;
  const isDeeper = stick.depthIn > stick.breadthIn;
  const stability = (r: PurlinResponse, note?: Note) =>
    isDeeper && stretchMoment(stretch, r.square, 'M') < 0 ? bottomPressed(stretch, stick, values, r, note) : HELD;
  return {
    ...baseOf(loading, stretch),
    unit: '1',
    stops: (r) => (stability(r).outside ? outside(message('rollsOver')) : null),
    demand: (r, note) => {
      const CD = r.combination.durationFactor;
      if (note) {
        tellPurlinLoad(loading, r, note);
        for (const step of values.steps('Fb')) note(step);
        durationFactor(r.combination.duration, note);
      }
      const { CL, FbE } = stability(r, note);
      const square = {
        fbPsi: bendingStress(stretchMoment(stretch, r.square, 'M', note), squareS, note),
        FbAllowablePsi: adjustedBending(values.FbPsi, CD, CL, 1, note),
        FcEPsi: Infinity,
      };
      const along = {
        fbPsi: bendingStress(stretchMoment(stretch, r.along, 'Ma', note), alongS, note),
        FbAllowablePsi: adjustedBending(alongFbPsi, CD, 1, 1, note),
        FcEPsi: Infinity,
      };
      const [edge, face] = isDeeper ? [square, along] : [along, square];
      return rectangularPushAndBending(0, values.FcPsi, edge, face, FbE, note);
    },
    capacity: () => 1,
  };
}

/** The bottom edge is pressed: in a span while the wind lifts, at an overhang under every load. */
const bottomPressed = (
  stretch: PurlinStretch,
  stick: SawnStick,
  values: DesignValues,
  r: PurlinResponse,
  note?: Note,
): Rolling =>
  rollingOver(
    stick,
    values,
    stretch.lengthIn,
    stretch.kind === 'span' ? 'uniform' : 'cantileverUniform',
    r.combination.durationFactor,
    note,
  );

/** Bending value for load on the other face: the stick turned over, without the gain for lying flat. */
export function otherAxisBending(stick: SawnStick, values: DesignValues): number {
  const turned = sawnValues({
    ...stick,
    breadthIn: stick.depthIn,
    depthIn: stick.breadthIn,
    lay: stick.lay === 'flat' ? 'edge' : 'flat',
  });
  if (!turned.ok) return values.FbPsi;
  return stick.lay === 'flat' ? turned.values.FbPsi : Math.min(turned.values.FbPsi, values.FbPsi);
}

/**
 * Bending of a round purlin by the resultant of both directions at its thinnest place.
 * @source NDS 3.3; round sections with CL = 1
 */
export function roundPurlinBending(
  loading: PurlinLoading,
  stretch: PurlinStretch,
  stick: RoundStick,
  values: DesignValues,
): Site {
  const diameterIn = thinnestOf(stick);
  const section = sectionAt(stick, diameterIn, 0);
  return {
    ...baseOf(loading, stretch),
    unit: 'psi',
    demand: (r, note) => {
      if (note) {
        tellPurlinLoad(loading, r, note);
        section.tell(note);
      }
      return bendingStress(bothWays(stretch, r, note), section.modulusIn3, note);
    },
    capacity: (r, note) => {
      if (note) {
        for (const step of values.steps('Fb')) note(step);
        durationFactor(r.combination.duration, note);
      }
      return adjustedBending(values.FbPsi, r.combination.durationFactor, 1, 1, note);
    },
    grows: { power: 3, diameterAt: () => diameterIn },
  };
}

export const thinnestOf = (stick: RoundStick): number => Math.min(...stick.profile.map((p) => p.diameterIn));

/** A typed section by the resultant of both directions, against what its maker allows square to it. */
export function typedPurlinBending(loading: PurlinLoading, stretch: PurlinStretch, stick: TypedStick): Site {
  return {
    ...baseOf(loading, stretch),
    unit: 'lb·in',
    demand: (r, note) => {
      if (note) tellPurlinLoad(loading, r, note);
      return bothWays(stretch, r, note);
    },
    capacity: (r, note) => typedCapacity('Fb S', stick.FbSIn3Psi, 'lb·in', r, note),
    reason: () => message('typedSection', { name: stick.name }),
  };
}

/** Moment of both directions together, square to the slope and along it [lb·in]. */
export const bothWays = (stretch: PurlinStretch, r: PurlinResponse, note?: Note): number =>
  resultantMoment(stretchMoment(stretch, r.square, 'Mx', note), stretchMoment(stretch, r.along, 'My', note), note);
