import type { RoofForm } from '../data/loads/free-roof-main.ts';
import type { SitePressures } from './loads/site/site-pressures.ts';
import { edgeWidthIn } from './loads/zones.ts';
import { message, type Message } from './message.ts';
import type { Project } from './project/model.ts';
import type { RowAnswer } from './transverse/row-frame.ts';
import { feetFromInches } from './units.ts';

/** What was assumed, for screen and sheet; each departure of the loads is said too. */
export function assumptionsOf(
  project: Project,
  site: SitePressures,
  form: RoofForm | null,
  rows: readonly RowAnswer[],
): readonly Message[] {
  return [
    message('assumeFirstOrder'),
    ...(form === 'pitched' ? [message('assumeNoThrust'), message('assumeRidgeNotTwisted')] : []),
    message('assumeEffectiveLengths'),
    message('assumeNoDiaphragm'),
    ...(rows.length > 0 ? [message('assumeRowShares')] : []),
    ...rows
      .filter(({ row }) => row.ties.length + row.rafters.length === 0 && row.posts.length > 1)
      .map(({ row }) => message('assumeFeetShare', { row: row.label })),
    ...rows
      .filter(({ row }) => row.rafters.length > 0)
      .map(({ row }) => message('assumeRafterHinge', { row: row.label })),
    message('assumeNoShelter'),
    message('assumeTiesAcross'),
    ...((project.surroundings.goods?.leansOnLines.length ?? 0) > 0 ? [message('assumeGoodsStand')] : []),
    ...(project.surroundings.neighbour?.guards ? [message('slideHeldBack')] : []),
    ...(project.ownLoads.some((own) => own.kind === 'live') ? [message('assumeOwnLive')] : []),
    message('assumeBraceModels'),
    ...(hasHardware(project) ? [message('assumeBoltHoles')] : []),
    message('zoneLayoutAssumed', { edgeFt: feetFromInches(edgeWidthIn(site)) }),
    ...(project.supportLines.some((l) => l.kind === 'ledger') ? [message('attachedCanopy')] : []),
    ...site.departures,
    ...(project.logs.some((l) => l.errorIn > 0) ? [message('diametersAsTyped')] : []),
    ...(project.calculation.doubledLateralSoil ? [message('doubledSoilShort')] : []),
    ...notRead(project),
    ...project.instead.map((i) =>
      message('typedInstead', { what: i.what, of: i.of ?? 'the whole shelter', value: i.value, why: i.why }),
    ),
  ];
}

/** Some joint is held by hardware, computed or rated. */
const hasHardware = ({ joints }: Project): boolean =>
  [...joints.defaults, ...joints.own].some(
    ({ capacity }) => capacity?.kind === 'fasteners' || capacity?.kind === 'rated',
  );

/** What the file holds and this version does not look at: said, so that nobody counts on it. */
function notRead(project: Project): readonly Message[] {
  return project.asBuilt.cutsMade.length > 0 ? [message('cutsMadeNotRead')] : [];
}
