import { useEffect, useMemo, useRef, type KeyboardEvent } from 'react';
import { STATUS_WORDS } from '../../data/words/status.ts';
import type { Status } from '../../engine/check.ts';
import type { Evaluation } from '../../engine/evaluation.ts';
import { look, useFrameView } from '../frame/frame-view.ts';
import { late } from '../late.tsx';
import { useWorkbench, withProgram } from '../state/use-workbench.ts';
import { showRatio } from '../units/show-quantity.ts';
import { hasBlankSite } from './blank-site.ts';
import { linksOf, statusOf, type CordLink } from './links.ts';
import { namesOf, type Names } from './places.ts';
import { roomOf } from './room.ts';
import { StatusMark } from './status-mark.tsx';

/** What is opened can be changed at once, so it comes together with what every change needs. */
const LinkBody = late(async () => (await withProgram(import('./link-body.tsx'))).LinkBody);

const FillFirst = late(async () => (await import('./fill-first.tsx')).FillFirst);

interface CordProps {
  readonly evaluation: Evaluation;
  readonly stale: boolean;
}

/** The load path from site to sway, beside the drawing: reading order and summary in one. */
export function Cord({ evaluation, stale }: CordProps) {
  const links = useMemo(() => linksOf(evaluation), [evaluation]);
  const names = useMemo(() => namesOf(evaluation), [evaluation]);
  const open = useFrameView((state) => state.openLink);
  return (
    <section className="cord" aria-label="Load path">
      <div className="cord-top">
        <output className="counts">
          {countsInWords(evaluation)}
          {stale && <span className="stale"> From your last valid entry.</span>}
        </output>
        <button type="button" className="tool to-drawing" onClick={showDrawing}>
          drawing
        </button>
      </div>
      {hasBlankSite(evaluation) && <FillFirst evaluation={evaluation} />}
      <NotYetYours />
      <ol>
        {links.map((link) => (
          <LinkItem key={link.id} link={link} evaluation={evaluation} names={names} isOpen={link.id === open} />
        ))}
      </ol>
    </section>
  );
}

/** On a phone the drawing scrolls away above the cord; this way back stays under the thumb. */
const showDrawing = (): void => document.querySelector('.drawing-sheet')?.scrollIntoView({ block: 'start' });

/** After pacing out: how much of the shelter is still the example's. */
function NotYetYours() {
  const left = useWorkbench(({ project }) => project?.notYetYours.length ?? 0);
  if (left === 0) return null;
  return (
    <p className="aside">
      {left} values are not yet yours: they stand slanted over a dashed line until you touch them.
    </p>
  );
}

function countsInWords({ checks, counts }: Evaluation): string {
  const { pass, fail, notGiven, outside } = counts;
  return `${checks.length} checks: ${pass} pass, ${fail} fail, ${notGiven} not given, ${outside} outside the method.`;
}

const STEPS: Readonly<Record<string, (at: number, count: number) => number>> = {
  ArrowDown: (at, count) => Math.min(at + 1, count - 1),
  ArrowUp: (at) => Math.max(at - 1, 0),
  Home: () => 0,
  End: (_, count) => count - 1,
};

/** Arrow keys go from link to link, also past an open one. */
function walk(event: KeyboardEvent<HTMLButtonElement>): void {
  const heads = [...(event.currentTarget.closest('ol')?.querySelectorAll<HTMLButtonElement>('.link-head') ?? [])];
  const next = heads[STEPS[event.key]?.(heads.indexOf(event.currentTarget), heads.length) ?? -1];
  if (!next) return;
  event.preventDefault();
  next.focus();
}

interface LinkItemProps {
  readonly link: CordLink;
  readonly evaluation: Evaluation;
  readonly names: Names;
  readonly isOpen: boolean;
}

function LinkItem({ link, evaluation, names, isOpen }: LinkItemProps) {
  const system = useWorkbench((state) => state.system);
  const head = useRef<HTMLButtonElement>(null);
  useEffect(() => {
    // what closed above may have carried the head out of sight
    if (isOpen) head.current?.scrollIntoView({ block: 'nearest' });
  }, [isOpen]);
  const status = statusOf(link);
  const bodyId = `link-${link.id.replace('/', '-')}`;
  return (
    <li className={`link ${status ?? 'nothing'}${isOpen ? ' open' : ''}`}>
      <h2>
        <button
          ref={head}
          type="button"
          className="link-head"
          aria-expanded={isOpen}
          aria-controls={isOpen ? bodyId : undefined}
          onClick={() => chooseLink(link, isOpen)}
          onKeyDown={walk}
        >
          <StatusMark status={status} />
          <span className="link-name">{link.words}</span>
          <span className={status === 'fail' ? 'link-status marked' : 'link-status'}>
            {statusInWords(link, status)}
            {link.worst?.status === status && roomInWords(link, system)}
          </span>
          <span className="number">{ratioInWords(link, status)}</span>
        </button>
      </h2>
      {isOpen && (
        <LinkBody id={bodyId} link={link} evaluation={evaluation} names={names} onLeave={() => head.current?.focus()} />
      )}
    </li>
  );
}

function chooseLink(link: CordLink, isOpen: boolean): void {
  if (isOpen) return look({ openLink: null });
  const memberId = link.worst?.memberId ?? null;
  look({ openLink: link.id, memberId, ...(link.lineId === null ? {} : { lineId: link.lineId }) });
}

function statusInWords({ link, counts }: CordLink, status: Status | null): string {
  if (status === null) return link === 'site' ? 'gives the loads' : 'nothing checked';
  const count = counts[status];
  const first = status === 'pass' ? STATUS_WORDS.pass : `${STATUS_WORDS[status]} ${count}`;
  return status !== 'notGiven' && counts.notGiven > 0 ? `${first}, not given ${counts.notGiven}` : first;
}

/** Hardware that does not fit fails without a ratio: the ratio of what passes is no word beside it. */
const ratioInWords = ({ worst }: CordLink, status: Status | null): string =>
  worst === null || worst.ratio === null || (status === 'fail' && worst.status !== 'fail')
    ? ''
    : showRatio(worst.ratio);

const roomInWords = (link: CordLink, system: Parameters<typeof roomOf>[1]): string => {
  const room = link.worst && roomOf(link.worst, system);
  return room ? `, ${room}` : '';
};
