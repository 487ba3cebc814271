import type { Givens } from '../givens.ts';
import type { LineLoads } from '../loads/cases.ts';
import { rafterOwnWeight, surfaceWeight } from '../loads/roof-weights.ts';
import { message } from '../message.ts';
import { INCHES_PER_FOOT } from '../units.ts';
import { emptyPicture, type LoadPicture, type RafterWeight } from './picture.ts';
import { joined, stripOn } from './strips.ts';

/** Dead load that the person adds lies in pieces of its own. */
const OWN = 'own-';

/** All that is always there, heavy: covering and purlins on the slope, rafters, beams with their strips, own parts. */
export function deadPicture(givens: Givens, lines: readonly LineLoads[]): LoadPicture {
  const { project, shelter, runOf, weights } = givens;
  const strips = shelter.planes.flatMap((plane) => {
    const { heavy } = surfaceWeight(project, plane, shelter.purlins, weights);
    const on = shelter.rafters.filter((r) => r.plane === plane.id);
    return on.map((r) => stripOn(r, { fromIn: 0, toIn: runOf(r).slopeLengthIn }, heavy, 'slope'));
  });
  return {
    ...emptyPicture({ id: 'dead', kind: 'dead', words: message('caseDead') }),
    strips: joined(strips),
    rafters: rafterWeights(givens),
    along: lines.flatMap(({ lineId, dead }) => {
      const stations = dead.flatMap((d) => d.heavy.onBeam);
      const perFoot = stations.map((s) => ({ xIn: s.xIn, downLbPerFt: s.downLbPerIn * INCHES_PER_FOOT }));
      return perFoot.length === 0 ? [] : [{ lineId, stations: perFoot }];
    }),
    points: lines.flatMap(({ lineId, dead }) =>
      dead
        .filter(({ piece }) => piece.startsWith(OWN))
        .flatMap(({ heavy }) => heavy.points.map(({ xIn, downLb }) => ({ lineId, xIn, downLb }))),
    ),
    lines: lines.map(({ lineId, deadLb }) => ({ lineId, downLb: deadLb })),
  };
}

function rafterWeights({ project, shelter, runOf, weights }: Givens): readonly RafterWeight[] {
  return shelter.rafters.map((rafter) => {
    const run = runOf(rafter);
    const own = rafterOwnWeight(project, rafter, run, weights);
    const wholeLb = run.parts.reduce((sum, p, i) => sum + own[i]!.heavy * (p.toIn - p.fromIn), 0);
    return { rafterId: rafter.id, downLbPerFt: (wholeLb / run.slopeLengthIn) * INCHES_PER_FOOT };
  });
}
