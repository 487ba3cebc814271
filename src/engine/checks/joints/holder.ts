import type { Shelter } from '../../geometry/shelter.ts';
import type { Note } from '../../note.ts';
import { capacityOf } from '../../project/joint-capacity.ts';
import type { FastenedCapacity, JointKind, Project } from '../../project/model.ts';
import { fastenedAt, fastenedPart, fastenedTogether, type Fastened } from './fastened/fastened.ts';
import type { ShareOf } from './fastened/row-together.ts';
import { woodOf, type WoodSource } from './fastened/wood-of-piece.ts';
import { likenessOf, type JointSetting } from './joint-setting.ts';
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
  return weakestHolder(source, kind, [key], unit);
}

/** What holds each of several joints that are judged as one: the weakest of them in each direction. */
export function weakestHolder(
  source: JointSource,
  kind: JointKind,
  keys: readonly string[],
  unit: HeldUnit = 'lb',
): Holder {
  const capacity = capacityOf(source.project, kind, keys[0]!);
  if (capacity?.kind !== 'fasteners') return ratedHolder(capacity, unit);
  const settings = keys.flatMap((key) => contactsOf(source).get(key) ?? []);
  if (settings.length === 0) return ratedHolder(null);
  const contacts = unlike(settings);
  const name = JSON.stringify([kind, capacity, contacts.map(likenessOf)]);
  return remembered(source.project, name, () => fastenedHolder(source, contacts, capacity));
}

function fastenedHolder(source: JointSource, settings: readonly JointSetting[], capacity: FastenedCapacity): Holder {
  const contacts = settings.map((setting) => {
    const woods = { upper: woodOf(source, setting.upper), lower: woodOf(source, setting.lower) };
    return fastenedAt(setting, woods, capacity);
  });
  const weakest = weakestOf(contacts);
  return {
    part: (part, CD, note) => {
      const found = weakest(part, CD);
      return note ? fastenedPart(found.fastened, part, CD, note) : found.holds;
    },
    together: (parts, CD) => hardestShare(contacts.map((one) => fastenedTogether(one, parts, CD))),
  };
}

const holders = new WeakMap<Project, Map<string, Holder>>();

/** Most joints of a shelter are alike: what holds them is worked out once. */
function remembered(project: Project, name: string, make: () => Holder): Holder {
  const ofProject = holders.get(project) ?? new Map<string, Holder>();
  holders.set(project, ofProject);
  const holder = ofProject.get(name) ?? make();
  ofProject.set(name, holder);
  return holder;
}

/** The greatest share of all contacts; null where one of them has no equation for it. */
function hardestShare(shares: readonly (ShareOf | null)[]): ShareOf | null {
  const all = shares.filter((share) => share !== null);
  if (all.length < shares.length) return null;
  return (forcesLb, note) => {
    const found = all.map((share) => share(forcesLb));
    const most = Math.max(...found);
    return note ? all[found.indexOf(most)]!(forcesLb, note) : most;
  };
}

interface Weakest {
  readonly fastened: Fastened;
  readonly holds: RatedPart;
}

/** The weakest of some contacts in a direction and load duration, each looked for once. */
function weakestOf(contacts: readonly Fastened[]): (part: JointPart, CD: number) => Weakest {
  const found = new Map<string, Weakest>();
  const lb = ({ holds }: Weakest): number => (holds.ok ? holds.capacityLb : -1);
  return (part, CD) => {
    const key = `${part} ${CD}`;
    const known = found.get(key);
    if (known) return known;
    const all = contacts.map((fastened): Weakest => ({ fastened, holds: fastenedPart(fastened, part, CD) }));
    const least = all.reduce((a, b) => (lb(b) < lb(a) ? b : a));
    found.set(key, least);
    return least;
  };
}

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

/** Contacts by their key. */
function contactsOf({ project, shelter }: JointSource): ReadonlyMap<string, readonly JointSetting[]> {
  const found = known.get(shelter);
  if (found) return found;
  const byKey = new Map<string, JointSetting[]>();
  for (const joint of jointsOf(project, shelter)) {
    const alike = byKey.get(joint.key);
    if (alike) alike.push(joint);
    else byKey.set(joint.key, [joint]);
  }
  known.set(shelter, byKey);
  return byKey;
}

/** One of each contact that fasteners can tell apart. */
const unlike = (settings: readonly JointSetting[]): readonly JointSetting[] => [
  ...new Map(settings.toReversed().map((setting) => [likenessOf(setting), setting])).values(),
];
