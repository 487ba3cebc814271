import { STABILITY_SHARE } from '../data/wood/strength-ratios.ts';
import type { LineMembers } from './frame/line-mesh.ts';
import type { Stick } from './geometry/shelter.ts';
import type { Givens } from './givens.ts';
import type { DesignValues } from './material/values.ts';

/** Stands in for E of a typed section, whose EI is typed: only the product counts [psi]. */
const TYPED_E = 1_000_000;

/** Of a typed section null: only the product of its stiffness is typed. */
function woodValues(givens: Givens, members: LineMembers): (memberId: string) => DesignValues | null {
  const sticks = new Map<string, Stick | null>(
    [...members.beams, ...members.posts, ...members.braces].map((m) => [m.id, m.stick]),
  );
  return (memberId) => {
    if (sticks.get(memberId)?.kind === 'typed') return null;
    const answer = givens.materials.of(memberId);
    return answer.ok ? answer.values : null;
  };
}

/** E of a member of a line [psi]. */
export function elasticity(givens: Givens, members: LineMembers): (memberId: string) => number {
  const valuesOf = woodValues(givens, members);
  return (memberId) => valuesOf(memberId)?.EPsi ?? TYPED_E;
}

/** Emin over E, what stability is judged by; of a typed section that of wood whose stiffness varies by a quarter. */
export function stabilityShare(givens: Givens, members: LineMembers): (memberId: string) => number {
  const valuesOf = woodValues(givens, members);
  return (memberId) => {
    const values = valuesOf(memberId);
    return values ? values.EminPsi / values.EPsi : STABILITY_SHARE;
  };
}
