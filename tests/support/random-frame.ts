import type {
  Id,
  Lateral,
  Member,
  MemberOf,
  Project,
  RoofPlane,
  Stock,
  SupportLine,
} from '../../src/engine/project/model.ts';
import type { Layout, Recipe } from './random-recipe.ts';

/** Lines, planes and members of a recipe, placed so that the shelter is sound. */
const fallIn = (r: Recipe, at: Layout, i: number): number =>
  (r.risePer12 / 12) * Math.abs(at.lines[i]!.yIn - at.lines[at.form.planes[0]![0]]!.yIn);

export function linesOf(r: Recipe, at: Layout, heightOn: number, stock: Stock | null): readonly SupportLine[] {
  const most = Math.max(...at.lines.map((_, i) => fallIn(r, at, i)));
  return at.lines.map(({ id, yIn }, i): SupportLine => {
    const zIn = r.lowestBearingIn + most - fallIn(r, at, i);
    const height = i === heightOn ? ({ of: 'bearing', zIn } as const) : null;
    if (!at.form.ledger || i > 0) {
      return { kind: 'frame', id, yIn, height, set: r.set, strip: { stock, thicknessIn: 1.5, shims: 'shims' } };
    }
    const [fromXIn, toXIn] = at.reachIn;
    return { kind: 'ledger', id, yIn, height, stock, fromXIn, toXIn, wallFaceYIn: yIn - 1.5, fixingSpacingIn: null };
  });
}

export const planesOf = (r: Recipe, at: Layout): readonly RoofPlane[] =>
  at.form.planes.map((lines, p) => ({
    id: at.name(`plane-${p}`),
    onLines: lines.map((i) => at.lines[i]!.id),
    risePer12: r.risePer12,
    highOverhangIn: at.form.planes.length > 1 ? 0 : r.highOverhangIn,
    lowOverhangIn: r.lowOverhangIn,
    fromXIn: at.reachIn[0] - 3,
    toXIn: at.reachIn[1] + 3,
    rafters: r.rafters,
    horizontalHeldBy: 'worse',
    covering: { kind: 'ribbed steel', slippery: true, unobstructed: true, pastRafterIn: 1.5, ratedSpanIn: null },
    sheetOn: r.sheetOn,
    dead: { by: 'parts', layers: [{ name: 'W'.repeat(120), heavyPsf: 3, lightPsf: 1 }] },
  }));

export function groupsOf(
  r: Recipe,
  { name }: Layout,
  s: { post: Stock | null; stick: Stock | null; rafter: Stock | null; size: (what: string) => Id },
): Project['groups'] {
  const fixity = { along: 'pinned', across: 'pinned' } as const;
  const end = { kind: 'housed', depthIn: 0.5 } as const;
  const fromSize = (what: string): Stock => ({ kind: 'log', logId: s.size(what), fromButtIn: 0, buttAt: 'start' });
  const pier = { kind: 'pier', standOffIn: 1, hardware: null, pad: null, concretePcf: 145, fixity } as const;
  return [
    {
      id: name('beams'),
      role: 'beam',
      stock: null,
      crownTo: 'up',
      topFlatIn: 0.25,
      seat: { kind: 'flat', depthIn: 0.5, lengthIn: null },
    },
    {
      id: name('posts'),
      role: 'post',
      stock: s.post,
      foot: r.embedded
        ? {
            kind: 'embedded',
            depthIn: 48,
            holeIn: 24,
            backfill: 'concrete',
            treatment: 'treated for ground contact',
            ...(r.sheetOn === 'rafters'
              ? { useCategory: 'UC4B' as const, pad: { acrossIn: 20, thickIn: 8 }, keyed: true }
              : {}),
            fixedBelowGradeIn: 12,
            fixity,
          }
        : { ...pier, shaft: { shape: 'round', acrossIn: 24, lengthIn: 42 } },
      capIn: 0,
      allowanceIn: 0.5,
    },
    {
      id: name('braces'),
      role: 'brace',
      stock: fromSize('brace'),
      runIn: 24,
      dropIn: 24,
      ends: { post: end, top: end },
    },
    { id: name('ties'), role: 'tie', stock: fromSize('tie'), downIn: 14, ends: 'between' },
    { id: name('rafters'), role: 'rafter', stock: s.rafter, seatCutIn: 0.5, tailEnd: 'plumb', blocked: true },
    { id: name('purlins'), role: 'purlin', stock: s.stick },
  ];
}

