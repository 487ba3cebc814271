import { clause } from '../../../data/sources.ts';
import { SYSTEM_WORDS } from '../../../data/words/lateral.ts';
import { breaks, judge, notGiven, outside, type Verdict } from '../../check.ts';
import type { CheckRow } from '../../evaluation.ts';
import type { LineResponse } from '../../frame/line-frame.ts';
import type { LineGeometry } from '../../geometry/shelter.ts';
import { holdIndex } from '../../frame/read-response.ts';
import { message } from '../../message.ts';
import { isFrame } from '../../project/lateral.ts';
import type { Lateral } from '../../project/model.ts';
import { put } from '../../note.ts';
import { quantity } from '../../units.ts';
import { isStrength, tellSway, type LineCheckContext } from '../line-context.ts';
import { plainRow, type CheckSite } from '../site-of-check.ts';

/** A top may move sideways by a hundredth of its height under wind or notional push (own rule). */
const SWAY_SHARE = 100;

/** What holds a line along its length, as the person says it: by naming the line, one of its posts, or neither. */
export function alongSystem(lateral: readonly Lateral[], line: LineGeometry): Lateral | null {
  const names = ({ lines = [], posts = [] }: Lateral): boolean =>
    lines.length + posts.length === 0 || lines.includes(line.id) || posts.some((id) => line.postIds.includes(id));
  return lateral.find((l) => l.by !== null && names(l)) ?? null;
}

/** A line that holds itself: how far its top moves. */
export function swayAlongSites(context: LineCheckContext, holdsItself: boolean): readonly CheckSite<LineResponse>[] {
  if (!holdsItself) return [];
  const { mesh, layout } = context.frame;
  return mesh.posts.map((chain): CheckSite<LineResponse> => {
    const top = layout.movesAt + chain.nodes[chain.count]! * 3;
    const height = chain.post.axisZIn - chain.post.footZIn;
    return {
      ruleId: 'sway.along',
      memberId: context.line.id,
      place: { kind: 'support', name: chain.memberId },
      unit: 'in',
      purpose: 'strength',
      isByDuration: true,
      applies: (r) => !r.held && r.combination.swaysAlong,
      demand: (r, note) => {
        if (note) tellSway(r, note);
        note?.({
          symbol: 'Δ',
          words: 'sideways move of the top, without sign',
          formula: r.secondOrder ? 'sum of factor × case, the sway of each times B' : 'sum of factor × case',
          put: layout.parts(r, top).map((p) => put(`${p.factor} ×`, p.value, 'in', p.name)),
          result: quantity(Math.abs(r.values[top]!), 'in'),
          clause: clause('MECHANICS', r.secondOrder ? 'plane frame, second order' : 'plane frame, first order'),
        });
        return Math.abs(r.values[top]!);
      },
      capacity: (_, note) => {
        note?.({
          symbol: 'limit',
          words: 'greatest sideways move of the top',
          formula: 'H / 100',
          put: [put('H', height, 'in', 'foot to beam axis')],
          result: quantity(height / SWAY_SHARE, 'in'),
          clause: clause('OWN', 'a hundredth of the height'),
        });
        return height / SWAY_SHARE;
      },
    };
  });
}

/** How the line is held along: named, and able to. */
export function swayAlongRows(context: LineCheckContext, system: Lateral | null): readonly CheckRow[] {
  const { line, frame } = context;
  const whole = { kind: 'whole', name: '' } as const;
  const label = line.label;
  const rows: CheckRow[] = [
    ...cantileverRows(context),
    ...frame.unheld.slice(0, 1).map((u) => ({
      ...plainRow('frame.stands', line.id, whole, breaks(u.reason)),
      combinationId: u.combination.id,
    })),
  ];
  if (!system || system.by === null)
    return [
      ...rows,
      plainRow(
        'sway.along',
        line.id,
        whole,
        notGiven({ code: 'alongNotDecided', values: { line: label } }, swayForce(context)),
      ),
    ];
  switch (system.by) {
    case 'none':
      return [...rows, plainRow('sway.along', line.id, whole, breaks({ code: 'saidToBeUnheld', values: {} }))];
    case 'kneeBraces':
      return frame.mesh.braces.length > 0
        ? rows
        : [
            ...rows,
            plainRow(
              'sway.along',
              line.id,
              whole,
              breaks({ code: 'systemWithoutMembers', values: { line: label, system: 'knee braces' } }),
            ),
          ];
    case 'building':
    case 'ratedWalls':
      // one rating may hold several lines: judged where all of them are known
      return rows;
    case 'embeddedPosts':
      return frame.mesh.posts.some((p) => p.post.foot.fixity.along !== 'pinned')
        ? rows
        : [
            ...rows,
            plainRow(
              'sway.along',
              line.id,
              whole,
              breaks({ code: 'systemWithoutMembers', values: { line: label, system: 'fixed post feet' } }),
            ),
          ];
    case 'transverseFrame':
      return [
        ...rows,
        plainRow(
          'sway.along',
          line.id,
          whole,
          notGiven({ code: 'frameAcrossAlong', values: { line: label } }, swayForce(context)),
        ),
      ];
  }
}

