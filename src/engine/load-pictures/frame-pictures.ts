import type { Givens } from '../givens.ts';
import { acrossForce } from '../loads/across.ts';
import type { LineCase, LoadCase } from '../loads/cases.ts';
import { lineLoads, type LineLoading } from '../loads/line-loads.ts';
import type { RoofCase } from '../loads/roof-cases.ts';
import { roofOnLine } from '../loads/roof-on-line.ts';
import { stretchesOf } from '../loads/stretches.ts';
import { alongForces, type SwayPart } from '../loads/sway.ts';
import type { LineGeometry } from '../geometry/shelter.ts';
import { message } from '../message.ts';
import { deadPicture } from './dead-picture.ts';
import { emptyPicture, type LinePush, type LoadPicture, type LoadPoint, type LoadStrip } from './picture.ts';
import { stripsOfCase } from './strips.ts';

/** One frame line with all that its analysis is given. */
interface LoadedLine {
  readonly line: LineGeometry;
  readonly loading: LineLoading;
  readonly roof: readonly RoofCase[];
  readonly windParts: readonly SwayPart[];
}

/** Every case that reaches the frame lines, from the dead load to the push across, as it acts on the roof. */
export function framePictures(givens: Givens): {
  readonly pictures: readonly LoadPicture[];
  readonly cases: readonly LoadCase[];
} {
  const lines = givens.shelter.lines.filter((l) => l.kind === 'frame').map((line) => loadedLine(givens, line));
  const cases = [...new Map(lines.flatMap((l) => l.loading.cases.map((c) => [c.id, c] as const))).values()];
  const drawn = [...roofPictures(givens, lines), ...otherPictures(lines, cases)];
  const inOrder = ORDER.flatMap((kind) => drawn.filter((p) => p.kind === kind));
  const pictures = [
    deadPicture(
      givens,
      lines.map((l) => l.loading.loads),
    ),
    ...inOrder,
    acrossPicture(givens, lines),
  ];
  return { pictures: pictures.map((p) => ({ ...p, alsoFor: likesOf(p, cases) })), cases };
}

const ORDER: readonly LoadPicture['kind'][] = ['ownLive', 'roofLive', 'snow', 'wind', 'notional', 'seismic'];

function loadedLine(givens: Givens, line: LineGeometry): LoadedLine {
  const { project, shelter, site, roof, runOf, weights, earthquake } = givens;
  const posts = shelter.posts.filter((p) => p.line === line.id);
  const braces = shelter.braces.filter((b) => b.plane === 'along' && posts.some((p) => p.id === b.postId));
  const loading = lineLoads(project, shelter, line, site, roof, runOf, weights, earthquake);
  const live = { psf: loading.roofLivePsf, unreducedPsf: site.figures.unreducedRoofLive.value ?? 0 };
  const inOrder = posts.toSorted((a, b) => a.xIn - b.xIn);
  return {
    line,
    loading,
    roof: roofOnLine(roof, stretchesOf(line, inOrder), live),
    windParts: alongForces(project, shelter, line, inOrder, braces, site).parts,
  };
}

/** Cases of the roof; where lines count a case differently, one picture for each line. */
function roofPictures(givens: Givens, lines: readonly LoadedLine[]): readonly LoadPicture[] {
  const { rafters } = givens.shelter;
  const ids = [...new Set(lines.flatMap((l) => l.roof.map((c) => c.id)))];
  return ids.flatMap((id): readonly LoadPicture[] => {
    const ways = lines.flatMap(({ line, roof }) => {
      const found = roof.find((c) => c.id === id);
      if (!found) return [];
      const onIt = rafters.filter((r) => r.supports.some((s) => s.line === line.id));
      const strips = stripsOfCase(found.pressure, rafters, givens.runOf);
      return [{ line, case: found, strips, ownStrips: () => stripsOfCase(found.pressure, onIt, givens.runOf) }];
    });
    const [first, ...others] = ways;
    if (!first) return [];
    const pushes = lines.flatMap((l) => pushOn(l, id));
    const windToward = blowingTo(first.case);
    if (ways.length === lines.length && others.every((w) => isSame(w.strips, first.strips)))
      return [{ ...emptyPicture(first.case), strips: first.strips, pushes, windToward }];
    return ways.map((way) => ({ ...emptyPicture(way.case, way.line.id), strips: way.ownStrips(), pushes, windToward }));
  });
}

