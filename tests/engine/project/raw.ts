import { bracedShedText, exampleText } from '../../support/files.ts';

/** A file as JSON gives it, open to be spoiled. */
export interface Raw {
  [key: string]: RawValue;
}
export type RawValue = string | number | boolean | null | undefined | Raw | RawValue[];

export const rawShed = (): Raw => JSON.parse(bracedShedText()) as Raw;
export const rawLeanTo = (): Raw => JSON.parse(exampleText('lean-to')) as Raw;

/** The object at a path of keys and places; named elements by their id, kind or key. */
export function at(raw: Raw, ...steps: readonly (string | number)[]): Raw {
  let here: RawValue = raw;
  for (const step of steps) {
    if (Array.isArray(here)) here = typeof step === 'number' ? here[step] : here.find((e) => isNamed(e, step));
    else if (typeof here === 'object' && here !== null) here = here[step];
  }
  if (typeof here !== 'object' || here === null || Array.isArray(here))
    throw new Error(`no object at ${steps.join('/')}`);
  return here;
}

export function listAt(raw: Raw, ...steps: readonly (string | number)[]): RawValue[] {
  const list = at(raw, ...steps.slice(0, -1))[String(steps.at(-1))];
  if (!Array.isArray(list)) throw new Error(`no list at ${steps.join('/')}`);
  return list;
}

const isNamed = (element: RawValue, name: string): boolean =>
  typeof element === 'object' &&
  element !== null &&
  !Array.isArray(element) &&
  [element['id'], element['kind'], element['key']].includes(name);

/** A third line 9 ft farther down, with its own beam and posts, under the same plane. */
export function withThirdLine(r: Raw): void {
  listAt(r, 'supportLines').push({ ...at(r, 'supportLines', 'line-low'), id: 'line-3', yIn: 216 });
  listAt(r, 'members').push(
    { ...at(r, 'members', 'beam-low'), id: 'beam-3', line: 'line-3', own: { stock: null } },
    { ...at(r, 'members', 'post-3'), id: 'post-5', line: 'line-3' },
    { ...at(r, 'members', 'post-4'), id: 'post-6', line: 'line-3' },
  );
  listAt(r, 'roofPlanes', 'plane-1', 'onLines').push('line-3');
}

/** A second plane on the same two lines, at its own slope. */
export function withSecondPlane(r: Raw, risePer12: number): void {
  listAt(r, 'roofPlanes').push({ ...at(r, 'roofPlanes', 'plane-1'), id: 'plane-2', risePer12, sheetOn: 'rafters' });
  listAt(r, 'members').push({ ...at(r, 'members', 'rafter-1'), id: 'rafter-99', plane: 'plane-2' });
}

/** A second slope from the high line the other way, to a line 9 ft behind it: the roof becomes a gable. */
export function asGable(r: Raw): void {
  listAt(r, 'supportLines').push({ ...at(r, 'supportLines', 'line-low'), id: 'line-back', yIn: -108 });
  const ofLow = { 'beam-low': 'beam-back', 'post-3': 'post-5', 'post-4': 'post-6' };
  listAt(r, 'members').push(
    ...Object.entries(ofLow).map(([low, back]) => ({ ...at(r, 'members', low), id: back, line: 'line-back' })),
    ...(listAt(r, 'members') as Raw[])
      .filter(({ role }) => role === 'rafter' || role === 'purlin')
      .map((m) => ({ ...m, id: `${String(m['id'])}-back`, plane: 'plane-2' })),
  );
  at(r, 'members', 'beam-back')['own'] = { stock: null };
  const back = { ...at(r, 'roofPlanes', 'plane-1'), id: 'plane-2', onLines: ['line-high', 'line-back'] };
  listAt(r, 'roofPlanes').push(back);
  for (const plane of listAt(r, 'roofPlanes') as Raw[]) plane['highOverhangIn'] = 0;
  const tooHigh = (m: Raw): boolean => m['role'] === 'purlin' && Number(m['upSlopeIn']) > 128;
  r['members'] = listAt(r, 'members').filter((m) => !tooHigh(m as Raw));
}

/** The high beam as two logs that meet at x. */
export function splitBeam(r: Raw, firstEndsIn: number, secondStartsIn: number): void {
  at(r, 'members', 'beam-high')['toXIn'] = firstEndsIn;
  const second = {
    ...at(r, 'members', 'beam-high'),
    id: 'beam-more',
    fromXIn: secondStartsIn,
    toXIn: 186,
    own: { stock: null },
  };
  listAt(r, 'members').push(second);
}

export function withTie(r: Raw, tie: Raw = {}): void {
  const stock = null;
  listAt(r, 'groups').push({ id: 'ties', role: 'tie', stock, downIn: 14, ends: 'between' });
  listAt(r, 'members').push({
    id: 'tie-1',
    role: 'tie',
    group: 'ties',
    fromPost: 'post-1',
    toPost: 'post-3',
    pastFromIn: 0,
    pastToIn: 0,
    ...tie,
  });
}
