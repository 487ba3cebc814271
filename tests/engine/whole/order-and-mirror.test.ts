import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Evaluation } from '../../../src/engine/evaluation.ts';
import type { Member, OwnLoad, Project, Stock } from '../../../src/engine/project/model.ts';
import { evaluate } from '../../../src/engine/evaluate.ts';
import { parseProject } from '../../../src/engine/project/parse.ts';
import { EXAMPLES, everythingGivenText, exampleText, soundProject } from '../../support/files.ts';
import { standingProject } from './standing-project.ts';
import { evaluated, off, PATIENCE_MS, runs } from './whole.ts';

interface Within {
  readonly share: number;
  readonly ratio: number;
}
const SAME: Within = { share: 1e-9, ratio: 1e-11 };
/** The buckling of a line is found to about a billionth, and a post's Euler stress with it. */
const BUCKLED = /^(frame\.buckling|sway\.acrossBuckling|post\.push|post\.bending) of/;
const FOUND: Within = { share: 1e-8, ratio: 1e-11 };
/**
 * Rules that add up moments all along a log. Where wind lifts, and past its last load only rounding of it is left, that
 * rounding says whether the log's own weight there counts heavy or light.
 */
const ADDED_UP = /^beam\.(rolling|twist) of/;
const ADDED: Within = { share: 1e-5, ratio: 1e-8 };
/** Packing on a crowned log is straight between stations set every so far from its start: so is what a screw finds there. */
const ON_PACKING = /^strip\.(along|together) of/;
const PACKED: Within = { share: 1e-3, ratio: 1e-4 };
const LOOSER: readonly (readonly [rules: RegExp, within: Within])[] = [
  [BUCKLED, FOUND],
  [ADDED_UP, ADDED],
  [ON_PACKING, PACKED],
];
/**
 * Random shelters are alike only so far: places within a sixteenth of an inch share a node, the one at lower x; and the
 * uplift rule takes a piece of dead load heavy or light by the sign of what wind or push does there, which where it does
 * nothing is the sign of a rounding.
 */
const NEARLY: Within = { share: 0.01, ratio: 0.02 };
/** Two beams on one post share its force by a difference of two such values; a splice is kept by one of the two. */
const SHARED_SEAT: readonly string[] = ['beam.seat', 'beam.tie', 'beam.tieAlong', 'post.endGrain', 'beam.splice'];

/** What is left out of balance is rounding, and rounding knows of order and side. */
const ROUNDING: readonly string[] = ['frame.balance', 'sway.transverse'];

const alike = (a: number | null, b: number | null, within: Within): boolean =>
  a === b || (a !== null && b !== null && (Math.abs(a - b) <= within.ratio || off(a, b) <= within.share));

const turned = <T>(list: readonly T[]): readonly T[] => [...list].reverse();

/** The same file with every list whose order has no meaning written the other way round. */
const reordered = (p: Project): Project => ({
  ...p,
  supportLines: turned(p.supportLines),
  roofPlanes: turned(p.roofPlanes),
  woods: turned(p.woods),
  logs: turned(p.logs),
  groups: turned(p.groups),
  members: turned(p.members),
  joints: { defaults: turned(p.joints.defaults), own: turned(p.joints.own) },
  cuts: turned(p.cuts),
  lateral: { along: turned(p.lateral.along), across: turned(p.lateral.across) },
  ownLoads: turned(p.ownLoads),
  instead: turned(p.instead),
});

/** The shelter seen in a mirror that stands square to the lines: x to -x. */
const mirrored = (p: Project): Project => ({
  ...p,
  surroundings: {
    ...p.surroundings,
    neighbour: p.surroundings.neighbour && { ...p.surroundings.neighbour, side: sideOf(p.surroundings.neighbour.side) },
    closed: p.surroundings.closed.map((wall) => ({ ...wall, side: sideOf(wall.side) })),
  },
  supportLines: p.supportLines.map((line) =>
    line.kind === 'ledger' ? { ...line, fromXIn: -line.toXIn, toXIn: -line.fromXIn } : line,
  ),
  roofPlanes: p.roofPlanes.map((plane) => ({ ...plane, fromXIn: -plane.toXIn, toXIn: -plane.fromXIn })),
  groups: p.groups.map((g) => (g.role === 'beam' || g.role === 'purlin' ? { ...g, stock: turnedStock(g.stock) } : g)),
  members: p.members.map(mirroredMember),
  ownLoads: p.ownLoads.map((load): OwnLoad => ({ ...load, where: mirroredPlace(load.where) })),
  cuts: [],
});

type Side = 'xMinus' | 'xPlus' | 'yMinus' | 'yPlus';
const sideOf = (side: Side): Side => (side === 'xMinus' ? 'xPlus' : side === 'xPlus' ? 'xMinus' : side);

const turnedStock = (stock: Stock | null): Stock | null =>
  stock?.kind === 'log' ? { ...stock, buttAt: stock.buttAt === 'start' ? 'end' : 'start' } : stock;

