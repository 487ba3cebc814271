import type { LineResponse } from '../../frame/line-frame.ts';
import type { Chain } from '../../frame/mesh-builder.ts';
import { sectionsOf } from '../../frame/read-response.ts';
import type { RoundStick } from '../../geometry/shelter.ts';
import type { DesignValues } from '../../material/values.ts';
import { askedSection, type AskedSection, type OfSize, type Term } from '../asked-section.ts';
import { isStrength, valuesIn, type LineCheckContext } from '../line-context.ts';
import { sectionAt } from '../section.ts';
import { roundEndNotchShear } from '../wood/shear.ts';
import { beamStretches, type BeamStation, type BeamStretch } from './beam-sections.ts';
import { pullShareOf, stressAt } from './bending.ts';
import { endCutsOf, isSeatPressedByGravity, isStretched, placedCuts, type PlacedCut } from './cuts.ts';
import type { EndCut } from './shear.ts';
import { twistOn, twistedShear } from './twist-shear.ts';
import type { Twist } from './twist.ts';

/**
 * What the sections of a round log are asked, station by station: bending and shear there (over a cut near an end and
 * with the twist of a bow too), and the thickness that the depth of its cuts asks for. A thinner log draws other forces:
 * only a new evaluation tells whether it passes.
 * @param isTwisted whether what a bow twists counts; a tie log is not asked it
 * @returns in the order of the chain's sections; null for what is not a round log
 * @source NDS 3.3, 3.4, 3.9.1, 4.4.3 turned round; own rule: forces held
 */
export function beamSections(
  context: LineCheckContext,
  chain: Chain,
  isTwisted: boolean,
): readonly (AskedSection | null)[] | null {
  const values = valuesIn(context, chain.memberId);
  const stretches = beamStretches(context).filter((s) => s.chain.memberId === chain.memberId);
  const stick = stretches[0]?.beam.stick;
  if (!values || stick?.kind !== 'round') return null;
  const responses = context.frame.responses.filter(isStrength);
  const bySize = new Map(stretches.flatMap((on) => sizesOfCuts(context, on)));
  const endCuts = stretches.flatMap((on) => endCutsOf(context, on));
  const asked = new Map<number, AskedBeam>();
  for (const on of stretches) {
    const twisting = isTwisted ? twistOn(context, on) : null;
    const twist = twisting && onceFor(twisting.twist);
    for (const station of on.stations) {
      // over a post a station ends two stretches
      const twists = [...(asked.get(station.axial)?.twists ?? []), ...(twist ? [twist] : [])];
      const notches = endCuts.filter((cut) => Math.abs(station.xIn - cut.xIn) <= cut.reachIn);
      asked.set(station.axial, { station, notches, twists, stick, values });
    }
  }
  return sectionsOf(chain, context.frame.layout).map(({ axial }) => {
    const here = asked.get(axial);
    if (!here) return null;
    const { station } = here;
    return askedSection<LineResponse>({
      hasIn: station.diameterIn,
      takenIn: station.cutIn,
      ofSize: station.cuts.flatMap((cut) => bySize.get(cut.id) ?? []),
      responses,
      termsAt: (diameterIn) => termsOf(here, diameterIn),
    });
  });
}

/** Every station of a stretch asks what turns it in the same responses. */
function onceFor(twist: Twist): Twist {
  const known = new Map<Float64Array, number>();
  return (values) => {
    const found = known.get(values) ?? twist(values);
    known.set(values, found);
    return found;
  };
}

interface AskedBeam {
  readonly station: BeamStation;
  readonly notches: readonly EndCut[];
  /** what turns the log on the stretches that meet here */
  readonly twists: readonly Twist[];
  readonly stick: RoundStick;
  readonly values: DesignValues;
}

function termsOf(
  { station, notches, twists, stick, values }: AskedBeam,
  diameterIn: number,
): readonly Term<LineResponse>[] {
  const cutIn = station.cuts.reduce((sum, c) => sum + c.depthIn, 0);
  const section = sectionAt(stick, diameterIn, cutIn, station.bored);
  const s = { ...station, diameterIn, section };
  const pullShare = pullShareOf(values);
  const shear = (allowableLb: number) => (r: LineResponse) =>
    Math.abs(r.values[s.shear]!) / (allowableLb * r.combination.durationFactor);
  return [
    {
      ruleId: 'beam.bending',
      ratio: (r) => stressAt(s, r.values, pullShare) / (values.FbPsi * r.combination.durationFactor),
    },
    // what an even shear stress of Fv over the section can carry
    { ruleId: 'beam.shear', ratio: shear(section.shearAreaIn2 * values.FvPsi) },
    ...notches.map((cut): Term<LineResponse> => {
      return { ruleId: 'beam.endNotch', ratio: shear(roundEndNotchShear(values.FvPsi, diameterIn, cut.depthIn)) };
    }),
    ...twists.map((twist): Term<LineResponse> => {
      const allowable = (r: LineResponse) => values.FvPsi * r.combination.durationFactor;
      return { ruleId: 'beam.twist', ratio: (r) => twistedShear(s, twist(r.values), r.values) / allowable(r) };
    }),
  ];
}

/**
 * How thick the log must be where each cut lies for its depth alone to be allowed, by the cut's id; Infinity where it is
 * refused however thick the log [in].
 */
const sizesOfCuts = (context: LineCheckContext, on: BeamStretch): readonly (readonly [string, OfSize])[] =>
  placedCuts(context, on).map((placed) => [
    placed.cut.id,
    placed.isAtEnd
      ? { ruleId: 'beam.endNotch', leastIn: 4 * placed.cut.depthIn }
      : { ruleId: 'beam.cuts', leastIn: leastForCut(context, placed) },
  ]);

function leastForCut(context: LineCheckContext, placed: PlacedCut): number {
  const { cut, isInMiddleThird } = placed;
  if (isInMiddleThird) return Infinity;
  const strength = context.frame.responses.filter(isStrength);
  if (!strength.some((r) => isStretched(placed, r))) return 6 * cut.depthIn;
  return isSeatPressedByGravity(context, placed) ? 8 * cut.depthIn : Infinity;
}
