import { describe, expect, it } from 'vitest';
import { acrossForce } from '../../../src/engine/loads/across.ts';
import type { LineCase } from '../../../src/engine/loads/cases.ts';
import type { Project } from '../../../src/engine/project/model.ts';
import { rowsAcross } from '../../../src/engine/geometry/rows.ts';
import { pushesAcross, type PushAcross } from '../../../src/engine/transverse/push-across.ts';
import { pushOnRow, sharesOfLines } from '../../../src/engine/transverse/row-loads.ts';
import { lineId, type Measures } from '../../support/plain-shed.ts';
import { tiedShed } from '../../support/tied-shed.ts';
import { acrossBench } from './row-bench.ts';

const THREE_ROWS: Partial<Measures> = {
  postXsIn: [0, 80, 180],
  pierTopsIn: [6, 6, 6],
  beamEndsIn: [-24, 200],
  bracesAt: [],
};

function bench(project: Project) {
  const { givens, lines } = acrossBench(project);
  const rows = rowsAcross(givens.shelter).filter((row) => row.ties.length > 0);
  const inFrames = givens.shelter.lines
    .map((l) => l.id)
    .filter((id) => rows.some((r) => r.posts.some((p) => p.line === id)));
  const byLine = new Map(lines.map((l) => [l.members.line.id, l.inertiaLb]));
  const across = pushesAcross(givens, inFrames, { kind: 'notional', byLine });
  const shareOf = sharesOfLines(givens.shelter, rows);
  const whole = acrossForce(project, givens.shelter, givens.site, givens.roof, givens.runOf, 0);
  const onRows = (push: PushAcross): readonly LineCase[] =>
    rows.map((row) => pushOnRow(row, across, push, shareOf, row.posts));
  const sumOn = (cases: readonly LineCase[]): number =>
    cases.reduce((sum, c, i) => {
      const height = (id: string): number => {
        const post = rows[i]!.posts.find((p) => p.id === id)!;
        return post.axisZIn - post.footZIn;
      };
      const tops = c.atPosts.reduce((s, p) => s + p.alongLb, 0);
      return c.onPosts.reduce((s, p) => s + p.alongLbPerIn * height(p.postId), sum + tops);
    }, 0);
  return { givens, rows, across, shareOf, whole, onRows, sumOn, byLine };
}

describe('the push across as it comes to rows', () => {
  // own rule: by length of line, half way to the next rows and out to the ends
  it('is shared by length of line: shares of a line are one together', () => {
    const { shareOf, givens } = bench(tiedShed({ at: [0, 1, 2] }, THREE_ROWS));
    for (const line of givens.shelter.lines) {
      const shares = line.postIds.map((id) => shareOf.get(id)!);
      expect(shares[0]).toBeCloseTo((40 + 24) / 224, 12);
      expect(shares[1]).toBeCloseTo((40 + 50) / 224, 12);
      expect(shares[2]).toBeCloseTo((50 + 20) / 224, 12);
    }
  });

  // ASCE 7-16 27.3.2, 29.4, 27.1.5: the sum over all rows is the push of the whole shelter, worked out without any rows
  it('adds up over all rows to the whole push of the wind: roof and drag together, at least the least', () => {
    for (const windMph of [60, 110]) {
      const shed = tiedShed({ at: [0, 1, 2] }, THREE_ROWS);
      const site = { ...shed.site, windMph: { ...shed.site.windMph, value: windMph } };
      const { across, whole, onRows, sumOn } = bench({ ...shed, site });
      const most = Math.max(
        ...across.pushes.filter((p) => p.comesWith.startsWith('wind')).map((p) => Math.abs(sumOn(onRows(p)))),
      );
      expect(most).toBeCloseTo(Math.max(whole.roofLb + whole.dragLb, whole.leastLb), 6);
      for (const push of across.pushes.filter((p) => p.comesWith.startsWith('wind'))) {
        const sum = sumOn(onRows(push));
        expect(Math.sign(sum)).toBe(push.toward);
        expect(Math.abs(sum)).toBeGreaterThan(whole.leastLb - 1e-6);
      }
    }
  });

  it('puts the level part of the roof whole on every line that may hold it, one at a time', () => {
    const { across } = bench(tiedShed());
    const ways = across.pushes.filter(
      (p) => p.comesWith === 'wind-180-A-clear' && p.toward === across.pushes[0]!.toward,
    );
    expect(new Set(ways.map((p) => p.holder))).toEqual(new Set([lineId(0), lineId(1)]));
    const [a, b] = ways;
    const moved = a!.atBeamLb.get(lineId(0))! - b!.atBeamLb.get(lineId(0))!;
    expect(b!.atBeamLb.get(lineId(1))! - a!.atBeamLb.get(lineId(1))!).toBeCloseTo(moved, 6);
  });

  it('stays on the one line that is named for it', () => {
    const { across } = bench(tiedShed({}, { horizontalHeldBy: lineId(1) }));
    const wind = across.pushes.filter((p) => p.comesWith.startsWith('wind'));
    expect(new Set(wind.map((p) => p.holder))).toEqual(new Set([lineId(1)]));
  });

  it('of one per cent comes both ways, each line its own at its beam', () => {
    const { across, byLine, onRows, sumOn } = bench(tiedShed());
    const ways = across.pushes.filter((p) => p.comesWith.startsWith('notional'));
    expect(ways.map((p) => [p.comesWith, p.toward])).toEqual([
      ['notional-across-plus', 1],
      ['notional-across-minus', -1],
    ]);
    const all = [...byLine.values()].reduce((a, b) => a + b, 0);
    expect(sumOn(onRows(ways[0]!))).toBeCloseTo(all, 6);
    expect(sumOn(onRows(ways[1]!))).toBeCloseTo(-all, 6);
  });

  it('takes the drag that an engineer typed in, shared as the computed one is', () => {
    const shed = tiedShed();
    const instead = [{ what: 'acrossDragLb', of: null, value: 5000, why: 'letter' }] as const;
    const { across, whole, onRows, sumOn } = bench({ ...shed, instead });
    expect(whole.dragLb).toBe(5000);
    const most = Math.max(...across.pushes.map((p) => Math.abs(sumOn(onRows(p)))));
    expect(most).toBeCloseTo(whole.roofLb + 5000, 6);
  });
});
