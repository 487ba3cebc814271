import { clause } from '../../../data/sources.ts';
import type { LineResponse } from '../../frame/line-frame.ts';
import type { BraceGeometry, RoundStick, SawnStick } from '../../geometry/shelter.ts';
import type { DesignValues } from '../../material/values.ts';
import { put, type Note, type Put } from '../../note.ts';
import { quantity, radiansFromDegrees } from '../../units.ts';
import { tellForce, type LineCheckContext } from '../line-context.ts';
import type { CheckSite } from '../site-of-check.ts';
import { adjustedCompression, axialStress } from '../wood/column.ts';
import { netOfBrace } from './brace-net.ts';
import { contactArea, endsOf } from './brace-ends.ts';

interface SmallSection {
  readonly areaIn2: number;
  readonly atIn: number;
  readonly tell: (note: Note) => void;
}

/**
 * Push over the smallest section of a brace, where no buckling helps or harms: its thinnest place, or an end that is
 * narrower because only the width of the flat on the log takes it up, or what its hardware leaves.
 * @param index  of the push in a response
 * @source NDS 3.7.2: P / A at the smallest section against Fc without column stability
 */
export function braceCrushingSite(
  context: LineCheckContext,
  brace: BraceGeometry,
  stick: RoundStick | SawnStick,
  index: number,
  values: DesignValues,
): CheckSite<LineResponse> {
  const whole = thinnest(stick);
  const net = netOfBrace(context, brace, whole.areaIn2);
  const bored: SmallSection = { areaIn2: net.areaIn2(), atIn: whole.atIn, tell: (note) => void net.areaIn2(note) };
  const sections = [whole, bored, ...endSections(context, brace)];
  const least = sections.reduce((a, b) => (b.areaIn2 < a.areaIn2 ? b : a));
  return {
    ruleId: 'brace.crushing',
    memberId: brace.id,
    place: { kind: 'whole', name: '' },
    unit: 'psi',
    purpose: 'strength',
    isByDuration: true,
    stops: () => net.through,
    demand: (r, note) => {
      if (note) {
        tellForce(context, r, index, 'P', 'lb', 'push in the brace', note);
        least.tell(note);
      }
      return axialStress(Math.max(0, r.values[index]!), least.areaIn2, note);
    },
    capacity: (r, note) => {
      for (const step of note ? values.steps('Fc') : []) note?.(step);
      return adjustedCompression(values.FcPsi, r.combination.durationFactor, note);
    },
    worstAt: () => least.atIn,
  };
}

function thinnest(stick: RoundStick | SawnStick): SmallSection {
  if (stick.kind === 'sawn') {
    const { breadthIn: b, depthIn: d } = stick;
    const given = [put('b', b, 'in', 'breadth'), put('d', d, 'in', 'depth')];
    return { areaIn2: b * d, atIn: 0, tell: (note) => tellArea(note, 'section of the brace', 'b × d', given, b * d) };
  }
  const tip = stick.profile.reduce((a, b) => (b.diameterIn < a.diameterIn ? b : a));
  const areaIn2 = (Math.PI * tip.diameterIn ** 2) / 4;
  const given = [put('d', tip.diameterIn, 'in', 'diameter there')];
  return {
    areaIn2,
    atIn: tip.atIn,
    tell: (note) => tellArea(note, 'section at the thinnest place', 'π × d^2 / 4', given, areaIn2),
  };
}

/**
 * Ends with a flat or saddle, as they stand square to the brace; an end without either is told of by its bearing.
 * @param diameterIn of a brace that thick at both ends, in place of its own [in]
 */
export function endSections(
  context: LineCheckContext,
  brace: BraceGeometry,
  diameterIn?: number,
): readonly SmallSection[] {
  return endsOf(context, brace).flatMap((own) => {
    const end = diameterIn === undefined ? own : { ...own, braceDiameterIn: diameterIn };
    const contact = end.braceDiameterIn > 0 && end.logDiameterIn > 0 ? contactArea(end) : 0;
    if (contact <= 0) return [];
    const areaIn2 = contact * Math.sin(radiansFromDegrees(end.betaDeg));
    return [
      {
        areaIn2,
        atIn: end.which === 'post' ? 0 : brace.lengthIn,
        tell: (note: Note) => {
          contactArea(end, note);
          const words = `section of the ${end.which === 'post' ? 'lower' : 'upper'} end, square to the brace`;
          const given = [
            put('A', contact, 'in2', 'contact on the log'),
            put('β', end.betaDeg, 'deg', 'angle between brace and log'),
          ];
          tellArea(note, words, 'A × sin(β)', given, areaIn2);
        },
      },
    ];
  });
}

function tellArea(note: Note, words: string, formula: string, given: readonly Put[], areaIn2: number): void {
  const result = quantity(areaIn2, 'in2');
  note({ symbol: 'As', words, formula, put: given, result, clause: clause('MECHANICS', 'area of a section') });
}
