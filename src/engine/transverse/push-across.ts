import { acrossForce, levelAcross } from '../loads/across.ts';
import { windOnGoods } from '../loads/goods.ts';
import type { RoofCase } from '../loads/roof-cases.ts';
import { solidsAcross } from '../loads/solids-across.ts';
import type { Givens } from '../givens.ts';
import { pushId } from './case-ids.ts';

/** What the wind across brings to one frame line beside the roof's level part, strength level [lb]. */
export interface WindOnLine {
  readonly beamLb: number;
  readonly postsLb: ReadonlyMap<string, number>;
  readonly goodsLb: number;
}

/** A push across the lines in one way of holding it, strength level, toward +y. */
export interface PushAcross {
  readonly id: string;
  /** the load case that it comes with */
  readonly comesWith: string;
  /** the line that holds the level part of the roof's wind here; null where nothing hangs on it */
  readonly holder: string | null;
  readonly toward: 1 | -1;
  /** at the level of each line's beams [lb] */
  readonly atBeamLb: ReadonlyMap<string, number>;
  /** so many times the wind on each line's posts and goods acts toward +y */
  readonly windTimes: number;
}

/** Pushes across the lines, and the wind on each line that they are multiples of. */
export interface PushesAcross {
  readonly pushes: readonly PushAcross[];
  readonly windOn: (lineId: string) => WindOnLine;
}

/** One per cent of the dead load, or the earthquake, that every line brings across [lb]. */
export interface InertiaAcross {
  readonly kind: 'notional' | 'seismic';
  readonly byLine: ReadonlyMap<string, number>;
}

const CALM: WindOnLine = { beamLb: 0, postsLb: new Map(), goodsLb: 0 };

/**
 * Everything that pushes across, case by case: wind with the level part of the roof whole on every line that may hold it, one
 * at a time; what is solid on its own line; at least the least push of an open building; then one per cent or the earthquake.
 * A case of wind pushes both ways: with the roof's level part, the drag beside it; and against it, by what the drag or the
 * least push then leaves. What a line brings that has no post in a frame goes where the roof's level part is held: its rafters
 * hand it over (own rule).
 * @param inFrames  lines with posts in frames across
 * @source ASCE7 27.3.2, 29.4, 27.1.5, 1.4.1; own rule as said
 */
export function pushesAcross(givens: Givens, inFrames: readonly string[], inertia: InertiaAcross): PushesAcross {
  const windOn = windOnLines(givens);
  const whole = acrossForce(givens.project, givens.shelter, givens.site, givens.roof, givens.runOf, 0);
  const lines = [...windOn.keys()];
  const dragLb = lines.reduce((sum, id) => sum + wholeOf(windOn.get(id)!), 0);
  const typed = givens.project.instead.some((i) => i.what === 'acrossDragLb');
  const scale = typed && dragLb > 0 ? whole.dragLb / dragLb : 1;
  const context: Setting = {
    givens,
    inFrames,
    holders: holdersOf(givens, inFrames),
    windOn,
    scale,
    dragLb: whole.dragLb,
    leastLb: whole.leastLb,
  };
  const wind = givens.roof
    .filter((c) => c.kind === 'wind' && c.windAlong === 0)
    .flatMap((c) => ([1, -1] as const).flatMap((way) => windPushes(context, c, way)));
  const shaken = ([1, -1] as const).flatMap((toward) => inertiaPushes(context, inertia, toward));
  return { pushes: [...wind, ...shaken], windOn: (id) => windOn.get(id) ?? CALM };
}

interface Setting {
  readonly givens: Givens;
  readonly inFrames: readonly string[];
  /** one entry for each way of holding: the holding line of every plane, null where another than ours holds it */
  readonly holders: readonly ReadonlyMap<string, string | null>[];
  readonly windOn: ReadonlyMap<string, WindOnLine>;
  readonly scale: number;
  readonly dragLb: number;
  readonly leastLb: number;
}

const wholeOf = ({ beamLb, postsLb, goodsLb }: WindOnLine): number =>
  beamLb + goodsLb + [...postsLb.values()].reduce((a, b) => a + b, 0);

function windOnLines({ project, shelter, site }: Givens): ReadonlyMap<string, WindOnLine> {
  const solids = solidsAcross(shelter, site);
  return new Map(
    shelter.lines.map((line) => {
      const own = solids.filter((s) => s.line === line.id);
      const beamLb = own.reduce((sum, s) => (s.postId === null ? sum + s.forceLb : sum), 0);
      const postsLb = new Map(own.flatMap((s) => (s.postId === null ? [] : [[s.postId, s.forceLb] as const])));
      return [line.id, { beamLb, postsLb, goodsLb: windOnGoods(project, shelter, site, 'side', line.id) }];
    }),
  );
}

