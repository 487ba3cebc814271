import type { Id, Log, Member, NewId, Project, RoofPlane, SupportLine } from '../model.ts';
import { gableTemplate } from './gable.ts';
import { leanToTemplate } from './lean-to.ts';
import { notYetYours } from './not-yet-yours.ts';
import { evenRafters, purlinRows } from './parts.ts';
import { shedTemplate } from './shed.ts';

/** What can be paced out: one slope standing free, two slopes from a ridge, one slope from a wall. */
export type Form = 'shed' | 'gable' | 'leanTo';

const TEMPLATES = { shed: shedTemplate, gable: gableTemplate, leanTo: leanToTemplate } as const;

/** What a person paces out on the ground; the rest is taken from a template and marked as not yet theirs. */
export interface Paces {
  readonly form: Form;
  /** from the axis of the first post to that of the second, along the line [in] */
  readonly postsApartIn: number;
  /** from the first line, or from the wall, to the next line of posts; of a gable from eave to ridge [in] */
  readonly linesApartIn: number;
  /** from the outermost posts and lines to where the water drips [in] */
  readonly dripPastIn: number;
}

const RAFTERS_APART_IN = 24;
const PURLINS_APART_IN = 28;
/** Outermost rafter and lowest purlin stand so far inside the edge of the covering [in]. */
const RAFTER_INSIDE_IN = 4.5;
const PURLIN_INSIDE_IN = 3;
/** A size of log that is assumed is taken longer than its beam by this much [in]. */
const SPARE_LOG_IN = 24;

/**
 * A shelter of two posts on each line as it was paced out, with the first post as the mark.
 * @param paces  lengths above zero [in]; the drip line may be zero
 * @param newId  gives the ids
 */
export function pacedShelter(paces: Paces, newId: NewId): Project {
  const template = TEMPLATES[paces.form](newId);
  const reach: Reach = { fromXIn: -paces.dripPastIn, toXIn: paces.postsApartIn + paces.dripPastIn };
  const roofPlanes = template.roofPlanes.map((plane) => pacedPlane(plane, paces, reach));
  const project: Project = {
    ...template,
    supportLines: template.supportLines.map((line, i) => pacedLine(line, i, paces, reach)),
    roofPlanes,
    logs: template.logs.map((log, i) => (i === 0 ? longEnough(log, reach) : log)),
    members: [
      ...template.members.flatMap((member) => pacedMember(member, paces, reach)),
      ...roofPlanes.flatMap((plane) => sticksOf(template, plane, paces, newId)),
    ],
  };
  return { ...project, notYetYours: notYetYours(project) };
}

/** Ends of roof, beams and ledger along the lines. */
interface Reach {
  readonly fromXIn: number;
  readonly toXIn: number;
}

const pacedPlane = (plane: RoofPlane, paces: Paces, reach: Reach): RoofPlane => ({
  ...plane,
  ...reach,
  lowOverhangIn: paces.dripPastIn,
  // a roof against a wall ends there, and a slope of a gable at the ridge
  highOverhangIn: paces.form === 'shed' ? paces.dripPastIn : plane.highOverhangIn,
});

/** Templates list their lines in the order in which they are walked. */
const pacedLine = (line: SupportLine, walked: number, paces: Paces, reach: Reach): SupportLine => ({
  ...line,
  ...(line.kind === 'ledger' ? reach : {}),
  yIn: walked * paces.linesApartIn,
});

/** The size of log of the beams is the template's first; it is only assumed, so it may as well be long enough. */
const longEnough = (log: Log, { fromXIn, toXIn }: Reach): Log => ({
  ...log,
  stations: log.stations.map((station, i) =>
    i === 0 ? station : { ...station, fromButtIn: toXIn - fromXIn + SPARE_LOG_IN },
  ),
});

/** Beams, posts and braces follow the paces; rafters and purlins are laid anew. */
function pacedMember(member: Member, paces: Paces, reach: Reach): readonly Member[] {
  switch (member.role) {
    case 'beam':
      return [{ ...member, ...reach }];
    case 'post':
      return [{ ...member, xIn: member.xIn > 0 ? paces.postsApartIn : 0 }];
    case 'rafter':
    case 'purlin':
      return [];
    default:
      return [member];
  }
}

function sticksOf(template: Project, plane: RoofPlane, paces: Paces, newId: NewId): readonly Member[] {
  const groupOf = (role: 'rafter' | 'purlin'): Id => template.groups.find((group) => group.role === role)?.id ?? role;
  const fromXIn = plane.fromXIn + RAFTER_INSIDE_IN;
  const toXIn = plane.toXIn - RAFTER_INSIDE_IN;
  const bays = Math.max(1, Math.ceil((toXIn - fromXIn) / RAFTERS_APART_IN));
  const levelIn = plane.highOverhangIn + paces.linesApartIn + plane.lowOverhangIn;
  const highestIn = levelIn * Math.hypot(1, plane.risePer12 / 12) - 2 * PURLIN_INSIDE_IN;
  const rows = Math.max(1, Math.ceil((highestIn - PURLIN_INSIDE_IN) / PURLINS_APART_IN));
  return [
    ...evenRafters(newId, { group: groupOf('rafter'), plane: plane.id, fromXIn, toXIn, count: bays + 1 }),
    ...purlinRows(newId, {
      group: groupOf('purlin'),
      plane: plane.id,
      upSlopeIn: Array.from(
        { length: rows + 1 },
        (_, i) => PURLIN_INSIDE_IN + ((highestIn - PURLIN_INSIDE_IN) * i) / rows,
      ),
    }),
  ];
}
