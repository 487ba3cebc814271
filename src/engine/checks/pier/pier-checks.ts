import { clause } from '../../../data/sources.ts';
import { breaks, judge, notGiven, outside } from '../../check.ts';
import type { CheckRow } from '../../evaluation.ts';
import type { LineResponse } from '../../frame/line-frame.ts';
import { footIndex, type PostChain } from '../../frame/read-response.ts';
import type { PostGeometry } from '../../geometry/shelter.ts';
import { put, type Note } from '../../note.ts';
import type { PierFoot, Project } from '../../project/model.ts';
import { insteadOf } from '../../project/instead.ts';
import { quantity } from '../../units.ts';
import { requiredEmbedment } from '../ground/embedded-post.ts';
import { baseOfPier, padProjection, pierWeight, soilAbovePad, soilReplaced, upliftResistance } from '../ground/pier.ts';
import { soilPressure } from '../ground/soil-pressure.ts';
import { type LineCheckContext } from '../line-context.ts';
import { plainRow, type CheckSite } from '../site-of-check.ts';

/** Pier under every post of an analysed line: pressed down, lifted, pushed along the line. */
export function pierSites(context: LineCheckContext): readonly CheckSite<LineResponse>[] {
  return context.frame.mesh.posts.flatMap((chain) =>
    chain.post.foot.kind === 'pier' ? sitesOf(context, chain, chain.post.foot) : [],
  );
}

/** A footing stands at least this deep in undisturbed ground, frost or none [in]. @source IBC 1809.4, from memory */
const LEAST_DEPTH_IN = 12;

/** Length of the shaft that stands in the ground [in]. */
const buriedIn = (post: PostGeometry, foot: PierFoot): number =>
  Math.min(
    foot.shaft.lengthIn,
    Math.max(0, foot.shaft.lengthIn - ((post.pierTopZIn ?? post.gradeZIn) - post.gradeZIn)),
  );

function sitesOf(context: LineCheckContext, chain: PostChain, foot: PierFoot): readonly CheckSite<LineResponse>[] {
  const { project } = context;
  const { post } = chain;
  const index = footIndex(context.frame.layout, chain);
  const buried = buriedIn(post, foot);
  const soil = project.site.soil;
  const typedWeight = insteadOf(project, 'pierWeightLb', post.id);
  const at = { memberId: post.id, place: { kind: 'whole', name: '' }, purpose: 'strength' } as const;
  const tellFoot = (r: LineResponse, note: Note): void =>
    note({
      symbol: 'N',
      words: 'push of the post on its pier',
      formula: 'N',
      put: [put('N', r.values[index + 1]!, 'lb', 'from the frame analysis, down is plus')],
      result: quantity(r.values[index + 1]!, 'lb'),
      clause: clause('MECHANICS', 'plane frame, first order'),
    });

  /** Of the foot alone: the pole equation takes what its push makes on the way down (own rule). */
  const turning = (r: LineResponse): number => (turns(post) ? Math.abs(r.values[index + 2]!) : 0);
  const tellTurning = (r: LineResponse, words: string, note: Note): void => {
    if (!turns(post)) return;
    note({
      symbol: 'Mf',
      words,
      formula: 'Mf',
      put: [put('Mf', turning(r), 'lb·in', 'from the frame analysis')],
      result: quantity(turning(r), 'lb·in'),
      clause: clause('MECHANICS', 'plane frame, first order'),
    });
  };
  const pressing = (r: LineResponse, note?: Note): number => {
    const own = typedWeight ? typedWeight.value : pierWeight(foot, 'any', note);
    return Math.max(0, r.values[index + 1]! + own - soilReplaced(foot, buried, soil.soilPcf, note));
  };

  const bearing: CheckSite<LineResponse> = {
    ...at,
    ruleId: 'pier.bearing',
    unit: 'psf',
    stops: (r) => {
      if (soil.bearingPsf.value === null) return notGiven({ code: 'soilNotGiven', values: {} });
      if (!turns(post)) return null;
      const pressure = soilPressure(baseOfPier(foot), pressing(r), turning(r));
      return Number.isFinite(pressure) ? null : outside({ code: 'footTips', values: {} });
    },
    demand: (r, note) => {
      if (note) {
        tellFoot(r, note);
        tellTurning(r, 'moment of a foot that is not free to turn, which the base may have to bear', note);
      }
      return soilPressure(baseOfPier(foot), pressing(r, note), turning(r), note);
    },
    capacity: (_, note) => {
      const allowed = soil.bearingPsf.value ?? NaN;
      note?.({
        symbol: 'q',
        words: 'allowable bearing of the soil, with no gain for short loads',
        formula: 'as given',
        put: [put('q', allowed, 'psf', `given by: ${soil.bearingPsf.givenBy}`)],
        result: quantity(allowed, 'psf'),
        clause: clause('IBC', 'Table 1806.2'),
      });
      return allowed;
    },
  };

  const weight = typedWeight ? typedWeight.value : pierWeight(foot, 'tied');
  const above = project.calculation.soilAboveCountsInUplift ? soilAbovePad(foot, buried, soil.soilPcf) : 0;
  const uplift: CheckSite<LineResponse> = {
    ...at,
    ruleId: 'pier.uplift',
    isByDuration: true,
    unit: 'lb',
    demand: (r, note) => {
      if (note) tellFoot(r, note);
      return Math.max(0, -r.values[index + 1]!);
    },
    capacity: (_, note) => {
      if (note && !typedWeight) pierWeight(foot, 'tied', note);
      return upliftResistance(weight, above, note);
    },
  };

  const sideways: CheckSite<LineResponse> = {
    ...at,
    ruleId: 'pier.sideways',
    isByDuration: true,
    unit: 'ft',
    stops: () => (soil.lateralPsfPerFt.value === null ? notGiven({ code: 'soilNotGiven', values: {} }) : null),
    demand: (r, note) => {
      const H = Math.abs(r.values[index]!);
      const height = Math.max(0, post.footZIn - post.gradeZIn);
      note?.({
        symbol: 'P',
        words: 'push of the post foot along the line',
        formula: 'P',
        put: [
          put('P', H, 'lb', 'from the frame analysis'),
          put('h', height, 'in', 'foot of the post above the ground'),
        ],
        result: quantity(H, 'lb'),
        clause: clause('MECHANICS', 'plane frame, first order'),
      });
      if (note)
        tellTurning(
          r,
          'moment of a foot that is not free to turn, added to the push whichever way it acts (safe side)',
          note,
        );
      return requiredEmbedment(
        {
          forceLb: H,
          momentLbIn: H * height + turning(r),
          lateralPsfPerFt: soil.lateralPsfPerFt.value!,
          widthIn: sidewaysWidth(foot),
          doubled: false,
        },
        note,
      );
    },
    capacity: (_, note) => {
      const depth = (buried + (foot.pad?.tied ? foot.pad.thickIn : 0)) / 12;
      note?.({
        symbol: 'd',
        words: 'depth of the pier in the ground',
        formula: 'as drawn',
        put: [put('d', depth, 'ft', 'shaft below finished ground, and a tied pad')],
        result: quantity(depth, 'ft'),
        clause: clause('IBC', '1807.3.2.1'),
      });
      return depth > 0 ? depth : NaN;
    },
  };
  return [bearing, uplift, sideways, ...(turns(post) ? [turningSite(chain, index)] : [])];
}

