import { LINKS, RULES, type Link } from '../../data/rules.ts';
import { LINK_WORDS } from '../../data/words/links.ts';
import { isWorse, type Status } from '../../engine/check.ts';
import type { CheckRow, Evaluation } from '../../engine/evaluation.ts';
import type { Shelter } from '../../engine/geometry/shelter.ts';

/** One link of the load path as the cord shows it; the beam has one link for each frame line. */
export interface CordLink {
  /** stable over edits: `post`, `beam/line-high` */
  readonly id: string;
  readonly link: Link;
  readonly lineId: string | null;
  readonly words: string;
  /** worst first */
  readonly checks: readonly CheckRow[];
  readonly counts: Readonly<Record<Status, number>>;
  /** judged row with the greatest ratio */
  readonly worst: CheckRow | null;
}

/** Every link of the shelter, from site to sway. */
export function linksOf({ shelter, checks }: Evaluation): readonly CordLink[] {
  const rowsOf = (link: Link): readonly CheckRow[] => checks.filter((row) => RULES[row.ruleId].link === link);
  return LINKS.flatMap((link): readonly CordLink[] => {
    const rows = rowsOf(link);
    if (link === 'beam') return beamLinks(shelter, rows);
    return rows.length > 0 || hasPart(shelter, link) ? [cordLink(link, null, LINK_WORDS[link], rows)] : [];
  });
}

function beamLinks(shelter: Shelter, rows: readonly CheckRow[]): readonly CordLink[] {
  const lineOf = new Map(shelter.beams.map((beam) => [beam.id, beam.line]));
  return shelter.lines
    .filter(({ kind }) => kind === 'frame')
    .toSorted((a, b) => a.label.localeCompare(b.label))
    .map((line) =>
      cordLink(
        'beam',
        line.id,
        `${LINK_WORDS.beam} ${line.label}`,
        rows.filter((row) => (lineOf.get(row.memberId) ?? row.memberId) === line.id),
      ),
    );
}

/** Site, sheet and sway are always there; the rest as far as the shelter has such a part. */
function hasPart(shelter: Shelter, link: Link): boolean {
  switch (link) {
    case 'purlin':
      return shelter.purlins.length > 0;
    case 'ledger':
      return shelter.lines.some(({ kind }) => kind === 'ledger');
    case 'strip':
      return shelter.lines.some(({ stripThicknessIn }) => stripThicknessIn > 0);
    case 'brace':
      return shelter.braces.length > 0;
    default:
      return true;
  }
}

function cordLink(link: Link, lineId: string | null, words: string, rows: readonly CheckRow[]): CordLink {
  const checks = rows.toSorted((a, b) => (isWorse(a, b) ? -1 : isWorse(b, a) ? 1 : 0));
  const counts = { pass: 0, fail: 0, notGiven: 0, outside: 0 };
  let worst: CheckRow | null = null;
  for (const row of checks) {
    counts[row.status] += 1;
    if (row.ratio !== null && (worst === null || row.ratio > (worst.ratio ?? 0))) worst = row;
  }
  return { id: lineId === null ? link : `${link}/${lineId}`, link, lineId, words, checks, counts, worst };
}

/** The one word of a link; null where nothing is checked. A broken check counts before what is not judged. */
export function statusOf({ counts }: Pick<CordLink, 'counts'>): Status | null {
  const order: readonly Status[] = ['fail', 'outside', 'notGiven', 'pass'];
  return order.find((status) => counts[status] > 0) ?? null;
}

/** The link that a member belongs to, for a member that was touched on the drawing. */
export function linkOfMember(shelter: Shelter, memberId: string): string | null {
  const isIn = (parts: readonly { readonly id: string }[]): boolean => parts.some(({ id }) => id === memberId);
  const beam = shelter.beams.find(({ id }) => id === memberId);
  if (beam) return `beam/${beam.line}`;
  if (isIn(shelter.posts)) return 'post';
  if (isIn(shelter.braces)) return 'brace';
  if (isIn(shelter.rafters)) return 'rafter';
  if (isIn(shelter.purlins)) return 'purlin';
  return isIn(shelter.ties) ? 'swayAcross' : null;
}
