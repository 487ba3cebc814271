import { clause } from '../../../data/sources.ts';
import { notGiven, outside } from '../../check.ts';
import { between } from '../../geometry/beam-shape.ts';
import { flatWidth } from '../../geometry/seats.ts';
import type { LineResponse } from '../../frame/line-frame.ts';
import { message } from '../../message.ts';
import { put } from '../../note.ts';
import { jointKey } from '../../project/joint-capacity.ts';
import { quantity } from '../../units.ts';
import { leverOf } from '../beam/rolling.ts';
import { holderAt, type Holder } from '../joints/holder.ts';
import type { Lever } from '../joints/over-edge.ts';
import type { LineCheckContext } from '../line-context.ts';
import { bearerOn, rafterTieHolder, type Bearer } from '../roof/bearers.ts';
import { seatLength } from '../roof/rafter-seat.ts';
import type { OnSlope } from '../roof/rafter-stations.ts';
import type { RafterOnPost } from './rafter-on-post.ts';

/** One of the faces between a rafter and the post under it, all of which hand on the same push. */
export interface RafterContact {
  readonly memberId: string;
  /** what lies on it, and on what */
  readonly words: string;
  readonly joint: Holder;
  readonly lever: Lever;
  /** push on it, least, a lift less than zero; level force, along the line, and what turns what lies on it, without sign */
  readonly downLb: (r: LineResponse) => number;
  readonly levelLb: (r: LineResponse) => number;
  readonly alongLb: (r: LineResponse) => number;
  readonly turnsLbIn: (r: LineResponse) => number;
}

/** Rafter on the strip or beam, strip on the beam, beam on the post: each of its own joint and width. */
export function contactsUnder(context: LineCheckContext, on: RafterOnPost, slope: OnSlope): readonly RafterContact[] {
  const { project } = context;
  const { rafter, post, beam, line, seat } = on;
  const written = project.supportLines.find((l) => l.id === line.id)!;
  const bearer = bearerOn(context, line.id);
  const above = (levelZIn: number) => ({
    downLb: on.downLb,
    levelLb: on.levelLb,
    // what pushes a rafter along its line is no force of the frame across: its own rows ask for it
    alongLb: () => 0,
    turnsLbIn: (r: LineResponse) => on.levelLb(r) * (on.axisZIn - levelZIn),
  });
  const underRafter: RafterContact = {
    memberId: rafter.id,
    words: 'rafter on its line',
    joint: rafterTieHolder(context, rafter, written),
    lever: leverOfRafter(on, slope, bearer),
    ...above(line.bearingZIn),
  };
  const underStrip: RafterContact = {
    memberId: line.id,
    words: 'strip on the beam',
    joint: holderAt(context, 'stripBeam', jointKey('stripBeam', line.id)),
    lever: leverOfStrip(on, bearer),
    ...above(line.bearingZIn - line.stripThicknessIn),
  };
  const underBeam: RafterContact = {
    memberId: beam.id,
    words: 'beam on the post',
    joint: holderAt(context, 'beamPost', jointKey('beamPost', seat.beamId, post.id)),
    lever: leverOf(project, { beam, post }),
    downLb: on.leastOnSeatLb,
    levelLb: on.levelOnSeatLb,
    alongLb: on.alongOnSeatLb,
    turnsLbIn: on.turnsSeatLbIn,
  };
  const hasStrip = written.kind === 'frame' && written.strip !== null;
  return [underRafter, ...(hasStrip ? [underStrip] : []), underBeam];
}

/** Half the length of the rafter's seat across its line. */
function leverOfRafter({ rafter, line }: RafterOnPost, slope: OnSlope, bearer: Bearer): Lever {
  const support = rafter.supports.find((s) => s.line === line.id)!;
  const lengthIn = seatLength(slope, bearer, support.atIn / slope.run.cos);
  return half(lengthIn, 'level length of the seat of the rafter', 'seat of a rafter');
}

/** Half the width on which the strip lies on the beam: a round top that is not planed gives none. */
function leverOfStrip({ beam, post }: RafterOnPost, { breadthIn }: Bearer): Lever {
  const { stick } = beam;
  const topIn =
    stick?.kind === 'sawn'
      ? stick.breadthIn
      : stick?.kind === 'round'
        ? flatWidth(
            between(beam.stations, post.xIn, (s) => s.diameterIn),
            stick.flatIn,
          )
        : 0;
  if (topIn === 0) return { ...half(0, '', ''), refused: outside(message('stripTurnsOnRound', { beam: beam.label })) };
  return half(Math.min(topIn, breadthIn ?? topIn), 'width of the strip on the flat of the beam', 'strip on its beam');
}

function half(widthIn: number, words: string, source: string): Lever {
  return {
    refused: widthIn > 0 ? null : notGiven(message('seatLengthUnknown')),
    halfIn: widthIn / 2,
    tell: (note) =>
      note({
        symbol: 'a',
        words: 'from the middle of the contact to the edge that it would roll over',
        formula: 'w / 2',
        put: [put('w', widthIn, 'in', words)],
        result: quantity(widthIn / 2, 'in'),
        clause: clause('OWN', source),
      }),
  };
}
