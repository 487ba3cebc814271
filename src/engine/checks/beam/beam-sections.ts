import { breaks, type Verdict } from '../../check.ts';
import type { LineResponse } from '../../frame/line-frame.ts';
import { SAME_PLACE_IN, type Chain } from '../../frame/mesh-builder.ts';
import { sectionsOf, type SectionAt } from '../../frame/read-response.ts';
import type { BeamGeometry, CutGeometry } from '../../geometry/shelter.ts';
import type { Stretch } from '../../loads/stretches.ts';
import { message } from '../../message.ts';
import type { LineCheckContext } from '../line-context.ts';
import { boredAtStations, boredRows } from '../joints/bored-members.ts';
import { sectionAt, type Section } from '../section.ts';
import type { Bored } from '../wood/bored-section.ts';

/** A beam's station with what is left of the wood there. */
export interface BeamStation extends SectionAt {
  readonly xIn: number;
  readonly section: Section;
  /** cuts that reach over this station; none where the log is whole */
  readonly cuts: readonly CutGeometry[];
  /** depth of the flat and the cuts there together [in] */
  readonly cutIn: number;
  /** what hardware takes out there */
  readonly bored: readonly Bored[];
}

/** One beam of the line with the stretch it fills. */
export interface BeamStretch {
  readonly beam: BeamGeometry;
  readonly chain: Chain;
  readonly stretch: Stretch;
  readonly stations: readonly BeamStation[];
  /** every station of the beam, of its other stretches too */
  readonly all: readonly BeamStation[];
}

/** Stations of every beam, stretch by stretch (between posts, beyond the last). */
export function beamStretches(context: LineCheckContext): readonly BeamStretch[] {
  const { frame, stretches } = context;
  return frame.mesh.beams.flatMap((chain) => {
    const beam = frame.members.beams.find((b) => b.id === chain.memberId)!;
    const sections = sectionsOf(chain, frame.layout);
    const bored = boredAtStations(
      boredRows(context, beam.id),
      sections.map((s) => alongStick(beam, s.atIn)),
      'upright',
    );
    const all = sections.map((s, i): BeamStation => {
      const xIn = beam.fromXIn + s.atIn;
      const cuts = beam.cuts.filter((c) => Math.abs(c.atXIn - xIn) <= c.lengthIn / 2 + 1e-6);
      // cuts at one place, from whichever side, count as one of their summed depth (safe side)
      const depthIn = cuts.reduce((sum, c) => sum + c.depthIn, 0);
      const flatIn = beam.stick?.kind === 'round' ? beam.stick.flatIn : 0;
      const section = sectionAt(beam.stick!, s.diameterIn, depthIn, bored[i]);
      return { ...s, xIn, cuts, cutIn: flatIn + depthIn, bored: bored[i]!, section };
    });
    return stretches.flatMap((stretch): BeamStretch[] => {
      const stations = all.filter(
        (s) => s.xIn > stretch.fromXIn - SAME_PLACE_IN && s.xIn < stretch.toXIn + SAME_PLACE_IN,
      );
      const overlaps = beam.fromXIn < stretch.toXIn - 1e-6 && beam.toXIn > stretch.fromXIn + 1e-6;
      return overlaps && stations.length > 0 ? [{ beam, chain, stretch, stations, all }] : [];
    });
  });
}

/** Where a place of a beam lies on its stick, from the stick's start; a rafter in its row runs up from its eave [in]. */
export const alongStick = ({ slope, fromXIn }: BeamGeometry, atIn: number): number =>
  slope ? (slope.downX * (slope.eaveXIn - fromXIn - atIn)) / slope.cos : atIn;

/** Why no section of a stretch is asked: a cut or hardware goes through the log; null where wood is left everywhere. */
export function throughCut({ beam, stations }: BeamStretch): Verdict | null {
  const gone = stations.find((s) => (s.cuts.length > 0 || s.bored.length > 0) && s.section.areaIn2 === 0);
  if (!gone) return null;
  const { cuts, bored, cutIn: depthIn, diameterIn, atIn } = gone;
  if (bored.length > 0) return breaks(message('holesTakeAll', { member: beam.label, atIn, diameterIn }));
  return breaks(message('cutThroughLog', { member: beam.id, atIn: cuts[0]!.atXIn, depthIn, diameterIn }));
}

/** True when the moment stretches the wood where the cut is. A cut on the side is stretched either way. */
export function cutIsStretched(cut: CutGeometry, momentLbIn: number): boolean {
  const turned = ((cut.angleDeg % 360) + 360) % 360;
  if (Math.abs(momentLbIn) < 1) return false;
  if (turned > 120 && turned < 240) return momentLbIn > 0;
  if (turned < 60 || turned > 300) return momentLbIn < 0;
  return true;
}

/** The cuts of a station that the moment there stretches. */
export const stretchedCuts = (s: BeamStation, values: Float64Array): readonly CutGeometry[] =>
  s.cuts.filter((cut) => cutIsStretched(cut, values[s.moment]!));

/** True where the moment there stretches some cut. */
export function hasStretchedCut(s: BeamStation, values: Float64Array): boolean {
  for (const cut of s.cuts) if (cutIsStretched(cut, values[s.moment]!)) return true;
  return false;
}

/** What one unit of a force, by its sign, and one of the thrust do at a station. */
interface Share {
  /** where the force stands in a response */
  readonly at: number;
  readonly plus: number;
  readonly minus: number;
  readonly thrust: number;
}

/**
 * Picks the station where a force and the thrust do most, in one pass over flat lists: asked in every combination.
 * A station without a number is worse than any.
 */
export function stationPicker(
  stations: readonly BeamStation[],
  shareOf: (s: BeamStation) => Share,
): (response: LineResponse) => BeamStation {
  const shares = stations.map(shareOf);
  const forceAt = Int32Array.from(shares, (s) => s.at);
  const thrustAt = Int32Array.from(stations, (s) => s.axial);
  const plus = Float64Array.from(shares, (s) => s.plus);
  const minus = Float64Array.from(shares, (s) => s.minus);
  const thrust = Float64Array.from(shares, (s) => s.thrust);
  return ({ values }) => {
    let worst = 0;
    let most = -Infinity;
    for (let i = 0; i < forceAt.length; i++) {
      const force = values[forceAt[i]!]!;
      const m = (force > 0 ? force * plus[i]! : -force * minus[i]!) + Math.abs(values[thrustAt[i]!]!) * thrust[i]!;
      if (Number.isNaN(m)) return stations[i]!;
      if (m > most) {
        most = m;
        worst = i;
      }
    }
    return stations[worst]!;
  };
}

/** Picks the station where a force alone is greatest, as so much per unit of it. */
export const greatestOf = (
  stations: readonly BeamStation[],
  at: (s: BeamStation) => number,
  perUnit: (s: BeamStation) => number = () => 1,
): ((response: LineResponse) => BeamStation) =>
  stationPicker(stations, (s) => ({ at: at(s), plus: perUnit(s), minus: perUnit(s), thrust: 0 }));
