import { STAGES, type StageId } from '../../data/loads/raising.ts';
import type { Shelter, Stick } from '../geometry/shelter.ts';
import type { Assembled } from '../assemble.ts';
import type { Givens } from '../givens.ts';
import { acrossForce } from '../loads/across.ts';
import type { RoofCase } from '../loads/roof-cases.ts';
import { message, type Message } from '../message.ts';
import type { Project } from '../project/model.ts';

/** A shelter half way up: what acts on it is worked out from its own members, as it is for the finished one. */
export interface Standing {
  readonly id: StageId;
  /** shelter, project and roof cases of this stage only */
  readonly givens: Givens;
  /** what only the finished roof brings; null before it is on */
  readonly roof: RoofOn | null;
}

interface RoofOn {
  /** least push on each foot by the analysis of the finished frame, the roof's wind in it [lb] */
  readonly leastOnFoot: ReadonlyMap<string, number>;
  /** level part of the wind on all slopes that push the same way, strength level [lb] */
  readonly levelLb: number;
}

/**
 * The shelter at a stage: members that are not up yet are taken away, and with them all that lies on them, hangs there
 * or leans on it. The finished roof keeps its own cases; before it, wind meets what is solid and nothing else.
 */
export function standingAt(id: StageId, full: Assembled): Standing {
  const { lines, ...givens } = full;
  const project = withoutGoods(givens.project);
  if (id === 'roof') return { id, givens: { ...givens, project }, roof: roofOn({ ...givens, project }, lines) };
  const bare: Project = {
    ...project,
    ownLoads: [],
    roofPlanes: project.roofPlanes.map((plane) => ({ ...plane, dead: { by: 'parts', layers: [] } })),
  };
  const shelter = membersUp(id, givens.shelter);
  return { id, givens: { ...givens, project: bare, shelter, roof: WIND_ALONG, earthquake: null }, roof: null };
}

const roofOn = ({ project, shelter, site, roof, runOf }: Givens, lines: Assembled['lines']): RoofOn => ({
  leastOnFoot: new Map(
    lines.flatMap(({ report }) =>
      report.posts.map(
        (p) => [p.postId, Math.min(...Object.values(p.byCombination).map((r) => r.verticalLb))] as const,
      ),
    ),
  ),
  levelLb: acrossForce(project, shelter, site, roof, runOf, 0).oneWayLb,
});

const withoutGoods = (project: Project): Project => ({
  ...project,
  surroundings: { ...project.surroundings, goods: null },
});

function membersUp(id: StageId, shelter: Shelter): Shelter {
  const isUp = (from: StageId): boolean => STAGES.indexOf(id) >= STAGES.indexOf(from);
  const up = <T>(from: StageId, members: readonly T[]): readonly T[] => (isUp(from) ? members : []);
  // a brace that runs to a rafter waits for it
  const ofRafters = new Set(shelter.rafters.map((r) => r.id));
  return {
    ...shelter,
    beams: up('beams', shelter.beams),
    braces: up('braces', shelter.braces).filter((b) => isUp('rafters') || !ofRafters.has(b.toId)),
    ties: up('braces', shelter.ties),
    rafters: up('rafters', shelter.rafters),
    purlins: up('roof', shelter.purlins),
  };
}

/** Wind along the lines on an open frame: no roof is there to be lifted, the frame's own solid parts are met. */
const WIND_ALONG: readonly RoofCase[] = ([1, -1] as const).map((toward) => ({
  id: `wind-raising-${toward === 1 ? 'plus' : 'minus'}`,
  kind: 'wind',
  words: message('caseWindRaising', { from: toward === 1 ? 'left' : 'right' }),
  swaysAlong: true,
  windAlong: toward,
  spansPattern: null,
  pressure: () => ({ plumbPsf: 0, squarePsf: 0 }),
}));

/** Why a stage has no figures: something that stands has no size or weight that is known; null where all is. */
export function whyNoFigures({ givens: { shelter, weights } }: Standing): Message | null {
  const onLines = [...shelter.posts, ...shelter.beams, ...shelter.braces, ...shelter.rafters, ...shelter.purlins];
  for (const { id, label, stick } of onLines) {
    const why = whyUnknown(label, stick) ?? weights.missing.get(id);
    if (why) return why;
  }
  for (const tie of shelter.ties) {
    const why = whyUnknown('a tie log', tie.stick) ?? weights.missing.get(tie.id);
    if (why) return why;
  }
  return null;
}

function whyUnknown(name: string, stick: Stick | null): Message | null {
  if (!stick) return message('memberNotGiven', { member: name });
  return stick.kind === 'typed' ? message('raisingTypedSection', { name }) : null;
}
