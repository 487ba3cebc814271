import { clause } from '../../../data/sources.ts';
import { outside } from '../../check.ts';
import type { LineResponse } from '../../frame/line-frame.ts';
import { diameterAt } from '../../geometry/shelter.ts';
import type { DesignValues } from '../../material/values.ts';
import { message } from '../../message.ts';
import { put, type Note } from '../../note.ts';
import { quantity } from '../../units.ts';
import { peakBelowGround, type PeakBelow } from '../ground/below-ground.ts';
import { sectionAt, type Section } from '../section.ts';
import type { CheckSite } from '../site-of-check.ts';
import { adjustedCompression } from '../wood/column.ts';
import { pullAndBending, roundPushAndBending } from '../wood/interaction.ts';
import { depthOf, type Buried } from './buried.ts';

/** What acts on the post where it bends most below the ground. */
interface Acting {
  readonly peak: PeakBelow;
  readonly section: Section;
  /** pull above zero [lb] */
  readonly axialLb: number;
}

/**
 * Axial force and bending of a post below the ground, where it bends most. The soil keeps it from buckling there.
 * @source NDS 3.9.1, 3.9.2 with an Euler stress that is not reached
 */
export function belowGroundSite(buried: Buried, values: DesignValues): CheckSite<LineResponse> {
  const { chain, stick, forces, at } = buried;
  const depthIn = depthOf(chain.post);
  const acting = (r: LineResponse, note?: Note): Acting => {
    const { forceLb, momentLbIn } = forces.sideways(r, note);
    const peak = peakBelowGround(forceLb, momentLbIn, depthIn, note);
    const fromButtIn = depthIn - peak.depthIn;
    const diameterIn =
      stick.kind === 'round' ? diameterAt(stick, fromButtIn)! : Math.min(stick.breadthIn, stick.depthIn);
    const section = stick.kind === 'round' ? sectionAt(stick, diameterIn, 0) : sawnSection(stick);
    if (note) section.tell(note);
    return { peak, section, axialLb: -forces.down(r, note) };
  };
  return {
    ...at,
    ruleId: 'post.belowGround',
    unit: '1',
    isByDuration: true,
    stops: () => (stick.kind === 'sawn' && stick.use === 'dry' ? outside(message('dryInGround')) : null),
    demand: (r, note) => {
      const { peak, section, axialLb } = acting(r, note);
      const CD = r.combination.durationFactor;
      if (note) for (const of of ['Fb', axialLb > 0 ? 'Ft' : 'Fc'] as const) values.steps(of).forEach(note);
      const fb = peak.momentLbIn / section.modulusIn3;
      const Fb = values.FbPsi * CD;
      if (axialLb > 0) return pullAndBending(axialLb / section.areaIn2, values.FtPsi * CD, fb, Fb, Fb, note);
      const FcStar = adjustedCompression(values.FcPsi, CD, note);
      return roundPushAndBending(-axialLb / section.areaIn2, FcStar, fb, Fb, Infinity, note);
    },
    capacity: () => 1,
    worstAt: (r) => depthIn - acting(r).peak.depthIn,
  };
}

/** A sawn post may be bent in both planes at once: all of it on its weaker one (safe side). */
function sawnSection({ breadthIn, depthIn }: Extract<Buried['stick'], { kind: 'sawn' }>): Section {
  const [b, d] = [Math.max(breadthIn, depthIn), Math.min(breadthIn, depthIn)];
  // moments in two planes add up in a corner to at most so much more than their resultant makes in one plane
  const modulusIn3 = (b * d * d) / 6 / Math.SQRT2;
  return {
    areaIn2: b * d,
    modulusIn3,
    shearAreaIn2: (2 / 3) * b * d,
    tell: (note) =>
      note({
        symbol: 'S',
        words: 'section modulus that counts: bent over a corner',
        formula: 'b × d^2 / 6 / sqrt(2)',
        put: [put('b', b, 'in', 'greater side'), put('d', d, 'in', 'smaller side')],
        result: quantity(modulusIn3, 'in3'),
        clause: clause('MECHANICS', 'stresses in a corner add up'),
      }),
  };
}
