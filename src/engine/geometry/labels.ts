import type { Project, RoofPlane } from '../project/model.ts';

/** A is the highest bearing, then down, then by y: labels do not depend on the order in the file. */
export function lineLabels(project: Project, levels: ReadonlyMap<string, number>): ReadonlyMap<string, string> {
  const order = [...project.supportLines].sort(
    (a, b) => (levels.get(b.id) ?? 0) - (levels.get(a.id) ?? 0) || a.yIn - b.yIn || a.id.localeCompare(b.id),
  );
  return new Map(order.map((l, i) => [l.id, String.fromCharCode(65 + i)]));
}

/** What tells the planes of a roof apart: the line that each falls to, and a number from the second one to a line on. */
interface PlaneMark {
  readonly line: string;
  readonly number: string;
}

/** Nothing tells a single plane apart. */
export function planeMarks(
  { roofPlanes }: Project,
  labels: ReadonlyMap<string, string>,
): (plane: Pick<RoofPlane, 'id'>) => PlaneMark | null {
  const inOrder = roofPlanes.toSorted((a, b) => a.fromXIn - b.fromXIn || a.id.localeCompare(b.id));
  const marks = new Map(
    inOrder.map((plane, i): [string, PlaneMark] => {
      const low = plane.onLines.at(-1)!;
      const before = inOrder.slice(0, i).filter((p) => p.onLines.at(-1) === low).length;
      return [plane.id, { line: labels.get(low)!, number: before === 0 ? '' : `${before + 1}` }];
    }),
  );
  return ({ id }) => (roofPlanes.length > 1 ? marks.get(id)! : null);
}

export const planeLabel = (mark: PlaneMark | null): string => (mark ? `roof ${mark.line}${mark.number}` : 'roof');

/** 1, 2 ... under a single plane, else B1, B2 ...; under a second one that falls to line B, B2-1, B2-2 ... */
export const stickName =
  (mark: PlaneMark | null) =>
  (i: number): string =>
    mark ? `${mark.line}${mark.number}${mark.number === '' ? '' : '-'}${i + 1}` : `${i + 1}`;
