import { LINKS, RULES, type Link } from '../data/rules.ts';
import { say } from '../data/words/say.ts';
import { STATUS_WORDS } from '../data/words/status.ts';
import { isWorse, type Status } from '../engine/check.ts';
import type { CheckRow, Evaluation } from '../engine/evaluation.ts';
import type { Project } from '../engine/project/model.ts';
import { columns, wrapped, type Side } from './columns.ts';
import { ratioText, roughly } from './figures.ts';
import { memberNames } from './names.ts';

const LINK_WORDS: Readonly<Record<Link, string>> = {
  site: 'site',
  sheet: 'sheet',
  purlin: 'purlin',
  rafter: 'rafter',
  ledger: 'ledger',
  strip: 'strip',
  beam: 'beam',
  brace: 'brace',
  post: 'post',
  pier: 'pier',
  swayAlong: 'sway along',
  swayAcross: 'sway across',
};
/** The whole evaluation to be read: the header, what does not pass in words, then the worst of every link. */
export function plainReport(project: Project, evaluation: Evaluation): string {
  const { title } = project;
  const nameOf = memberNames(evaluation);
  return [
    [title.name, title.parcel, title.revision.number && `revision ${title.revision.number}`].filter(Boolean).join(', '),
    `fingerprint ${evaluation.fingerprint}, program ${evaluation.programVersion}, data ${evaluation.dataVersion}`,
    headline(evaluation),
    ...(['fail', 'notGiven', 'outside'] as const).flatMap((status) => section(evaluation.checks, status, nameOf)),
    '',
    'Worst of each link, from roof to ground',
    ...worstPerLink(evaluation.checks, nameOf),
    '',
    'A design aid: the local code and licensed practice stand above it.',
  ].join('\n');
}

/** What the header of the sheet says. */
function headline({ checks, counts, departures }: Evaluation): string {
  const notPassing = [
    ...(counts.fail > 0 ? [`does not pass: ${counts.fail}`] : []),
    ...(counts.notGiven > 0 ? [`not complete: ${counts.notGiven} not given`] : []),
    ...(counts.outside > 0 ? [`${counts.outside} outside the method`] : []),
  ];
  const passing = `${counts.pass} of ${checks.length} checks pass`;
  const stated = departures > 0 ? [`${departures} of them with a stated departure`] : [];
  return [...notPassing, passing, ...stated].join('; ');
}

const SIDES: readonly Side[] = ['left', 'right', 'left', 'left', 'right', 'right', 'left'];

function section(
  checks: readonly CheckRow[],
  status: Exclude<Status, 'pass'>,
  nameOf: (id: string) => string,
): readonly string[] {
  const rows = checks.filter((c) => c.status === status).sort((a, b) => (isWorse(a, b) ? -1 : 1));
  if (rows.length === 0) return [];
  const lines = columns(
    rows.map((row) => ['', ...cells(row, nameOf)]),
    SIDES,
  );
  return [
    '',
    `${STATUS_WORDS[status]}: ${rows.length}`,
    ...rows.flatMap((row, i) => [lines[i]!, ...(row.reason ? wrapped(say(row.reason), 10) : [])]),
  ];
}

/** Ratio, what is checked, where, demand, capacity, key. */
const cells = (row: CheckRow, nameOf: (id: string) => string): readonly string[] => [
  ratioText(row.ratio),
  RULES[row.ruleId].words,
  nameOf(row.memberId),
  roughly(row.demand),
  roughly(row.capacity),
  [row.key, row.combinationId && `in ${row.combinationId}`, row.scenario].filter(Boolean).join(', '),
];

function worstPerLink(checks: readonly CheckRow[], nameOf: (id: string) => string): readonly string[] {
  const worst = LINKS.flatMap((link): CheckRow[] => {
    const ofLink = checks.filter((c) => RULES[c.ruleId].link === link);
    return ofLink.length > 0 ? [ofLink.reduce((a, b) => (isWorse(b, a) ? b : a))] : [];
  });
  return columns(
    worst.map((row) => [`  ${LINK_WORDS[RULES[row.ruleId].link]}`, STATUS_WORDS[row.status], ...cells(row, nameOf)]),
    ['left', 'left', 'right', 'left', 'left', 'right', 'right', 'left'],
  );
}
