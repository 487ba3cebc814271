import type { SawnStick, Stick } from '../../geometry/shelter.ts';
import { sawnValues } from '../../material/sawn-values.ts';
import type { DesignValues } from '../../material/values.ts';
import type { Note } from '../../note.ts';
import { beamStabilityFactor, effectiveBeamLength } from '../wood/beam-stability.ts';
import { bendingStress } from '../wood/bending.ts';
import { rectangularPushAndBending, resultantMoment, roundPushAndBending } from '../wood/interaction.ts';
import { smallerFcE, type ColumnPlane } from './column.ts';

/** What acts at one station of a post. */
export interface BentPost {
  readonly fcPsi: number;
  readonly FcAllowablePsi: number;
  /** in the plane of the line, a stretched cut counted twice; and across it [lb·in] */
  readonly alongLbIn: number;
  readonly acrossLbIn: number;
  /** of what is left there, for the moment along [in3] */
  readonly modulusIn3: number;
  readonly CD: number;
}

export type PushAndBending = (at: BentPost, note?: Note) => number;

/**
 * The interaction of a post: of a round one by the resultant moment and the smaller Euler stress, of a sawn one plane by
 * plane, with its own stability as a beam.
 * @param planes  along, then across
 * @source NDS 3.9.2
 */
export function pushAndBendingOf(stick: Stick, planes: readonly ColumnPlane[], values: DesignValues): PushAndBending {
  if (stick.kind === 'sawn') return ofSawn(stick, planes, values);
  const FcE = smallerFcE(planes);
  return ({ fcPsi, FcAllowablePsi, alongLbIn, acrossLbIn, modulusIn3, CD }, note) => {
    const M = resultantMoment(alongLbIn, acrossLbIn, note);
    return roundPushAndBending(fcPsi, FcAllowablePsi, M / modulusIn3, values.FbPsi * CD, FcE, note);
  };
}

function ofSawn(stick: SawnStick, planes: readonly ColumnPlane[], values: DesignValues): PushAndBending {
  const [along, across] = planes;
  const isDeepAlong = stick.depthIn >= stick.breadthIn;
  const acrossModulus = (stick.depthIn * stick.breadthIn ** 2) / 6;
  const flatFb = flatBending(stick, values);
  const [edgeFb, faceFb] = isDeepAlong ? [values.FbPsi, flatFb] : [flatFb, values.FbPsi];
  return ({ fcPsi, FcAllowablePsi, alongLbIn, acrossLbIn, modulusIn3, CD }, note) => {
    const { CL, FbE } = rollingOver(stick, planes, values.EminPsi, edgeFb * CD, note);
    const planeOf = (fbPsi: number, plane: ColumnPlane, isEdge: boolean) => ({
      fbPsi,
      FbAllowablePsi: (isEdge ? edgeFb * CL : faceFb) * CD,
      FcEPsi: plane.FcEPsi,
    });
    const inLine = planeOf(bendingStress(alongLbIn, modulusIn3, note), along!, isDeepAlong);
    const outOfLine = planeOf(bendingStress(acrossLbIn, acrossModulus, note), across!, !isDeepAlong);
    const [edge, face] = isDeepAlong ? [inLine, outOfLine] : [outOfLine, inLine];
    return rectangularPushAndBending(fcPsi, FcAllowablePsi, edge, face, FbE, note);
  };
}

/** Bending value for the moment across: the stick turned over, without any gain for lying flat. */
function flatBending(stick: SawnStick, values: DesignValues): number {
  const turned = sawnValues({ ...stick, breadthIn: stick.depthIn, depthIn: stick.breadthIn, lay: 'flat' });
  return turned.ok ? Math.min(turned.values.FbPsi, values.FbPsi) : values.FbPsi;
}

/** Sideways stability as a beam over the longer effective length, the wider side as its depth. */
function rollingOver(
  stick: SawnStick,
  planes: readonly ColumnPlane[],
  EminPsi: number,
  FbStarPsi: number,
  note?: Note,
): { readonly CL: number; readonly FbE: number } {
  const depthIn = Math.max(stick.depthIn, stick.breadthIn);
  const breadthIn = Math.min(stick.depthIn, stick.breadthIn);
  if (depthIn <= breadthIn) return { CL: 1, FbE: Infinity };
  const unbracedLengthIn = Math.max(...planes.map((p) => p.length.lengthIn));
  const { CL } = beamStabilityFactor(
    { breadthIn, depthIn, unbracedLengthIn, effectiveLengthRule: 'any', EminPsi, FbStarPsi },
    note,
  );
  const le = effectiveBeamLength('any', unbracedLengthIn, depthIn);
  return { CL, FbE: (1.2 * EminPsi * breadthIn * breadthIn) / (le * depthIn) };
}
