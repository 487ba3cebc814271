import { clause } from '../../../data/sources.ts';
import type { SawnStick, Stick } from '../../geometry/shelter.ts';
import { sawnValues } from '../../material/sawn-values.ts';
import type { DesignValues } from '../../material/values.ts';
import { put, type Note } from '../../note.ts';
import { quantity } from '../../units.ts';
import { beamStabilityFactor, effectiveBeamLength } from '../wood/beam-stability.ts';
import { bendingStress } from '../wood/bending.ts';
import {
  pullAndBending,
  rectangularPushAndBending,
  resultantMoment,
  roundPushAndBending,
} from '../wood/interaction.ts';
import type { ColumnPlane, EulerStresses } from './column.ts';

interface Bent {
  /** in the plane of the line, a stretched cut counted twice; and across it [lb·in] */
  readonly alongLbIn: number;
  readonly acrossLbIn: number;
  /** of what is left there, for the moment along [in3] */
  readonly modulusIn3: number;
  /** and for the moment across; of a round post the same [in3] */
  readonly acrossModulusIn3: number;
  readonly CD: number;
}

/** What acts at one station of a post that is pushed. */
export interface BentPost extends Bent {
  readonly fcPsi: number;
  readonly FcAllowablePsi: number;
  readonly euler: EulerStresses;
}

/** What acts at one station of a post that is pulled. */
export interface PulledPost extends Bent {
  readonly ftPsi: number;
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
  return ({ fcPsi, FcAllowablePsi, euler, alongLbIn, acrossLbIn, modulusIn3, CD }, note) => {
    const FcE = Math.min(euler.alongPsi, euler.acrossPsi);
    const M = resultantMoment(alongLbIn, acrossLbIn, note);
    return roundPushAndBending(fcPsi, FcAllowablePsi, M / modulusIn3, values.FbPsi * CD, FcE, note);
  };
}

/**
 * Pull and bending of a post: a round one by the resultant moment; in a sawn one the stresses of both planes meet in a
 * corner and are added, against the smaller bending value (safe side).
 * @source NDS 3.9.1
 */
export function pullAndBendingOf(stick: Stick, values: DesignValues): (at: PulledPost, note?: Note) => number {
  const Fb = stick.kind === 'sawn' ? flatBending(stick, values) : values.FbPsi;
  const stress = ({ alongLbIn, acrossLbIn, modulusIn3, acrossModulusIn3 }: Bent, note?: Note): number =>
    stick.kind === 'sawn'
      ? inOneCorner(bendingStress(alongLbIn, modulusIn3, note), bendingStress(acrossLbIn, acrossModulusIn3, note), note)
      : resultantMoment(alongLbIn, acrossLbIn, note) / modulusIn3;
  return (at, note) => pullAndBending(at.ftPsi, values.FtPsi * at.CD, stress(at, note), Fb * at.CD, Fb * at.CD, note);
}

function inOneCorner(alongPsi: number, acrossPsi: number, note?: Note): number {
  note?.({
    symbol: 'fb',
    words: 'bending stress of both planes, where they meet in a corner',
    formula: 'fb1 + fb2',
    put: [put('fb1', alongPsi, 'psi', 'in the plane of the line'), put('fb2', acrossPsi, 'psi', 'across it')],
    result: quantity(alongPsi + acrossPsi, 'psi'),
    clause: clause('MECHANICS', 'stresses in a corner add up'),
  });
  return alongPsi + acrossPsi;
}

function ofSawn(stick: SawnStick, planes: readonly ColumnPlane[], values: DesignValues): PushAndBending {
  const isDeepAlong = stick.depthIn >= stick.breadthIn;
  const flatFb = flatBending(stick, values);
  const [edgeFb, faceFb] = isDeepAlong ? [values.FbPsi, flatFb] : [flatFb, values.FbPsi];
  return ({ fcPsi, FcAllowablePsi, euler, alongLbIn, acrossLbIn, modulusIn3, acrossModulusIn3, CD }, note) => {
    const { CL, FbE } = rollingOver(stick, planes, values.EminPsi, edgeFb * CD, note);
    const planeOf = (fbPsi: number, FcEPsi: number, isEdge: boolean) => ({
      fbPsi,
      FbAllowablePsi: (isEdge ? edgeFb * CL : faceFb) * CD,
      FcEPsi,
    });
    const inLine = planeOf(bendingStress(alongLbIn, modulusIn3, note), euler.alongPsi, isDeepAlong);
    const outOfLine = planeOf(bendingStress(acrossLbIn, acrossModulusIn3, note), euler.acrossPsi, !isDeepAlong);
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
