import { LEAST_WIND } from '../../data/loads/wind-exposure.ts';
import type { LineGeometry, PostGeometry, RafterGeometry, Shelter, Stick } from '../geometry/shelter.ts';
import { nominalDepth } from '../geometry/sticks.ts';
import type { Givens } from '../givens.ts';
import { roundDiameter, soliditySeen, widthSeen, windOnSolid, type SeenFrom } from '../loads/solid-wind.ts';
import { stretchesOf } from '../loads/stretches.ts';
import { beamEndArea, roofEdgeArea } from '../loads/sway-areas.ts';
import { alongForces } from '../loads/sway.ts';
import { stepsOf, type Step } from '../note.ts';
import type { Standing } from './standing.ts';

export type Way = 'along' | 'across';

/** What the wind meets and one post must hold: strength level, at a height. */
export interface WindPart {
  readonly name: 'post' | 'beam' | 'braces' | 'ties' | 'rafters' | 'eaves' | 'roof' | 'finished';
  /** null where the force is not a pressure on an area */
  readonly areaFt2: number | null;
  readonly psf: number;
  readonly forceLb: number;
  readonly atZIn: number;
  /** how its pressure comes about */
  readonly steps: () => readonly Step[];
}

/**
 * Wind on all that one post must hold at a stage, strength level. Along the lines the beam ties the post tops, which
 * share alike what comes down from above; across them a post takes the beam to half way to its neighbours, an overhang
 * whole. What the roof pushes across is whole on every line, since it may be the one that holds it (own rule).
 * @param full  the finished shelter: its solidity counts at every stage (safe side)
 * @source ASCE7 29.4, 27.1.5, 27.3.2 (7-16)
 */
export function windOnPost(standing: Standing, full: Givens, post: PostGeometry, way: Way): readonly WindPart[] {
  const { shelter } = standing.givens;
  const line = shelter.lines.find((l) => l.id === post.line)!;
  const parts = way === 'along' ? alongParts(standing, full, line, post) : acrossParts(standing, full, line, post);
  return parts.filter((p) => p.forceLb > 0);
}

const postsOf = (shelter: Shelter, line: LineGeometry): readonly PostGeometry[] =>
  shelter.posts.filter((p) => p.line === line.id).sort((a, b) => a.xIn - b.xIn);

function alongParts(s: Standing, full: Givens, line: LineGeometry, post: PostGeometry): readonly WindPart[] {
  const own = alongOwn(s, full, line, post);
  if (s.id !== 'roof') return own;
  // a push that is typed, or the rule for gables, may ask more of the finished line than its areas do
  const { project, shelter, site } = s.givens;
  const posts = postsOf(shelter, line);
  const braces = shelter.braces.filter((b) => b.plane === 'along' && posts.some((p) => p.id === b.postId));
  const asked = alongForces(project, shelter, line, posts, braces, site).totalLb;
  const met = posts.flatMap((p) => alongOwn(s, full, line, p)).reduce((sum, p) => sum + p.forceLb, 0);
  const moreLb = asked - met > asked * 1e-9 ? asked - met : 0;
  return [...own, { ...taken('finished', moreLb / posts.length), atZIn: line.bearingZIn }];
}

function alongOwn(s: Standing, full: Givens, line: LineGeometry, post: PostGeometry): readonly WindPart[] {
  const { shelter } = s.givens;
  const on = pressureOn(full, 'end');
  const flat = on(null);
  const count = postsOf(shelter, line).length;
  const ends = s.id === 'posts' ? 0 : beamEndArea(shelter, line) / count;
  const roofEdge = roofEdgeArea(shelter, line) / count;
  return [
    ...uprights(shelter, post, 'along', on),
    onArea('beam', ends, flat, post.axisZIn),
    ...shelter.ties
      .filter((t) => t.fromPostId === post.id || t.toPostId === post.id)
      .map((t) => onArea('ties', (Math.abs(t.toYIn - t.fromYIn) * widthSeen(t.stick, 'side')) / 288, flat, t.axisZIn)),
    onArea('rafters', roofEdge, flat, line.bearingZIn),
  ];
}

function acrossParts(s: Standing, full: Givens, line: LineGeometry, post: PostGeometry): readonly WindPart[] {
  const { shelter } = s.givens;
  const on = pressureOn(full, 'side');
  const share = shareOfLength(line, postsOf(shelter, line), post);
  const beams = shelter.beams
    .filter((b) => b.line === line.id)
    .map((b) => {
      const areaFt2 = (share * (b.toXIn - b.fromXIn) * widthSeen(b.stick, 'side')) / 144;
      return onArea('beam', areaFt2, on(b.stick), post.axisZIn);
    });
  const roof = s.roof ? finishedRoof(shelter, s.roof.levelLb, on(null)) : bareRafters(shelter, on(null));
  return [
    ...uprights(shelter, post, 'across', on),
    ...beams,
    ...roof.map((p) => ({
      ...p,
      areaFt2: p.areaFt2 === null ? null : share * p.areaFt2,
      forceLb: share * p.forceLb,
      atZIn: line.bearingZIn,
    })),
  ];
}

