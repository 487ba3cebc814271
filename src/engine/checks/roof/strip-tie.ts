import { clause } from '../../../data/sources.ts';
import type { Combination } from '../../loads/combination.ts';
import { put } from '../../note.ts';
import { capacityOf, jointKey } from '../../project/joint-capacity.ts';
import { quantity } from '../../units.ts';
import { checkSource, plainSource, type CheckSource } from '../check-source.ts';
import { ratedSite } from '../joints/rated-site.ts';
import { refused, unasked, type RoofCheckContext } from './context.ts';
import { pullAt, type AnalysedRafters, type RafterChecks } from './rafter-checks.ts';

interface LinePull {
  readonly combination: Combination;
  readonly pullLb: number;
  readonly rafterLabel: string;
}

/**
 * Strip on its beam: what the hardest pulling rafter hands on, combination by combination, against a rated pull for each
 * rafter. The strip's own weight is not counted against it (safe side).
 * @source ASCE7 2.4.1 (7-16)
 */
export function stripTieChecks(context: RoofCheckContext, rafters: RafterChecks): readonly CheckSource[] {
  return context.project.supportLines.flatMap((line): readonly CheckSource[] => {
    if (line.kind !== 'frame' || line.strip === null) return [];
    if (rafters.problem) return [plainSource(unasked(['strip.tie'], line.id, rafters.problem))];
    const onLine = rafters.analysed.filter((a) => a.loading.run.supportLines.includes(line.id));
    const noWind = onLine.map((a) => a.loading.wind).find((wind) => !wind.ok);
    if (noWind && !noWind.ok) return [plainSource(unasked(['strip.tie'], line.id, refused(noWind)))];
    return [
      checkSource({
        responses: greatestPulls(onLine, line.id),
        name: (r) => ({ combinationId: r.combination.id, scenario: '' }),
        sites: [
          ratedSite<LinePull>({
            ruleId: 'strip.tie',
            memberId: line.id,
            place: { kind: 'whole', name: '' },
            capacity: capacityOf(context.project, 'stripBeam', jointKey('stripBeam', line.id)),
            part: 'pull',
            force: (r, note) => {
              note?.({
                symbol: 'T',
                words: `pull of the hardest pulling rafter on this line, ${r.rafterLabel}`,
                formula: 'T',
                put: [put('T', r.pullLb, 'lb', 'as at the tie of that rafter')],
                result: quantity(r.pullLb, 'lb'),
                clause: clause('ASCE7', '2.4.1'),
              });
              return r.pullLb;
            },
          }),
        ],
      }),
    ];
  });
}

function greatestPulls(rafters: readonly AnalysedRafters[], lineId: string): readonly LinePull[] {
  const worst = new Map<string, LinePull>();
  for (const { loading, responses } of rafters) {
    const support = loading.run.supportLines.indexOf(lineId);
    for (const r of responses) {
      if (r.combination.purpose !== 'strength') continue;
      const known = worst.get(r.combination.id);
      const pullLb = pullAt(r, support);
      if (!known || pullLb > known.pullLb)
        worst.set(r.combination.id, { combination: r.combination, pullLb, rafterLabel: loading.rafter.label });
    }
  }
  return [...worst.values()];
}
