import { RULES, type RuleId } from '../../data/rules.ts';

/** Rules that ask the hardware of a joint. What only the wood answers where two pieces touch stands with the checks. */
const JOINT_RULES: ReadonlySet<RuleId> = new Set([
  'sheet.uplift',
  'sheet.slide',
  'purlin.tie',
  'purlin.slide',
  'purlin.together',
  'rafter.tie',
  'rafter.tieAlong',
  'rafter.tieAcross',
  'rafter.tieTogether',
  'ledger.fixing',
  'strip.tie',
  'strip.along',
  'strip.across',
  'strip.together',
  'beam.tie',
  'beam.tieAlong',
  'beam.tieAcross',
  'beam.tieTogether',
  'beam.splice',
  'brace.tie',
  'brace.tieAcross',
  'tie.pulled',
  'tie.pressed',
  'tie.hung',
  'tie.along',
  'tie.together',
  'post.foot',
  'post.footPush',
  'post.footAlong',
  'post.footAcross',
  'post.footTogether',
  'post.footTurning',
]);

export const isJointRule = (ruleId: RuleId): boolean => JOINT_RULES.has(ruleId);

/** Pier checks have a table of their own beside the reactions. */
export const isPierRule = (ruleId: RuleId): boolean => RULES[ruleId].link === 'pier';