type Pressure = Pick<WindPart, 'psf' | 'steps'>;
type PressureOf = (stick: Stick | null) => Pressure;

/** By the solidity of the finished frame; without a stick of flat sides. */
const pressureOn =
  ({ shelter, site }: Givens, from: SeenFrom): PressureOf =>
  (stick) => {
    const solidity = soliditySeen(shelter, from);
    return {
      psf: windOnSolid(site, solidity, roundDiameter(stick)),
      steps: () => [
        ...site.figures.velocityPressure.steps(),
        ...stepsOf((note) => windOnSolid(site, solidity, roundDiameter(stick), note)).steps,
      ],
    };
  };

const onArea = (name: WindPart['name'], areaFt2: number, pressure: Pressure, atZIn: number): WindPart => ({
  name,
  areaFt2,
  ...pressure,
  forceLb: areaFt2 * pressure.psf,
  atZIn,
});

/** A force that is no pressure on an area of its own. */
const taken = (name: WindPart['name'], forceLb: number): WindPart => ({
  name,
  areaFt2: null,
  psf: 0,
  forceLb,
  atZIn: 0,
  steps: () => [],
});

/** The post above ground up to the beam's axis, and its braces: as tall as they are, or by their broad side. */
function uprights(shelter: Shelter, post: PostGeometry, way: Way, on: PressureOf): readonly WindPart[] {
  const from = way === 'along' ? 'end' : 'side';
  const lowZIn = Math.max(post.footZIn, post.gradeZIn);
  const area = (lengthIn: number, stick: Stick | null): number => (lengthIn * widthSeen(stick, from)) / 144;
  const self = onArea('post', area(post.axisZIn - lowZIn, post.stick), on(post.stick), (post.axisZIn + lowZIn) / 2);
  const braces = shelter.braces
    .filter((b) => b.postId === post.id)
    .map((b) => {
      const seenIn = b.plane === way ? b.topPoint.zIn - b.postPoint.zIn : b.lengthIn;
      return onArea('braces', area(seenIn, b.stick), on(b.stick), (b.topPoint.zIn + b.postPoint.zIn) / 2);
    });
  return [self, ...braces];
}

/** Rafters without sheet as the wind across sees them: their ends and the rise of their undersides, none behind another. */
function bareRafters({ rafters }: Shelter, flat: Pressure): readonly WindPart[] {
  const areaFt2 = rafters.reduce((sum, r) => sum + (breadthOf(r) * riseOf(r)) / 144, 0);
  return [onArea('rafters', areaFt2, flat, 0)];
}

const breadthOf = ({ stick }: RafterGeometry): number =>
  stick?.kind === 'sawn' ? stick.breadthIn : widthSeen(stick, 'side');

function riseOf({ runIn, slopeDeg, stick }: RafterGeometry): number {
  const slope = (slopeDeg * Math.PI) / 180;
  return runIn * Math.tan(slope) + nominalDepth(stick) * Math.cos(slope);
}

/**
 * The level part of the roof's wind, at least the least wind on its rise, with its eave edges; never less than on the
 * bare rafters, so that a half-covered roof is met too.
 */
function finishedRoof(shelter: Shelter, levelLb: number, flat: Pressure): readonly WindPart[] {
  const riseFt2 = shelter.planes.reduce((sum, p) => sum + ((p.highZIn - p.lowZIn) * (p.toXIn - p.fromXIn)) / 144, 0);
  const edges = shelter.planes.map((plane) => {
    const rafter = shelter.rafters.find((r) => r.plane === plane.id);
    const purlin = shelter.purlins.find((p) => p.plane === plane.id);
    const edgeIn = nominalDepth(rafter?.stick ?? null) + nominalDepth(purlin?.stick ?? null);
    return onArea('eaves', ((plane.toXIn - plane.fromXIn) * edgeIn) / 144, flat, 0);
  });
  const roofLb = Math.max(levelLb, LEAST_WIND.openBuildingPsf * riseFt2);
  const covered = [taken('roof', roofLb), ...edges];
  const bare = bareRafters(shelter, flat);
  const sum = (parts: readonly WindPart[]): number => parts.reduce((total, p) => total + p.forceLb, 0);
  return sum(bare) > sum(covered) ? bare : covered;
}

/** Share of a line's length that a post takes: half of each span beside it, an overhang whole. */
function shareOfLength(line: LineGeometry, posts: readonly PostGeometry[], post: PostGeometry): number {
  const lengthIn = stretchesOf(line, posts)
    .filter((s) => s.name.split('~').includes(post.id))
    .reduce((sum, s) => sum + (s.kind === 'span' ? 0.5 : 1) * (s.toXIn - s.fromXIn), 0);
  return lengthIn / (line.toXIn - line.fromXIn);
}
