import type { Id, Member, Project, Stock } from '../model.ts';

/** Paths and small measures that the soundness rules share. */
export const memberAt = (id: Id, field: string): string => `members[${id}].${field}`;
export const lineAt = (id: Id, field: string): string => `supportLines[${id}].${field}`;
export const planeAt = (id: Id, field: string): string => `roofPlanes[${id}].${field}`;

/** Two places nearer than this are the same place [in]; far under any builder's measure, far over rounding. */
export const SAME_PLACE_IN = 1e-6;
/** A tie or rafter passes its post when the axes are within this of each other [in]; own rule. */
export const PASSES_POST_IN = 1;

export const isWithin = (value: number, low: number, high: number): boolean =>
  value >= low - SAME_PLACE_IN && value <= high + SAME_PLACE_IN;

export interface StockPlace {
  readonly path: string;
  readonly stock: Stock;
}

/** Every stock that the file writes down, with its path. */
export function stockPlaces(project: Project): readonly StockPlace[] {
  const place = (path: string, stock: Stock | null | undefined): readonly StockPlace[] =>
    stock ? [{ path, stock }] : [];
  return [
    ...project.supportLines.flatMap((line) =>
      line.kind === 'frame'
        ? place(lineAt(line.id, 'strip.stock'), line.strip?.stock)
        : place(lineAt(line.id, 'stock'), line.stock),
    ),
    ...project.groups.flatMap((group) => place(`groups[${group.id}].stock`, group.stock)),
    ...project.members.flatMap((member) => place(memberAt(member.id, 'own.stock'), member.own?.stock)),
  ];
}

/** The stock of a member and the field that says it; null where it is not given or the group is missing. */
export function stockPlaceOf(project: Project, member: Member): StockPlace | null {
  if (member.own?.stock !== undefined) {
    return member.own.stock && { path: memberAt(member.id, 'own.stock'), stock: member.own.stock };
  }
  const group = project.groups.find((g) => g.id === member.group);
  return group?.stock ? { path: `groups[${group.id}].stock`, stock: group.stock } : null;
}
