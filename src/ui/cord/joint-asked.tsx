import { Fragment } from 'react';
import { PART_WORDS } from '../../data/words/hardware.ts';
import { STATUS_WORDS } from '../../data/words/status.ts';
import type { JointDemand } from '../../engine/checks/joints/joint-demands.ts';
import type { JointPart } from '../../engine/checks/joints/rated.ts';
import type { Evaluation } from '../../engine/evaluation.ts';
import type { Quantity } from '../../engine/units.ts';
import { say, useWorkbench } from '../state/use-workbench.ts';
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

/** What a joint is asked in each direction and what it carries there, with the load that governs. */
export function JointAsked({ asked, evaluation, words }: JointAskedProps) {
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
        {PARTS.map((part) => (
          <Direction key={part} part={part} demand={asked.demands[part]} evaluation={evaluation} />
        ))}
      </tbody>
    </table>
  );
}

interface DirectionProps {
  readonly part: JointPart;
  readonly demand: JointDemand;
  readonly evaluation: Evaluation;
}

/** One direction: its numbers, and under them the load that governs, or why there is no number. */
function Direction({ part, demand, evaluation }: DirectionProps) {
  const system = useWorkbench((state) => state.system);
  const row = demand.asked ? demand.row : null;
  const under = underIt(demand, evaluation);
  return (
    <Fragment>
      <tr className={under === '' ? undefined : 'explained-below'}>
        <th scope="row">{PART_WORDS[part]}</th>
        <td className="number">{row ? shown(row.demand, system) : ''}</td>
        <td className="number">{row ? shown(row.capacity, system) : ''}</td>
        <td className={row?.status === 'fail' ? 'number marked' : 'number'}>
          {row === null ? 'not asked' : row.ratio === null ? STATUS_WORDS[row.status] : showRatio(row.ratio)}
          {row?.status === 'fail' && row.ratio !== null && `, ${STATUS_WORDS.fail}`}
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

function underIt(demand: JointDemand, { loads }: Evaluation): string {
  if (!demand.asked) return say(demand.reason);
  const combination = combinationInWords(loads, demand.row);
  const reason = demand.row.reason ? say(demand.row.reason) : '';
  return [reason, combination === '' ? '' : `${combination}.`].filter((each) => each !== '').join(' ');
}

/** Nothing is asked is a number too. */
const shown = (quantity: Quantity | null, system: UnitSystem): string =>
  quantity === null
    ? ''
    : showQuantity(quantity.unit === 'lb' ? { ...quantity, value: Math.round(quantity.value) } : quantity, system);
