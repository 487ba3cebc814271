import { leastBeamDiameters } from './checks/beam/least-diameter.ts';
import { leastBraceDiameters } from './checks/brace/least-diameter.ts';
import type { JudgedSections, SectionsOfRafters } from './checks/judged-sections.ts';
import type { LineCheckContext } from './checks/line-context.ts';
import { leastPostDiameters } from './checks/post/least-diameter.ts';
import { leastPurlinDiameter } from './checks/roof/purlin-least-diameter.ts';
import { leastRafterDiameters } from './checks/roof/rafter-least-diameter.ts';
import { rafterStations } from './checks/roof/rafter-stations.ts';
import type { Evaluation } from './evaluation.ts';
import { sectionsOf } from './frame/read-response.ts';
import { once } from './once.ts';

/** How thin a round member might be, place by place, and its sections just pass with today's forces and cuts held. */
export interface ThinnestLog {
  readonly memberId: string;
  /** distance from the member's start, both faces of a jump listed */
  readonly atIn: readonly number[];
  /** null where no thickness of that place passes, or nothing is asked there [in] */
  readonly leastDiameterIn: readonly (number | null)[];
}

/** The thinnest log of every round member whose sections were judged, each worked out when it is first read. */
export const thinnestLogs = ({ sections }: Pick<Evaluation, 'sections'>): readonly ThinnestLog[] =>
  sections.flatMap(logsOf);

function logsOf(sections: JudgedSections): readonly ThinnestLog[] {
  switch (sections.of) {
    case 'line':
      return [...beams(sections.context), ...posts(sections.context), ...braces(sections.context)];
    case 'row':
      return [
        ...beams(sections.context).filter(({ memberId }) => sections.tieIds.has(memberId)),
        ...braces(sections.context),
      ];
    case 'rafters':
      return rafters(sections);
    case 'purlins': {
      const { memberIds, loading, stick, values } = sections;
      const least = once(() => stick.profile.map(() => leastPurlinDiameter(loading, stick, values)));
      return memberIds.map((id) => thinnestLog(id, atStations(stick), least));
    }
  }
}

function beams(context: LineCheckContext): readonly ThinnestLog[] {
  const { layout, mesh, members } = context.frame;
  return mesh.beams.flatMap((chain) => {
    const atIn = sectionsOf(chain, layout).map((s) => s.atIn);
    const isRound = members.beams.some((b) => b.id === chain.memberId && b.stick?.kind === 'round');
    return isRound ? [thinnestLog(chain.memberId, atIn, () => leastBeamDiameters(context, chain))] : [];
  });
}

function posts(context: LineCheckContext): readonly ThinnestLog[] {
  const { layout, mesh } = context.frame;
  return mesh.posts.flatMap((chain) => {
    const atIn = sectionsOf(chain, layout).map((s) => s.atIn);
    const isRound = chain.post.stick?.kind === 'round';
    return isRound ? [thinnestLog(chain.memberId, atIn, () => leastPostDiameters(context, chain))] : [];
  });
}

const braces = (context: LineCheckContext): readonly ThinnestLog[] =>
  context.frame.mesh.braces.flatMap(({ brace }, i) =>
    brace.stick?.kind === 'round'
      ? [thinnestLog(brace.id, atStations(brace.stick), () => leastBraceDiameters(context, brace, i))]
      : [],
  );

function rafters({ memberIds, loading, responses, stick, values }: SectionsOfRafters): readonly ThinnestLog[] {
  const least = once(() => leastRafterDiameters(rafterStations(loading, stick), stick, values, responses));
  return memberIds.map((id) => thinnestLog(id, loading.run.stationsIn, least));
}

const atStations = ({ profile }: { readonly profile: readonly { readonly atIn: number }[] }): readonly number[] =>
  profile.map(({ atIn }) => atIn);

/** @param least in the order of the places: NaN where nothing is asked, Infinity where no log in reach passes [in] */
function thinnestLog(memberId: string, atIn: readonly number[], least: () => readonly number[] | null): ThinnestLog {
  const known = once(() => (least() ?? []).map((d) => (Number.isFinite(d) ? d : null)));
  return {
    memberId,
    atIn,
    get leastDiameterIn() {
      return known();
    },
  };
}