/** Posts that stand by their feet alone have rules of their own in an earthquake (12.2.5.2), which are not computed. */
function cantileverRows({ line, frame }: LineCheckContext): readonly CheckRow[] {
  const isShaken = frame.responses.some((r) => r.combination.factors.some((f) => f.caseId.startsWith('seismic-')));
  const hasFixedFeet = frame.mesh.posts.some((p) => p.post.foot.fixity.along !== 'pinned');
  if (!isShaken || !hasFixedFeet) return [];
  const reason = message('seismicCantilever', { line: line.label });
  return [plainRow('site.seismic', line.id, { kind: 'whole', name: '' }, outside(reason))];
}

/**
 * What must hold the line along x, allowable-stress level: the sway force itself, or the force found in the hold where
 * that is more (uneven gravity leans on it too) [lb].
 */
export function swayForce(context: LineCheckContext): ReturnType<typeof quantity> {
  const hold = holdIndex(context.frame.layout, context.frame.mesh);
  const most = context.frame.responses.filter(isStrength).reduce((m, r) => {
    const applied = Math.abs(
      r.combination.factors.reduce((s, f) => s + f.factor * (context.alongLb[f.caseId] ?? 0), 0),
    );
    return Math.max(m, applied, r.held ? Math.abs(r.values[hold]!) : 0);
  }, 0);
  return quantity(most, 'lb');
}

/** A push against what is rated to hold it; several ratings add up. */
export function ratedVerdict(
  demand: ReturnType<typeof quantity>,
  systems: readonly Lateral[],
  by: NonNullable<Lateral['by']>,
): Verdict {
  const ratings = systems.map((s) => s.ratedLb ?? null);
  if (ratings.some((r) => r === null))
    return notGiven({ code: 'ratingNotGiven', values: { system: SYSTEM_WORDS[by] } }, demand);
  const total = ratings.reduce<number>((sum, r) => sum + r!, 0);
  return total > 0 ? judge(demand, quantity(total, 'lb')) : breaks({ code: 'saidToBeUnheld', values: {} });
}

/**
 * Across the lines: what is rated answers for the whole push, frames of their own have rows of their own (of which this says
 * only where there are none).
 * @param demandLb greatest push across on the whole shelter, allowable-stress level [lb]
 * @param hasFrames something stands across that may hold it
 */
export function swayAcrossRows(lateral: readonly Lateral[], demandLb: number, hasFrames: boolean): readonly CheckRow[] {
  const demand = quantity(demandLb, 'lb');
  const row = (ruleId: 'sway.across' | 'sway.acrossRated', verdict: Verdict): CheckRow =>
    plainRow(ruleId, 'shelter', { kind: 'whole', name: '' }, verdict);
  const decided = lateral.filter((l) => l.by !== null);
  if (decided.length === 0) return [row('sway.across', notGiven({ code: 'acrossNotDecided', values: {} }, demand))];
  if (decided.some((l) => l.by === 'none')) return [row('sway.across', breaks({ code: 'saidToBeUnheld', values: {} }))];
  const rated = decided.filter((l) => !isFrame(l));
  const frame = decided.find(isFrame);
  return [
    ...(frame && !hasFrames
      ? [row('sway.across', breaks(message('rowsWithoutMembers', { system: SYSTEM_WORDS[frame.by!] })))]
      : []),
    ...(rated.length > 0 ? [row('sway.acrossRated', ratedVerdict(demand, rated, rated[0]!.by!))] : []),
  ];
}
