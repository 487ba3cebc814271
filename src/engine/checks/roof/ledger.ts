import { clause } from '../../../data/sources.ts';
import { notGiven, outside, type Verdict } from '../../check.ts';
import type { LedgerReport } from '../../evaluation.ts';
import { message } from '../../message.ts';
import { put, type Note, type Put } from '../../note.ts';
import { isNamed } from '../../project/is-named.ts';
import { capacityOf, jointKey } from '../../project/joint-capacity.ts';
import type { LedgerLine } from '../../project/model.ts';
import { quantity } from '../../units.ts';
import { checkSource, plainSource, type CheckSource } from '../check-source.ts';
import { holderAt, type Holder } from '../joints/holder.ts';
import type { JointPart } from '../joints/rated.ts';
import { plainRow } from '../site-of-check.ts';
import { refused, unasked, type RoofCheckContext } from './context.ts';
import { ledgerResponses, onFixing, type LedgerResponse } from './ledger-forces.ts';
import { asksOf, ledgerReport, type LedgerAsks } from './ledger-report.ts';
import { widthOnFixing, type RafterOnLedger } from './ledger-span.ts';
import { ledgerStickSource } from './ledger-stick.ts';
import type { RafterChecks } from './rafter-checks.ts';

/** Whether the building is said to take its ledgers, how they bend, what holds each of them, and what they bring to it. */
export function ledgerChecks(
  context: RoofCheckContext,
  rafters: RafterChecks,
): { readonly sources: readonly CheckSource[]; readonly reports: readonly LedgerReport[] } {
  const ledgers = context.project.supportLines.filter((line) => line.kind === 'ledger');
  const asked = ledgers.map((line) => ledgerAsks(context, line, rafters));
  return {
    sources: asked.flatMap((asks) => [
      buildingSource(context, asks.line),
      ledgerStickSource(context, asks),
      fixingSource(context, asks),
    ]),
    reports: asked.map(ledgerReport),
  };
}

function buildingSource({ project }: RoofCheckContext, line: LedgerLine): CheckSource {
  const isSaid = isNamed(project.surroundings.neighbour?.ableBy?.name ?? '');
  const place = { kind: 'whole', name: '' } as const;
  return plainSource(
    isSaid ? [] : [plainRow('ledger.building', line.id, place, notGiven(message('buildingNotShown')))],
  );
}

function ledgerAsks(context: RoofCheckContext, line: LedgerLine, rafters: RafterChecks): LedgerAsks {
  const onLine = rafters.analysed.filter((a) => a.loading.run.supportLines.includes(line.id));
  const wind = onLine.map((a) => a.loading.wind).find((w) => !w.ok);
  const problem = rafters.problem ?? (wind && !wind.ok ? refused(wind) : null);
  if (problem) return { ok: false, line, verdict: problem };
  const geometry = context.shelter.lines.find((l) => l.id === line.id)!;
  const resting = context.shelter.rafters.filter((r) => r.supports.some((support) => support.line === line.id));
  if (new Set(resting.map((r) => r.downY)).size > 1)
    return { ok: false, line, verdict: outside(message('ledgerBothSides')) };
  return { ok: true, line, rafters: resting, responses: ledgerResponses(context, line, geometry, onLine) };
}

function fixingSource(context: RoofCheckContext, asks: LedgerAsks): CheckSource {
  const { line } = asks;
  if (!asks.ok) return plainSource(unasked(['ledger.fixing'], line.id, asks.verdict));
  const { responses, rafters } = asks;
  const capacity = capacityOf(context.project, 'ledgerWall', jointKey('ledgerWall', line.id));
  if (capacity === null || (capacity.kind === 'fasteners' && !line.behind))
    return plainSource(unasked(['ledger.fixing'], line.id, asksOf(asks)));
  const spacingIn = line.fixingSpacingIn;
  if (spacingIn === null)
    return plainSource(unasked(['ledger.fixing'], line.id, notGiven(message('ledgerSpacingNotGiven'))));
  const holder = holderAt(context, 'ledgerWall', jointKey('ledgerWall', line.id));
  const fixing: Fixing = { holder, rafters, spacingIn, widthIn: widthOnFixing(rafters, spacingIn) };
  return checkSource({
    responses,
    sites: [
      {
        ruleId: 'ledger.fixing',
        memberId: line.id,
        place: { kind: 'whole', name: '' },
        unit: '1',
        purpose: 'strength',
        stops: (r) => firstProblem(sharesOf(fixing, r)),
        demand: (r, note) => sumOfShares(sharesOf(fixing, r, note), note),
        capacity: () => 1,
      },
    ],
  });
}

type Share =
  | { readonly ok: true; readonly part: JointPart; readonly demandLb: number; readonly capacityLb: number }
  | { readonly ok: false; readonly verdict: Verdict | null };

interface Fixing {
  readonly holder: Holder;
  readonly rafters: readonly RafterOnLedger[];
  readonly spacingIn: number;
  /** of roof that it holds down, up and outward [in] */
  readonly widthIn: number;
}

/** Each direction of one fixing that the combination asks for. Along itself a ledger shares out by spacing. */
function sharesOf({ holder, rafters, spacingIn, widthIn }: Fixing, r: LedgerResponse, note?: Note): readonly Share[] {
  const byRafter = put('w', widthIn, 'in', 'width of roof on one fixing');
  const bySpacing = put('s', spacingIn, 'in', 'spacing of the fixings');
  const asked: readonly (readonly [JointPart, number, Put])[] = [
    ['across', Math.max(r.downPlf, r.upPlf), byRafter],
    ['pull', r.outPlf, byRafter],
    ['along', r.alongPlf, bySpacing],
  ];
  if (note) widthOnFixing(rafters, spacingIn, note);
  return asked.flatMap(([part, plf, width]): readonly Share[] => {
    if (plf <= 0) return [];
    const demandLb = onFixing(plf, width.value);
    note?.({
      symbol: `P ${part}`,
      words: `force on one fixing, ${part}`,
      formula: `p × ${width.symbol} / 12`,
      put: [put('p', plf, 'lb/ft', 'on each foot of ledger'), width],
      result: quantity(demandLb, 'lb'),
      clause: clause('MECHANICS', 'force per foot times width'),
    });
    const rated = holder.part(part, r.combination.durationFactor, note);
    return [
      rated.ok
        ? { ok: true, part, demandLb, capacityLb: rated.capacityLb }
        : { ok: false, verdict: rated.verdict(demandLb) },
    ];
  });
}

function firstProblem(shares: readonly Share[]): Verdict | null {
  for (const share of shares) if (!share.ok && share.verdict) return share.verdict;
  return null;
}

/** Directions of one fixing add up: a straight sum is the safe side of every interaction curve (own rule). */
function sumOfShares(shares: readonly Share[], note?: Note): number {
  const held = shares.flatMap((share) => (share.ok ? [share] : []));
  const sum = held.reduce((total, share) => total + share.demandLb / share.capacityLb, 0);
  note?.({
    symbol: 'sum',
    words: 'all directions of one fixing together, at most 1',
    formula: held.map((share) => `P ${share.part} / Z ${share.part}`).join(' + '),
    put: held.flatMap((share) => [
      put(`P ${share.part}`, share.demandLb, 'lb', 'force on one fixing'),
      put(`Z ${share.part}`, share.capacityLb, 'lb', 'rated for it'),
    ]),
    result: quantity(sum, '1'),
    clause: clause('OWN', 'directions of one fixing add up'),
  });
  return sum;
}
