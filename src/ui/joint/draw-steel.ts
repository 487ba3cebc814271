import { cross, dot, lengthOf, plus, unit, type Vector } from '../../engine/checks/fasteners/space.ts';
import type { Point } from '../drawing/paper.ts';
import { groupBy } from '../sheet/group-by.ts';
import type { Pen } from './pen.ts';
import { endOfPlateIn } from './plate-flats.ts';
import { faceOf, onShank, type Shank } from './shanks.ts';

/** Steel is drawn at least this thick [px]. */
const THICK_PX = 2;

/** Straps and side plates of a row: one over both pieces where their faces look the same way, else one on each. */
export function drawSteel(pen: Pen, shanks: readonly Shank[], joint: Vector): void {
  const groups = groupBy(
    shanks.filter(({ plate }) => plate !== null),
    (shank) => `${shank.main.id} ${faceOf(shank)}`,
  );
  const met = new Set<readonly Shank[]>();
  for (const group of groups) {
    if (met.has(group)) continue;
    const partner = groups.find((other) => other !== group && !met.has(other) && faceAlike(group[0]!, other[0]!));
    met.add(group);
    if (partner) met.add(partner);
    drawPlate(pen, pathOver(group, partner ?? [], joint), group[0]!, false);
    const through = group[0]!.plate?.each === 2 && group[0]!.nutIn !== null;
    if (through) drawPlate(pen, pathOver(group, partner ?? [], joint, true), group[0]!, true);
  }
}

const faceAlike = (a: Shank, b: Shank): boolean => a.main.id !== b.main.id && dot(a.into, b.into) > 0.99;

/**
 * The middle of the steel on the wood, from its outermost fasteners on one piece to those on the other; on one piece alone
 * as far as the joint.
 */
function pathOver(group: readonly Shank[], partner: readonly Shank[], joint: Vector, isFar = false): readonly Vector[] {
  const [first] = group;
  if (!first) return [];
  const { along } = first;
  const own = farAndNear(group, joint, isFar);
  const near = own.at(-1)!;
  const atJoint = plus(near, along, dot(plus(joint, near, -1), along));
  const path = partner.length > 0 ? [...own, ...farAndNear(partner, joint, isFar).toReversed()] : [...own, atJoint];
  return longer(path, endOfPlateIn(first), along);
}

/** Of fasteners in lines beside one another: the middle of those farthest from the joint, and of those nearest to it. */
export function farAndNear(shanks: readonly Shank[], joint: Vector, isFar: boolean): readonly Vector[] {
  const [first] = shanks;
  if (!first) return [];
  const places = shanks.map((s) => {
    const steelIn = s.plate?.thicknessIn ?? 0;
    return onShank(s, isFar && s.nutIn !== null ? s.nutIn - steelIn : steelIn);
  });
  const way = dot(plus(middleOf(places), joint, -1), first.along) < 0 ? -1 : 1;
  const offs = places.map((p) => way * dot(p, first.along));
  const at = (off: number): Vector => middleOf(places.filter((_, i) => Math.abs(offs[i]! - off) < 1e-6));
  return [at(Math.max(...offs)), at(Math.min(...offs))];
}

const middleOf = (places: readonly Vector[]): Vector =>
  places.reduce<Vector>((sum, p) => plus(sum, p, 1 / places.length), [0, 0, 0]);

/** A path run on past both of its ends; a single place both ways along a line. */
function longer(path: readonly Vector[], pastIn: number, along: Vector): readonly Vector[] {
  const kept = path.filter((p, i) => i === 0 || lengthOf(plus(p, path[i - 1]!, -1)) > 1e-6);
  const [first, last] = [kept[0]!, kept.at(-1)!];
  if (kept.length === 1) return [plus(first, along, -pastIn), plus(first, along, pastIn)];
  const out = (at: Vector, from: Vector): Vector => plus(at, unit(plus(at, from, -1)), pastIn);
  return [out(first, kept[1]!), ...kept, out(last, kept.at(-2)!)];
}

function drawPlate(pen: Pen, path: readonly Vector[], shank: Shank, isFar: boolean): void {
  const { sketch, look, at } = pen;
  const { plate, into } = shank;
  if (!plate || path.length < 2) return;
  const facing = dot(into, look.toward);
  if (Math.abs(facing) > 0.7) {
    const isNear = isFar ? facing > 0 : facing < 0;
    const way = unit(cross(into, plus(path.at(-1)!, path[0]!, -1)));
    const half = (plate.widthIn ?? 0) / 2;
    const band = [...path.map((p) => plus(p, way, half)), ...path.toReversed().map((p) => plus(p, way, -half))];
    sketch.outline(band.map(at), isNear ? 'ink-line' : 'hidden-line', { covers: isNear });
    return;
  }
  const thickIn = Math.max(plate.thicknessIn, THICK_PX / sketch.view.scale);
  const out = isFar ? thickIn : -thickIn;
  const strip: readonly Point[] = [...path, ...path.toReversed().map((p) => plus(p, into, out))].map(at);
  sketch.outline(strip, 'ink-line', { covers: true });
}
