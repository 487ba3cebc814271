import type { AskedSection } from './checks/asked-section.ts';
import { beamSections } from './checks/beam/least-diameter.ts';
import { braceSections } from './checks/brace/least-diameter.ts';
import type { JudgedSections, SectionsOfRafters } from './checks/judged-sections.ts';
import type { LineCheckContext } from './checks/line-context.ts';
import { postSections } from './checks/post/least-diameter.ts';
import { purlinSection } from './checks/roof/purlin-least-diameter.ts';
import { rafterSections } from './checks/roof/rafter-least-diameter.ts';
import { rafterStations } from './checks/roof/rafter-stations.ts';
import type { Evaluation } from './evaluation.ts';
import type { Chain } from './frame/mesh-builder.ts';
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

/** The sections of a round member as they are asked, place by place. */
export interface SectionsOfMember {
  readonly memberId: string;
  /** distance from the member's start, both faces of a jump listed */
  readonly atIn: readonly number[];
  /** in the order of the places, null where nothing is asked; gathered when they are first read */
  readonly sections: () => readonly (AskedSection | null)[];
}

/** The thinnest log of every round member whose sections were judged, each worked out when it is first read. */
export const thinnestLogs = (evaluation: Pick<Evaluation, 'sections'>): readonly ThinnestLog[] =>
  sectionsOfMembers(evaluation).map(({ memberId, atIn, sections }) => {
    const known = once(() => sections().map(leastOrNull));
    return {
      memberId,
      atIn,
      get leastDiameterIn() {
        return known();
      },
    };
  });

function leastOrNull(section: AskedSection | null): number | null {
  const least = section?.leastIn() ?? NaN;
  return Number.isFinite(least) ? least : null;
}

/** Every round member whose sections were judged. */
export function sectionsOfMembers({ sections }: Pick<Evaluation, 'sections'>): readonly SectionsOfMember[] {
  // a rafter that braces bend is asked in its row too, which its own sections do not know
  const inRows = new Set(
    sections.flatMap((judged) => (judged.of === 'row' ? judged.context.frame.mesh.beams.map((b) => b.memberId) : [])),
  );
  return sections.flatMap((judged) =>
    membersOf(judged).filter(({ memberId }) => judged.of !== 'rafters' || !inRows.has(memberId)),
  );
}

function membersOf(judged: JudgedSections): readonly SectionsOfMember[] {
  switch (judged.of) {
    case 'line':
      return [...beams(judged.context, true), ...posts(judged.context), ...braces(judged.context)];
    case 'row':
      return [
        ...beams(judged.context, false).filter(({ memberId }) => judged.tieIds.has(memberId)),
        ...braces(judged.context),
      ];
    case 'rafters':
      return rafters(judged);
    case 'purlins': {
      const { memberIds, loading, stick, values } = judged;
      const sections = once(() => {
        const section = purlinSection(loading, stick, values);
        return stick.profile.map(() => section);
      });
      return memberIds.map((memberId) => ({ memberId, atIn: atStations(stick), sections }));
    }
  }
}

function beams(context: LineCheckContext, isTwisted: boolean): readonly SectionsOfMember[] {
  const { mesh, members } = context.frame;
  return mesh.beams
    .filter(({ memberId }) => members.beams.some((b) => b.id === memberId && b.stick?.kind === 'round'))
    .map((chain) => ofChain(context, chain, () => beamSections(context, chain, isTwisted)));
}

const posts = (context: LineCheckContext): readonly SectionsOfMember[] =>
  context.frame.mesh.posts
    .filter(({ post }) => post.stick?.kind === 'round')
    .map((chain) => ofChain(context, chain, () => postSections(context, chain)));

const ofChain = (
  { frame }: LineCheckContext,
  chain: Chain,
  sections: () => readonly (AskedSection | null)[] | null,
): SectionsOfMember => ({
  memberId: chain.memberId,
  atIn: sectionsOf(chain, frame.layout).map((s) => s.atIn),
  sections: once(() => sections() ?? []),
});

const braces = (context: LineCheckContext): readonly SectionsOfMember[] =>
  context.frame.mesh.braces.flatMap(({ brace }, i) =>
    brace.stick?.kind === 'round'
      ? [
          {
            memberId: brace.id,
            atIn: atStations(brace.stick),
            sections: once(() => braceSections(context, brace, i) ?? []),
          },
        ]
      : [],
  );

function rafters({ memberIds, loading, responses, stick, values }: SectionsOfRafters): readonly SectionsOfMember[] {
  const sections = once(() => rafterSections(rafterStations(loading, stick), stick, values, responses));
  return memberIds.map((memberId) => ({ memberId, atIn: loading.run.stationsIn, sections }));
}

const atStations = ({ profile }: { readonly profile: readonly { readonly atIn: number }[] }): readonly number[] =>
  profile.map(({ atIn }) => atIn);
