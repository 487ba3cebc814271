import { givensOf, type Prepared } from '../../../src/engine/givens.ts';
import { plumbReactions, squareLoads } from '../../../src/engine/loads/rafter-reactions.ts';
import type { RoofCase } from '../../../src/engine/loads/roof-cases.ts';
import type { Project } from '../../../src/engine/project/model.ts';
import { exampleText, soundProject, type Example } from '../../support/files.ts';

export type Neighbour = NonNullable<Project['surroundings']['neighbour']>;

/** A higher roof beside a shelter: 8 ft up, across no gap, from which nothing slides. */
const BESIDE: Neighbour = {
  side: 'yMinus',
  ledgerLine: null,
  gapFt: 0,
  stepFt: 8,
  upperLengthFt: 64,
  eaveToRidgeFt: 15,
  upperRisePer12: 6,
  upperSlippery: true,
  upperCt: 1,
  slidesThisWay: false,
  ableBy: null,
};

export const project = (name: Example): Project => soundProject(exampleText(name));

/** The same shelter of importance 1 beside another higher roof, under other ground snow where that is given. */
export function beside(of: Project, change: Partial<Neighbour> | null, groundSnowPsf?: number): Project {
  const neighbour = change && { ...BESIDE, ...change };
  const given = groundSnowPsf ?? of.site.groundSnowPsf.value;
  return {
    ...of,
    site: {
      ...of.site,
      riskCategory: { ...of.site.riskCategory, value: 'II' },
      groundSnowPsf: { ...of.site.groundSnowPsf, value: given },
      leastRoofSnowPsf: { ...of.site.leastRoofSnowPsf, value: 0 },
    },
    surroundings: { ...of.surroundings, neighbour },
  };
}

/** @throws Error  where the shelter cannot be placed */
export function prepared(of: Project): Prepared {
  const givens = givensOf(of);
  if ('faults' in givens) throw new Error(JSON.stringify(givens.faults));
  return givens;
}

export function snowCaseOf({ roof }: Prepared, id: string): RoofCase {
  const found = roof.find((c) => c.id === id);
  if (!found) throw new Error(`no case ${id} among ${roof.map((c) => c.id).join(', ')}`);
  return found;
}

/** What each line gets from all rafters in one case, ledger lines too [lb]. */
export function onLines(givens: Prepared, c: Pick<RoofCase, 'pressure'>): Readonly<Record<string, number>> {
  const sums: Record<string, number> = {};
  for (const rafter of givens.shelter.rafters) {
    const run = givens.runOf(rafter);
    const pressure = (i: number) => c.pressure(rafter, run.parts[i]!);
    const loads = squareLoads(run, rafter.tributaryWidthIn, pressure, 'plumbPsf');
    for (const { line, downLb } of plumbReactions(run, loads)) sums[line] = (sums[line] ?? 0) + downLb;
  }
  return sums;
}

export const total = (sums: Readonly<Record<string, number>>): number => Object.values(sums).reduce((a, b) => a + b, 0);
