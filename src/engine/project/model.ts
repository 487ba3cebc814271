import type { z } from 'zod';
import type { projectSchema } from './schema.ts';

/** Everything below a value is readonly: a project is changed by a command that returns a new one. */
export type Frozen<T> = T extends (infer U)[]
  ? readonly Frozen<U>[]
  : T extends object
    ? { readonly [K in keyof T]: Frozen<T[K]> }
    : T;

export type Project = Frozen<z.infer<typeof projectSchema>>;

export type Id = string;
/** Gives an id that the project does not have yet, from a word for what it is for; ids come from the caller. */
export type NewId = (what: string) => Id;
export type Site = Project['site'];
export type SupportLine = Project['supportLines'][number];
export type FrameLine = Extract<SupportLine, { kind: 'frame' }>;
export type LedgerLine = Extract<SupportLine, { kind: 'ledger' }>;
export type RoofPlane = Project['roofPlanes'][number];
export type Wood = Project['woods'][number];
export type WoodBasis = Wood['basis'];
export type Log = Project['logs'][number];
export type Station = Log['stations'][number];
export type Seen = NonNullable<Log['seen']>;
export type Group = Project['groups'][number];
export type Role = Group['role'];
export type GroupOf<R extends Role> = Extract<Group, { role: R }>;
export type Member = Project['members'][number];
export type MemberOf<R extends Role> = Extract<Member, { role: R }>;
/** What a member is, after its own fields replaced those of its group. */
export type TraitsOf<R extends Role> = Omit<GroupOf<R>, 'id' | 'role'>;
export type Stock = NonNullable<GroupOf<'beam'>['stock']>;
export type LogStock = Extract<Stock, { kind: 'log' }>;
export type SawnStock = Extract<Stock, { kind: 'sawn' }>;
export type TypedStock = Extract<Stock, { kind: 'typed' }>;
export type Foot = GroupOf<'post'>['foot'];
export type PierFoot = Extract<Foot, { kind: 'pier' }>;
export type EmbeddedFoot = Extract<Foot, { kind: 'embedded' }>;
export type BraceEnd = GroupOf<'brace'>['ends']['post'];
export type JointKind = Project['joints']['defaults'][number]['kind'];
export type Capacity = Project['joints']['defaults'][number]['capacity'];
export type FastenedCapacity = Extract<NonNullable<Capacity>, { kind: 'fasteners' }>;
export type FastenerRow = FastenedCapacity['rows'][number];
export type RatedCapacity = Extract<NonNullable<Capacity>, { kind: 'rated' }>;
export type Cut = Project['cuts'][number];
export type Lateral = Project['lateral']['along'][number];
export type LateralBy = NonNullable<Lateral['by']>;
export type OwnLoad = Project['ownLoads'][number];
export type InsteadOf = Project['instead'][number]['what'];
export type Given<T> = {
  readonly value: T | null;
  readonly givenBy: 'department' | 'map' | 'owner' | 'guess';
  readonly date: string | null;
  readonly from?: string | undefined;
};
