import type { CheckRow, Evaluation } from '../../engine/evaluation.ts';
import { rowsAcross } from '../../engine/geometry/rows.ts';
import type { CutGeometry, Shelter } from '../../engine/geometry/shelter.ts';
import { showLength } from '../units/show-length.ts';
import type { UnitSystem } from '../units/system.ts';

/** What every member and line of a shelter is called, by id. */
export type Names = ReadonlyMap<string, string>;

export function namesOf({ shelter, logs }: Pick<Evaluation, 'shelter' | 'logs'>): Names {
  const parts = new Map<string, string>([
    ...shelter.lines.map((line) => [line.id, `line ${line.label}`] as const),
    ...shelter.planes.map(({ id, label }) => [id, label] as const),
    ...rowsAcross(shelter).map(({ id, label }) => [id, label] as const),
    ...[
      ...shelter.ties,
      ...shelter.beams,
      ...shelter.posts,
      ...shelter.braces,
      ...shelter.rafters,
      ...shelter.purlins,
    ].map(({ id, label }) => [id, label] as const),
  ]);
  return new Map([
    ...logs.map(({ logId, memberIds }) => [logId, logName(memberIds, parts)] as const),
    ...parts,
    ...cutNames(shelter, (id) => parts.get(id) ?? id),
  ]);
}

/** What the cuts of beams are called, by id: by the joint that makes them, or as the page of their log counts them. */
export function cutNames(
  { beams }: Pick<Shelter, 'beams'>,
  called: (id: string) => string,
): readonly (readonly [id: string, name: string])[] {
  const joint = ({ id }: CutGeometry): string => called(/^(?:seat|brace)-(.+)$/.exec(id)?.[1] ?? id);
  return beams.flatMap(({ cuts }) => {
    const byHand = cuts.filter(({ madeBy }) => madeBy === 'hand');
    return cuts.map((cut) => {
      const made = { seat: 'the seat on ', brace: 'the cut for ', hand: 'cut by hand ' }[cut.madeBy];
      return [cut.id, `${made}${cut.madeBy === 'hand' ? byHand.indexOf(cut) + 1 : joint(cut)}`] as const;
    });
  });
}

/** A log is called by what is made of it: the only name of it that stands on the drawing. */
function logName([first, ...others]: readonly string[], parts: Names): string {
  if (first === undefined) return 'a log that is not used';
  const more = others.length === 0 ? '' : ` and ${others.length} more`;
  return `the log of ${parts.get(first) ?? 'a part'}${more}`;
}

const ENDS: Readonly<Record<string, string>> = {
  minus: 'the left end',
  plus: 'the right end',
  post: 'the lower end',
  top: 'the upper end',
  bracePost: 'the lower end',
  braceTop: 'the upper end',
  along: 'in the plane of the line',
  across: 'across the lines',
  low: 'the low edge',
  high: 'the high edge',
  span: 'the span',
  overhang: 'the overhang',
};

/** Where a check sits, in words that follow its name: `between A1 and A2, 9 ft 4 in from the left end`. */
export function placeInWords(row: Pick<CheckRow, 'place' | 'ruleId'>, names: Names, system: UnitSystem): string {
  const { kind, name, atIn } = row.place;
  const station = kind === 'span' || kind === 'overhang' ? stationInWords(row.ruleId, atIn, system) : null;
  return [stretchInWords(kind, name, names, system), station].filter((part) => part !== null && part !== '').join(', ');
}

/** Where a part named by ids lies; '' where nothing is known by that name. */
export function stretchInWords(
  kind: CheckRow['place']['kind'],
  name: string,
  names: Names,
  system: UnitSystem,
): string {
  const called = (id: string): string | undefined => names.get(id) ?? ENDS[id];
  const [from, to] = name.split('~');
  if (from !== undefined && to !== undefined) {
    const ends = [called(from), called(to)];
    if (kind === 'overhang') {
      const held = [from, to].find((id) => names.has(id));
      return held === undefined ? 'at the overhang' : `beyond ${names.get(held)}`;
    }
    return ends.every((end) => end !== undefined) ? `between ${ends.join(' and ')}` : '';
  }
  const height = /^at-([\d.]+)$/.exec(name)?.[1];
  if (height !== undefined) return `${showLength(Number(height), system)} above the foot`;
  const cut = /^(?:seat|brace)-(.+)$/.exec(name)?.[1];
  if (cut !== undefined) return `at ${called(cut) ?? cut}`;
  const alone = called(name.split('@')[0] ?? '');
  if (alone === undefined) return '';
  return kind === 'whole' ? alone : `at ${alone}`;
}

/** Distances run from the start of the member: a beam's left end, the eave of a rafter, the back end of a tie log. */
function stationInWords(ruleId: string, atIn: number | undefined, system: UnitSystem): string | null {
  if (atIn === undefined) return null;
  const start = STARTS[ruleId.split('.')[0] ?? ''] ?? 'the left end';
  return `${showLength(atIn, system)} from ${start}`;
}

const STARTS: Readonly<Record<string, string>> = { rafter: 'the eave end', tie: 'the back end' };
