import { STAGES, type StageId } from '../../data/loads/raising.ts';
import type { Assembled } from '../assemble.ts';
import { assembledOf } from '../assembled.ts';
import { heldBack, unknownLoads } from '../checks/unknown-loads.ts';
import type { CheckRow } from '../evaluation.ts';
import { guarded } from '../guarded.ts';
import { fault, message, type Fault, type Message } from '../message.ts';
import { stepsOf, type Step } from '../note.ts';
import type { Project } from '../project/model.ts';
import { bracedPost, type BracedPost } from './braced-post.ts';
import { holderOf, type Holder } from './holders.ts';
import { standingAt, whyNoFigures, type Standing } from './standing.ts';
import type { Way } from './wind-on-post.ts';

/** One direction at a stage. */
export interface StageWay {
  /** wind on all that stands, allowable-stress level [lb] */
  readonly windLb: number;
  readonly holders: readonly Holder[];
  /** posts of lines that nothing else holds that way by what is computed: each needs temporary braces; hardest first */
  readonly braced: readonly BracedPost[];
}

/** The shelter half way up: what each direction asks, or why there are no figures. */
export interface RaisingStage {
  readonly id: StageId;
  readonly ways: Readonly<Record<Way, StageWay>> | null;
  readonly reason: Message | null;
  /** by what is computed nothing else is needed to hold it sideways, both ways */
  readonly holdsItself: boolean;
}

/** Which force is asked about. */
export interface RaisingPlace {
  readonly stage: StageId;
  readonly way: Way;
  readonly postId: string;
}

export type RaisingAnswer =
  | { readonly ok: true; readonly stages: readonly RaisingStage[] }
  | { readonly ok: false; readonly faults: readonly Fault[] };

/**
 * Every stage of raising the shelter with the wind on what stands then and the temporary braces that it needs, by the
 * full wind of the site. Total: never throws.
 * @param angleDeg  of the temporary braces with the ground, above 0 and below 90 [deg]
 * @source ASCE7 29.4, 2.4.1; own rules in DEVELOPERS.md
 */
export function raisingStages(project: Project, angleDeg: number): RaisingAnswer {
  return guarded(() => {
    const assembled = assembledOf(project);
    if ('faults' in assembled) return { ok: false, faults: assembled.faults };
    const blank = whyNoWind(assembled);
    if (blank) return { ok: false, faults: [blank] };
    const rows = heldBack(
      assembled.sources.flatMap((s) => s.rows()),
      unknownLoads(assembled.site, assembled.form),
    );
    return { ok: true, stages: STAGES.map((id) => stageOf(id, assembled, rows, angleDeg)) };
  });
}

function whyNoWind({ site }: Assembled): Fault | null {
  if (site.figures.velocityPressure.value !== null) return null;
  const blank = site.missing.find(({ path }) => /^site\.(windMph|exposure|kzt|ke)$/.test(path));
  return blank ?? fault('site.windMph', 'missingWindSpeed');
}

function stageOf(id: StageId, assembled: Assembled, rows: readonly CheckRow[], angleDeg: number): RaisingStage {
  const standing = standingAt(id, assembled);
  const reason = whyNoStage(standing, assembled);
  if (reason) return { id, ways: null, reason, holdsItself: false };
  const along = stageWay(standing, assembled, rows, 'along', angleDeg);
  const across = stageWay(standing, assembled, rows, 'across', angleDeg);
  return {
    id,
    ways: { along, across },
    reason: null,
    holdsItself: [along, across].every((w) => w.braced.length === 0),
  };
}

const whyNoStage = (standing: Standing, assembled: Assembled): Message | null =>
  whyNoFigures(standing) ?? (standing.id === 'roof' ? whyNoRoofWind(assembled) : null);

/** Without a figure for the roof its level push is not known, without an analysis not what it lifts. */
function whyNoRoofWind({ form, site, lines }: Assembled): Message | null {
  if (form === null) return message('roofFormNotCovered');
  const slope = site.outside.find((o) => o.ruleId === 'site.roofForm')?.reason;
  return slope ?? lines.find((l) => !l.isAnalysed)?.report.reason ?? null;
}

function stageWay(
  standing: Standing,
  assembled: Assembled,
  rows: readonly CheckRow[],
  way: Way,
  angleDeg: number,
): StageWay {
  const { shelter } = assembled;
  const lines = shelter.lines.filter((line) => line.kind === 'frame' && line.postIds.length > 0);
  const holders = lines.flatMap((line) => holderOf(standing, assembled, line, way, rows) ?? []);
  const posts = shelter.posts.map((post) => ({ post, braced: bracedPost(standing, assembled, post, way, angleDeg) }));
  const isHeld = (lineId: string): boolean => holders.some((h) => h.lineId === lineId && h.whyNot === null);
  return {
    windLb: posts.reduce((sum, { braced }) => sum + braced.windLb, 0),
    holders,
    braced: posts
      .filter(({ post }) => !isHeld(post.line))
      .map(({ braced }) => braced)
      .sort((a, b) => b.braceLb - a.braceLb),
  };
}

/** How the force in a temporary brace comes about; empty where it has no figure. */
export function raisingSteps(assembled: Assembled, place: RaisingPlace, angleDeg: number): readonly Step[] {
  const standing = standingAt(place.stage, assembled);
  const post = assembled.shelter.posts.find((p) => p.id === place.postId);
  if (!post || whyNoWind(assembled) || whyNoStage(standing, assembled)) return [];
  return stepsOf((note) => bracedPost(standing, assembled, post, place.way, angleDeg, note)).steps;
}