/** Braces along lean inward, so that they end on the beam whatever it overhangs. */
export function bracesOf(r: Recipe, at: Layout): readonly MemberOf<'brace'>[] {
  const last = at.postXs.length - 1;
  if (r.bracesAt === 'none') return [];
  return at.posts.flatMap(({ id, i, k }): readonly MemberOf<'brace'>[] => {
    const brace = (side: 'plus' | 'minus'): MemberOf<'brace'> => ({
      id: at.name(`brace-${i}-${k}-${side}`),
      role: 'brace',
      group: at.name('braces'),
      post: id,
      to: 'line',
      side,
    });
    if (k === 0) return [brace('plus')];
    if (k === last) return [brace('minus')];
    return r.bracesAt === 'all' ? [brace('plus'), brace('minus')] : [];
  });
}

export function tiesOf(r: Recipe, at: Layout): readonly Member[] {
  if (!r.hasTies) return [];
  return at.frames.slice(1).flatMap((line, f) =>
    at.postXs.flatMap((_, k): readonly Member[] => {
      const [from, to] = [
        at.posts.find((p) => p.line === at.frames[f]!.id && p.k === k)!,
        at.posts.find((p) => p.line === line.id && p.k === k)!,
      ];
      const tie = at.name(`tie-${f}-${k}`);
      const brace = { role: 'brace', group: at.name('braces'), to: tie } as const;
      return [
        { id: tie, role: 'tie', group: at.name('ties'), fromPost: from.id, toPost: to.id, pastFromIn: 3, pastToIn: 3 },
        { id: at.name(`brace-${f}-${k}-a`), ...brace, post: from.id, side: 'plus' },
        { id: at.name(`brace-${f}-${k}-b`), ...brace, post: to.id, side: 'minus' },
      ];
    }),
  );
}

export function sticksOf(r: Recipe, at: Layout, plane: RoofPlane, p: number): readonly Member[] {
  const [fromXIn, toXIn] = at.reachIn;
  const bays = Math.max(1, Math.ceil((toXIn - fromXIn) / r.rafterSpacingIn));
  const lineYs = plane.onLines.map((id) => at.lines.find((line) => line.id === id)!.yIn);
  const runIn = Math.abs(lineYs.at(-1)! - lineYs[0]!) + plane.highOverhangIn + plane.lowOverhangIn;
  const slopeIn = runIn * Math.hypot(1, r.risePer12 / 12);
  const rows = r.sheetOn === 'rafters' ? 0 : Math.max(2, Math.ceil(slopeIn / r.purlinSpacingIn));
  return [
    ...Array.from({ length: bays + 1 }, (_, i): Member => {
      const xIn = i === bays ? toXIn : fromXIn + ((toXIn - fromXIn) * i) / bays;
      return { id: at.name(`rafter-${p}-${i}`), role: 'rafter', group: at.name('rafters'), plane: plane.id, xIn };
    }),
    ...Array.from({ length: rows }, (_, i): Member => {
      const upSlopeIn = 2 + ((slopeIn - 4) * i) / (rows - 1);
      return { id: at.name(`purlin-${p}-${i}`), role: 'purlin', group: at.name('purlins'), plane: plane.id, upSlopeIn };
    }),
  ];
}

export function lateralOf(r: Recipe, at: Layout): Project['lateral'] {
  const lines = at.frames.map(({ id }) => id);
  const rated = { by: 'ratedWalls', lines, ratedLb: 4000, givenBy: 'W'.repeat(120) } as const;
  const along: Lateral = r.along === 'ratedWalls' ? rated : { by: r.along, lines };
  const pairs = at.frames.slice(1).flatMap((line, f) =>
    at.postXs.map((_, k): Lateral => ({
      by: 'transverseFrame',
      posts: at.posts.filter((p) => p.k === k && [at.frames[f]!.id, line.id].includes(p.line)).map(({ id }) => id),
    })),
  );
  if (r.across === 'transverseFrame') return { along: [along], across: pairs.slice(0, 10) };
  return { along: [along], across: [r.across === 'ratedWalls' ? rated : { by: r.across, lines }] };
}

export const neighbourOf = (at: Layout): Project['surroundings']['neighbour'] =>
  at.form.ledger
    ? {
        side: 'yMinus',
        ledgerLine: at.lines[0]!.id,
        gapFt: 0,
        stepFt: 3,
        upperLengthFt: 30,
        eaveToRidgeFt: 15,
        upperRisePer12: 6,
        upperSlippery: true,
        upperCt: 1.1,
        slidesThisWay: true,
        ableBy: null,
      }
    : null;
