import { clause } from '../../../data/sources.ts';
import { notGiven, outside, type Verdict } from '../../check.ts';
import type { SawnStick } from '../../geometry/shelter.ts';
import { stickOf } from '../../geometry/sticks.ts';
import { sawnValues } from '../../material/sawn-values.ts';
import type { DesignValues } from '../../material/values.ts';
import { message } from '../../message.ts';
import { put, type Note } from '../../note.ts';
import { quantity } from '../../units.ts';
import { checkSource, plainSource, type CheckSource } from '../check-source.ts';
import type { CheckSite } from '../site-of-check.ts';
import { adjustedBending, bendingStress } from '../wood/bending.ts';
import { durationFactor } from '../wood/duration.ts';
import { rectangularPushAndBending } from '../wood/interaction.ts';
import { adjustedShear, rectangularShearStress } from '../wood/shear.ts';
import { refused, unasked, type RoofCheckContext } from './context.ts';
import { onFixing, type LedgerResponse } from './ledger-forces.ts';
import type { LedgerAsks, LedgerAsksKnown } from './ledger-report.ts';
import { spanMoment, widestGap, widthInShear } from './ledger-span.ts';
import { otherAxisBending } from './purlin-bending.ts';
import { HELD, rollingOver } from './rolling-over.ts';

const STICK_RULES = ['ledger.bending', 'ledger.shear'] as const;

/** A sawn ledger between its fixings. */
interface LedgerStick extends LedgerAsksKnown {
  readonly spacingIn: number;
  readonly stick: SawnStick;
  readonly values: DesignValues;
}

/** The ledger itself as a beam from fixing to fixing, or why it cannot be asked. */
export function ledgerStickSource(context: RoofCheckContext, asks: LedgerAsks): CheckSource {
  const judged = judgedStick(context, asks);
  return 'stick' in judged
    ? checkSource({ responses: judged.responses, sites: [bendingSite(judged), shearSite(judged)] })
    : plainSource(unasked(STICK_RULES, asks.line.id, judged));
}

function judgedStick({ project, shelter }: RoofCheckContext, asks: LedgerAsks): LedgerStick | Verdict {
  const { line } = asks;
  if (!asks.ok) return asks.verdict;
  const stick = stickOf(project, line.stock, line.toXIn - line.fromXIn);
  if (!stick) {
    const { label } = shelter.lines.find(({ id }) => id === line.id)!;
    return notGiven(message('memberNotGiven', { member: `ledger ${label}` }));
  }
  if (stick.kind !== 'sawn') return outside(message('ledgerNotSawn'));
  const answer = sawnValues(stick);
  if (!answer.ok) return refused(answer);
  if (line.fixingSpacingIn === null) return notGiven(message('ledgerSpacingNotGiven'));
  return { ...asks, spacingIn: line.fixingSpacingIn, stick, values: answer.values };
}

const plumbPlf = (r: LedgerResponse): number => Math.max(r.downPlf, r.upPlf);

type Site = CheckSite<LedgerResponse>;

const baseOf = ({ line }: LedgerStick, ruleId: Site['ruleId']) =>
  ({ ruleId, memberId: line.id, place: { kind: 'whole', name: '' }, purpose: 'strength' }) as const;

/**
 * Bending of a ledger down or up and outward at once, each as a simple span between fixings. It is held sideways at its
 * fixings only; sticks side by side do not act as one about their wide faces; no gain for lying flat (safe side).
 * @source NDS 3.9.2 without push; 3.3.3
 */
