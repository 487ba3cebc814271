import { clause } from '../../../data/sources.ts';
import { firstOrderOf, type LineResponse } from '../../frame/line-frame.ts';
import type { PostChain } from '../../frame/read-response.ts';
import type { DesignValues } from '../../material/values.ts';
import { message } from '../../message.ts';
import { put } from '../../note.ts';
import { quantity } from '../../units.ts';
import { forcePut, tellForce, valuesIn, type LineCheckContext } from '../line-context.ts';
import type { CheckSite } from '../site-of-check.ts';
import { worstStation } from '../worst-station.ts';
import { adjustedCompression, GREATEST_SLENDERNESS, slenderness } from '../wood/column.ts';
import { allowableColumn, postColumn, type ColumnPlane, type PostColumn } from './column.ts';
import { footSites } from './foot-ties.ts';
import { housingSites } from './housing.ts';
import { greatestPush, postStations, type PostStation, throughPost } from './post-stations.ts';
import { crushingStress, pulledSum, pushedSum } from './station-sums.ts';

/** Every check of the posts of a line. */
export function postSites(context: LineCheckContext): readonly CheckSite<LineResponse>[] {
  return context.frame.mesh.posts.flatMap((chain) => {
    const values = valuesIn(context, chain.memberId);
    return [...(values ? woodSites(context, chain, values) : []), ...footSites(context, chain)];
  });
}

function woodSites(
  context: LineCheckContext,
  chain: PostChain,
  values: DesignValues,
): readonly CheckSite<LineResponse>[] {
  const stations = postStations(context, chain);
  const column = postColumn(context, chain, stations, values);
  const area = column.areaIn2;
  return [
    ...column.planes.map((p): CheckSite<LineResponse> => slenderSite(chain, p)),
    {
      memberId: chain.memberId,
      purpose: 'strength',
      ruleId: 'post.push',
      place: { kind: 'whole', name: '' },
      unit: 'psi',
      demand: (r, note) => {
        const P = greatestPush(stations, r);
        if (note)
          tellForce(
            context,
            r,
            mostPushed(stations, r).axial,
            'N',
            'lb',
            'axial force (pull +) where the post is pushed most',
            note,
          );
        note?.({
          symbol: 'fc',
          words: 'compression stress on the representative section',
          formula: 'P / A',
          put: [
            put('P', P, 'lb', 'greatest push in the post'),
            put('A', area, 'in2', 'area of the representative section'),
          ],
          result: quantity(P / area, 'psi'),
          clause: clause('NDS', '3.6.3, 3.7.2'),
        });
        return P / area;
      },
      capacity: (r, note) => {
        for (const step of note ? values.steps('Fc') : []) note?.(step);
        return allowableColumn(column, values, r, note);
      },
      reason: (r) => column.decidingPlane(r)?.length.reason ?? null,
      grows: { power: [2, 4], diameterAt: () => Math.sqrt((4 * area) / Math.PI) },
    },
    crushingSite(context, chain, stations, values),
    interactionSite(context, chain, stations, column, values),
    tensionSite(context, chain, stations, values),
    ...housingSites(chain, stations),
  ];
}

const mostPushed = (stations: readonly PostStation[], r: LineResponse): PostStation =>
  worstStation(stations, (s) => -r.values[s.axial]!);

function slenderSite(chain: PostChain, plane: ColumnPlane): CheckSite<LineResponse> {
  return {
    ruleId: 'post.slender',
    memberId: chain.memberId,
    place: { kind: 'whole', name: plane.direction },
    unit: '1',
    purpose: 'strength',
    isByDuration: true,
    demand: (_, note) => {
      if (note) plane.tell(note);
      return slenderness(plane.length.lengthIn, plane.sideIn, note);
    },
    capacity: () => GREATEST_SLENDERNESS,
    reason: () => plane.length.reason,
  };
}

