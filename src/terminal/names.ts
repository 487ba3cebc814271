import type { Evaluation } from '../engine/evaluation.ts';

/** What a member is called on drawing and sheet; an id that has no label stands for itself. */
export function memberNames({ shelter }: Evaluation): (memberId: string) => string {
  const lines = shelter.lines.map((l) => [l.id, `line ${l.label}`] as const);
  const members = [...shelter.beams, ...shelter.posts, ...shelter.braces, ...shelter.rafters, ...shelter.purlins].map(
    (m) => [m.id, m.label] as const,
  );
  const names = new Map<string, string>([...lines, ...members]);
  return (memberId) => names.get(memberId) ?? memberId;
}