function bendingSite(ledger: LedgerStick): Site {
  const { rafters, spacingIn, stick, values } = ledger;
  const gapIn = widestGap(rafters);
  const isOnEdge = stick.lay === 'edge';
  const wideIn = isOnEdge ? stick.depthIn : stick.breadthIn;
  const thickIn = (isOnEdge ? stick.breadthIn : stick.depthIn) / stick.plies;
  const otherFbPsi = otherAxisBending(stick, values);
  const [edgeFbPsi, faceFbPsi] = isOnEdge ? [values.FbPsi, otherFbPsi] : [otherFbPsi, values.FbPsi];
  const whole = { breadthIn: thickIn * stick.plies, depthIn: wideIn };
  const rolling = (r: LedgerResponse, note?: Note) =>
    whole.depthIn > whole.breadthIn
      ? rollingOver(whole, { ...values, FbPsi: edgeFbPsi }, spacingIn, 'any', r.combination.durationFactor, note)
      : HELD;
  return {
    ...baseOf(ledger, 'ledger.bending'),
    unit: '1',
    stops: (r) => (rolling(r).outside ? outside(message('rollsOver')) : null),
    demand: (r, note) => {
      const CD = r.combination.durationFactor;
      if (note) {
        for (const step of values.steps('Fb')) note(step);
        durationFactor(r.combination.duration, note);
      }
      const plumb = spanMoment(plumbPlf(r), spacingIn, gapIn, PLUMB, note);
      const outward = spanMoment(r.outPlf, spacingIn, gapIn, OUTWARD, note);
      const [edgeM, faceM] = isOnEdge ? [plumb, outward] : [outward, plumb];
      const { CL, FbE } = rolling(r, note);
      const edge = {
        fbPsi: bendingStress(edgeM, modulus(EDGE, stick.plies, thickIn, wideIn, note), note),
        FbAllowablePsi: adjustedBending(edgeFbPsi, CD, CL, 1, note),
        FcEPsi: Infinity,
      };
      const face = {
        fbPsi: bendingStress(faceM, modulus(FACE, stick.plies, wideIn, thickIn, note), note),
        FbAllowablePsi: adjustedBending(faceFbPsi, CD, 1, 1, note),
        FcEPsi: Infinity,
      };
      // past what it may be bent on edge the row fails already, and the sum is told straight
      const isPast = edge.fbPsi > edge.FbAllowablePsi;
      return rectangularPushAndBending(0, values.FcPsi, edge, face, isPast ? Infinity : FbE, note);
    },
    capacity: () => 1,
  };
}

const PLUMB = { symbol: 'M', words: 'moment between two fixings, down or up' } as const;
const OUTWARD = { symbol: 'Mo', words: 'moment between two fixings, outward' } as const;
const EDGE = 'section modulus for load on the narrow face';
const FACE = 'section modulus for load on the wide face, each stick by itself';

function modulus(words: string, plies: number, acrossIn: number, alongIn: number, note?: Note): number {
  const modulusIn3 = (plies * acrossIn * alongIn ** 2) / 6;
  note?.({
    symbol: 'S',
    words,
    formula: 'n × b × d^2 / 6',
    put: [
      put('n', plies, '1', 'sticks side by side'),
      put('b', acrossIn, 'in', 'across the load'),
      put('d', alongIn, 'in', 'along the load'),
    ],
    result: quantity(modulusIn3, 'in3'),
    clause: clause('MECHANICS', 'rectangle'),
  });
  return modulusIn3;
}

/**
 * Shear of a ledger beside a fixing, by the resultant of what comes down or up and outward.
 * @source NDS 3.4.2. Loads within one depth of the fixing are not left out (safe side).
 */
function shearSite(ledger: LedgerStick): Site {
  const { rafters, spacingIn, stick, values } = ledger;
  const knownWidthIn = widthInShear(rafters, spacingIn);
  return {
    ...baseOf(ledger, 'ledger.shear'),
    unit: 'psi',
    demand: (r, note) => {
      const widthIn = note ? widthInShear(rafters, spacingIn, note) : knownWidthIn;
      const plf = Math.hypot(plumbPlf(r), r.outPlf);
      const shearLb = onFixing(plf, widthIn);
      note?.({
        symbol: 'V',
        words: 'shear beside a fixing',
        formula: 'sqrt(p^2 + o^2) × w / 12',
        put: [
          put('p', plumbPlf(r), 'lb/ft', 'down or up on each foot of ledger'),
          put('o', r.outPlf, 'lb/ft', 'outward on each foot of ledger'),
          put('w', widthIn, 'in', 'width of roof in shear'),
        ],
        result: quantity(shearLb, 'lb'),
        clause: clause('MECHANICS', 'force per foot times width'),
      });
      return rectangularShearStress(shearLb, stick.breadthIn, stick.depthIn, note);
    },
    capacity: (r, note) => {
      if (note) {
        for (const step of values.steps('Fv')) note(step);
        durationFactor(r.combination.duration, note);
      }
      return adjustedShear(values.FvPsi, r.combination.durationFactor, note);
    },
  };
}
