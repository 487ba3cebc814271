import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { STAGES, type StageId } from '../../../src/data/loads/raising.ts';
import { assemble, type Assembled } from '../../../src/engine/assemble.ts';
import type { Project } from '../../../src/engine/project/model.ts';
import { explainRaising } from '../../../src/engine/stages/explain.ts';
import { raisingStages, type RaisingStage, type StageWay } from '../../../src/engine/stages/raising-stages.ts';
import { standingAt } from '../../../src/engine/stages/standing.ts';
import { weightOnPost } from '../../../src/engine/stages/weight-on-post.ts';
import type { Way } from '../../../src/engine/stages/wind-on-post.ts';
import { EXAMPLES, exampleText, soundProject } from '../../support/files.ts';
import { BEAM_LOG_IN, lineId, plainShed, postId, POST_LOG_IN, WEIGHT } from '../../support/plain-shed.ts';
import { randomProject } from '../../support/random-project.ts';
import { loadBench } from '../frame/line-bench.ts';
import { PATIENCE_MS, runs } from '../whole/whole.ts';
import { standingProject } from '../whole/standing-project.ts';

const WAYS: readonly Way[] = ['along', 'across'];

/** Nobody has said what holds it, so that every post asks for temporary braces at every stage. */
const unheld = (project: Project): Project => ({ ...project, lateral: { along: [], across: [] } });

function stagesOf(project: Project, angleDeg = 45): ReadonlyMap<StageId, RaisingStage> {
  const answer = raisingStages(project, angleDeg);
  if (!answer.ok) throw new Error(JSON.stringify(answer.faults));
  return new Map(answer.stages.map((stage) => [stage.id, stage]));
}

function wayOf(project: Project, stage: StageId, way: Way): StageWay {
  const ways = stagesOf(project).get(stage)!.ways;
  if (!ways) throw new Error(`no figures for ${stage}`);
  return ways[way];
}

const braceOn = (found: StageWay, post: string): number => found.braced.find((b) => b.postId === post)!.braceLb;

function assembled(project: Project): Assembled {
  const found = assemble(project);
  if ('faults' in found) throw new Error(JSON.stringify(found.faults));
  return found;
}

describe('posts alone', () => {
  // By hand, ASCE 7-16 29.4 with Table 29.4-2 at a solidity between 0.1 and 0.3: a round post with D sqrt(q) over 2.5 has a
  // coefficient of 0.9; gust factor 0.85, never under 16 psf (27.1.5, that figure from memory). Six tenths of it (2.4.1) act at
  // half height; the brace meets the post at two thirds of the way from foot to seat.
  it('ask of a brace what the wind on the bare post turns over', () => {
    const project = unheld(plainShed());
    const { shelter, site } = loadBench(project);
    const q = site.figures.velocityPressure.value!;
    const post = shelter.posts.find(({ id }) => id === postId(0, 0))!;
    const mean = 9 - post.lengthIn / POST_LOG_IN / 2;
    expect((mean / 12) * Math.sqrt(q)).toBeGreaterThan(2.5);
    const psf = Math.max(q * 0.85 * 0.9, 16);
    const heightIn = post.axisZIn - 7;
    const windMoment = (0.6 * ((psf * heightIn * mean) / 144) * heightIn) / 2;
    // one person who leans on the top: 50 lb (ASCE 37-14, 4.4, from memory)
    const moment = Math.max(windMoment, 50 * (post.seatZIn - 7));
    const expected = moment / ((2 / 3) * (post.seatZIn - 7) * Math.SQRT1_2);
    for (const way of WAYS) {
      expect(braceOn(wayOf(project, 'posts', way), post.id)).toBeCloseTo(expected, 6);
      expect(wayOf(project, 'posts', way).windLb).toBeGreaterThan(4 * 0.6 * ((psf * 80 * mean) / 144));
    }
  });

  it('say where the stakes go: on level ground as far away as the brace is high, at 45 degrees', () => {
    const [first] = wayOf(unheld(plainShed()), 'posts', 'along').braced;
    expect(first!.stakeAwayIn).toBeCloseTo(first!.braceAtIn, 9);
    expect(first!.braceLengthIn).toBeCloseTo(Math.SQRT2 * first!.braceAtIn, 9);
  });
});

