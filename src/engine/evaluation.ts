import type { Check, Status } from './check.ts';
import type { JudgedSections } from './checks/judged-sections.ts';
import type { BuckledLine } from './frame/buckled-shape.ts';
import type { Shelter } from './geometry/shelter.ts';
import type { Fault, Message } from './message.ts';
import type { DesignValues } from './material/values.ts';
import type { Unit } from './units.ts';

/** What `evaluate` answers. Total: a sound project gives figures, an impossible one gives faults with their paths. */
export type EvaluateAnswer =
  { readonly ok: true; readonly evaluation: Evaluation } | { readonly ok: false; readonly faults: readonly Fault[] };

export interface Evaluation {
  readonly formatVersion: 1;
  readonly fingerprint: string;
  readonly programVersion: string;
  readonly dataVersion: string;
  readonly shelter: Shelter;
  readonly loads: LoadReport;
  /** by log id, or by stock key for sawn sticks */
  readonly logs: readonly LogReport[];
  readonly lines: readonly LineReport[];
  /** frames across the lines, none where something else holds the shelter */
  readonly rows: readonly RowReport[];
  /** what every ledger brings to its wall */
  readonly ledgers: readonly LedgerReport[];
  /** worst row of each key, in the order of the load path */
  readonly checks: readonly CheckRow[];
  /** what judged the sections of round members; `thinnestLogs` asks it how thin they might be */
  readonly sections: readonly JudgedSections[];
  readonly counts: Readonly<Record<Status, number>>;
  /** checks that pass with a stated departure */
  readonly departures: number;
  /** largest unbalanced force over applied force in any solved state */
  readonly residual: number;
  /** assumptions that the person should read, for screen and sheet */
  readonly assumptions: readonly Message[];
}

export interface CheckRow extends Check {
  /** ratio in every combination and scenario; NaN where the rule asked nothing. Labels are shared: `combination|scenario` */
  readonly ratios: { readonly labels: readonly string[]; readonly values: Float64Array };
  /** diameter to spare (+) or missing (-) at the governing section with today's forces held [in]; null where it has no meaning */
  readonly spareIn: number | null;
  /** what makes the ratio grow while the wood is thinned and forces are held: capacity falls with this power of the diameter */
  readonly thins: { readonly diameterIn: number; readonly power: number } | null;
  /** capacity less demand where it is a force [lb] */
  readonly spareLb: number | null;
}

export type ReportedValues = Omit<DesignValues, 'steps'>;

export interface LogReport {
  readonly logId: string;
  readonly memberIds: readonly string[];
  /** `explainValues` tells how they came about */
  readonly values: ReportedValues | null;
  readonly reason: Message | null;
  /** what the strength ratio is held back by */
  readonly heldBackBy: Message | null;
}

/** One number of the site; null where a value it needs is not given. `explainPressures` tells how it came about. */
export interface PressureReport {
  readonly name: string;
  readonly value: number | null;
  readonly unit: Unit;
}

export interface CombinationReport {
  readonly id: string;
  readonly words: Message;
  readonly duration: number;
  readonly factors: Readonly<Record<string, number>>;
}

export interface LoadReport {
  readonly pressures: readonly PressureReport[];
  readonly gustFactor: number;
  readonly flows: readonly string[];
  readonly cases: readonly { readonly id: string; readonly kind: string; readonly words: Message }[];
  readonly combinations: readonly CombinationReport[];
  /** does not apply, and why */
  readonly leftOut: readonly Message[];
}

