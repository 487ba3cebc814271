import { isStrength, type PostAcross, type PostInRow } from '../checks/line-context.ts';
import { firstOrderOf, type LineResponse } from '../frame/line-frame.ts';
import { footIndex, sectionsOf, type PostChain, type SectionAt } from '../frame/read-response.ts';
import { listMaker } from '../lists.ts';
import type { RowAnswer, RowFrame } from './row-frame.ts';

/** Every post of the rows whose forces are known, by its id. */
export function postsInRows(rows: readonly RowAnswer[]): ReadonlyMap<string, PostInRow> {
  return new Map(
    rows.flatMap((answer) =>
      answer.ok
        ? answer.frame.context.frame.mesh.posts.map((chain) => [chain.memberId, inRow(answer.frame, chain)] as const)
        : [],
    ),
  );
}

function inRow(row: RowFrame, chain: PostChain): PostInRow {
  const { context } = row;
  const byCombination = new Map<string, LineResponse[]>();
  for (const r of context.frame.responses.filter(isStrength)) {
    const known = byCombination.get(r.combination.id);
    if (known) known.push(r);
    else byCombination.set(r.combination.id, [r]);
  }
  const found = new Map<string, PostAcross | null>();
  const along = facesOf(row, chain);
  return {
    in: (id) => {
      const known = found.get(id);
      if (known !== undefined) return known;
      const responses = byCombination.get(id);
      const hardest = responses ? hardestOf(row, chain, along, responses) : null;
      found.set(id, hardest);
      return hardest;
    },
  };
}

/** Both faces of every element of a post, and how to find a place between them: each place is looked for once. */
interface Faces {
  readonly faces: readonly SectionAt[];
  readonly placeAt: (atIn: number) => PlaceOnPost;
  /** one number for each face */
  readonly newList: () => AtFaces;
}

function facesOf({ context }: RowFrame, chain: PostChain): Faces {
  const faces = sectionsOf(chain, context.frame.layout);
  const known = new Map<number, PlaceOnPost>();
  return {
    faces,
    newList: listMaker(faces.length),
    placeAt: (atIn) => {
      const place = known.get(atIn) ?? placeOf(faces, atIn);
      known.set(atIn, place);
      return place;
    },
  };
}

/** One part of what acts at both ends of every element of a post, the greatest of all ways. */
type AtFaces = Float64Array;

function hardestOf(
  row: RowFrame,
  chain: PostChain,
  { faces, placeAt, newList }: Faces,
  responses: readonly LineResponse[],
): PostAcross {
  const { layout } = row.context.frame;
  const foot = footIndex(layout, chain);
  const isFixed = chain.post.foot.fixity.along !== 'pinned';
  const [plus, minus, push, pull, bow] = [newList(), newList(), newList(), newList(), newList()];
  const sum = { pushLb: 0, momentLbIn: 0, addedPushLb: 0, addedPullLb: 0 };
  for (const r of responses) {
    const first = firstOrderOf(r).values;
    const added = layout.partOf(r, row.pushOf(r)?.id ?? '');
    for (let i = 0; i < faces.length; i++) {
      const face = faces[i]!;
      const M = first[face.moment]!;
      const N = added(face.axial);
      keepGreater(plus, i, M);
      keepGreater(minus, i, -M);
      keepGreater(push, i, -N);
      keepGreater(pull, i, N);
      keepGreater(bow, i, bowOf(faces, i, first));
    }
    sum.pushLb = Math.max(sum.pushLb, Math.abs(r.values[foot]!));
    if (isFixed) sum.momentLbIn = Math.max(sum.momentLbIn, Math.abs(r.values[foot + 2]!));
    const plumb = added(foot + 1);
    sum.addedPushLb = Math.max(sum.addedPushLb, plumb);
    sum.addedPullLb = Math.max(sum.addedPullLb, -plumb);
  }
  return {
    momentAt: (atIn) => {
      const place = placeAt(atIn);
      const round = 4 * place.t * (1 - place.t) * bow[place.i]!;
      return { plusLbIn: between(plus, place) + round, minusLbIn: between(minus, place) + round };
    },
    addedAt: (atIn) => {
      const place = placeAt(atIn);
      return { pushLb: between(push, place), pullLb: between(pull, place) };
    },
    bucklesAt: bucklesAt(responses),
    foot: sum,
  };
}

const bucklesAt = (responses: readonly LineResponse[]): number | null => {
  const factors = responses.flatMap((r) => r.buckling?.factor ?? []);
  return factors.length > 0 ? Math.min(...factors) : null;
};

function keepGreater(list: AtFaces, i: number, value: number): void {
  if (value > list[i]!) list[i] = value;
}

/** How far an even load makes the moment of an element leave the straight line between its ends: w l2 / 8 [lb·in]. */
function bowOf(faces: readonly SectionAt[], i: number, values: Float64Array): number {
  const start = faces[i - (i % 2)]!;
  const end = faces[i - (i % 2) + 1]!;
  return (Math.abs(values[end.shear]! - values[start.shear]!) * (end.atIn - start.atIn)) / 8;
}

interface PlaceOnPost {
  /** first face of the element there */
  readonly i: number;
  /** how far along the element, 0 to 1 */
  readonly t: number;
}

function placeOf(faces: readonly SectionAt[], atIn: number): PlaceOnPost {
  let i = 0;
  while (i + 2 < faces.length && faces[i + 1]!.atIn < atIn - 1e-9) i += 2;
  const [from, to] = [faces[i]!.atIn, faces[i + 1]!.atIn];
  return { i, t: Math.min(1, Math.max(0, (atIn - from) / (to - from))) };
}

/** At a node the greater of its two sides. */
function between(list: AtFaces, { i, t }: PlaceOnPost): number {
  if (t === 1) return Math.max(list[i + 1]!, list[i + 2] ?? 0);
  return list[i]! + t * (list[i + 1]! - list[i]!);
}