describe('the finished roof', () => {
  it('is pushed along each line as hard as its frame is analysed for', () => {
    const project = unheld(plainShed());
    const along = [0, 1].reduce(
      (sum, line) => sum + loadBench(project, lineId(line)).loading.loads.alongLb['wind-along-plus-A-clear']!,
      0,
    );
    expect(wayOf(project, 'roof', 'along').windLb).toBeCloseTo(0.6 * along, 6);
  });

  it('is pushed along no less than an engineer has typed', () => {
    const instead = [{ what: 'swayAreaFt2', of: lineId(0), value: 400, why: 'measured on a drawing' }] as const;
    const { shelter, loading } = loadBench({ ...plainShed(), instead });
    const typed = wayOf(unheld({ ...plainShed(), instead }), 'roof', 'along');
    const onA = typed.braced.filter((b) => shelter.posts.find((p) => p.id === b.postId)!.line === lineId(0));
    expect(onA.reduce((sum, b) => sum + b.windLb, 0)).toBeCloseTo(
      0.6 * loading.loads.alongLb['wind-along-plus-A-clear']!,
      6,
    );
  });

  // The level part of the roof's wind may come to either line (own rule): both lines together get it twice.
  it('pushes across on every line with all of its level part', () => {
    const project = unheld(plainShed());
    const [rafters, roof] = (['rafters', 'roof'] as const).map((id) => wayOf(project, id, 'across').windLb);
    const plane = loadBench(project).shelter.planes[0]!;
    const rise = ((plane.highZIn - plane.lowZIn) * (plane.toXIn - plane.fromXIn)) / 144;
    // at least 16 psf on the rise of the roof (27.1.5, from memory), on two lines
    expect(roof!).toBeGreaterThan(wayOf(project, 'braces', 'across').windLb + 0.6 * 2 * 16 * rise);
    expect(roof!).toBeGreaterThan(rafters!);
  });
});

describe('weight that presses on the feet', () => {
  const frustum = (a: number, b: number, length: number): number => (Math.PI * length * (a * a + a * b + b * b)) / 12;

  // Volume times density: a beam of 192 in. that loses 2 in. in 240 in., and two posts up to their seats.
  it('is that of the logs that stand, by volume, each on the post under it', () => {
    const project = unheld(plainShed());
    const found = assembled(project);
    const posts = found.shelter.posts.filter((p) => p.line === lineId(0));
    const density = WEIGHT.light / 1728;
    const alone = posts.map((p) => weightOnPost(standingAt('posts', found), p).light);
    posts.forEach((p, i) => {
      const length = p.seatZIn - p.footZIn;
      expect(alone[i]! / (density * frustum(9, 9 - length / POST_LOG_IN, length))).toBeCloseTo(1, 2);
    });
    const withBeam = posts.reduce((sum, p) => sum + weightOnPost(standingAt('beams', found), p).light, 0);
    const beam = density * frustum(12, 12 - (192 * 2) / BEAM_LOG_IN, 192);
    expect((withBeam - alone[0]! - alone[1]!) / beam).toBeCloseTo(1, 2);
  });

  // Moments of a beam of even weight about its right post: an overhang of 60 in. past the left post of a 120 in. span.
  it('comes to a post by the lever, so that an overhang relieves the post behind it', () => {
    const shed = plainShed({ beamEndsIn: [-60, 120], postXsIn: [0, 120], beamDiametersIn: [10, 10] });
    const found = assembled(shed);
    const own = (post: string): number => {
      const at = found.shelter.posts.find((p) => p.id === post)!;
      const [bare, laid] = (['posts', 'beams'] as const).map((id) => weightOnPost(standingAt(id, found), at).heavy);
      return laid! - bare!;
    };
    const weight = ((WEIGHT.heavy * Math.PI * 100) / 4 / 1728) * 180;
    expect(own(postId(0, 0)) / ((weight * 90) / 120)).toBeCloseTo(1, 6);
    expect(own(postId(0, 1)) / ((weight * 30) / 120)).toBeCloseTo(1, 6);
  });

  // Two equal spans that run through: 3/8 w L on an end post, 10/8 w L in the middle.
  it('counts on an end post of a beam over three posts no more than runs down there', () => {
    const shed = plainShed({ postXsIn: [0, 72, 144], beamEndsIn: [0, 144], beamDiametersIn: [10, 10], bracesAt: [] });
    const found = assembled(shed);
    const at = found.shelter.posts.find((p) => p.id === postId(0, 0))!;
    const [bare, laid] = (['posts', 'beams'] as const).map((id) => weightOnPost(standingAt(id, found), at).light);
    const perInch = (WEIGHT.light * Math.PI * 100) / 4 / 1728;
    expect((laid! - bare!) / ((3 / 8) * perInch * 72)).toBeCloseTo(1, 6);
  });
});