/** True where the foot is said to hold the post against turning along the line. */
const turns = (post: PostGeometry): boolean => post.foot.fixity.along !== 'pinned';

/** A rating in pounds says nothing of a moment: what the foot's hardware and anchors hold against turning is not given. */
function turningSite(chain: PostChain, index: number): CheckSite<LineResponse> {
  const moment = (r: LineResponse): number => Math.abs(r.values[index + 2]!);
  return {
    ruleId: 'post.footTurning',
    memberId: chain.memberId,
    place: { kind: 'joint', name: 'foot' },
    unit: 'lb·in',
    purpose: 'strength',
    stops: (r) => notGiven({ code: 'footTurningNotRated', values: {} }, quantity(moment(r), 'lb·in')),
    demand: moment,
    capacity: () => NaN,
  };
}

/** Diameter of a round shaft, diagonal of a square one. */
const sidewaysWidth = (foot: PierFoot): number =>
  foot.shaft.shape === 'round' ? foot.shaft.acrossIn : foot.shaft.acrossIn * Math.SQRT2;

/** What no load decides: pad without steel, depth below frost, posts in the ground. */
export function footRows(project: Project, posts: readonly PostGeometry[]): readonly CheckRow[] {
  return posts.flatMap((post): CheckRow[] => {
    const whole = { kind: 'whole', name: '' } as const;
    if (post.foot.kind === 'embedded') {
      return [
        plainRow(
          'pier.embedded',
          post.id,
          whole,
          outside({ code: post.foot.treatment === null ? 'untreatedInSoil' : 'embeddedNotComputed', values: {} }),
        ),
      ];
    }
    const foot = post.foot;
    const rows: CheckRow[] = [];
    if (post.pierTopZIn === null)
      rows.push(
        plainRow('pier.top', post.id, whole, notGiven({ code: 'pierTopNotGiven', values: { post: post.label } })),
      );
    if (foot.pad) {
      const reach = padProjection(foot);
      rows.push(
        plainRow(
          'pier.pad',
          post.id,
          whole,
          reach > foot.pad.thickIn
            ? outside(
                { code: 'padTooWide', values: { reachIn: reach, thickIn: foot.pad.thickIn } },
                quantity(reach, 'in'),
              )
            : judge(quantity(reach, 'in'), quantity(foot.pad.thickIn, 'in')),
        ),
      );
    }
    const frost = project.site.frostDepthIn.value;
    const depth = buriedIn(post, foot) + (foot.pad ? foot.pad.thickIn : 0);
    rows.push(
      plainRow(
        'pier.frost',
        post.id,
        whole,
        frost === null
          ? notGiven({ code: 'frostDepthNotGiven', values: {} })
          : depth > 0
            ? judge(quantity(Math.max(frost, LEAST_DEPTH_IN), 'in'), quantity(depth, 'in'))
            : breaks({ code: 'pierNotInGround', values: { post: post.label } }),
      ),
    );
    return rows;
  });
}