/** Who may hold the level part of each plane: one way after the other, each plane by its next line. */
function holdersOf({ project }: Givens, inFrames: readonly string[]): Setting['holders'] {
  const ofPlane = project.roofPlanes.map((plane) => {
    const ours = plane.onLines.filter((id) => inFrames.includes(id));
    const named = plane.horizontalHeldBy;
    if (ours.includes(named)) return { id: plane.id, may: [named] };
    const isElsewhere = project.supportLines.some((l) => l.id === named && l.kind === 'ledger');
    return { id: plane.id, may: isElsewhere ? [] : ours };
  });
  const ways = Math.max(1, ...ofPlane.map(({ may }) => may.length));
  return Array.from(
    { length: ways },
    (_, k) => new Map(ofPlane.map(({ id, may }) => [id, may[Math.min(k, may.length - 1)] ?? null])),
  );
}

function windPushes(c: Setting, roofCase: RoofCase, way: 1 | -1): readonly PushAcross[] {
  const { givens, scale, dragLb, leastLb } = c;
  return c.holders.flatMap((holders, k): PushAcross[] => {
    const levels = givens.shelter.planes.flatMap((plane) => {
      const holder = holders.get(plane.id) ?? null;
      return holder === null ? [] : [{ holder, lb: levelAcross(givens.shelter, plane, roofCase, givens.runOf) }];
    });
    const roofLb = levels.reduce((sum, level) => sum + level.lb, 0);
    const isWithRoof = way * roofLb > 0 || (roofLb === 0 && way === (roofCase.windAcross ?? 1));
    const wholeLb = Math.max(isWithRoof ? Math.abs(roofLb) + dragLb : dragLb - Math.abs(roofLb), leastLb);
    if (!(wholeLb > 0)) return [];
    const atBeamLb = new Map(c.inFrames.map((id) => [id, way * scale * (c.windOn.get(id) ?? CALM).beamLb]));
    const add = (id: string, lb: number): void => void atBeamLb.set(id, (atBeamLb.get(id) ?? 0) + lb);
    for (const level of levels) add(level.holder, level.lb);
    const holder = levels[0]?.holder ?? c.inFrames[0]!;
    add(holder, way * scale * handedOver(c, (id) => wholeOf(c.windOn.get(id)!)));
    const applied = sum(atBeamLb.values()) + way * scale * sum(c.inFrames.map((id) => besideBeam(c.windOn.get(id)!)));
    add(holder, way * Math.max(0, wholeLb - way * applied));
    const id = pushId(roofCase.id, k, way === 1 ? '+' : '-');
    return [{ id, comesWith: roofCase.id, holder, toward: way, atBeamLb, windTimes: way * scale }];
  });
}

function inertiaPushes(c: Setting, { kind, byLine }: InertiaAcross, toward: 1 | -1): readonly PushAcross[] {
  const comesWith = `${kind}-across-${toward === 1 ? 'plus' : 'minus'}`;
  const handedLb = handedOver(c, (id) => byLine.get(id) ?? 0);
  const ways = handedLb > 0 ? [...new Set(c.holders.map(firstHolder(c)))] : [null];
  return ways.map((holder, k) => {
    const atBeamLb = new Map(
      c.inFrames.map((id) => [id, toward * ((byLine.get(id) ?? 0) + (id === holder ? handedLb : 0))]),
    );
    return { id: pushId(comesWith, k, ''), comesWith, holder, toward, atBeamLb, windTimes: 0 };
  });
}

const firstHolder =
  ({ inFrames }: Setting) =>
  (holders: ReadonlyMap<string, string | null>): string =>
    [...holders.values()].find((id) => id !== null) ?? inFrames[0]!;

/** What the lines bring that have no post in a frame across; a ledger brings its own to the building. */
const handedOver = ({ givens, inFrames }: Setting, bringLb: (lineId: string) => number): number =>
  sum(givens.shelter.lines.filter((l) => l.kind === 'frame' && !inFrames.includes(l.id)).map((l) => bringLb(l.id)));

const besideBeam = (wind: WindOnLine): number => wholeOf(wind) - wind.beamLb;

const sum = (values: Iterable<number>): number => [...values].reduce((a, b) => a + b, 0);