describe('what holds it by itself', () => {
  const demo = soundProject(exampleText('firewood-shed'));

  it('is nothing while posts or posts and beam stand on pinned feet', () => {
    for (const id of ['posts', 'beams'] as const)
      for (const way of WAYS) {
        const found = wayOf(demo, id, way);
        expect(found.holders).toEqual([]);
        expect(found.braced).toHaveLength(4);
      }
  });

  it('is knee braces along the lines once they are on and every check of them passes, never across', () => {
    for (const id of ['braces', 'rafters'] as const) {
      const { along, across } = stagesOf(demo).get(id)!.ways!;
      expect(along.holders.map(({ by, whyNot }) => [by, whyNot])).toEqual([
        ['kneeBraces', null],
        ['kneeBraces', null],
      ]);
      expect(along.braced).toEqual([]);
      expect(across.braced).toHaveLength(4);
      expect(stagesOf(demo).get(id)!.holdsItself).toBe(false);
    }
  });

  it('does not count knee braces whose joints nobody has rated', () => {
    const unrated = { ...demo, joints: { defaults: [], own: [] } };
    const { holders, braced } = wayOf(unrated, 'braces', 'along');
    expect(holders.map(({ whyNot }) => whyNot?.code)).toEqual(['raisingNotPassed', 'raisingNotPassed']);
    expect(braced).toHaveLength(4);
  });

  it('does not count fixed feet of posts that stand alone', () => {
    const fixed = plainShed({ fixity: 'fixed', bracesAt: [] });
    const project: Project = { ...fixed, lateral: { along: [{ by: 'embeddedPosts' }], across: [] } };
    const { holders, braced } = wayOf(project, 'posts', 'along');
    expect(holders.map(({ whyNot }) => whyNot?.code)).toEqual(['raisingFeet', 'raisingFeet']);
    expect(braced).toHaveLength(4);
  });

  it('is the building beside it once the roof is on and its rating passes', () => {
    const rated = plainShed();
    expect(wayOf(rated, 'rafters', 'across').holders).toEqual([]);
    expect(wayOf(rated, 'roof', 'across').holders.map(({ by }) => by)).toEqual(['building', 'building']);
    const weak: Project = {
      ...rated,
      lateral: { ...rated.lateral, across: [{ by: 'building', ratedLb: 1, givenBy: 'x' }] },
    };
    expect(wayOf(weak, 'roof', 'across').braced).toHaveLength(4);
  });
});

