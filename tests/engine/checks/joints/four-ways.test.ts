import { describe, expect, it } from 'vitest';
import { evaluate } from '../../../../src/engine/evaluate.ts';
import type { CheckRow, Evaluation } from '../../../../src/engine/evaluation.ts';
import { meanDiameter } from '../../../../src/engine/geometry/sticks.ts';
import type { Stick } from '../../../../src/engine/geometry/shelter.ts';
import type { Project } from '../../../../src/engine/project/model.ts';
import { plainShed } from '../../../support/plain-shed.ts';
import { plainRoof, rate, ratioIn, rowOf, shedWith, stepsOf } from '../roof/roof.ts';

const LIVE = '3-roofLive+roof-live';
const WIND = '5+wind-down-clear';
const RATED_LB = 1000;
/** Rise 4 in 12. */
const cos = 3 / Math.sqrt(10);
const sin = 1 / Math.sqrt(10);

/** Purlins 24 in. apart over rafters 36 in. apart; 4 psf dead, 20 psf live, least wind; see `plainRoof`. */
const roof = shedWith((raw) => {
  plainRoof(4)(raw);
  rate(raw, 'sheetPurlin', { alongLb: RATED_LB });
  rate(raw, 'purlinRafter', { pullLb: 500, acrossLb: RATED_LB }, 1.25);
  rate(raw, 'rafterStrip', { alongLb: RATED_LB });
  rate(raw, 'stripBeam', { alongLb: RATED_LB });
});

describe('a roof slides, presses and is blown along', () => {
  // By hand: dead 4 psf of the slope, live 20 psf of level area; (4 + 20 cos) sin on each square foot of slope.
  const slidePsf = (4 + 20 * cos) * sin;
  // A purlin that runs over its rafters brings an inner one 1.25 times its share of 36 in.
  const heldFt = (1.25 * 36) / 12;

  // proof [sheet.slide]: closed-form - part of a plumb load along a slope
  it('[sheet.slide] is the part along the slope of what lies on 24 in. of sheet, for each foot', () => {
    // roof live lasts seven days, CD 1.25, on a rating that holds 1.6
    const rating = (RATED_LB * 1.25) / 1.6;
    expect(ratioIn(rowOf(roof, 'sheet.slide/plane-1/whole'), LIVE)).toBeCloseTo((slidePsf * 2) / rating, 9);
  });

  // proof [purlin.slide]: closed-form - part of a plumb load along a slope, over the length that a crossing holds
  it('[purlin.slide] is that part over the length of purlin that a crossing holds', () => {
    const row = rowOf(roof, 'purlin.slide/purlin-3/whole');
    expect(ratioIn(row, LIVE)).toBeCloseTo((slidePsf * 2 * heldFt) / RATED_LB, 9);
  });

  // ASCE 7-16 Table 4.3-1 (from memory): 300 lb on 30 in. square, of which a strip of level roof 24 cos wide has its part.
  it('[purlin.slide] holds a person who stands right over the crossing', () => {
    const row = rowOf(roof, 'purlin.slide/purlin-3/whole');
    const person = 300 * ((24 * cos) / 30) * sin;
    const dead = 4 * sin * 2 * heldFt;
    expect(ratioIn(row, '3-roofLive+person-span')).toBeCloseTo((person + dead) / RATED_LB, 9);
  });

  // proof [purlin.seat]: closed-form - press of a purlin over the area where two flat sticks cross
  it('[purlin.seat] presses the part square to the slope on breadth times breadth', () => {
    const row = rowOf(roof, 'purlin.seat/purlin-3/whole');
    const steps = stepsOf(roof, 'purlin.seat/purlin-3/whole', LIVE);
    expect(steps.find((s) => s.symbol === 'P')!.result.value).toBeCloseTo((4 + 20 * cos) * cos * 2 * heldFt, 9);
    expect(steps.find((s) => s.symbol === 'A')!.result.value).toBeCloseTo(3.5 * 1.5, 12);
    expect(row.status).toBe('pass');
  });

  // proof [purlin.together]: closed-form - never under either direction alone, never over their sum
  it('[purlin.together] lies between the worse of pull and slide and their sum', () => {
    const [pull, slide, both] = ['tie', 'slide', 'together'].map(
      (name) => rowOf(roof, `purlin.${name}/purlin-3/whole`).ratio!,
    );
    expect(both!).toBeGreaterThanOrEqual(Math.max(pull!, slide!) - 1e-12);
    expect(both!).toBeLessThanOrEqual(pull! + slide! + 1e-12);
  });

  // ASCE 7-16 27.1.5 (from memory): at least 16 psf; 60 mph make less. Of six rafters 5.5 in. deep and one purlin's edge of
  // 1.5 in. each of two lines takes half their length of 120 / cos; a rafter has a sixth of it; wind counts 0.6.
  const along = 0.6 * 16 * ((120 / cos / 2) * (5.5 + 1.5 / 6)) * (1 / 144);

  // proof [rafter.tieAlong]: closed-form - least wind on half the broad side of a rafter
  it('[rafter.tieAlong] is the wind on half the broad side of a rafter', () => {
    const row = rowOf(roof, 'rafter.tieAlong/rafter-2/line-low');
    expect(ratioIn(row, WIND) * RATED_LB).toBeCloseTo(along, 6);
  });

  // proof [strip.along]: closed-form - what the rafter of one place hands on
  it('[strip.along] is what one rafter hands on', () => {
    expect(ratioIn(rowOf(roof, 'strip.along/line-low/whole'), WIND) * RATED_LB).toBeCloseTo(along, 6);
  });
});

