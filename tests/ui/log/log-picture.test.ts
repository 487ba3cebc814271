import { describe, expect, it } from 'vitest';
import { stockOf } from '../../../src/engine/project/traits.ts';
import { onScreen } from '../../../src/ui/drawing/paper.ts';
import { diameterOn, logShown } from '../../../src/ui/log/log-shown.ts';
import { sideOfCut } from '../../../src/ui/log/log-cuts.ts';
import { knotPlace } from '../../../src/ui/log/log-knots.ts';
import { outlineOf } from '../../../src/ui/log/log-outline.ts';
import { logPicture } from '../../../src/ui/log/log-picture.ts';
import { leftOfCircle } from '../../../src/ui/log/section-picture.ts';
import { evaluate } from '../../../src/engine/evaluate.ts';
import { exampleText, soundProject } from '../../support/files.ts';

const project = soundProject(exampleText('firewood-shed'));
const answer = evaluate(project);
if (!answer.ok) throw new Error('the demo has faults');
const { shelter } = answer.evaluation;

function shown(memberId: string) {
  const member = project.members.find(({ id }) => id === memberId)!;
  const stock = stockOf(project, member);
  if (stock?.kind !== 'log') throw new Error(`${memberId} is no log`);
  const log = project.logs.find(({ id }) => id === stock.logId)!;
  return logShown(project, shelter, memberId, log, stock)!;
}

describe('a log as it lies, butt to the left', () => {
  // file: beam-high uses log-1 from 12 in. on, butt at its left end; beam-low log-2 from 4 in. on, butt at its right end
  it('counts from the butt whichever way the piece lies', () => {
    const high = shown('beam-high');
    expect(high.fromButt(0)).toBe(12);
    expect(high.alongPiece(12)).toBe(0);
    const low = shown('beam-low');
    const length = low.used[1] - low.used[0];
    expect(low.used[0]).toBe(4);
    expect(low.fromButt(length)).toBeCloseTo(4, 9);
    expect(low.fromButt(0)).toBeCloseTo(4 + length, 9);
    expect(low.alongPiece(low.fromButt(50))).toBeCloseTo(50, 9);
  });

  // stations 13.5 at 0, the smaller calliper 12.5 at 120, 11.75 at 252; straight between
  it('takes the smaller calliper, straight between stations', () => {
    const high = shown('beam-high');
    expect(diameterOn(high, 60)).toBeCloseTo(13, 9);
    expect(diameterOn(high, 186)).toBeCloseTo((12.5 + 11.75) / 2, 9);
    const whole = outlineOf({ ...high, cuts: [] });
    expect(whole[0]).toEqual([0, 6.75]);
    expect(whole).toHaveLength(6);
  });

  // even log of 10 in., 100 in. long; the piece lies from 10 to 90 with its start at the butt's side
  const even = {
    stations: [0, 100].map((fromButtIn) => ({ fromButtIn, diameterIn: 10 })),
    used: [10, 90] as const,
    fromButt: (atIn: number) => 10 + atIn,
    flatIn: 0,
  };
  const cut = { kind: 'dap', madeBy: 'hand', atIn: 30, lengthIn: 4, depthIn: 1 } as const;

  it('steps in where a cut lies above or below, and runs out where a cut does', () => {
    const top = outlineOf({ ...even, cuts: [{ ...cut, angleDeg: 0 }] });
    expect(top.slice(0, 6)).toEqual([
      [0, 5],
      [38, 5],
      [38, 4],
      [42, 4],
      [42, 5],
      [100, 5],
    ]);
    const mouth = outlineOf({ ...even, cuts: [{ ...cut, angleDeg: 180, deepestAtIn: 29 }] });
    expect(mouth.slice(2)).toEqual([
      [100, -5],
      [42, -5],
      [39, -4],
      [38, -5],
      [0, -5],
    ]);
    expect(outlineOf({ ...even, cuts: [{ ...cut, angleDeg: 90 }] })).toHaveLength(4);
  });

  it('is planed over the piece alone, and cut from there', () => {
    const planed = outlineOf({ ...even, flatIn: 0.5, cuts: [{ ...cut, angleDeg: 0 }] });
    expect(planed.slice(1, 5)).toEqual([
      [10, 5],
      [10, 4.5],
      [38, 4.5],
      [38, 3.5],
    ]);
  });

  it('lets a cut reach no farther than the piece', () => {
    const end = outlineOf({ ...even, cuts: [{ ...cut, atIn: 79, angleDeg: 0 }] });
    expect(end.slice(1, 5)).toEqual([
      [87, 5],
      [87, 4],
      [90, 4],
      [90, 5],
    ]);
  });

  it('is drawn to one scale along, and thick enough for a thumb', () => {
    const drawn = logPicture(shown('beam-high'), {
      paper: onScreen(366, 400),
      showLength: String,
      showDiameter: String,
      name: 'beam A',
      marks: [],
      needed: null,
    });
    const [butt, tip] = [drawn.at(0, 0), drawn.at(252, 0)];
    expect(tip.x - butt.x).toBeCloseTo(252 * drawn.scale, 6);
    expect(drawn.at(0, -6.75).y - drawn.at(0, 6.75).y).toBeGreaterThanOrEqual(44);
    expect(drawn.at(0, -6.75).y - drawn.at(0, 6.75).y).toBeCloseTo(13.5 * drawn.scale * drawn.times, 6);
  });

  it('puts the worst foot where it was written down, else at the thinnest station', () => {
    const { log, stations } = shown('beam-high');
    expect(knotPlace({ log, stations })).toBe(252);
    const { seen } = log;
    expect(knotPlace({ log: { ...log, seen: seen && { ...seen, knotAtFromButtIn: 90 } }, stations })).toBe(90);
  });

  it('sees a cut from above, from below or on the face by its angle', () => {
    expect([0, 340, 180, 150, 90, -90, -180].map((angleDeg) => sideOfCut({ angleDeg }))).toEqual([
      'top',
      'top',
      'bottom',
      'bottom',
      'face',
      'face',
      'bottom',
    ]);
  });
});

describe('a section', () => {
  const areaOf = (points: readonly { readonly x: number; readonly y: number }[]): number =>
    Math.abs(
      points.reduce((sum, p, i) => {
        const next = points[(i + 1) % points.length]!;
        return sum + (p.x * next.y - next.x * p.y) / 2;
      }, 0),
    );
  // circle less a segment of depth t: R2 acos((R - t) / R) - (R - t) sqrt(2 R t - t2) is gone (plane geometry)
  const segment = (R: number, t: number): number =>
    R * R * Math.acos((R - t) / R) - (R - t) * Math.sqrt(2 * R * t - t * t);

  it('is a circle less a segment for each cut, on its side', () => {
    const left = leftOfCircle(12, [
      { angleDeg: 180, depthIn: 1 },
      { angleDeg: 0, depthIn: 1.5 },
    ]);
    // a polygon of 96 sides lacks 0.07 % of its circle
    expect(areaOf(left) / (36 * Math.PI - segment(6, 1) - segment(6, 1.5))).toBeCloseTo(1, 2);
    expect(Math.min(...left.map((p) => p.y))).toBeCloseTo(-5, 9);
    expect(Math.max(...left.map((p) => p.y))).toBeCloseTo(4.5, 9);
  });

  it('has nothing left where a cut goes through', () => {
    expect(leftOfCircle(8, [{ angleDeg: 90, depthIn: 8.1 }])).toEqual([]);
  });
});