describe('stages one after another', () => {
  it(
    'never ask less of a brace than the one before, and never give a number that is none',
    () => {
      fc.assert(
        fc.property(standingProject(), fc.constantFrom(30, 45, 60), (project, angleDeg) => {
          const answer = raisingStages(unheld(project), angleDeg);
          if (!answer.ok) return;
          for (const way of WAYS) {
            const found = answer.stages.flatMap(({ ways }) => ways?.[way] ?? []);
            found.slice(1).forEach((later, i) => {
              const before = found[i]!;
              expect(later.windLb).toBeGreaterThanOrEqual(before.windLb * (1 - 1e-9));
              for (const { postId: id, braceLb } of later.braced)
                expect(braceLb).toBeGreaterThanOrEqual(braceOn(before, id) * (1 - 1e-9));
            });
            const figures = found.flatMap((f) => f.braced.flatMap((b) => Object.values(b)));
            expect(figures.filter((v) => typeof v === 'number' && !(Number.isFinite(v) && v >= 0))).toEqual([]);
          }
        }),
        { seed: 12, numRuns: runs(12, 400), endOnFailure: true },
      );
    },
    PATIENCE_MS,
  );

  it(
    'answer for any project, with figures or with a reason',
    () => {
      fc.assert(
        fc.property(randomProject(), (project) => {
          const answer = raisingStages(project, 45);
          const stages = answer.ok ? answer.stages : [];
          expect(stages.map(({ id }) => id)).toEqual(answer.ok ? STAGES : []);
          expect(answer.ok || answer.faults.length > 0).toBe(true);
          expect(stages.filter(({ ways, reason }) => (ways === null) !== (reason !== null))).toEqual([]);
        }),
        { seed: 13, numRuns: runs(12, 400), endOnFailure: true },
      );
    },
    PATIENCE_MS,
  );

  it('ask more of a stronger wind', () => {
    const at = (mph: number): Project => {
      const shed = unheld(plainShed());
      return { ...shed, site: { ...shed.site, windMph: { ...shed.site.windMph, value: mph } } };
    };
    for (const id of STAGES)
      for (const way of WAYS) expect(wayOf(at(140), id, way).windLb).toBeGreaterThan(wayOf(at(115), id, way).windLb);
  });

  it('have no figures while the wind is not given, or a size in the wind is not known', () => {
    const shed = plainShed();
    const calm = { ...shed, site: { ...shed.site, windMph: { ...shed.site.windMph, value: null } } };
    expect(raisingStages(calm, 45)).toMatchObject({ ok: false, faults: [{ path: 'site.windMph' }] });
    const bare = { ...shed, groups: shed.groups.map((g) => (g.role === 'beam' ? { ...g, stock: null } : g)) };
    const answer = raisingStages(bare, 45);
    expect(answer.ok && answer.stages.map(({ reason }) => reason?.code ?? null)).toEqual([
      null,
      ...Array.from({ length: 4 }, () => 'memberNotGiven'),
    ]);
  });

  it('answer an angle that cannot be with a fault', () => {
    expect(raisingStages(plainShed(), 90).ok).toBe(false);
  });
});

describe('explaining a temporary brace', () => {
  it.each(EXAMPLES)('of %s ends at the very figures of its stage', (name) => {
    const project = soundProject(exampleText(name));
    let asked = 0;
    for (const [stage, { ways }] of stagesOf(project, 60))
      for (const way of WAYS) {
        const hardest = ways?.[way].braced[0];
        if (!hardest) continue;
        asked++;
        const steps = explainRaising(project, 60, { stage, way, postId: hardest.postId });
        const told = new Map(steps.map((step) => [step.symbol, step.result.value]));
        expect([told.get('T'), told.get('H'), told.get('U'), told.get('W')]).toEqual([
          hardest.braceLb,
          hardest.footLb,
          hardest.liftLb,
          hardest.windLb,
        ]);
      }
    expect(asked).toBeGreaterThan(3);
  });

  it('is empty for a post that is not there', () => {
    const project = soundProject(exampleText('firewood-shed'));
    expect(explainRaising(project, 45, { stage: 'posts', way: 'along', postId: 'nobody' })).toEqual([]);
  });
});
