import { clause } from '../../../data/sources.ts';

import type { LineResponse } from '../../frame/line-frame.ts';
import type { BraceLink } from '../../frame/line-mesh.ts';
import { pushIndex } from '../../frame/read-response.ts';
import { meanDiameter } from '../../geometry/sticks.ts';
import type { BraceGeometry } from '../../geometry/shelter.ts';
import type { DesignValues } from '../../material/values.ts';
import { put, type Note } from '../../note.ts';
import { insteadOf } from '../../project/instead.ts';
import { jointKey } from '../../project/joint-capacity.ts';
import type { Project } from '../../project/model.ts';
import { quantity } from '../../units.ts';
import type { CheckSite } from '../site-of-check.ts';
import { tellForce, valuesIn, type LineCheckContext } from '../line-context.ts';
import { holderAt } from '../joints/holder.ts';
import { fromFrame, ratedSite } from '../joints/rated-site.ts';
import {
  adjustedCompression,
  allowableColumnStress,
  columnStabilityFactor,
  eulerStress,
  GREATEST_SLENDERNESS,
  slenderness,
} from '../wood/column.ts';
import { equalAreaSide, representativeDiameter } from '../wood/tapered-column.ts';
import { braceCrushingSite } from './brace-crushing.ts';
import { netOfBrace } from './brace-net.ts';
import { braceEndSites } from './brace-end-sites.ts';

/** Every check of the knee braces of a line. */
export function braceSites(context: LineCheckContext): readonly CheckSite<LineResponse>[] {
  return context.frame.mesh.braces.flatMap((link, j) => {
    const values = valuesIn(context, link.brace.id);
    const push = (r: LineResponse): number => r.values[pushIndex(context.frame.layout, j)]!;
    return [
      ...(values ? axialSites(context, link, j, values) : []),
      ...braceEndSites(context, link.brace, values, push),
      ...tieSites(context, link.brace, push),
    ];
  });
}

interface ColumnSizes {
  readonly areaIn2: number;
  readonly sideIn: number;
  readonly smallestAreaIn2: number;
  readonly tell: (note: Note) => void;
}

/** Both ends pinned: the brace buckles between its working points. Round: equal-area square of the representative diameter. */
function columnSizes(project: Project, brace: BraceGeometry): ColumnSizes | null {
  const stick = brace.stick;
  if (!stick || stick.kind === 'typed') return null;
  if (stick.kind === 'sawn') {
    const area = stick.breadthIn * stick.depthIn;
    return {
      areaIn2: area,
      sideIn: Math.min(stick.breadthIn, stick.depthIn),
      smallestAreaIn2: area,
      tell: () => undefined,
    };
  }
  const diameters = stick.profile.map((p) => p.diameterIn);
  const smallest = Math.min(...diameters);
  const largest = Math.max(...diameters);
  const typed = insteadOf(project, 'columnTaperA', brace.id);
  const ends = typed ? { a: typed.value } : 'bothPinnedOneTaper';
  const d = representativeDiameter(smallest, largest, ends);
  return {
    areaIn2: (Math.PI * d * d) / 4,
    sideIn: equalAreaSide(d),
    smallestAreaIn2: (Math.PI * smallest * smallest) / 4,
    tell: (note) => {
      representativeDiameter(smallest, largest, ends, note);
      equalAreaSide(d, note);
    },
  };
}

function axialSites(
  context: LineCheckContext,
  link: BraceLink,
  j: number,
  values: DesignValues,
): readonly CheckSite<LineResponse>[] {
  const sizes = columnSizes(context.project, link.brace);
  const { stick } = link.brace;
  if (!sizes || !stick || stick.kind === 'typed') return [];
  const index = pushIndex(context.frame.layout, j);
  const length = link.brace.lengthIn;
  const c = insteadOf(context.project, 'columnC', link.brace.id)?.value ?? values.cForColumns;
  const FcE = eulerStress(values.EminPsi, length, sizes.sideIn);
  const at = { memberId: link.brace.id, place: { kind: 'whole', name: '' } as const };
  const net = netOfBrace(context, link.brace, sizes.smallestAreaIn2);
  const stress = (symbol: string, words: string, force: number, area: number, note?: Note): number => {
    note?.({
      symbol,
      words,
      formula: 'P / A',
      put: [put('P', force, 'lb', 'axial force'), put('A', area, 'in2', 'area')],
      result: quantity(force / area, 'psi'),
      clause: clause('NDS', '3.6.3'),
    });
    return force / area;
  };
  return [
    {
      ...at,
      ruleId: 'brace.push',
      unit: 'psi',
      purpose: 'strength',
      isByDuration: true,
      demand: (r, note) => {
        if (note) {
          tellForce(context, r, index, 'P', 'lb', 'push in the brace', note);
          sizes.tell(note);
        }
        return stress('fc', 'compression stress', Math.max(0, r.values[index]!), sizes.areaIn2, note);
      },
      capacity: (r, note) => {
        for (const step of note ? values.steps('Fc') : []) note?.(step);
        const star = adjustedCompression(values.FcPsi, r.combination.durationFactor, note);
        if (note) eulerStress(values.EminPsi, length, sizes.sideIn, note);
        return allowableColumnStress(star, columnStabilityFactor(star, FcE, c, note), note);
      },
      grows: {
        power: [2, 4],
        diameterAt: () => (link.brace.stick?.kind === 'round' ? meanDiameter(link.brace.stick) : sizes.sideIn),
      },
    },
    braceCrushingSite(context, link.brace, stick, index, values),
    {
      ...at,
      ruleId: 'brace.pull',
      unit: 'psi',
      purpose: 'strength',
      isByDuration: true,
      stops: () => net.through,
      demand: (r, note) => {
        if (note) tellForce(context, r, index, 'P', 'lb', 'push in the brace (pull is below zero)', note);
        return stress(
          'ft',
          'pull stress at the thinnest place',
          Math.max(0, -r.values[index]!),
          net.areaIn2(note),
          note,
        );
      },
      capacity: (r, note) => {
        for (const step of note ? values.steps('Ft') : []) note?.(step);
        const allowable = values.FtPsi * r.combination.durationFactor;
        note?.({
          symbol: "Ft'",
          words: 'allowable pull along the grain',
          formula: 'Ft × CD',
          put: [
            put('Ft', values.FtPsi, 'psi', 'reference pull value'),
            put('CD', r.combination.durationFactor, '1', 'load duration factor'),
          ],
          result: quantity(allowable, 'psi'),
          clause: clause('NDS', '3.8.1'),
        });
        return allowable;
      },
    },
    {
      ...at,
      ruleId: 'brace.slender',
      unit: '1',
      purpose: 'strength',
      isByDuration: true,
      demand: (_, note) => {
        if (note) sizes.tell(note);
        return slenderness(length, sizes.sideIn, note);
      },
      capacity: () => GREATEST_SLENDERNESS,
    },
  ];
}

/** Pull that both joints of a brace must hold, in every combination that pulls. */
function tieSites(
  context: LineCheckContext,
  brace: BraceGeometry,
  push: (r: LineResponse) => number,
): readonly CheckSite<LineResponse>[] {
  return (['bracePost', 'braceTop'] as const).map((kind) =>
    ratedSite({
      ruleId: 'brace.tie',
      memberId: brace.id,
      place: { kind: 'joint', name: kind },
      holder: holderAt(context, kind, jointKey(kind, brace.id)),
      part: 'pull',
      force: fromFrame(kind === 'bracePost' ? 'pull at the post end' : 'pull at the top end', (r: LineResponse) =>
        Math.max(0, -push(r)),
      ),
    }),
  );
}
