import type { ThinnestLog } from '../evaluation.ts';
import type { Chain } from '../frame/line-mesh.ts';
import { sectionsOf } from '../frame/read-response.ts';
import { leastBeamDiameters } from './beam/least-diameter.ts';
import { leastBraceDiameters } from './brace/least-diameter.ts';
import type { LineCheckContext } from './line-context.ts';
import { leastPostDiameters } from './post/least-diameter.ts';
import { thinnestLog } from './thinnest.ts';

/** How thin the round members of a frame line might be: its beams, posts and braces. */
export function thinnestOfLine(context: LineCheckContext): readonly ThinnestLog[] {
  const { layout, mesh, members } = context.frame;
  const isRound = (id: string): boolean =>
    [...members.beams, ...members.posts, ...members.braces].some((m) => m.id === id && m.stick?.kind === 'round');
  const along = <C extends Chain>(chains: readonly C[], least: (chain: C) => readonly number[]): ThinnestLog[] =>
    chains
      .filter(({ memberId }) => isRound(memberId))
      .map((chain) => {
        const atIn = sectionsOf(chain, layout).map((s) => s.atIn);
        return thinnestLog(chain.memberId, atIn, () => least(chain));
      });
  return [
    ...along(mesh.beams, (chain) => leastBeamDiameters(context, chain) ?? []),
    ...along(mesh.posts, (chain) => leastPostDiameters(context, chain) ?? []),
    ...mesh.braces.flatMap(({ brace }, j) =>
      brace.stick?.kind === 'round'
        ? [
            thinnestLog(
              brace.id,
              brace.stick.profile.map((p) => p.atIn),
              () => leastBraceDiameters(context, brace, j) ?? [],
            ),
          ]
        : [],
    ),
  ];
}
