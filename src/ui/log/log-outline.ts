import { sideOfCut } from './log-cuts.ts';
import { diameterOn, type LogShown } from './log-shown.ts';

type Side = 'top' | 'bottom';
type Outlined = Pick<LogShown, 'stations' | 'cuts' | 'flatIn' | 'used' | 'fromButt'>;
/** A distance from the butt and how far up from the axis it is [in]. */
type Corner = readonly [fromButtIn: number, upIn: number];

/** What is taken off one side of a log between two places, straight between its corners. */
interface Taken {
  readonly corners: readonly (readonly [fromButtIn: number, depthIn: number])[];
}

/** Outline of a log from the butt along the top and back along the bottom, less what is planed and cut away. */
export function outlineOf(shown: Outlined): readonly Corner[] {
  return [...edge(shown, 'top'), ...edge(shown, 'bottom').toReversed()];
}

function edge(shown: Outlined, side: Side): readonly Corner[] {
  const sign = side === 'top' ? 1 : -1;
  const planed = side === 'top' ? shown.flatIn : 0;
  const taken = takenFrom(shown, side);
  const last = shown.stations.at(-1)?.fromButtIn ?? 0;
  const places = [
    ...shown.stations.map((s) => s.fromButtIn),
    ...taken.flatMap(({ corners }) => corners.map(([x]) => x)),
    ...(planed > 0 ? shown.used : []),
  ];
  const sorted = [...new Set(places)].filter((x) => x >= 0 && x <= last).sort((a, b) => a - b);
  const up = (x: number, from: -1 | 1): number => {
    const isPlaned = from < 0 ? x > shown.used[0] && x <= shown.used[1] : x >= shown.used[0] && x < shown.used[1];
    const depth = Math.max(0, ...taken.map((t) => depthOf(t, x, from)));
    return sign * (diameterOn(shown, x) / 2 - (isPlaned ? planed : 0) - depth);
  };
  return sorted.flatMap((x): Corner[] => {
    const [before, after] = [up(x, -1), up(x, 1)];
    return before === after
      ? [[x, before]]
      : [
          [x, before],
          [x, after],
        ];
  });
}

function takenFrom({ cuts, used, fromButt }: Outlined, side: Side): readonly Taken[] {
  return cuts
    .filter((cut) => sideOfCut(cut) === side)
    .map(({ atIn, lengthIn, depthIn, deepestAtIn }) => {
      const [from, to] = [atIn - lengthIn / 2, atIn + lengthIn / 2];
      const corners: readonly (readonly [number, number])[] =
        deepestAtIn === undefined
          ? [
              [from, depthIn],
              [to, depthIn],
            ]
          : [
              [from, 0],
              [deepestAtIn, depthIn],
              [to, 0],
            ];
      const placed = corners.map(([x, depth]): readonly [number, number] => [within(fromButt(x), used), depth]);
      return { corners: placed[0]![0] <= placed.at(-1)![0] ? placed : placed.toReversed() };
    });
}

const within = (x: number, [from, to]: LogShown['used']): number => Math.min(Math.max(x, from), to);

/** Depth at a place as it is seen coming from the butt's side (-1) or from the tip's (1). */
function depthOf({ corners }: Taken, x: number, from: -1 | 1): number {
  for (let i = 1; i < corners.length; i++) {
    const [a, b] = [corners[i - 1]!, corners[i]!];
    const isInside = from < 0 ? x > a[0] && x <= b[0] : x >= a[0] && x < b[0];
    if (isInside) return a[1] + ((x - a[0]) / (b[0] - a[0])) * (b[1] - a[1]);
  }
  return 0;
}
