import type { LogReport } from './evaluation.ts';
import type { PostGeometry, Shelter, Stick } from './geometry/shelter.ts';
import { logValues } from './material/log-values.ts';
import { sawnValues } from './material/sawn-values.ts';
import { strengthRatio } from './material/strength-ratio.ts';
import { treatedValues } from './material/treated-values.ts';
import type { MaterialAnswer } from './material/values.ts';
import { message } from './message.ts';
import type { Project } from './project/model.ts';

/** Design values of every member, worked out once per log and per kind of sawn stick. */
export interface Materials {
  readonly of: (memberId: string) => MaterialAnswer;
  /** undefined for a log that no member is of */
  readonly ofLog: (logId: string) => MaterialAnswer | undefined;
  readonly reports: readonly LogReport[];
}

interface WithStick {
  readonly id: string;
  readonly label?: string;
  readonly stick: Stick | null;
}

export function materialsOf(project: Project, shelter: Shelter): Materials {
  const members: readonly WithStick[] = [
    ...shelter.beams,
    ...shelter.posts,
    ...shelter.braces,
    ...shelter.rafters,
    ...shelter.purlins,
    ...shelter.ties,
  ];
  const byStock = new Map<string, MaterialAnswer>();
  const byMember = new Map<string, MaterialAnswer>();
  const users = new Map<string, string[]>();
  const treated = new Set(shelter.posts.filter(isTreated).map(({ id }) => id));
  for (const member of members) {
    const key = stockKey(member.stick);
    if (member.stick && !byStock.has(key)) byStock.set(key, valuesOfStick(project, member.stick));
    const answer = byStock.get(key) ?? notGivenYet(member);
    byMember.set(
      member.id,
      answer.ok && treated.has(member.id) ? { ...answer, values: treatedValues(answer.values) } : answer,
    );
    if (member.stick?.kind === 'round')
      users.set(member.stick.logId, [...(users.get(member.stick.logId) ?? []), member.id]);
  }
  return {
    of: (memberId) => byMember.get(memberId) ?? notGivenYet({ id: memberId, stick: null }),
    ofLog: (logId) => byStock.get(logKey(logId)),
    reports: project.logs
      .filter((l) => users.has(l.id))
      .map((log) => {
        const answer = byStock.get(logKey(log.id))!;
        const ratio = strengthRatio(log);
        const wood = project.woods.find((w) => w.id === log.woodId);
        return {
          logId: log.id,
          memberIds: users.get(log.id)!,
          values: answer.ok ? answer.values : null,
          reason: answer.ok ? null : answer.reason,
          heldBackBy: wood?.basis.kind === 'derived' && ratio.ok ? ratio.heldBackBy : null,
        };
      }),
  };
}

const isTreated = ({ foot }: PostGeometry): boolean => foot.kind === 'embedded' && foot.treatment !== null;

const notGivenYet = (member: WithStick): MaterialAnswer => ({
  ok: false,
  status: 'notGiven',
  reason: message('memberNotGiven', { member: member.label ?? member.id }),
});

const logKey = (logId: string): string => `log:${logId}`;

function stockKey(stick: Stick | null): string {
  if (!stick) return '';
  if (stick.kind === 'round') return logKey(stick.logId);
  return JSON.stringify(stick);
}

/** A typed section carries its maker's figures itself: it has no wood values. */
function valuesOfStick(project: Project, stick: Stick): MaterialAnswer {
  switch (stick.kind) {
    case 'sawn':
      return sawnValues(stick);
    case 'typed':
      return { ok: false, status: 'notGiven', reason: message('typedSection', { name: stick.name }) };
    case 'round': {
      const log = project.logs.find((l) => l.id === stick.logId)!;
      const wood = project.woods.find((w) => w.id === log.woodId)!;
      return logValues(log, wood);
    }
  }
}