/** Along one frame line: what the drawing hatches and the sheet prints. */
export interface LineReport {
  readonly lineId: string;
  readonly stands: boolean;
  readonly reason: Message | null;
  readonly posts: readonly PostReactions[];
  /** of every beam on every post, made when read; absent where the line is not analysed */
  readonly seats?: readonly SeatPushes[];
  /** members in the plane of the line: stations along each with the greatest and least of N, V, M and the moves */
  readonly members: readonly MemberEnvelope[];
  /** greatest forces of members and braces with what brings them, made when read; absent where the line is not analysed */
  readonly extremes?: readonly MemberExtremes[];
  readonly braces: readonly {
    readonly braceId: string;
    readonly greatestPushLb: number;
    readonly greatestPullLb: number;
  }[];
  /** sideways force that the line must be held against where it does not hold itself, worst combination [lb] */
  readonly holdingLb: number;
  /** how it buckles soonest, made when read; null where nothing is pushed or the line is not analysed */
  readonly buckled: BuckledLine | null;
}

/** A row of posts that holds the shelter across, as a frame line is reported: what is along in it lies across. */
export interface RowReport {
  readonly rowId: string;
  readonly label: string;
  readonly postIds: readonly string[];
  readonly tieIds: readonly string[];
  /** that its braces run to, where they do */
  readonly rafterIds?: readonly string[];
  /** null where its forces are not known */
  readonly frame: LineReport | null;
}

/** What a ledger brings to the wall it hangs on, the hardest foot of it. */
export interface LedgerReport {
  readonly lineId: string;
  /** in the order down, up, out, along; empty where they are not known */
  readonly forces: readonly LedgerForce[];
  /** why forces are not known, or may still grow: loads of the site that are missing; null where they are whole */
  readonly reason: Message | null;
}

/** The greatest force of one way, allowable-stress level. */
export interface LedgerForce {
  /** out is away from the wall */
  readonly way: 'down' | 'up' | 'out' | 'along';
  /** on each foot of ledger [lb/ft] */
  readonly plf: number;
  /** on each fixing; null while their spacing is not given [lb] */
  readonly onFixingLb: number | null;
  /** the combination that asks it; '' where none does */
  readonly combinationId: string;
}

export interface PostReactions {
  readonly postId: string;
  readonly byCombination: Readonly<
    Record<
      string,
      {
        readonly verticalLb: number;
        readonly alongLb: number;
        readonly momentLbIn: number;
        /** without sign; null while nobody knows what reaches the foot across */
        readonly acrossLb: number | null;
      }
    >
  >;
  readonly greatestDownLb: number;
  readonly greatestUpLb: number;
  readonly greatestAlongLb: number;
  /** null while nobody knows what reaches the foot across the lines */
  readonly greatestAcrossLb: number | null;
}

/** What a beam does on one of its posts, combination by combination: worst of the brace models, each part on its own. */
export interface SeatPushes {
  readonly beamId: string;
  readonly postId: string;
  readonly byCombination: Readonly<
    Record<string, { readonly leastDownLb: number; readonly twistLbIn: number; readonly alongLb: number }>
  >;
}

/** The greatest forces of one member, each by itself; they need not belong to one instant. */
export interface MemberExtremes {
  readonly memberId: string;
  readonly extremes: readonly ForceExtreme[];
}

/** The greatest (or, of those below zero, the least) of a force along a member, allowable-stress level. */
export interface ForceExtreme {
  readonly force: 'axial' | 'shear' | 'moment';
  readonly side: 'most' | 'least';
  /** axial: pull + [lb]; shear [lb]; moment: sagging + [lb·in] */
  readonly value: number;
  /** from the member's start; null of a brace, which has one force all along [in] */
  readonly atIn: number | null;
  readonly combinationId: string;
  /** how the braces were taken */
  readonly scenario: string;
}

export interface MemberEnvelope {
  readonly memberId: string;
  /** distance from the member's start, both faces of a jump listed */
  readonly atIn: readonly number[];
  readonly axialMaxLb: readonly number[];
  readonly axialMinLb: readonly number[];
  readonly shearMaxLb: readonly number[];
  readonly shearMinLb: readonly number[];
  readonly momentMaxLbIn: readonly number[];
  readonly momentMinLbIn: readonly number[];
  /** largest sag under dead + snow or live, down positive [in] */
  readonly sagIn: readonly number[];
  /** bending stress over allowable at each station, worst combination */
  readonly bendingRatio: readonly number[];
}
