import { SIDE_WORDS } from '../../data/words/sides.ts';
import { breaks, notGiven, outside } from '../check.ts';
import { braceFitRows } from '../checks/brace/brace-fit.ts';
import { checkSource, plainSource, type CheckSource } from '../checks/check-source.ts';
import { balanceRow, modelWords } from '../checks/frame-rows.ts';
import { handCutRows, typedRows } from '../checks/not-judged.ts';
import { plainRow } from '../checks/site-of-check.ts';
import type { BracedRow } from '../checks/transverse/rafter-on-post.ts';
import { rowSites } from '../checks/transverse/row-sites.ts';
import { tieFitRows } from '../checks/transverse/tie-fit.ts';
import type { CheckRow } from '../evaluation.ts';
import type { LineResponse } from '../frame/line-frame.ts';
import type { RowGeometry } from '../geometry/rows.ts';
import type { LineGeometry, Shelter } from '../geometry/shelter.ts';
import { message } from '../message.ts';
import { bracedRafter } from './braced-rafter.ts';
import type { FramesAcross } from './frames-across.ts';
import type { RowAnswer, RowFrame } from './row-frame.ts';

/** Every row of checks of the frames across, and what keeps some of them from being asked. */
export const acrossSources = (
  { rows, loose }: FramesAcross,
  { lines, ties, braces, rafters }: Pick<Shelter, 'lines' | 'ties' | 'braces' | 'rafters'>,
): readonly CheckSource[] => [
  plainSource([
    ...loose.map((post) =>
      plainRow('sway.across', post.id, WHOLE, outside(message('postInNoFrame', { post: post.label }))),
    ),
    ...ties
      .filter((tie) => !rows.some(({ row }) => row.ties.includes(tie)))
      .map((tie) => plainRow('tie.fit', tie.id, WHOLE, outside(message('tieOfNoFrame', { tie: tie.label })))),
    ...braces
      .filter((b) => rafters.some((r) => r.id === b.toId) && !rows.some(({ row }) => row.braces.includes(b)))
      .map((b) => plainRow('brace.push', b.id, WHOLE, outside(message('braceOfNoFrame', { brace: b.label })))),
  ]),
  ...rows.flatMap((answer) => sourcesOf(answer, lines)),
];

const WHOLE = { kind: 'whole', name: '' } as const;

function sourcesOf(answer: RowAnswer, lines: readonly LineGeometry[]): readonly CheckSource[] {
  const { row } = answer;
  if (!answer.ok) return [plainSource([...tieFitRows(row), ...unanalysed(row, answer)])];
  const { context } = answer.frame;
  const { frame } = context;
  const tieIds = new Set(row.ties.map((t) => t.id));
  const members = { posts: [], braces: frame.members.braces };
  return [
    {
      ...checkSource({
        responses: frame.responses,
        scenario: (r: LineResponse) => scenarioOf(answer.frame, r, lines),
        sites: rowSites(context, tieIds, bracedRow(answer.frame, row)),
      }),
      sections: [{ of: 'row', context, tieIds }],
    },
    plainSource([
      ...tieFitRows(row),
      ...typedRows(members),
      ...braceFitRows(frame.members),
      ...handCutRows(context.project, members),
      ...frame.unheld.slice(0, 1).map((u) => ({
        ...plainRow('sway.across', row.id, WHOLE, breaks(u.reason)),
        combinationId: u.combination.id,
      })),
      ...shakenFeetRows(answer.frame, row),
      balanceRow('sway.transverse', row.id, frame.residual),
    ]),
  ];
}

/** The rafter of a row that braces run to, with what its posts are pressed by; null where tie logs join them. */
function bracedRow({ pushOf, seatOn }: RowFrame, row: RowGeometry): BracedRow | null {
  const rafter = bracedRafter(row);
  return rafter && { rafter, posts: row.posts, seatOn, pushIdOf: (r) => pushOf(r)?.id ?? null };
}

/** Posts that stand by their feet alone have rules of their own in an earthquake (12.2.5.2), which are not computed. */
function shakenFeetRows({ context, pushOf }: RowFrame, row: RowGeometry): readonly CheckRow[] {
  const isShaken = context.frame.responses.some((r) => pushOf(r)?.comesWith.startsWith('seismic-'));
  const hasFixedFeet = row.posts.some((p) => p.foot.fixity.across !== 'pinned');
  if (!isShaken || !hasFixedFeet) return [];
  return [plainRow('site.seismic', row.id, WHOLE, outside(message('seismicCantilever', { line: context.line.label })))];
}

/** How the braces work, which way the push goes, and who holds the level part of the wind on the roof. */
function scenarioOf({ pushOf }: RowFrame, r: LineResponse, lines: readonly LineGeometry[]): string {
  const push = pushOf(r);
  if (!push) return modelWords(r);
  const toward = `pushed toward ${push.toward === 1 ? SIDE_WORDS.yPlus : SIDE_WORDS.yMinus}`;
  const holder = lines.find((l) => l.id === push.holder);
  return [modelWords(r), toward, ...(holder ? [`line ${holder.label} takes the roof's level push`] : [])].join(', ');
}

function unanalysed(row: RowGeometry, { blocked }: Extract<RowAnswer, { ok: false }>): readonly CheckRow[] {
  const { status, reason } = blocked;
  const verdict = status === 'outside' ? outside(reason) : notGiven(reason);
  return [
    plainRow('sway.across', row.id, WHOLE, reason.code === 'rowIsMechanism' ? breaks(reason) : verdict),
    ...row.ties.map(({ id }) => plainRow('tie.bending', id, WHOLE, verdict)),
    ...row.rafters.map(({ id }) => plainRow('rafter.frameBending', id, WHOLE, verdict)),
    ...(row.rafters.length > 0 ? row.braces : []).map(({ id }) => plainRow('brace.push', id, WHOLE, verdict)),
  ];
}
