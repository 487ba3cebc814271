import type { Shelter } from '../../geometry/shelter.ts';
import type { Note } from '../../note.ts';
import { capacityOf } from '../../project/joint-capacity.ts';
import type { JointKind } from '../../project/model.ts';
import { fastenedAt, fastenedPart, fastenedTogether, type Fastened } from './fastened/fastened.ts';
import type { ShareOf } from './fastened/row-together.ts';
import { woodOf, type WoodSource } from './fastened/wood-of-piece.ts';
import type { JointSetting } from './joint-setting.ts';
import { jointsOf } from './joints.ts';
import { quantity } from '../../units.ts';
import { ratedPart, type JointPart, type RatedPart, type SaidCapacity } from './rated.ts';

/** Unit of what holds: a force, or a force for each foot of row. */
export type HeldUnit = 'lb' | 'lb/ft';

/** What answers for a joint, whether somebody rated it or its fasteners are computed. */
export interface Holder {
  /** capacity in one direction and load duration, or the verdict where there is none */
  readonly part: (part: JointPart, CD: number, note?: Note) => RatedPart;
  /** how directions share it at once, where the standard has an equation for that; else their shares add up straight */
  readonly together?: (parts: readonly JointPart[], CD: number) => ShareOf | null;
}

/** Where the checks find joints and their woods. */
export interface JointSource extends WoodSource {
  readonly shelter: Shelter;
}

/** What holds the joint of a key; of unlike contacts under one key the weakest. */
export function holderAt(source: JointSource, kind: JointKind, key: string, unit: HeldUnit = 'lb'): Holder {
  const capacity = capacityOf(source.project, kind, key);
  if (capacity?.kind !== 'fasteners') return ratedHolder(capacity, unit);
  const contacts = (contactsOf(source).get(key) ?? []).map((setting) => {
    const woods = { upper: woodOf(source, setting.upper), lower: woodOf(source, setting.lower) };
    return fastenedAt(setting, woods, capacity);
  });
  const weakest = (part: JointPart, CD: number): Fastened =>
    contacts.reduce((a, b) => (holds(b, part, CD) < holds(a, part, CD) ? b : a));
  if (contacts.length === 0) return ratedHolder(null);
  return {
    part: (part, CD, note) => fastenedPart(weakest(part, CD), part, CD, note),
    together: (parts, CD) => (contacts.length === 1 ? fastenedTogether(contacts[0]!, parts, CD) : null),
  };
}

const holds = (fastened: Fastened, part: JointPart, CD: number): number => {
  const answer = fastenedPart(fastened, part, CD);
  return answer.ok ? answer.capacityLb : 0;
};

/** A capacity that says itself what it holds. */
export const ratedHolder = (capacity: SaidCapacity, unit: HeldUnit = 'lb'): Holder => ({
  part: (part, CD, note) => ratedPart(capacity, part, CD, note && toldIn(unit, note)),
});

/** A rating is typed in pounds; where it is read for each foot of a row, its steps say so. */
const toldIn =
  (unit: HeldUnit, note: Note): Note =>
  (step) =>
    note({
      ...step,
      put: step.put.map((p) => (p.unit === 'lb' ? { ...p, unit } : p)),
      result: quantity(step.result.value, unit),
    });

const known = new WeakMap<Shelter, ReadonlyMap<string, readonly JointSetting[]>>();

/** Contacts by their key, those that are alike once. */
function contactsOf({ project, shelter }: JointSource): ReadonlyMap<string, readonly JointSetting[]> {
  const found = known.get(shelter);
  if (found) return found;
  const byKey = new Map<string, JointSetting[]>();
  for (const joint of jointsOf(project, shelter)) {
    const alike = byKey.get(joint.key);
    if (!alike) byKey.set(joint.key, [joint]);
    else if (!alike.some((other) => likeness(other) === likeness(joint))) alike.push(joint);
  }
  known.set(shelter, byKey);
  return byKey;
}

/** All of a sheet's rows under it are one contact where they are of one stick. */
const likeness = ({ upper, lower }: JointSetting): string => JSON.stringify([upper.stick, lower.stick]);
