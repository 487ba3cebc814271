import type { RuleId } from '../../../data/rules.ts';
import type { PurlinGeometry } from '../../geometry/shelter.ts';
import { notGiven, type Verdict } from '../../check.ts';
import { message } from '../../message.ts';
import { plainSource, type CheckSource } from '../check-source.ts';
import type { JudgedSections } from '../judged-sections.ts';
import { alikeSets, alikeSource, nearly } from './alike.ts';
import { snowCases } from '../../loads/snow-cases.ts';
import { handCut, raftersOn, refused, unasked, weightProblem, writtenPlane, type RoofCheckContext } from './context.ts';
import { purlinLoading, purlinZone, type PurlinLoading } from './purlin-loading.ts';
import { purlinSeatSite } from './purlin-seat.ts';
import { purlinStickSites, type JudgedStick } from './purlin-stick.ts';
import { purlinTieSites } from './purlin-tie.ts';

const STICK_RULES: readonly RuleId[] = ['purlin.bending', 'purlin.shear', 'purlin.sag', 'purlin.seat'];
const TIE_RULES: readonly RuleId[] = ['purlin.tie', 'purlin.slide'];

/** Every rule of every purlin. */
export function purlinChecks(context: RoofCheckContext): readonly CheckSource[] {
  return alikeSets(context.shelter.purlins, (p) => likeness(context, p)).flatMap((alike): readonly CheckSource[] => {
    const ids = alike.map((p) => p.id);
    const plain = (ruleIds: readonly RuleId[], verdict: Verdict): CheckSource =>
      plainSource(ids.flatMap((id) => unasked(ruleIds, id, verdict)));
    const purlin = alike[0]!;
    const problem = loadProblem(context, purlin);
    if (problem) return [plain([...STICK_RULES, ...TIE_RULES], problem)];
    const loading = purlinLoading(context, purlin);
    const judged = judgedStick(context, purlin);
    const { responses, wind } = loading;
    const sites = [
      ...('verdict' in judged ? [] : [...purlinStickSites(loading, judged), purlinSeatSite(context, loading, judged)]),
      ...(wind.ok ? purlinTieSites(context, loading) : []),
    ];
    return [
      { ...alikeSource({ responses, sites }, ids), sections: judgedLogs(loading, judged, ids) },
      ...('verdict' in judged ? [plain(STICK_RULES, judged.verdict)] : []),
      ...(wind.ok ? [] : [plain(TIE_RULES, refused(wind))]),
    ];
  });
}

function likeness(context: RoofCheckContext, p: PurlinGeometry): unknown {
  const { project, site } = context;
  const [rafter] = raftersOn(context, p.plane);
  return [
    p.plane,
    purlinZone(context, p),
    p.stick,
    nearly(p.tributaryWidthIn),
    p.fromXIn,
    p.toXIn,
    // joints, cuts and typed values of its own
    project.joints.own.filter((joint) => joint.key.split('/')[1] === p.id),
    project.cuts.filter((cut) => cut.member === p.id),
    project.instead.filter((i) => i.of === p.id),
    project.ownLoads.filter(({ where }) => where.on === 'member' && where.member === p.id),
    // what lies on the roof lies on some purlins of it
    project.ownLoads.some(({ where }) => where.on === 'plane') ? p.upSlopeIn : null,
    rafter && snowCases(site, 1).map((c) => nearly(c.onPurlin(p, rafter))),
  ];
}

/** What judges the sections of alike log purlins; none where the stick is no log or is not judged. */
function judgedLogs(
  loading: PurlinLoading,
  judged: ReturnType<typeof judgedStick>,
  memberIds: readonly string[],
): readonly JudgedSections[] {
  if ('verdict' in judged || judged.values === null || judged.stick.kind !== 'round') return [];
  const { stick, values } = judged;
  return [{ of: 'purlins', memberIds, loading, stick, values }];
}

function loadProblem(context: RoofCheckContext, purlin: PurlinGeometry): Verdict | null {
  if (raftersOn(context, purlin.plane).length === 0) return notGiven(message('memberNotGiven', { member: 'rafters' }));
  const { dead } = writtenPlane(context, purlin.plane);
  const isHeld = dead.by === 'total' && dead.includes.includes('purlins');
  return isHeld ? null : weightProblem(context, purlin);
}

function judgedStick(context: RoofCheckContext, purlin: PurlinGeometry): JudgedStick | { readonly verdict: Verdict } {
  const { stick } = purlin;
  const cut = handCut(context, purlin);
  if (cut) return { verdict: cut };
  if (!stick) return { verdict: notGiven(message('memberNotGiven', { member: purlin.label })) };
  if (stick.kind === 'typed') return { stick, values: null };
  const answer = context.valuesOf(purlin.id);
  return answer.ok ? { stick, values: answer.values } : { verdict: refused(answer) };
}
