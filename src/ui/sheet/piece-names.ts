import type { Evaluation } from '../../engine/evaluation.ts';
import { rowsAcross } from '../../engine/geometry/rows.ts';
import type { PlaneGeometry, PostGeometry, Shelter } from '../../engine/geometry/shelter.ts';
import type { Message } from '../../engine/message.ts';
import type { Project } from '../../engine/project/model.ts';
import type { UnitSystem } from '../units/system.ts';
import { cutNames } from '../cord/places.ts';
import { reasonInWords } from '../cord/reason.ts';

/** Members that share a row because they do the same work: the posts of a line, the rafters of a plane. */
export interface Piece {
  readonly key: string;
  readonly words: string;
}

export interface PieceNames {
  readonly pieceOf: (memberId: string) => Piece;
  /** several members: each piece once, posts together */
  readonly inShort: (memberIds: readonly string[]) => string;
  /** a single member, line, plane, log or own load as it is called on the drawings */
  readonly nameOf: (id: string) => string;
  /** a message whose ids are put into words */
  readonly sayOf: (message: Message) => string;
}

/** What everything is called on the sheet. Ids belong to the file; a reader of the paper never sees one. */
export function pieceNames(project: Project, evaluation: Evaluation, system: UnitSystem = 'feet'): PieceNames {
  const { shelter } = evaluation;
  const pieces = new Map<string, Piece>(groupsOf(shelter).flatMap(({ ids, piece }) => ids.map((id) => [id, piece])));
  const names = new Map<string, string>([
    ...shelter.lines.map((l) => [l.id, `line ${l.label}`] as const),
    ...shelter.planes.map(({ id, label }) => [id, label] as const),
    ...[...shelter.beams, ...shelter.braces, ...shelter.ties, ...shelter.rafters, ...shelter.purlins].map(
      (m) => [m.id, m.label] as const,
    ),
    ...shelter.posts.map((p) => [p.id, `post ${p.label}`] as const),
    ...rowsAcross(shelter).map((row) => [row.id, row.label] as const),
    ...project.ownLoads.map((load) => [load.id, `own load ${load.name}`] as const),
    ...evaluation.logs.map(
      (log) => [log.logId, inShort(log.memberIds, shelter, (id) => pieces.get(id)?.words ?? id)] as const,
    ),
    ['site', 'site'],
    ['shelter', 'shelter'],
  ]);
  for (const [id, name] of cutNames(shelter, (member) => names.get(member) ?? member)) names.set(id, name);
  const nameOf = (id: string): string => names.get(id) ?? id;
  return {
    nameOf,
    inShort: (ids) => inShort(ids, shelter, (id) => pieces.get(id)?.words ?? nameOf(id)),
    pieceOf: (id) => pieces.get(id) ?? { key: id, words: nameOf(id) },
    sayOf: (message) => reasonInWords(message, names, system),
  };
}

function inShort(ids: readonly string[], shelter: Shelter, pieceOf: (id: string) => string): string {
  const asked = new Set(ids);
  const posts = shelter.posts.filter((p) => asked.has(p.id));
  const others = ids.filter((id) => !posts.some((p) => p.id === id)).map(pieceOf);
  return [...(posts.length > 0 ? [postsInShort(posts)] : []), ...new Set(others)].join(', ');
}

function groupsOf(shelter: Shelter): readonly { readonly ids: readonly string[]; readonly piece: Piece }[] {
  const group = (key: string, words: string, members: readonly { readonly id: string }[]) => ({
    ids: members.map((m) => m.id),
    piece: { key, words },
  });
  const along = shelter.braces.filter((b) => b.plane === 'along');
  const onPlane = ({ label }: PlaneGeometry): string => (shelter.planes.length > 1 ? `, ${label}` : '');
  return [
    ...shelter.beams.map((b) => group(b.id, b.label, [b])),
    ...shelter.lines.flatMap((line) => {
      const posts = shelter.posts.filter((p) => p.line === line.id);
      return [group(`posts/${line.id}`, postsInShort(posts), posts)];
    }),
    group('braces', counted('knee brace', along.length), along),
    group(
      'braces/across',
      'braces across',
      shelter.braces.filter((b) => b.plane === 'across'),
    ),
    ...shelter.planes.flatMap((plane) => {
      const rafters = shelter.rafters.filter((r) => r.plane === plane.id);
      const purlins = shelter.purlins.filter((p) => p.plane === plane.id);
      return [
        group(`rafters/${plane.id}`, `${counted('rafter', rafters.length)}${onPlane(plane)}`, rafters),
        group(`purlins/${plane.id}`, `${counted('purlin', purlins.length)}${onPlane(plane)}`, purlins),
      ];
    }),
    group('ties', counted('tie log', shelter.ties.length), shelter.ties),
    group('rows', 'frames across', rowsAcross(shelter)),
  ];
}

/** `8 rafters`, `1 rafter`. */
const counted = (word: string, many: number): string => `${many} ${word}${many === 1 ? '' : 's'}`;

/** `post A1`, `posts A1 A2`, `posts A1 to A6`. */
export function postsInShort(posts: readonly Pick<PostGeometry, 'label'>[]): string {
  const labels = posts.map((p) => p.label);
  const listed = labels.length > 4 ? `${labels[0]} to ${labels.at(-1)}` : labels.join(' ');
  return `post${labels.length === 1 ? '' : 's'} ${listed}`;
}
