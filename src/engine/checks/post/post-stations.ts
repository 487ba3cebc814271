import { breaks, type Verdict } from '../../check.ts';
import type { LineResponse } from '../../frame/line-frame.ts';
import { SAME_PLACE_IN } from '../../frame/mesh-builder.ts';
import { sectionsOf, type PostChain, type SectionAt } from '../../frame/read-response.ts';
import type { BraceGeometry, PostGeometry, Stick } from '../../geometry/shelter.ts';
import { message } from '../../message.ts';
import type { LineCheckContext } from '../line-context.ts';
import { boredAtStations, boredRows } from '../joints/bored-members.ts';
import { sectionAt, type Section } from '../section.ts';
import type { Bored } from '../wood/bored-section.ts';

/** A station of a post with what is left of the wood; `cut` is a housing for a brace foot. */
export interface PostStation extends SectionAt {
  readonly section: Section;
  /** depth that the housings there take, as one cut [in] */
  readonly takenIn: number;
  /** what hardware takes out there, whichever way the post bends */
  readonly bored: readonly Bored[];
  /** of what is left there, for the moment across the line [in3] */
  readonly acrossModulusIn3: number;
  readonly housing: Housing | null;
}

interface Housing {
  /** the deepest there [in] */
  readonly depthIn: number;
  /** faces let into: +x or -x by braces along the line, +y or -y by braces across it */
  readonly sides: readonly (1 | -1)[];
  readonly acrossSides: readonly (1 | -1)[];
}

/** Stations up to the seat: above it lies the beam. Braces across take their housings out of the same wood. */
export function postStations(context: LineCheckContext, chain: PostChain): readonly PostStation[] {
  const { post } = chain;
  const braces = context.shelter.braces.filter(
    (b) => b.postId === post.id && b.ends.post.kind !== 'coped' && b.ends.post.depthIn > 0,
  );
  const seatAt = post.seatZIn - post.woodFromZIn;
  const sections = sectionsOf(chain, context.frame.layout).filter((s) => s.atIn <= seatAt + 1e-6);
  const bored = boredAtStations(
    boredRows(context, post.id),
    sections.map((s) => s.atIn),
    'inPlane',
  );
  return sections.map((s, i) => {
    const here = braces.filter((b) => Math.abs(b.postPoint.zIn - post.woodFromZIn - s.atIn) <= SAME_PLACE_IN);
    // braces at one height take wood from several faces: counted as one cut of their sum (safe side)
    const takenIn = here.reduce((sum, b) => sum + b.ends.post.depthIn, 0);
    const section = sectionAt(post.stick!, s.diameterIn, takenIn, bored[i]);
    return {
      ...s,
      section,
      bored: bored[i]!,
      acrossModulusIn3: acrossModulus(post.stick!, section, bored[i]!),
      takenIn,
      housing:
        here.length > 0
          ? {
              depthIn: Math.max(...here.map((b) => b.ends.post.depthIn)),
              sides: here.filter((b) => b.plane === 'along').map(faceOf),
              acrossSides: here.filter((b) => b.plane === 'across').map(faceOf),
            }
          : null,
    };
  });
}

/** Why no section of a post is asked: a housing or its hardware goes through it; null where wood is left everywhere. */
export function throughPost(post: PostGeometry, stations: readonly PostStation[]): Verdict | null {
  const gone = stations.find((s) => s.section.areaIn2 === 0);
  if (!gone) return null;
  const { atIn, takenIn: depthIn, diameterIn } = gone;
  if (gone.bored.length > 0) return breaks(message('holesTakeAll', { member: post.label, atIn, diameterIn }));
  return breaks(message('housingThroughPost', { member: post.label, atIn, depthIn, diameterIn }));
}

/** A sawn post has its own modulus across; housings, which lie in the line, are not taken off it. */
function acrossModulus(stick: Stick, section: Section, bored: readonly Bored[]): number {
  if (stick.kind !== 'sawn') return section.modulusIn3;
  const turned = { ...stick, breadthIn: stick.depthIn, depthIn: stick.breadthIn };
  return sectionAt(turned, turned.depthIn, 0, bored).modulusIn3;
}

/** Face of the post that a brace is let into. */
const faceOf = (brace: BraceGeometry): 1 | -1 => (brace.side === 'plus' ? 1 : -1);

/** A housing counts twice in bending while its face is stretched; tension on the +x face is a moment above zero. */
export function stretchFactor(s: PostStation, values: Float64Array, twice: number): number {
  if (!s.housing) return 1;
  for (const side of s.housing.sides) if (side * values[s.moment]! > 0) return twice;
  return 1;
}

/** Greatest push anywhere in the post [lb]. */
export function greatestPush(stations: readonly Pick<SectionAt, 'axial'>[], r: LineResponse): number {
  let most = 0;
  for (const s of stations) most = Math.max(most, -r.values[s.axial]!);
  return most;
}
