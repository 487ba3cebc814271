import type { Project, Stock } from '../project/model.ts';
import type { RoundStick, Stick } from './shelter.ts';

/**
 * The stretch of wood that a member uses, from the member's start.
 * Diameters are bark off; the smaller of two callipers counts in both planes (safe side, harsh on oval logs).
 *
 * @param lengthIn length of the member along its axis [in]
 * @param flatIn   planed flat over the full length [in]
 * @returns null when nothing is given (no stock, bark on without its thickness)
 */
export function stickOf(project: Project, stock: Stock | null, lengthIn: number, flatIn = 0): Stick | null {
  if (!stock) return null;
  switch (stock.kind) {
    case 'sawn': {
      const wide = Math.max(stock.breadthIn, stock.depthIn);
      const narrow = Math.min(stock.breadthIn, stock.depthIn);
      const onEdge = stock.lay === 'edge';
      return {
        kind: 'sawn',
        lay: stock.lay,
        plies: stock.plies,
        species: stock.species,
        grade: stock.grade,
        use: stock.use,
        breadthIn: onEdge ? narrow * stock.plies : wide,
        depthIn: onEdge ? wide : narrow * stock.plies,
      };
    }
    case 'typed':
      return { ...stock };
    case 'log': {
      const log = project.logs.find((l) => l.id === stock.logId);
      if (!log || (log.bark === 'on' && log.barkIn === undefined)) return null;
      const bark = log.bark === 'on' ? 2 * (log.barkIn ?? 0) : 0;
      const along = log.stations.map((s) => ({
        fromButtIn: s.fromButtIn,
        diameterIn: Math.min(s.diameterIn, s.acrossIn ?? s.diameterIn) - bark,
      }));
      const stretch = profileBetween(along, stock.fromButtIn, stock.fromButtIn + lengthIn);
      const profile =
        stock.buttAt === 'start'
          ? stretch.map((p) => ({ atIn: p.fromButtIn - stock.fromButtIn, diameterIn: p.diameterIn }))
          : stretch
              .map((p) => ({ atIn: lengthIn - (p.fromButtIn - stock.fromButtIn), diameterIn: p.diameterIn }))
              .reverse();
      return { kind: 'round', logId: log.id, woodId: log.woodId, profile, buttAt: stock.buttAt, flatIn };
    }
  }
}

interface AlongLog {
  readonly fromButtIn: number;
  readonly diameterIn: number;
}

/** Stations between two places on the log, with the ends interpolated; a stretch past the last station ends there. */
function profileBetween(stations: readonly AlongLog[], from: number, to: number): readonly AlongLog[] {
  const first = stations[0]!;
  const last = stations[stations.length - 1]!;
  const start = Math.max(from, first.fromButtIn);
  const end = Math.min(to, last.fromButtIn);
  const inner = stations.filter((s) => s.fromButtIn > start + 1e-9 && s.fromButtIn < end - 1e-9);
  return [interpolated(stations, start), ...inner, interpolated(stations, Math.max(start, end))];
}

function interpolated(stations: readonly AlongLog[], at: number): AlongLog {
  for (let i = 1; i < stations.length; i++) {
    const a = stations[i - 1]!;
    const b = stations[i]!;
    if (at <= b.fromButtIn || i === stations.length - 1) {
      const t =
        b.fromButtIn === a.fromButtIn
          ? 0
          : Math.min(1, Math.max(0, (at - a.fromButtIn) / (b.fromButtIn - a.fromButtIn)));
      return { fromButtIn: at, diameterIn: a.diameterIn + t * (b.diameterIn - a.diameterIn) };
    }
  }
  return { fromButtIn: at, diameterIn: stations[0]!.diameterIn };
}

/** Where the wood of a stick ends, from the member's start [in]. */
export function woodEndsAt(stick: RoundStick): number {
  return stick.profile[stick.profile.length - 1]?.atIn ?? 0;
}

/** Mean diameter over the stick, by length [in]. */
export function meanDiameter(stick: RoundStick): number {
  let area = 0;
  for (let i = 1; i < stick.profile.length; i++) {
    const a = stick.profile[i - 1]!;
    const b = stick.profile[i]!;
    area += ((a.diameterIn + b.diameterIn) / 2) * (b.atIn - a.atIn);
  }
  const length = woodEndsAt(stick) - (stick.profile[0]?.atIn ?? 0);
  return length > 0 ? area / length : (stick.profile[0]?.diameterIn ?? 0);
}

/** Depth of a stick square to the roof or the load, for heights only; a typed section has none [in]. */
export function nominalDepth(stick: Stick | null): number {
  if (!stick || stick.kind === 'typed') return 0;
  return stick.kind === 'sawn' ? stick.depthIn : meanDiameter(stick) - stick.flatIn;
}