function mirroredMember(m: Member): Member {
  switch (m.role) {
    case 'beam': {
      const own = m.own?.stock === undefined ? m.own : { ...m.own, stock: turnedStock(m.own.stock) };
      return { ...m, ...(own ? { own } : {}), fromXIn: -m.toXIn, toXIn: -m.fromXIn };
    }
    case 'post':
    case 'rafter':
      return { ...m, xIn: -m.xIn };
    case 'brace':
      return m.to === 'line' ? { ...m, side: m.side === 'plus' ? 'minus' : 'plus' } : m;
    case 'purlin':
    case 'tie':
      return m;
  }
}

function mirroredPlace(where: OwnLoad['where']): OwnLoad['where'] {
  switch (where.on) {
    case 'line':
      return { ...where, xIn: -where.xIn };
    case 'stretch':
    case 'plane':
      return { ...where, fromXIn: -where.toXIn, toXIn: -where.fromXIn };
    case 'member':
      return where;
  }
}

/** Worst ratio and number of rows of every rule on every member. */
function worstOf({ checks }: Evaluation): ReadonlyMap<string, { readonly ratio: number; readonly rows: number }> {
  const worst = new Map<string, { ratio: number; rows: number }>();
  for (const { ruleId, memberId, ratio } of checks) {
    if (ROUNDING.includes(ruleId)) continue;
    const key = `${ruleId} of ${memberId}`;
    const known = worst.get(key) ?? { ratio: -1, rows: 0 };
    worst.set(key, { ratio: Math.max(known.ratio, ratio ?? -1), rows: known.rows + 1 });
  }
  return worst;
}

/** What one evaluation says otherwise than another, row by row. */
function differing(a: Evaluation, b: Evaluation): readonly string[] {
  const others = new Map(b.checks.map((c) => [c.key, c]));
  const rows = a.checks.flatMap((c) => {
    const other = others.get(c.key);
    if (!other) return [`${c.key} is gone`];
    const same = other.status === c.status && (ROUNDING.includes(c.ruleId) || alike(c.ratio, other.ratio, SAME));
    return same ? [] : [`${c.key}: ${c.status} ${c.ratio} and ${other.status} ${other.ratio}`];
  });
  return a.checks.length === b.checks.length ? rows : [...rows, 'another number of rows'];
}

function differingWorst(a: Evaluation, b: Evaluation, within: Within, except: readonly string[]): readonly string[] {
  const others = worstOf(b);
  return [...worstOf(a)].flatMap(([key, { ratio, rows }]) => {
    const other = others.get(key);
    if (except.some((ruleId) => key.startsWith(`${ruleId} of`))) return [];
    const [, own] = within === SAME ? (LOOSER.find(([rules]) => rules.test(key)) ?? []) : [];
    const near = own ?? within;
    return other && other.rows === rows && alike(ratio, other.ratio, near)
      ? []
      : [`${key}: ${ratio} in ${rows} rows and ${other?.ratio} in ${other?.rows}`];
  });
}

const files: readonly (readonly [string, string])[] = [
  ...EXAMPLES.map((name) => [name, exampleText(name)] as const),
  ['everything-given', everythingGivenText()],
];

/** What two evaluations of a random shelter say otherwise; one that cannot be placed must not be placeable changed. */
function differingAnswers(
  project: Project,
  changed: Project,
  compare: (a: Evaluation, b: Evaluation) => readonly string[],
): readonly string[] {
  const [a, b] = [evaluate(project), evaluate(changed)];
  if (a.ok && b.ok) return compare(a.evaluation, b.evaluation);
  return a.ok === b.ok ? [] : ['only one of them can be placed'];
}

const isSpliced = ({ shelter }: Evaluation): boolean => shelter.lines.some((l) => l.beamIds.length > 1);

describe('the order of lists in a file', () => {
  it.each(files)('changes no key, no status and no ratio of %s', (_, text) => {
    const project = soundProject(text);
    expect(differing(evaluated(project), evaluated(reordered(project)))).toEqual([]);
  });

  it(
    'changes nothing of random shelters',
    () => {
      fc.assert(
        fc.property(standingProject(), (project) => {
          expect(differingAnswers(project, reordered(project), differing)).toEqual([]);
        }),
        { seed: 3, numRuns: runs(3, 80), endOnFailure: true },
      );
    },
    PATIENCE_MS,
  );
});

describe('a shelter in the mirror', () => {
  it.each(files)('has the same worst ratio of every rule on every member, %s', (_, text) => {
    const project = soundProject(text);
    const image = mirrored(project);
    expect(parseProject(image).ok).toBe(true);
    expect(differingWorst(evaluated({ ...project, cuts: [] }), evaluated(image), SAME, [])).toEqual([]);
  });

  it(
    'so have random shelters, as far as nodes lie in a mirror',
    () => {
      fc.assert(
        fc.property(standingProject(), (project) => {
          const nearly = (a: Evaluation, b: Evaluation) =>
            differingWorst(a, b, NEARLY, isSpliced(a) ? SHARED_SEAT : []);
          expect(differingAnswers({ ...project, cuts: [] }, mirrored(project), nearly)).toEqual([]);
        }),
        { seed: 4, numRuns: runs(6, 80), endOnFailure: true },
      );
    },
    PATIENCE_MS,
  );
});
