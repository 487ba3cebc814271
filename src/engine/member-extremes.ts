import { scenarioOf } from './checks/frame-rows.ts';
import type { LineCheckContext } from './checks/line-context.ts';
import type { ForceExtreme, MemberExtremes } from './evaluation.ts';
import type { LineResponse } from './frame/line-frame.ts';
import { pushIndex, sectionsOf } from './frame/read-response.ts';

/** A force at a place: where it stands in a response, and its sign there. */
interface Place {
  readonly atIn: number | null;
  readonly index: number;
  readonly sign: 1 | -1;
}

/**
 * The greatest and the least of each force in every member of a line, with the combination that brings it; an extreme of
 * nothing is left out. Of a brace only what runs along it.
 */
export function memberExtremes(
  context: LineCheckContext,
  strength: readonly LineResponse[],
): readonly MemberExtremes[] {
  const { layout, mesh } = context.frame;
  const both = (force: ForceExtreme['force'], places: readonly Place[]): readonly ForceExtreme[] =>
    [extreme(force, 'most', places, strength), extreme(force, 'least', places, strength)].filter((e) => e !== null);
  const ofChain = [...mesh.beams, ...mesh.posts].map((chain): MemberExtremes => {
    const sections = sectionsOf(chain, layout);
    const places = (part: 'axial' | 'shear' | 'moment'): readonly Place[] =>
      sections.map((s) => ({ atIn: s.atIn, index: s[part], sign: 1 }));
    return {
      memberId: chain.memberId,
      extremes: (['axial', 'shear', 'moment'] as const).flatMap((part) => both(part, places(part))),
    };
  });
  // a brace is told by its push, where a section is told by its pull
  const ofBraces = mesh.braces.map((link, j): MemberExtremes => ({
    memberId: link.brace.id,
    extremes: both('axial', [{ atIn: null, index: pushIndex(layout, j), sign: -1 }]),
  }));
  return [...ofChain, ...ofBraces];
}

function extreme(
  force: ForceExtreme['force'],
  side: ForceExtreme['side'],
  places: readonly Place[],
  strength: readonly LineResponse[],
): ForceExtreme | null {
  let value = 0;
  let found: { readonly place: Place; readonly response: LineResponse } | null = null;
  for (const response of strength) {
    for (const place of places) {
      const here = place.sign * response.values[place.index]!;
      if (side === 'most' ? here <= value : here >= value) continue;
      value = here;
      found = { place, response };
    }
  }
  if (!found) return null;
  const { place, response } = found;
  return {
    force,
    side,
    value,
    atIn: place.atIn,
    combinationId: response.combination.id,
    scenario: scenarioOf(response),
  };
}
