import { breaks, outside } from '../../check.ts';
import type { LineResponse } from '../../frame/line-frame.ts';
import { SAME_PLACE_IN } from '../../frame/mesh-builder.ts';
import type { CutGeometry } from '../../geometry/shelter.ts';
import { put } from '../../note.ts';
import { clause, remembered } from '../../../data/sources.ts';
import { quantity } from '../../units.ts';
import type { CheckSite } from '../site-of-check.ts';
import { isStrength, type LineCheckContext } from '../line-context.ts';
import { cutIsStretched, type BeamStation, type BeamStretch } from './beam-sections.ts';
import { endSeatCut, type EndCut } from './shear.ts';

/** A cut of a beam with what it reaches over. */
export interface PlacedCut {
  readonly cut: CutGeometry;
  /** stations from its one end to the other; of a seat those over the axis of its post, which carries it from end to end */
  readonly over: readonly BeamStation[];
  /** thinnest place of the log under it [in] */
  readonly diameterIn: number;
  /** judged by the shear that it leaves, not by its side */
  readonly isAtEnd: boolean;
  readonly isInMiddleThird: boolean;
}

/**
 * Cuts have a side and a length, judged combination by combination at every station that they reach over, a seat over the
 * axis of its post: none on the
 * stretched side away from an end, none that reaches into the middle third, at most d/6 on the pressed side of the outer
 * thirds. One exception (own rule): a sloped seat flat at most d/8 deep that is pressed under every gravity
 * combination and stretched only by uplift or sway. Less than one diameter from the end of the log any cut may be a
 * quarter deep and is judged by the shear that it leaves; one by hand or of a brace only where it does not reach further
 * than two diameters from that end (own rule).
 * @source NDS 3.2.3 and 4.4.3 (from memory), read for round logs; own rule as said
 */
export function cutSites(context: LineCheckContext, on: BeamStretch): readonly CheckSite<LineResponse>[] {
  return placedCuts(context, on).flatMap((placed) => (placed.isAtEnd ? [] : [cutSite(context, on, placed)]));
}

/** Cuts near an end of the log, whose shear is asked: seats of posts, and what is let in or cut by hand. */
export function endCutsOf(context: LineCheckContext, on: BeamStretch): readonly EndCut[] {
  const cuts = placedCuts(context, on).filter(({ cut, isAtEnd }) => isAtEnd && cut.madeBy !== 'seat');
  const seats = context.frame.mesh.posts.flatMap((p) =>
    p.post.seats.filter((s) => s.beamId === on.beam.id).flatMap((s) => endSeatCut(s, p.memberId) ?? []),
  );
  return [
    ...cuts.map(({ cut: { id, atXIn, lengthIn, depthIn }, diameterIn }) => {
      return { name: id, xIn: atXIn, reachIn: lengthIn / 2 + 1e-6, depthIn, diameterIn };
    }),
    ...seats,
  ];
}

/** A sloped seat that only uplift or sway stretches. */
export function isSeatPressedByGravity(context: LineCheckContext, placed: PlacedCut): boolean {
  const { madeBy, kind } = placed.cut;
  const gravity = context.frame.responses.filter((r) => isStrength(r) && r.combination.gravityOnly);
  return madeBy === 'seat' && kind === 'flat' && gravity.every((r) => !isStretched(placed, r));
}

/** True where a cut is stretched anywhere along its length. */
export const isStretched = ({ cut, over }: PlacedCut, { values }: LineResponse): boolean =>
  over.some((s) => cutIsStretched(cut, values[s.moment]!));

/** Cuts of the beam whose middle lies on this stretch. */
export function placedCuts(context: LineCheckContext, on: BeamStretch): readonly PlacedCut[] {
  const { beam, stretch, all } = on;
  return beam.cuts.flatMap((cut) => {
    const inside = cut.atXIn > stretch.fromXIn - 1e-6 && cut.atXIn < stretch.toXIn - 1e-6;
    const last = cut.atXIn >= stretch.toXIn - 1e-6 && Math.abs(cut.atXIn - beam.toXIn) < 1e-6;
    const reachIn = cut.madeBy === 'seat' ? 0 : cut.lengthIn / 2;
    const over = all.filter((s) => Math.abs(s.xIn - cut.atXIn) <= reachIn + SAME_PLACE_IN);
    if ((!inside && !last) || over.length === 0) return [];
    const diameterIn = Math.min(...over.map((s) => s.diameterIn));
    const isInMiddleThird = reachesMiddleThird(context, cut);
    return [{ cut, over, diameterIn, isInMiddleThird, isAtEnd: !isInMiddleThird && liesAtEnd(on, cut, diameterIn) }];
  });
}

/** No part of a cut may lie in the middle third of a span. */
function reachesMiddleThird({ stretches }: LineCheckContext, { atXIn, lengthIn }: CutGeometry): boolean {
  return stretches.some(({ kind, fromXIn, toXIn }) => {
    const third = (toXIn - fromXIn) / 3;
    const reachIn = lengthIn / 2 - 1e-6;
    return kind === 'span' && atXIn + reachIn > fromXIn + third && atXIn - reachIn < toXIn - third;
  });
}

function liesAtEnd({ beam }: BeamStretch, { atXIn, lengthIn, madeBy }: CutGeometry, diameterIn: number): boolean {
  const toEndIn = Math.min(atXIn - beam.fromXIn, beam.toXIn - atXIn);
  const isShort = madeBy === 'seat' || toEndIn + lengthIn / 2 <= 2 * diameterIn;
  return toEndIn - lengthIn / 2 <= diameterIn && isShort;
}

function cutSite(context: LineCheckContext, on: BeamStretch, placed: PlacedCut): CheckSite<LineResponse> {
  const { cut, diameterIn: d } = placed;
  const mayTurn = cut.depthIn <= d / 8 + 1e-9 && isSeatPressedByGravity(context, placed);
  return {
    ruleId: 'beam.cuts',
    memberId: on.beam.id,
    place: { kind: 'joint', name: cut.id },
    unit: 'in',
    purpose: 'strength',
    stops: (r) => {
      if (isStretched(placed, r) && !mayTurn)
        return outside({ code: 'cutInTension', values: { cut: cut.id } }, quantity(cut.depthIn, 'in'));
      if (placed.isInMiddleThird) return breaks({ code: 'cutInMiddleThird', values: {} });
      return null;
    },
    demand: (_, note) => {
      note?.({
        symbol: 't',
        words: 'depth of the cut',
        formula: 't',
        put: [put('t', cut.depthIn, 'in', 'as drawn')],
        result: quantity(cut.depthIn, 'in'),
        clause: remembered('NDS', '4.4.3'),
      });
      return cut.depthIn;
    },
    capacity: (r, note) => {
      const turns = isStretched(placed, r);
      const limit = turns ? d / 8 : d / 6;
      note?.({
        symbol: 't max',
        words: turns ? 'greatest seat flat that only wind stretches' : 'greatest cut on the pressed side, outer thirds',
        formula: turns ? 'd / 8' : 'd / 6',
        put: [put('d', d, 'in', 'diameter where the log is thinnest under it')],
        result: quantity(limit, 'in'),
        clause: turns
          ? clause('OWN', 'a seat flat of at most one eighth that gravity presses')
          : remembered('NDS', '4.4.3'),
      });
      return limit;
    },
    reason: (r) => (isStretched(placed, r) ? { code: 'seatTurnsTension', values: {} } : null),
  };
}
