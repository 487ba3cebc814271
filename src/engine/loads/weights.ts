import type { Shelter, Stick } from '../geometry/shelter.ts';
import { diameterAt } from '../geometry/shelter.ts';
import { meanDiameter } from '../geometry/sticks.ts';
import { sawnWeight } from '../material/sawn-weight.ts';
import { woodWeight } from '../material/wood-weight.ts';
import type { WeightAnswer } from '../material/values.ts';
import type { Message } from '../message.ts';
import type { Project } from '../project/model.ts';
import { CUBIC_INCHES_PER_CUBIC_FOOT, INCHES_PER_FOOT } from '../units.ts';

/** Green and heavy for gravity, air-dry and light for uplift: both weights of everything. */
export interface TwoWeights {
  readonly heavy: number;
  readonly light: number;
}

/** Weight of a stick per inch at a distance from its start, heavy and light [lb/in]. */
export type WeightAlong = (atIn: number) => TwoWeights;

/**
 * Weight along a stick. A missing weight makes everything above it unknown, so the reason comes back instead.
 * @source WOOD_HANDBOOK ch. 4 for logs; typed or tabulated weight otherwise
 */
export function weightAlong(
  project: Project,
  stick: Stick,
): { readonly ok: true; readonly at: WeightAlong } | { readonly ok: false; readonly reason: Message } {
  if (stick.kind === 'typed') {
    const weight = { heavy: stick.heavyPlf / INCHES_PER_FOOT, light: stick.lightPlf / INCHES_PER_FOOT };
    return { ok: true, at: () => weight };
  }
  const answer = densityOf(project, stick);
  if (!answer.ok) return answer;
  const heavy = answer.weight.heavyPcf / CUBIC_INCHES_PER_CUBIC_FOOT;
  const light = answer.weight.lightPcf / CUBIC_INCHES_PER_CUBIC_FOOT;
  if (stick.kind === 'sawn') {
    const area = stick.breadthIn * stick.depthIn;
    return { ok: true, at: () => ({ heavy: area * heavy, light: area * light }) };
  }
  const last = stick.profile[stick.profile.length - 1]!.atIn;
  return {
    ok: true,
    at: (atIn) => {
      const d = diameterAt(stick, Math.min(Math.max(atIn, 0), last)) ?? 0;
      const area = (Math.PI * d * d) / 4;
      return { heavy: area * heavy, light: area * light };
    },
  };
}

function densityOf(project: Project, stick: Exclude<Stick, { kind: 'typed' }>): WeightAnswer {
  if (stick.kind === 'sawn') return sawnWeight(stick);
  const wood = project.woods.find((w) => w.id === stick.woodId)!;
  return woodWeight(wood, meanDiameter(stick));
}

/** Whole weight of a stick over a length from its start, by Simpson over the taper [lb]. */
export function wholeWeight(at: WeightAlong, lengthIn: number): TwoWeights {
  const n = 20;
  let heavy = 0;
  let light = 0;
  for (let i = 0; i <= n; i++) {
    const w = at((lengthIn * i) / n);
    const factor = i === 0 || i === n ? 1 : i % 2 === 1 ? 4 : 2;
    heavy += factor * w.heavy;
    light += factor * w.light;
  }
  return { heavy: (heavy * lengthIn) / (3 * n), light: (light * lengthIn) / (3 * n) };
}

/** Weight along every member, worked out once; members without wood, and why some are unknown. */
export interface MemberWeights {
  readonly of: (memberId: string) => WeightAlong;
  readonly missing: ReadonlyMap<string, Message>;
}

const NOTHING: TwoWeights = { heavy: 0, light: 0 };

export function memberWeights(project: Project, shelter: Shelter): MemberWeights {
  const known = new Map<string, WeightAlong>();
  const missing = new Map<string, Message>();
  const members = [
    ...shelter.beams,
    ...shelter.posts,
    ...shelter.braces,
    ...shelter.rafters,
    ...shelter.purlins,
    ...shelter.ties,
  ];
  for (const member of members) {
    if (!member.stick) continue;
    const answer = weightAlong(project, member.stick);
    if (answer.ok) known.set(member.id, answer.at);
    else missing.set(member.id, answer.reason);
  }
  return { of: (memberId) => known.get(memberId) ?? (() => NOTHING), missing };
}
