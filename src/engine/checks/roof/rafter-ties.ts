import type { RafterGeometry } from '../../geometry/shelter.ts';
import { mayHoldLevel } from '../../loads/rafter-reactions.ts';
import type { Note } from '../../note.ts';
import { ratedSite } from '../joints/rated-site.ts';
import { togetherSite } from '../joints/together-site.ts';
import type { CheckSite } from '../site-of-check.ts';
import { rafterTieHolder } from './bearers.ts';
import type { RoofCheckContext } from './context.ts';
import { pushAlong } from './rafter-along.ts';
import type { Influence } from './rafter-influence.ts';
import type { RafterLoading } from './rafter-loading.ts';
import type { RafterResponse } from './rafter-responses.ts';
import { tellLevel, tellReaction } from './rafter-telling.ts';

/**
 * Each tie of a rafter: its pull is the least that the support can have to hold, however the level part of the wind is
 * held; where the support may have to hold that part, it is asked for all of it, up the slope or down; and for what pushes
 * the rafter along the line.
 */
export function rafterTieSites(
  context: RoofCheckContext,
  loading: RafterLoading,
  influence: Influence,
): readonly CheckSite<RafterResponse>[] {
  return loading.run.supportLines.flatMap((_, support) => sitesAt(context, loading, influence, support));
}

function sitesAt(
  context: RoofCheckContext,
  loading: RafterLoading,
  influence: Influence,
  support: number,
): readonly CheckSite<RafterResponse>[] {
  const { rafter, run, plane } = loading;
  const lineId = run.supportLines[support]!;
  const tie = {
    memberId: rafter.id,
    place: { kind: 'support', name: lineId },
    holder: holderOn(context, rafter, lineId),
  } as const;
  const pull = {
    ruleId: 'rafter.tie',
    part: 'pull',
    force: (r: RafterResponse, note?: Note): number => {
      if (note) tellReaction(loading, influence, r, support, 'least', note);
      return pullAt(r, support);
    },
  } as const;
  const across = {
    ruleId: 'rafter.tieAcross',
    part: 'across',
    force: (r: RafterResponse, note?: Note): number => {
      if (note) tellLevel(loading, influence, r, support, note);
      return r.level[support]!;
    },
  } as const;
  const along = { ruleId: 'rafter.tieAlong', part: 'along', force: pushAlong(context, loading, lineId) } as const;
  const asked = mayHoldLevel(plane.horizontalHeldBy, lineId) ? [pull, across, along] : [pull, along];
  const together = togetherSite<RafterResponse>({ ...tie, ruleId: 'rafter.tieTogether', parts: asked });
  return [...asked.map((ask) => ratedSite<RafterResponse>({ ...tie, ...ask })), ...(together ? [together] : [])];
}

const holderOn = (context: RoofCheckContext, rafter: RafterGeometry, lineId: string) =>
  rafterTieHolder(
    context,
    rafter,
    context.project.supportLines.find((l) => l.id === lineId)!,
  );

/** Net pull of a rafter on the tie at one of its supports, never below zero [lb]. */
export const pullAt = (r: RafterResponse, support: number): number => Math.max(0, -r.least[support]!);