function blowingTo({ windAlong, windAcross }: RoofCase): LoadPicture['windToward'] {
  if (windAlong !== 0) return windAlong === 1 ? 'xPlus' : 'xMinus';
  if (windAcross === undefined) return null;
  return windAcross === 1 ? 'yPlus' : 'yMinus';
}

const isSame = (a: readonly LoadStrip[], b: readonly LoadStrip[]): boolean => JSON.stringify(a) === JSON.stringify(b);

/** What hangs on the lines, and what shakes them: cases that do not lie on the roof. */
function otherPictures(lines: readonly LoadedLine[], cases: readonly LoadCase[]): readonly LoadPicture[] {
  const ofRoof = new Set(lines.flatMap((l) => l.roof.map((c) => c.id)));
  return (
    cases
      // what only pushes across stands in the picture of the push across
      .filter((c) => !ofRoof.has(c.id) && baseOf(c.id, ofRoof) === null && c.pushAcross !== c.id)
      .map((c) => ({
        ...emptyPicture(c),
        points: c.kind === 'notional' || c.kind === 'seismic' ? [] : lines.flatMap((l) => pointsOn(l, c.id)),
        pushes: lines.flatMap((l) => pushOn(l, c.id)),
      }))
  );
}

/** The case of the roof whose pressures a further case shares: the other sign of its reactions, or own loads beside it. */
function baseOf(id: string, ofRoof: ReadonlySet<string>): string | null {
  const [base] = id.split(/-opposed|-own-/);
  return base !== undefined && base !== id && ofRoof.has(base) ? base : null;
}

/** Further cases that a picture stands for; that of the push across for all that does nothing but push across. */
const likesOf = (picture: LoadPicture, cases: readonly LoadCase[]): readonly string[] =>
  cases.flatMap((c) => {
    const isLike = picture.across
      ? c.pushAcross === c.id && c.kind !== 'wind'
      : baseOf(c.id, new Set([picture.id])) !== null;
    return isLike ? [c.id] : [];
  });

/** Points that a case brings to a line beyond those of the balanced snow, which may lie beside it. */
function pointsOn({ line, loading }: LoadedLine, caseId: string): readonly LoadPoint[] {
  const of = (id: string): LineCase['points'] => loading.loads.cases.find((c) => c.caseId === id)?.points ?? [];
  const beside = new Set(of('snow'));
  return of(caseId)
    .filter((p) => p.downLb !== 0 && !beside.has(p))
    .map(({ xIn, downLb }) => ({ lineId: line.id, xIn, downLb }));
}

function pushOn({ line, loading, windParts, roof }: LoadedLine, caseId: string): readonly LinePush[] {
  const alongLb = loading.loads.alongLb[caseId] ?? 0;
  if (alongLb === 0) return [];
  const isWind = roof.some((c) => c.id === caseId && c.windAlong !== 0);
  const parts = isWind ? windParts.filter((p) => p.forceLb !== 0) : [];
  return [{ lineId: line.id, alongLb, parts: parts.map(({ name, forceLb }) => ({ name, forceLb })) }];
}

/** The push across the whole shelter; one line says how heavy it is, the wind meets everything. */
function acrossPicture({ project, shelter, site, roof, runOf }: Givens, lines: readonly LoadedLine[]): LoadPicture {
  const inertiaLb = lines.reduce((sum, { loading }) => sum + loading.loads.inertiaLb, 0);
  const across = acrossForce(project, shelter, site, roof, runOf, inertiaLb);
  return { ...emptyPicture({ id: 'across', kind: 'across', words: message('caseAcross') }), across };
}
