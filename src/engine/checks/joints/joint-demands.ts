import type { RuleId } from '../../../data/rules.ts';
import type { CheckRow, Evaluation } from '../../evaluation.ts';
import { message, type Message } from '../../message.ts';
import type { MessageCode } from '../../../data/words/en.ts';
import type { JointKind } from '../../project/model.ts';
import type { JointSetting } from './joint-setting.ts';
import type { JointPart } from './rated.ts';

/** What is asked of a joint in one direction: the row that computes it, or why there is none. */
export type JointDemand =
  { readonly asked: true; readonly row: CheckRow } | { readonly asked: false; readonly reason: Message };

export type JointDemands = Readonly<Record<JointPart, JointDemand>>;

/** Which rule asks a direction, and why none of its rows may be there; or why no rule does. */
type Where = { readonly rule: RuleId; readonly otherwise: MessageCode } | { readonly because: MessageCode };
type Ways = Readonly<Record<JointPart, Where>>;

const by = (rule: RuleId, otherwise: MessageCode = 'jointNotAsked'): Where => ({ rule, otherwise });
const because = (code: MessageCode): Where => ({ because: code });

const SHEET: Ways = {
  push: because('sheetPressedBySpan'),
  pull: by('sheet.uplift'),
  along: by('sheet.slide'),
  across: because('sheetAcrossNotAsked'),
};
const RAFTER: Ways = {
  push: by('rafter.seat'),
  pull: by('rafter.tie'),
  along: by('rafter.tieAlong'),
  across: by('rafter.tieAcross', 'levelHeldElsewhere'),
};
const BRACE: Ways = {
  push: by('brace.bearing'),
  pull: by('brace.tie'),
  along: by('brace.shoulder'),
  across: by('brace.tieAcross', 'heldByShape'),
};

/** Which rule asks which direction of a joint. */
const ASKED_BY: Readonly<Record<JointKind, Ways>> = {
  sheetPurlin: SHEET,
  sheetRafter: SHEET,
  purlinRafter: {
    push: by('purlin.seat'),
    pull: by('purlin.tie'),
    along: because('purlinAlongNotAsked'),
    across: by('purlin.slide'),
  },
  rafterStrip: RAFTER,
  rafterLedger: RAFTER,
  rafterRafter: {
    push: because('ridgeBeamCarries'),
    pull: because('ridgeBeamCarries'),
    along: because('ridgeBeamCarries'),
    across: because('ridgeBeamCarries'),
  },
  stripBeam: {
    push: because('stripPressedThrough'),
    pull: by('strip.tie'),
    along: by('strip.along'),
    across: by('strip.across', 'levelHeldElsewhere'),
  },
  ledgerWall: {
    push: because('ledgerPressesWall'),
    pull: by('ledger.fixing'),
    along: by('ledger.fixing'),
    across: by('ledger.fixing'),
  },
  beamPost: {
    push: by('beam.seat'),
    pull: by('beam.tie'),
    along: by('beam.tieAlong'),
    across: by('beam.tieAcross'),
  },
  // what presses the halves together, hangs on them or pushes across goes into the post by the seat of each
  beamSplice: {
    push: by('beam.tieAlong'),
    pull: by('beam.splice'),
    along: by('beam.seat'),
    across: by('beam.tieAcross'),
  },
  bracePost: BRACE,
  braceTop: BRACE,
  tiePost: {
    push: by('tie.pressed', 'transverseNotComputed'),
    pull: by('tie.pulled', 'transverseNotComputed'),
    along: by('tie.along', 'transverseNotComputed'),
    across: by('tie.hung', 'transverseNotComputed'),
  },
  postFoot: {
    push: by('post.footPush', 'standsOnItsPier'),
    pull: by('post.foot'),
    along: by('post.footAlong'),
    across: by('post.footAcross'),
  },
};

/** The four demands of a joint, as the checks of a shelter found them. */
export function demandsOf(setting: JointSetting, evaluation: Pick<Evaluation, 'checks' | 'lines'>): JointDemands {
  const ways = ASKED_BY[setting.kind];
  const demand = (part: JointPart): JointDemand => demandAt(ways[part], setting, evaluation);
  return { push: demand('push'), pull: demand('pull'), along: demand('along'), across: demand('across') };
}

function demandAt(
  where: Where,
  setting: JointSetting,
  { checks, lines }: Pick<Evaluation, 'checks' | 'lines'>,
): JointDemand {
  if ('because' in where) return { asked: false, reason: message(where.because) };
  const rows = checks.filter((c) => c.ruleId === where.rule && c.memberId === setting.upper.id);
  const found = placesOf(setting).flatMap((place) => rows.find((c) => placeName(c) === place) ?? [])[0];
  if (found) return { asked: true, row: found };
  const blocked = lines.find((l) => !l.stands && l.lineId === setting.lineId);
  return { asked: false, reason: blocked?.reason ?? message(where.otherwise) };
}

/** Rows of one joint stand at its own place, by its kind, or for all alike on their member. */
const placesOf = ({ place, kind }: JointSetting): readonly string[] => [place, kind, 'whole'];

const placeName = ({ place }: CheckRow): string => (place.name === '' ? place.kind : place.name);

/** Rules that ask a kind of joint in several directions at once: they decide its ratio, but are no force of one direction. */
const TOGETHER: Readonly<Partial<Record<JointKind, readonly RuleId[]>>> = {
  purlinRafter: ['purlin.together'],
  rafterStrip: ['rafter.tieTogether'],
  rafterLedger: ['rafter.tieTogether'],
  stripBeam: ['strip.together'],
  beamPost: ['beam.tieTogether'],
  tiePost: ['tie.together'],
  postFoot: ['post.footTogether', 'post.footTurning'],
};
export const togetherRules = (kind: JointKind): readonly RuleId[] => TOGETHER[kind] ?? [];

/** The rows that ask a joint in several directions at once: its own, else those of all alike on its upper member. */
export function togetherOf({ kind, upper, place }: JointSetting, checks: readonly CheckRow[]): readonly CheckRow[] {
  const rules = togetherRules(kind);
  const here = checks.filter((row) => rules.includes(row.ruleId) && row.memberId === upper.id);
  const own = here.filter((row) => row.place.name === place);
  return own.length > 0 ? own : here;
}
