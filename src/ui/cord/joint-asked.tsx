import { Fragment } from 'react';
import type { MessageCode } from '../../data/words/en.ts';
import { AT_ONCE_WORDS, NO_ROW_WORDS, PART_WORDS } from '../../data/words/hardware.ts';
import { STATUS_WORDS } from '../../data/words/status.ts';
import type { JointDemand } from '../../engine/checks/joints/joint-demands.ts';
import type { CheckRow, Evaluation } from '../../engine/evaluation.ts';
import type { Message } from '../../engine/message.ts';
import type { Quantity } from '../../engine/units.ts';
import { say, useWorkbench } from '../state/use-workbench.ts';
import { forcesOfLedger } from '../sheet/joint-cells.ts';
import { showQuantity, showRatio } from '../units/show-quantity.ts';
import type { UnitSystem } from '../units/system.ts';
import { combinationInWords } from './combination.ts';
import { PARTS, type AskedJoint } from './joint-at.ts';

interface JointAskedProps {
  readonly asked: AskedJoint;
  readonly evaluation: Evaluation;
  /** at the start of a sentence, for the caption */
  readonly words: string;
}

/** What a joint is asked in each direction, and in several at once, what it carries there, and the load that governs. */
export function JointAsked({ asked, evaluation, words }: JointAskedProps) {
  // the one row of a ledger's fixings is a sum: each direction then tells its force alone
  const fixing = PARTS.flatMap((part) => rowsAt(asked.demands[part])).find(({ ruleId }) => ruleId === 'ledger.fixing');
  const forces = fixing ? forcesOfLedger(fixing.memberId, evaluation.ledgers) : null;
  const together = fixing && forces ? [sharesOf(fixing)] : asked.together;
  return (
    <table className="gives asked-of-joint">
      <caption className="unseen">{words}: what is asked of it and what it carries, in four directions</caption>
      <thead>
        <tr>
          <th scope="col">
            <span className="unseen">direction</span>
          </th>
          <th scope="col" className="number">
            asked
          </th>
          <th scope="col" className="number">
            carries
          </th>
          <th scope="col" className="number">
            ratio
          </th>
        </tr>
      </thead>
      <tbody>
        {PARTS.map((part, i) => (
          <Direction
            key={part}
            words={PART_WORDS[part]}
            demand={asked.demands[part]}
            alone={asked.demands[part].asked ? (forces?.[part] ?? null) : null}
            evaluation={evaluation}
            isSaid={PARTS.slice(0, i).some((before) => isSameReason(asked.demands[before], asked.demands[part]))}
          />
        ))}
        {together.map((row) => (
          <Direction
            key={row.ruleId}
            words={row.ruleId === 'post.footTurning' ? AT_ONCE_WORDS.turning : AT_ONCE_WORDS.together}
            demand={{ asked: true, row }}
            alone={null}
            evaluation={evaluation}
            isSaid={forces === null && PARTS.some((part) => isSameReason(asked.demands[part], { asked: true, row }))}
          />
        ))}
      </tbody>
    </table>
  );
}

interface DirectionProps {
  readonly words: string;
  readonly demand: JointDemand;
  /** its force, where the row asks several directions in one sum */
  readonly alone: Quantity | null;
  readonly evaluation: Evaluation;
  /** the same reason stands above already */
  readonly isSaid: boolean;
}

/** Without capacity the sum tells the greatest force instead, which stands in its direction already. */
const sharesOf = (row: CheckRow): CheckRow => (row.demand?.unit === '1' ? row : { ...row, demand: null });

const rowsAt = (demand: JointDemand): readonly CheckRow[] => (demand.asked ? [demand.row] : []);

const reasonOf = (demand: JointDemand): Message | undefined => (demand.asked ? demand.row.reason : demand.reason);

const isSameReason = (a: JointDemand, b: JointDemand): boolean => {
  const [one, other] = [reasonOf(a), reasonOf(b)];
  return one !== undefined && JSON.stringify(one) === JSON.stringify(other);
};

/** One direction: its numbers, and under them the load that governs, or why there is no number. */
function Direction({ words, demand, alone, evaluation, isSaid }: DirectionProps) {
  const system = useWorkbench((state) => state.system);
  const row = demand.asked ? demand.row : null;
  const under = alone ? '' : underIt(demand, evaluation, isSaid);
  return (
    <Fragment>
      <tr className={under === '' ? undefined : 'explained-below'}>
        <th scope="row">{words}</th>
        <td className="number">{row ? shown(alone ?? row.demand, system) : ''}</td>
        <td className="number">{row && !alone ? shown(row.capacity, system) : ''}</td>
        <td className={!alone && row?.status === 'fail' ? 'number marked' : 'number'}>
          {demand.asked ? !alone && ratioOrWord(demand.row) : noRowWords(demand.reason)}
          {!alone && row?.status === 'fail' && row.ratio !== null && `, ${STATUS_WORDS.fail}`}
        </td>
      </tr>
      {under !== '' && (
        <tr className="reason">
          <td colSpan={4}>{under}</td>
        </tr>
      )}
    </Fragment>
  );
}

const ratioOrWord = ({ ratio, status }: CheckRow): string => (ratio === null ? STATUS_WORDS[status] : showRatio(ratio));

/** Reasons that say that nothing is there to be asked; with any other, something may be, and it is not computed. */
const NOTHING_TO_ASK: ReadonlySet<MessageCode> = new Set<MessageCode>([
  'jointNotAsked',
  'levelHeldElsewhere',
  'ridgeBeamCarries',
  'ledgerPressesWall',
]);

const noRowWords = ({ code }: Message): string =>
  NOTHING_TO_ASK.has(code) ? NO_ROW_WORDS.notAsked : NO_ROW_WORDS.notComputed;

function underIt(demand: JointDemand, { loads }: Evaluation, isSaid: boolean): string {
  const reason = reasonOf(demand);
  // what does not fit fails without any load
  const hasLoad = demand.asked && demand.row.demand !== null;
  const combination = hasLoad ? combinationInWords(loads, demand.row) : '';
  return [reason && !isSaid ? say(reason) : '', combination === '' ? '' : `${combination}.`]
    .filter((each) => each !== '')
    .join(' ');
}

const shown = (quantity: Quantity | null, system: UnitSystem): string =>
  // a sum of shares is no force
  quantity === null || quantity.unit === '1'
    ? ''
    : showQuantity(quantity.unit === 'lb' ? { ...quantity, value: Math.round(quantity.value) } : quantity, system);
