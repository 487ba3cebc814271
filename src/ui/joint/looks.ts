import type { JointSetting } from '../../engine/checks/joints/joint-setting.ts';
import { ACROSS_Y, ALONG_X, opposite, UP } from '../../engine/checks/joints/stick-shape.ts';
import { cross, dot, plus, unit, type Vector } from '../../engine/checks/fasteners/space.ts';
import type { Point } from '../drawing/paper.ts';
import { LOOK_WORDS } from './words.ts';

/** A way to look at a joint, square to the paper. x, y and z of a shelter are left-handed: y grows toward the front. */
export interface Look {
  readonly words: string;
  /** from the joint to the viewer */
  readonly toward: Vector;
  readonly up: Vector;
  readonly right: Vector;
}

const lookFrom = (words: string, toward: Vector, up: Vector): Look => ({
  words,
  toward,
  up,
  right: cross(toward, up),
});

const FRONT = lookFrom(LOOK_WORDS.front, ACROSS_Y, UP);
const END = lookFrom(LOOK_WORDS.end, opposite(ALONG_X), UP);
const ABOVE = lookFrom(LOOK_WORDS.above, UP, opposite(ACROSS_Y));

/** A place as it is seen: inches to the right and up. */
export const seen = ({ right, up }: Look, place: Vector): Point => ({ x: dot(place, right), y: dot(place, up) });

/** The two looks that tell most of a joint: first the one that shows both pieces from the side, then one along a grain. */
export function looksAt(setting: JointSetting): readonly [Look, Look] {
  switch (setting.kind) {
    case 'beamPost':
    case 'stripBeam':
    case 'postFoot':
      return [FRONT, END];
    case 'beamSplice':
      return [FRONT, ABOVE];
    case 'tiePost':
    case 'rafterRafter':
      return [END, ABOVE];
    case 'ledgerWall':
      return [END, lookFrom(LOOK_WORDS.wall, setting.ways.pull, UP)];
    case 'bracePost':
    case 'braceTop':
      return braceLooks(setting);
    case 'sheetPurlin':
    case 'sheetRafter':
      return [END, upTheSlope(opposite(setting.ways.along))];
    case 'purlinRafter':
      return [END, upTheSlope(opposite(setting.ways.across))];
    case 'rafterStrip':
    case 'rafterLedger':
      return [END, upTheSlope(setting.upper.shape?.axis ?? ACROSS_Y)];
  }
}

/** Square to the plane of the brace, and from the side on which it stands. */
function braceLooks({ kind, upper, ways }: JointSetting): readonly [Look, Look] {
  const axis = upper.shape?.axis ?? UP;
  const away = kind === 'bracePost' ? axis : opposite(axis);
  const isAlong = Math.abs(ways.across[1]) > 0.5;
  const level: Vector = isAlong ? [Math.sign(away[0]) || 1, 0, 0] : [0, Math.sign(away[1]) || 1, 0];
  const fromItsSide = lookFrom(isAlong ? LOOK_WORDS.end : LOOK_WORDS.front, level, UP);
  return [isAlong ? FRONT : END, fromItsSide];
}

/** Along the rafters from below the eave, so that they are seen end on. */
function upTheSlope(upSlope: Vector): Look {
  const out = unit(plus(UP, upSlope, -dot(UP, upSlope)));
  return lookFrom(LOOK_WORDS.upSlope, opposite(upSlope), out);
}
