import type { Fault } from '../message.ts';
import type { FrameLine, MemberOf, Project } from '../project/model.ts';
import { membersOf, traitsOf } from '../project/traits.ts';
import { beamShape, type BeamShape } from './beam-shape.ts';
import { housingCuts, placeBeams, withJointCuts } from './beams.ts';
import { placeBrace, placeTie } from './braces.ts';
import { bearingLevels } from './heights.ts';
import { lineLabels, planeLabel, planeMarks, stickName } from './labels.ts';
import { placePost } from './posts.ts';
import { placePlane, placePurlins, placeRafters } from './roof.ts';
import type {
  BeamGeometry,
  BraceGeometry,
  CutGeometry,
  LineGeometry,
  PostGeometry,
  Shelter,
  TieGeometry,
} from './shelter.ts';

/**
 * Places everything: heights of the lines from one of them, beams as set, posts from pier to seat, braces between
 * working points, rafters and purlins. Faults name the field that makes a shelter impossible to place.
 */
export function placeShelter(project: Project): { readonly shelter: Shelter; readonly faults: readonly Fault[] } {
  const shapes = new Map(project.supportLines.map((l) => [l.id, l.kind === 'frame' ? shapesOn(project, l) : []]));
  const { levels, faults } = bearingLevels(project, shapes);
  const allFaults: Fault[] = [...faults];
  const labels = lineLabels(project, levels);

  const beams: BeamGeometry[] = [];
  const posts: PostGeometry[] = [];
  for (const line of project.supportLines) {
    if (line.kind !== 'frame') continue;
    const label = labels.get(line.id)!;
    const placed = placeBeams(project, line, label, levels.get(line.id) ?? 0, shapes.get(line.id)!);
    beams.push(...placed);
    postMembers(project, line.id).forEach((member, i) => {
      const answer = placePost(project, member, { yIn: line.yIn, label: `${label}${i + 1}` }, placed);
      if (answer.post) posts.push(answer.post);
      allFaults.push(...answer.faults);
    });
  }

  const ties = project.members.flatMap((m): TieGeometry[] => {
    const tie = m.role === 'tie' ? placeTie(project, m, posts) : null;
    return tie ? [tie] : [];
  });
  const markOf = planeMarks(project, labels);
  const planes = project.roofPlanes.map((p) => placePlane(project, p, levels, planeLabel(markOf(p))));
  const rafters = planes.flatMap((p, i) =>
    placeRafters(project, p, project.roofPlanes[i]!, levels, stickName(markOf(p))),
  );
  const braces: BraceGeometry[] = [];
  for (const m of project.members) {
    if (m.role !== 'brace') continue;
    const answer = placeBrace(project, m, posts, beams, { ties, rafters });
    if (answer.brace) braces.push(answer.brace);
    allFaults.push(...answer.faults);
  }

  const purlins = planes.flatMap((p) =>
    placePurlins(
      project,
      p,
      rafters.filter((r) => r.plane === p.id),
      stickName(markOf(p)),
    ),
  );
  const lowestGradeZIn = posts.length > 0 ? Math.min(...posts.map((p) => p.gradeZIn)) : 0;
  const meanCoveringZ = planes.reduce((sum, p) => sum + (p.highZIn + p.lowZIn) / 2, 0) / planes.length;
  const ys = planes.flatMap((p) => [p.highYIn, p.lowYIn]);
  const typedHeight = project.instead.find((i) => i.what === 'meanRoofHeightFt');
  return {
    shelter: {
      lines: project.supportLines.map((l) => lineGeometry(l, labels.get(l.id)!, levels.get(l.id) ?? 0, beams, posts)),
      planes,
      posts,
      beams: beams.map((b) => withJointCuts(b, jointCuts(project, b, posts, braces))),
      braces,
      ties,
      rafters,
      purlins,
      lowestGradeZIn,
      meanRoofHeightIn: typedHeight ? typedHeight.value * 12 : meanCoveringZ - lowestGradeZIn,
      planAlongIn: Math.max(...planes.map((p) => p.toXIn)) - Math.min(...planes.map((p) => p.fromXIn)),
      planAcrossIn: Math.max(...ys) - Math.min(...ys),
    },
    faults: allFaults,
  };
}

const postMembers = (project: Project, line: string): readonly MemberOf<'post'>[] =>
  project.members
    .filter((m): m is MemberOf<'post'> => m.role === 'post' && m.line === line)
    .sort((a, b) => a.xIn - b.xIn || a.id.localeCompare(b.id));

function shapesOn(project: Project, line: FrameLine): readonly BeamShape[] {
  const atX = postMembers(project, line.id).map((p) => p.xIn);
  return project.members
    .filter((m): m is MemberOf<'beam'> => m.role === 'beam' && m.line === line.id)
    .sort((a, b) => a.fromXIn - b.fromXIn || a.id.localeCompare(b.id))
    .map((m) => beamShape(project, line, m, atX));
}

function lineGeometry(
  line: Project['supportLines'][number],
  label: string,
  bearingZIn: number,
  beams: readonly BeamGeometry[],
  posts: readonly PostGeometry[],
): LineGeometry {
  const own = beams.filter((b) => b.line === line.id);
  const ledger = line.kind === 'ledger';
  return {
    id: line.id,
    kind: line.kind,
    label,
    yIn: line.yIn,
    bearingZIn,
    stripThicknessIn: ledger ? 0 : (line.strip?.thicknessIn ?? 0),
    fromXIn: ledger ? line.fromXIn : Math.min(...own.map((b) => b.fromXIn)),
    toXIn: ledger ? line.toXIn : Math.max(...own.map((b) => b.toXIn)),
    beamIds: own.map((b) => b.id),
    postIds: posts
      .filter((p) => p.line === line.id)
      .sort((a, b) => a.xIn - b.xIn)
      .map((p) => p.id),
  };
}

/** Only a flat runs out at a slope; a dap and a saddle end square. */
const SEAT_CUT = { flat: 'flat', dap: 'dap', saddle: 'notch' } as const;

const traitsOfBeam = (project: Project, beamId: string) =>
  traitsOf(
    project,
    membersOf(project, 'beam').find((m) => m.id === beamId)!,
  );

function jointCuts(
  project: Project,
  beam: BeamGeometry,
  posts: readonly PostGeometry[],
  braces: readonly BraceGeometry[],
): readonly CutGeometry[] {
  const seats = posts.flatMap((p) =>
    p.seats
      .filter((s) => s.beamId === beam.id && s.depthIn > 0)
      .map((s) => ({
        id: `seat-${p.id}`,
        kind: SEAT_CUT[traitsOfBeam(project, beam.id).seat.kind],
        madeBy: 'seat' as const,
        atXIn: s.xIn,
        lengthIn: s.lengthIn,
        depthIn: s.depthIn,
        angleDeg: 180,
      })),
  );
  return [...seats, ...housingCuts(beam.id, braces)];
}
