import type { LoadDuration } from '../../data/loads/combinations.ts';
import type { Shelter } from '../geometry/shelter.ts';
import { message, type Message } from '../message.ts';
import type { OwnLoad, Project } from '../project/model.ts';
import type { LoadCase } from './cases.ts';

/**
 * Why an own load is not computed; null where it is. Computed are loads down and up on lines, stretches, beams, posts,
 * rafters, purlins and the roof, and along the lines wherever they reach a line without bending a stick sideways.
 */
export function whyOwnNotComputed(project: Project, shelter: Shelter, own: OwnLoad): Message | null {
  const { kind, direction, name } = own;
  const why = (
    reason:
      | 'ownAcross'
      | 'ownOnlyDown'
      | 'ownOnLedger'
      | 'ownOnMember'
      | 'ownBendsSideways'
      | 'ownDeadOnPurlin'
      | 'ownOffRoof',
  ) => message(reason, { name });
  if (direction === 'yPlus' || direction === 'yMinus') return why('ownAcross');
  if ((kind === 'dead' || kind === 'snow') && direction !== 'down') return why('ownOnlyDown');
  const { where } = own;
  const isAlong = direction === 'xPlus' || direction === 'xMinus';
  switch (where.on) {
    case 'line':
    case 'stretch':
      return project.supportLines.some((l) => l.kind === 'frame' && l.id === where.line) ? null : why('ownOnLedger');
    case 'member': {
      const rafter = shelter.rafters.find((r) => r.id === where.member);
      if (rafter) {
        if (isAlong) return why('ownBendsSideways');
        const atIn = runTo(rafter, where.atIn);
        return atIn >= 0 && atIn <= rafter.runIn ? null : why('ownOffRoof');
      }
      const isOnPurlin = shelter.purlins.some((p) => p.id === where.member);
      if (isOnPurlin && isAlong) return why('ownBendsSideways');
      if (isOnPurlin) return kind === 'dead' ? why('ownDeadOnPurlin') : null;
      const isHeld =
        shelter.posts.some((p) => p.id === where.member) || shelter.beams.some((b) => b.id === where.member);
      return isHeld ? null : why('ownOnMember');
    }
    case 'plane': {
      if (isAlong) return why('ownBendsSideways');
      const plane = shelter.planes.find((p) => p.id === where.plane);
      if (!plane) return why('ownOffRoof');
      const ys = [plane.lowYIn, plane.highYIn];
      const isOnRoof =
        where.fromXIn >= plane.fromXIn - ROUNDING_IN &&
        where.toXIn <= plane.toXIn + ROUNDING_IN &&
        where.fromYIn >= Math.min(...ys) - ROUNDING_IN &&
        where.toYIn <= Math.max(...ys) + ROUNDING_IN;
      return isOnRoof ? null : why('ownOffRoof');
    }
  }
}

const ROUNDING_IN = 1e-6;

/** Level distance up the roof from a rafter's eave to a place across the lines [in]. */
export const runTo = (rafter: Shelter['rafters'][number], yIn: number): number => (rafter.eaveYIn - yIn) * rafter.downY;

/** Own loads that are computed, of one kind. */
export const ownOfKind = (project: Project, shelter: Shelter, kind: OwnLoad['kind']): readonly OwnLoad[] =>
  project.ownLoads.filter((own) => own.kind === kind && whyOwnNotComputed(project, shelter, own) === null);

/** Own loads of one kind that may act at one time: what presses or what lifts, and one way along the lines. */
export interface OwnSet {
  /** `down`, `up`, `xPlus`, `down-xPlus` ... */
  readonly name: string;
  /** the same as it is said */
  readonly words: string;
  readonly along: 1 | -1 | 0;
  readonly loads: readonly OwnLoad[];
}

const WAYS = { down: 'down', up: 'up', xPlus: 'to the right', xMinus: 'to the left' } as const;

/** Every way in which loads of one kind may act together, each at its most: none of them ever stands against another. */
export function ownSets(loads: readonly OwnLoad[]): readonly OwnSet[] {
  const toward = (direction: OwnLoad['direction']) => loads.filter((own) => own.direction === direction);
  const upright = [null, 'down', 'up'] as const;
  const level = [null, 'xPlus', 'xMinus'] as const;
  return upright.flatMap((v) =>
    level.flatMap((x): OwnSet[] => {
      const parts = [v, x].filter((direction) => direction !== null).map((name) => ({ name, loads: toward(name) }));
      if (parts.length === 0 || parts.some((part) => part.loads.length === 0)) return [];
      return [
        {
          name: parts.map((part) => part.name).join('-'),
          words: parts.map((part) => WAYS[part.name]).join(' and '),
          along: x === null ? 0 : x === 'xPlus' ? 1 : -1,
          loads: parts.flatMap((part) => part.loads),
        },
      ];
    }),
  );
}

/** From the longest lasting to the shortest. */
const LASTING: readonly LoadDuration[] = ['permanent', 'tenYears', 'twoMonths', 'sevenDays', 'tenMinutes'];

/** How long a set lasts: all of it counts as long as the longest, and at least as long as its kind does (safe side). */
function durationOf(loads: readonly OwnLoad[], least: LoadDuration): LoadDuration {
  const longest = Math.min(LASTING.indexOf(least), ...loads.map((own) => LASTING.indexOf(own.duration)));
  return LASTING[longest]!;
}

const KIND_OF_CASE = { live: 'ownLive', snow: 'snow', wind: 'wind' } as const;
const SHORTEST = { live: 'tenYears', snow: 'twoMonths', wind: 'tenMinutes' } as const;
const WORDS = { live: 'caseOwnLiveWay', snow: 'caseOwnSnow', wind: 'caseOwnWind' } as const;

/**
 * The load case of a set: `own-live`, `own-live-xPlus`, `own-snow`, `own-wind-up`.
 * @param on  the stretch of a purlin that it is asked of alone
 */
export function ownCase(kind: 'live' | 'snow' | 'wind', set: OwnSet, on?: string): LoadCase {
  const isPlain = kind === 'snow' || (kind === 'live' && set.name === 'down');
  return {
    id: [`own-${kind}`, ...(isPlain ? [] : [set.name]), ...(on === undefined ? [] : [on])].join('-'),
    kind: KIND_OF_CASE[kind],
    words: kind === 'live' && isPlain ? message('caseOwnLive') : message(WORDS[kind], { way: set.words }),
    swaysAlong: set.along !== 0,
    duration: durationOf(set.loads, SHORTEST[kind]),
  };
}
