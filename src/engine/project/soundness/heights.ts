import { type Fault, fault } from '../../message.ts';
import { INCHES_PER_FOOT } from '../../units.ts';
import type { Id, Project, SupportLine } from '../model.ts';
import { lineAt, planeAt, SAME_PLACE_IN } from './at.ts';

/** Exactly one line of each connected roof carries a height; the rest follow from the rises, and must close. */
export function heightFaults(project: Project): readonly Fault[] {
  const roofs = connectedRoofs(project);
  return [
    ...roofs.flatMap((lines) => (lines.length === 1 ? underNoRoof(project, lines) : heightsOf(lines))),
    ...closingFaults(project),
  ];
}

function underNoRoof(project: Project, lines: readonly SupportLine[]): readonly Fault[] {
  return lines
    .filter(({ id }) => !project.roofPlanes.some((plane) => plane.onLines.includes(id)))
    .map(({ id }) => fault(lineAt(id, 'id'), 'lineUnderNoRoof', { line: id }));
}

function heightsOf(lines: readonly SupportLine[]): readonly Fault[] {
  const carriers = lines.filter((line) => line.height !== null);
  if (carriers.length === 1) return [];
  const [first] = lines;
  if (carriers.length === 0) {
    const names = lines.map(({ id }) => id).join(', ');
    return first ? [fault(lineAt(first.id, 'height'), 'roofWithoutHeight', { lines: names })] : [];
  }
  return carriers.map(({ id }) => {
    const others = carriers.filter((other) => other.id !== id).map((other) => lineAt(other.id, 'height'));
    return fault(lineAt(id, 'height'), 'roofWithTwoHeights', { line: id, others: others.join(', ') });
  });
}

/** Lines that roof planes tie together, however far round. */
function connectedRoofs(project: Project): readonly (readonly SupportLine[])[] {
  const roofOf = new Map<Id, Id>(project.supportLines.map(({ id }) => [id, id]));
  for (const { onLines } of project.roofPlanes) {
    const joined = new Set(onLines.map((id) => roofOf.get(id)));
    const [first] = onLines;
    const name = first === undefined ? undefined : roofOf.get(first);
    if (name === undefined) continue;
    for (const [line, roof] of roofOf) if (joined.has(roof)) roofOf.set(line, name);
  }
  const names = [...new Set(roofOf.values())];
  return names.map((name) => project.supportLines.filter(({ id }) => roofOf.get(id) === name));
}

/** Planes that lie on the same lines by two ways must agree on how much lower one line is than the other. */
function closingFaults(project: Project): readonly Fault[] {
  const yOf = new Map(project.supportLines.map(({ id, yIn }) => [id, yIn]));
  const levels = new Map<Id, number>();
  const waiting = [...project.roofPlanes];
  const faults: Fault[] = [];
  while (waiting.length > 0) {
    const next = waiting.findIndex(({ onLines }) => onLines.some((id) => levels.has(id)));
    const [plane] = waiting.splice(Math.max(next, 0), 1);
    if (!plane) break;
    const top = yOf.get(plane.onLines[0] ?? '') ?? 0;
    const falls = plane.onLines.map((id) => (Math.abs((yOf.get(id) ?? top) - top) * plane.risePer12) / INCHES_PER_FOOT);
    const known = plane.onLines.findIndex((id) => levels.has(id));
    const highLevel = known < 0 ? 0 : (levels.get(plane.onLines[known]!) ?? 0) + falls[known]!;
    plane.onLines.forEach((id, i) => {
      const level = highLevel - falls[i]!;
      const before = levels.get(id);
      if (before === undefined) levels.set(id, level);
      else if (Math.abs(before - level) > SAME_PLACE_IN) {
        faults.push(
          fault(planeAt(plane.id, 'risePer12'), 'roofDoesNotClose', { line: id, offIn: Math.abs(before - level) }),
        );
      }
    });
  }
  return faults;
}
