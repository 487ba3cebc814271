import type * as fc from 'fast-check';
import type {
  Given,
  Group,
  Log,
  Member,
  Project,
  Site,
  Stock,
  SupportLine,
  Wood,
} from '../../../src/engine/project/model.ts';
import { randomProject } from '../../support/random-project.ts';

/**
 * Random projects whose wood is known and whose site is given, so that their lines are analysed and judged: the same
 * forms, spans, braces, joints and capacities as every random project.
 */
export const standingProject = (): fc.Arbitrary<Project> => randomProject().map(withKnownWood);

const withKnownWood = (project: Project): Project => ({
  ...project,
  site: givenSite(project.site),
  woods: project.woods.map(knownWood),
  logs: project.logs.map(soundLog),
  supportLines: project.supportLines.map(knownStrip),
  groups: project.groups.map(knownGroup),
  members: project.members.map(knownMember),
});

const knownWood = (wood: Wood): Wood => ({
  ...wood,
  species: 'Western larch',
  basis: wood.basis.kind === 'typed' ? { ...wood.basis, by: 'a grader' } : { kind: 'derived' },
});

const soundLog = (log: Log): Log => ({
  ...log,
  seen: log.seen && {
    ...log.seen,
    throughCheckAtEnd: false,
    grainSlope1In: Math.max(8, log.seen.grainSlope1In ?? 20),
    worstKnotIn: 1,
    knotsInWorstFootIn: [1, 0.75],
  },
});

const LARCH: Stock = {
  kind: 'sawn',
  breadthIn: 8,
  depthIn: 8,
  lay: 'edge',
  plies: 1,
  species: 'Western larch',
  grade: null,
  use: 'wet',
};

/** Graded sticks of a grade that is not in the tables become home-sawn ones of the same size. */
const knownStock = (stock: Stock | null): Stock =>
  stock === null ? LARCH : stock.kind === 'sawn' ? { ...stock, species: 'Western larch', grade: null } : stock;

/** A strip without a weight would stop its line. */
const knownStrip = (line: SupportLine): SupportLine =>
  line.kind === 'frame' && line.strip
    ? { ...line, strip: { ...line.strip, stock: knownStock(line.strip.stock) } }
    : line;

const knownGroup = (group: Group): Group => ({ ...group, stock: knownStock(group.stock) });

/** A beam may have a sawn stock of its own in random projects; posts with one of their own are logs. */
function knownMember(member: Member): Member {
  if (member.role !== 'beam' || !member.own?.stock) return member;
  return { ...member, own: { ...member.own, stock: knownStock(member.own.stock) } };
}

const or = <T>(given: Given<T>, value: T): Given<T> => ({ ...given, value: given.value ?? value });

const givenSite = (site: Site): Site => ({
  ...site,
  riskCategory: or(site.riskCategory, 'II'),
  groundSnowPsf: or(site.groundSnowPsf, 55),
  leastRoofSnowPsf: or(site.leastRoofSnowPsf, 0),
  roofLivePsf: or(site.roofLivePsf, 20),
  snowExposureCe: or(site.snowExposureCe, 1),
  snowThermalCt: or(site.snowThermalCt, 1.2),
  windMph: or(site.windMph, 100),
  exposure: or(site.exposure, 'B'),
  kzt: or(site.kzt, 1),
  ke: or(site.ke, 1),
});