/** P / A at the thinnest and every cut section against Fc* without column stability. @source NDS 3.7.2 */
function crushingSite(
  context: LineCheckContext,
  chain: PostChain,
  stations: readonly PostStation[],
  values: DesignValues,
): CheckSite<LineResponse> {
  const through = throughPost(chain.post, stations);
  const worst = (r: LineResponse): PostStation => worstStation(stations, (s) => crushingStress(s, r.values));
  return {
    ruleId: 'post.crushing',
    memberId: chain.memberId,
    place: { kind: 'whole', name: '' },
    unit: 'psi',
    purpose: 'strength',
    isByDuration: true,
    stops: () => through,
    demand: (r, note) => {
      const s = worst(r);
      note?.({
        symbol: 'fc',
        words: 'compression stress where the post is thinnest or cut',
        formula: '|N| / A',
        put: [forcePut(context, r, s.axial, 'N', 'lb', 'axial force'), put('A', s.section.areaIn2, 'in2', 'area left')],
        result: quantity(crushingStress(s, r.values), 'psi'),
        clause: clause('NDS', '3.7.2'),
      });
      return crushingStress(s, r.values);
    },
    capacity: (r, note) => {
      for (const step of note ? values.steps('Fc') : []) note?.(step);
      return adjustedCompression(values.FcPsi, r.combination.durationFactor, note);
    },
    worstAt: (r) => worst(r).atIn,
    grows: { power: 2, diameterAt: (r) => worst(r).diameterIn },
  };
}

/** Push and bending together at every station. @source NDS 3.9.2 */
function interactionSite(
  context: LineCheckContext,
  chain: PostChain,
  stations: readonly PostStation[],
  column: PostColumn,
  values: DesignValues,
): CheckSite<LineResponse> {
  const sumAt = pushedSum(context, chain, stations, column, values);
  const through = throughPost(chain.post, stations);
  const worst = (r: LineResponse): PostStation => worstStation(stations, (s) => sumAt(s, r));
  return {
    ruleId: 'post.bending',
    memberId: chain.memberId,
    place: { kind: 'whole', name: '' },
    unit: '1',
    purpose: 'strength',
    isByDuration: true,
    stops: () => through,
    demand: (r, note) => {
      const s = worst(r);
      if (note) {
        tellForce(context, r, s.axial, 'N', 'lb', 'axial force at the worst station', note);
        tellForce(context, firstOrderOf(r), s.moment, 'M', 'lb·in', 'moment in the plane of the line', note);
        s.section.tell(note);
        allowableColumn(column, values, r, note);
      }
      return sumAt(s, r, note);
    },
    capacity: () => 1,
    worstAt: (r) => worst(r).atIn,
    reason: (r) =>
      Number.isFinite(sumAt(worst(r), r))
        ? (column.decidingPlane(r)?.length.reason ?? null)
        : message('pushPastEuler', { member: chain.post.label }),
  };
}

const ROUNDING_LB = 1e-6;

function isPulled(stations: readonly PostStation[], values: Float64Array): boolean {
  for (const s of stations) if (values[s.axial]! > ROUNDING_LB) return true;
  return false;
}

/** Pull and bending together at every station. @source NDS 3.9.1 */
function tensionSite(
  context: LineCheckContext,
  chain: PostChain,
  stations: readonly PostStation[],
  values: DesignValues,
): CheckSite<LineResponse> {
  const sumAt = pulledSum(context, chain, values);
  const through = throughPost(chain.post, stations);
  const worst = (r: LineResponse): PostStation => worstStation(stations, (s) => sumAt(s, r));
  return {
    ruleId: 'post.tension',
    memberId: chain.memberId,
    place: { kind: 'whole', name: '' },
    unit: '1',
    purpose: 'strength',
    isByDuration: true,
    stops: () => through,
    applies: (r) => isPulled(stations, r.values),
    demand: (r, note) => {
      const s = worst(r);
      if (note) {
        tellForce(context, r, s.axial, 'N', 'lb', 'axial force at the worst station', note);
        tellForce(context, r, s.moment, 'M', 'lb·in', 'moment in the plane of the line', note);
        s.section.tell(note);
      }
      return sumAt(s, r, note);
    },
    capacity: () => 1,
    worstAt: (r) => worst(r).atIn,
  };
}
