import { diameterAt, type RoundStick, type SawnStick } from '../../geometry/shelter.ts';
import { boredAtStations } from '../joints/bored-members.ts';
import { sectionAt, type Section } from '../section.ts';
import type { Bored } from '../wood/bored-section.ts';
import type { RafterLoading } from './rafter-loading.ts';

/** A place along a rafter with what is left of its wood there. */
export interface RafterStation {
  /** place in the arrays of a response */
  readonly index: number;
  /** along the slope from the eave [in] */
  readonly atIn: number;
  /** wood diameter, of a sawn stick its depth [in] */
  readonly depthIn: number;
  readonly section: Section;
  /** depth of the seat cut here, square to the rafter; 0 where there is none [in] */
  readonly cutIn: number;
  /** what hardware takes out there */
  readonly bored: readonly Bored[];
  /** the nearer end lies within one depth */
  readonly isAtEnd: boolean;
}

const SAME_PLACE_IN = 1e-6;

/** A rafter on its slope, as its seats see it. */
export interface OnSlope {
  readonly rafter: Pick<RafterLoading['rafter'], 'seatCutIn'>;
  readonly plane: Pick<RafterLoading['plane'], 'risePer12'>;
  readonly run: Pick<RafterLoading['run'], 'cos' | 'sin' | 'slopeLengthIn'>;
}

/** Depth of the seat cut square to the rafter: the person gives it plumb [in]. */
export const squareSeatCut = ({ rafter, run }: Pick<OnSlope, 'rafter' | 'run'>): number => rafter.seatCutIn * run.cos;

/** Stations of a rafter. Over a support the section is what the seat cut leaves. */
export function rafterStations(loading: RafterLoading, stick: RoundStick | SawnStick): readonly RafterStation[] {
  const { run, supportsAtIn } = loading;
  const boredAt = boredAtStations(loading.bored, run.stationsIn, 'upright');
  return run.stationsIn.map((atIn, index) => {
    const depthIn = depthAt(stick, atIn);
    const isOverSupport = supportsAtIn.some((s) => Math.abs(s - atIn) < SAME_PLACE_IN);
    // a cut that leaves no wood breaks the rule of the seat; the section is then that of the whole stick
    const cut = isOverSupport ? squareSeatCut(loading) : 0;
    const flatIn = stick.kind === 'round' ? stick.flatIn : 0;
    const cutIn = cut + flatIn < depthIn ? cut : 0;
    const isAtEnd = Math.min(atIn, run.slopeLengthIn - atIn) <= depthIn;
    const bored = boredAt[index]!;
    return { index, atIn, depthIn, cutIn, bored, isAtEnd, section: sectionAt(stick, depthIn, cutIn, bored) };
  });
}

/** Depth of a stick square to the slope [in]. Wood stops a little short of the covering; the last station's diameter stands for the rest, where no force is. */
export function depthAt(stick: RoundStick | SawnStick, atIn: number): number {
  if (stick.kind === 'sawn') return stick.depthIn;
  const first = stick.profile[0]!.atIn;
  const last = stick.profile[stick.profile.length - 1]!.atIn;
  return diameterAt(stick, Math.min(Math.max(atIn, first), last))!;
}