describe('a frame is blown across', () => {
  /** So little wind that the least pressure of 16 psf counts (ASCE 7-16 27.1.5, from memory). */
  const still = (project: Project): Evaluation => {
    const site = { ...project.site, windMph: { ...project.site.windMph, value: 40 } };
    const answer = evaluate({ ...project, site });
    if (!answer.ok) throw new Error(JSON.stringify(answer.faults));
    return answer.evaluation;
  };
  const demandOf = ({ checks }: Evaluation, key: string): number => find(checks, key).demand!.value;
  const find = (checks: readonly CheckRow[], key: string): CheckRow => checks.find((c) => c.key === key)!;
  const widthOf = (stick: Stick | null): number => (stick?.kind === 'round' ? meanDiameter(stick) : NaN);

  // proof [brace.tieAcross]: closed-form - half of an even load on a simple beam
  it('[brace.tieAcross] takes half the wind on a brace that lies on a flat', () => {
    const flat = still(plainShed({ braceEnd: { kind: 'flat', depthIn: 0.5 } }));
    const brace = flat.shelter.braces[0]!;
    const half = (0.6 * 16 * brace.lengthIn * widthOf(brace.stick)) / 144 / 2;
    expect(demandOf(flat, `brace.tieAcross/${brace.id}/top`)).toBeCloseTo(half, 6);
    expect(demandOf(flat, `brace.tieAcross/${brace.id}/post`)).toBeCloseTo(half, 6);
  });

  it('[brace.tieAcross] is not asked of a housed or saddled end, which holds by its shape', () => {
    for (const kind of ['housed', 'coped'] as const) {
      const { checks } = still(plainShed({ braceEnd: { kind, depthIn: 1 } }));
      expect(checks.filter((c) => c.ruleId === 'brace.tieAcross')).toEqual([]);
    }
  });

  // proof [post.footAcross]: closed-form - half of an even load on a simple beam
  it('[post.footAcross] takes half the wind on a post whose top the building holds', () => {
    const held = still(plainShed());
    const post = held.shelter.posts[0]!;
    const half = (0.6 * 16 * (post.seatZIn - post.footZIn) * widthOf(post.stick)) / 144 / 2;
    expect(demandOf(held, `post.footAcross/${post.id}/foot`)).toBeCloseTo(half, 6);
  });

  it('[post.footAcross] is not given while nobody says what holds the shelter across', () => {
    const shed = plainShed();
    const open = still({ ...shed, lateral: { ...shed.lateral, across: [{ by: null }] } });
    const row = find(open.checks, `post.footAcross/${open.shelter.posts[0]!.id}/foot`);
    expect([row.status, row.reason!.code]).toEqual(['notGiven', 'footAcrossNotKnown']);
  });
});
