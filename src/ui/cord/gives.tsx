import { useDeferredValue, useId, useMemo, useRef, useState, type RefObject } from 'react';
import { RULES } from '../../data/rules.ts';
import { STATUS_WORDS } from '../../data/words/status.ts';
import { say } from '../../data/words/say.ts';
import type { CheckRow } from '../../engine/evaluation.ts';
import { explain } from '../../engine/explain.ts';
import { actsOnOf, type LoadWish } from '../loads/loads-view.ts';
import { ShowLoads } from '../loads/show-loads.tsx';
import { useOpenProject, useWorkbench } from '../state/use-workbench.ts';
import type { Quantity } from '../../engine/units.ts';
import { showLength } from '../units/show-length.ts';
import { showQuantity, showRatio } from '../units/show-quantity.ts';
import type { UnitSystem } from '../units/system.ts';
import { combinationInWords } from './combination.ts';
import { foldAlike, type Folded } from './fold.ts';
import type { CordLink } from './links.ts';
import { placeInWords, type Names } from './places.ts';
import { reasonInWords } from './reason.ts';
import { roomOf } from './room.ts';
import { StepList } from './steps.tsx';
import { useEscape } from './use-escape.ts';

interface GivesProps {
  readonly link: CordLink;
  readonly names: Names;
}

/** Every check of a link, worst first; alike ones stand behind their worst. */
export function Gives({ link, names }: GivesProps) {
  const [unfolded, setUnfolded] = useState<readonly string[]>([]);
  const folded = useMemo(() => foldAlike(link.checks), [link.checks]);
  if (folded.length === 0) return <p className="aside">Nothing is checked here.</p>;
  return (
    <table className="gives">
      <caption className="unseen">Checks of {link.words}, worst first</caption>
      <thead className="unseen">
        <tr>
          <th scope="col">Check and place</th>
          <th scope="col">Status and room</th>
          <th scope="col">Ratio, asked over there is</th>
        </tr>
      </thead>
      <tbody>
        {folded.map((set) => {
          const isUnfolded = unfolded.includes(set.key);
          const rows = isUnfolded ? [set.worst, ...set.others] : [set.worst];
          return rows.map((row) => (
            <CheckLines
              key={row.key}
              row={row}
              names={names}
              more={row === set.worst ? moreOf(set, isUnfolded) : null}
              onMore={() =>
                setUnfolded(isUnfolded ? unfolded.filter((key) => key !== set.key) : [...unfolded, set.key])
              }
            />
          ));
        })}
      </tbody>
    </table>
  );
}

interface More {
  readonly words: string;
  readonly isOpen: boolean;
}

const moreOf = ({ others, worst }: Folded, isOpen: boolean): More | null =>
  others.length === 0
    ? null
    : { words: isOpen ? 'fold' : `${worst.ratio === null ? 'one' : 'worst'} of ${others.length + 1}`, isOpen };

interface CheckLinesProps {
  readonly row: CheckRow;
  readonly names: Names;
  readonly more: More | null;
  readonly onMore: () => void;
}

/** One check: a line of the table, and below it its steps when they are asked for. */
function CheckLines({ row, names, more, onMore }: CheckLinesProps) {
  const id = useId();
  const system = useWorkbench((state) => state.system);
  const [isOpen, setOpen] = useState(false);
  const opener = useRef<HTMLButtonElement>(null);
  const close = (): void => {
    setOpen(false);
    opener.current?.focus();
  };
  return (
    <>
      <tr className={row.reason ? 'check explained-below' : 'check'} data-check={row.key}>
        <th scope="row">
          {RULES[row.ruleId].words}
          <span className="quiet"> {whereOf(row, names, system)}</span>
          {more && (
            <>
              {' '}
              <button type="button" className="opens quiet" aria-expanded={more.isOpen} onClick={onMore}>
                {more.words}
              </button>
            </>
          )}
        </th>
        <td>
          <StatusAndRoom row={row} system={system} />
        </td>
        <td className="number">
          <RatioButton id={id} row={row} isOpen={isOpen} opener={opener} onOpen={() => setOpen(!isOpen)} />
        </td>
      </tr>
      {row.reason && (
        <tr className="reason">
          <td colSpan={3}>{reasonInWords(row.reason, names, system)}</td>
        </tr>
      )}
      {isOpen && (
        <tr className="opened">
          <td colSpan={3} id={id}>
            <Explained row={row} onClose={close} />
          </td>
        </tr>
      )}
    </>
  );
}

function whereOf(row: CheckRow, names: Names, system: UnitSystem): string {
  const whose = names.get(row.memberId) ?? '';
  return [whose, placeInWords(row, names, system)].filter((part) => part !== '').join(', ');
}

function StatusAndRoom({ row, system }: { readonly row: CheckRow; readonly system: UnitSystem }) {
  const room = roomOf(row, system);
  const asked = row.ratio === null && row.demand ? askedInWords(row.demand, system) : null;
  return (
    <>
      <span className={row.status === 'fail' ? 'marked' : undefined}>{STATUS_WORDS[row.status]}</span>
      {(room ?? asked) !== null && <>, {room ?? asked}</>}
    </>
  );
}

/** A sum of shares is nothing that a piece is asked for, nor is what rounds to none. */
function askedInWords(demand: Quantity, system: UnitSystem): string | null {
  if (demand.unit === '1') return null;
  const words = demand.unit === 'in' ? showLength(demand.value, system) : showQuantity(demand, system);
  return words.startsWith('0 ') ? null : `asked for ${words}`;
}

interface RatioButtonProps {
  readonly id: string;
  readonly row: CheckRow;
  readonly isOpen: boolean;
  readonly opener: RefObject<HTMLButtonElement | null>;
  readonly onOpen: () => void;
}

function RatioButton({ id, row, isOpen, opener, onOpen }: RatioButtonProps) {
  if (row.ratio === null) return null;
  return (
    <button
      ref={opener}
      type="button"
      className="opens ratio"
      aria-expanded={isOpen}
      aria-controls={isOpen ? id : undefined}
      onClick={onOpen}
    >
      {showRatio(row.ratio)}
      <span className="unseen">, steps of {RULES[row.ruleId].words}</span>
    </button>
  );
}

/** The first load beside the dead load in the combination that governs; the dead load where there is no other. */
const firstCaseOf = ({ combinationId, ruleId }: CheckRow): LoadWish => ({
  by: 'case',
  id: combinationId.split('+')[1] ?? 'dead',
  forLine: null,
  actsOn: actsOnOf(RULES[ruleId].link),
});

/** The steps of one check. They are worked out only while they are open, after the figures that are always seen. */
function Explained({ row, onClose }: { readonly row: CheckRow; readonly onClose: () => void }) {
  const project = useDeferredValue(useOpenProject());
  const loads = useWorkbench(({ evaluation }) => evaluation?.loads);
  const inside = useEscape<HTMLElement>(onClose);
  const answer = useMemo(() => explain(project, row.key), [project, row.key]);
  const combination = loads ? combinationInWords(loads, row) : '';
  return (
    <section ref={inside} className="explained" aria-label={`Steps of ${RULES[row.ruleId].words}`}>
      {combination !== '' && (
        <p className="aside">
          {combination}. <ShowLoads wish={firstCaseOf(row)} words="show the load that governs" checkKey={row.key} />
        </p>
      )}
      {answer.ok ? (
        <StepList steps={answer.steps} label={`Steps of ${RULES[row.ruleId].words}`} />
      ) : (
        <p>{say(answer.reason)}</p>
      )}
      <button type="button" className="tool" onClick={onClose}>
        close the steps
      </button>
    </section>
  );
}
