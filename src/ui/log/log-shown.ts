import type { Shelter } from '../../engine/geometry/shelter.ts';
import { cutsOfMember, shapedEnds, type CutHere, type ShapedEnd } from '../../engine/cuts-of-member.ts';
import type { Log, LogStock, Project } from '../../engine/project/model.ts';
import { stickOfMember } from '../../engine/section-of-member.ts';

/** A measured place of a log with the wood's diameter, bark off, the smaller of two callipers. */
export interface ShownStation {
  readonly fromButtIn: number;
  readonly diameterIn: number;
}

/** One log as it lies with its butt to the left, and the piece that is made of it. */
export interface LogShown {
  readonly log: Log;
  readonly stations: readonly ShownStation[];
  readonly lengthIn: number;
  /** what the piece uses, from the butt */
  readonly used: readonly [fromIn: number, toIn: number];
  /** a distance from the piece's start, as a distance from the butt, and back */
  readonly fromButt: (atIn: number) => number;
  readonly alongPiece: (fromButtIn: number) => number;
  readonly flatIn: number;
  readonly cuts: readonly CutHere[];
  /** ends that are cut to lie against another log */
  readonly ends: readonly ShapedEnd[];
}

/** null where the piece is not a round log, or its bark was not measured. */
export function logShown(
  project: Project,
  shelter: Shelter,
  memberId: string,
  log: Log,
  stock: LogStock,
): LogShown | null {
  const stick = stickOfMember(shelter, memberId);
  const first = stick?.kind === 'round' ? stick.profile[0] : undefined;
  const last = stick?.kind === 'round' ? stick.profile.at(-1) : undefined;
  if (stick?.kind !== 'round' || !first || !last) return null;
  const barkIn = log.bark === 'on' ? 2 * (log.barkIn ?? 0) : 0;
  const stations = log.stations.map((s) => ({
    fromButtIn: s.fromButtIn,
    diameterIn: Math.min(s.diameterIn, s.acrossIn ?? s.diameterIn) - barkIn,
  }));
  // either way the distances along piece and log differ by a constant, with the sign in which the piece lies
  const isAhead = stock.buttAt === 'start';
  const buttEndIn = Math.max(stock.fromButtIn, stations[0]?.fromButtIn ?? 0);
  const fromButt = (atIn: number): number => buttEndIn + (isAhead ? atIn - first.atIn : last.atIn - atIn);
  const alongPiece = (fromButtIn: number): number =>
    isAhead ? first.atIn + fromButtIn - buttEndIn : last.atIn - (fromButtIn - buttEndIn);
  return {
    log,
    stations,
    lengthIn: stations.at(-1)?.fromButtIn ?? 0,
    used: [buttEndIn, buttEndIn + last.atIn - first.atIn],
    fromButt,
    alongPiece,
    flatIn: stick.flatIn,
    cuts: cutsOfMember(project, shelter, memberId),
    ends: shapedEnds(shelter, memberId),
  };
}

/** Wood diameter straight between the stations; of the nearest end beyond them. */
export function diameterOn({ stations }: Pick<LogShown, 'stations'>, fromButtIn: number): number {
  const after = stations.findIndex((s) => s.fromButtIn >= fromButtIn);
  const b = stations[after < 0 ? stations.length - 1 : after]!;
  const a = stations[after - 1];
  if (!a || after < 0) return b.diameterIn;
  const t = (fromButtIn - a.fromButtIn) / (b.fromButtIn - a.fromButtIn);
  return a.diameterIn + t * (b.diameterIn - a.diameterIn);
}
