import { useDeferredValue, useMemo, useState } from 'react';
import { CHAIN_ASIDES, CHAIN_WORDS, NO_ROW_WORDS } from '../../data/words/hardware.ts';
import { STATUS_WORDS } from '../../data/words/status.ts';
import type { ChainLink, UpliftChain } from '../../engine/checks/joints/uplift-chain.ts';
import type { Message } from '../../engine/message.ts';
import { upliftOf } from '../../engine/uplift.ts';
import type { Quantity } from '../../engine/units.ts';
import { say, useOpenProject, useWorkbench } from '../state/use-workbench.ts';
import { showQuantity, showRatio } from '../units/show-quantity.ts';
import type { UnitSystem } from '../units/system.ts';

interface UpliftProps {
  readonly memberId: string;
  readonly name: string;
}

/** Folded until it is asked for: the chain is made on demand. */
export function UpliftOfPost(props: UpliftProps) {
  const [isOpen, setIsOpen] = useState(false);
  return (
    <details className="folding" open={isOpen} onToggle={({ currentTarget }) => setIsOpen(currentTarget.open)}>
      <summary>What holds {props.name} down, link by link</summary>
      {isOpen && (
        <div className="folding-body">
          <Chain {...props} />
        </div>
      )}
    </details>
  );
}

function Chain({ memberId, name }: UpliftProps) {
  const project = useDeferredValue(useOpenProject());
  const evaluation = useWorkbench((state) => state.evaluation);
  const chains = useMemo(() => (evaluation ? upliftOf(project, evaluation) : []), [project, evaluation]);
  const chain = chains.find(({ postId }) => postId === memberId);
  if (!chain) return <p className="aside">{CHAIN_ASIDES.none}</p>;
  return (
    <>
      <ChainTable chain={chain} name={name} />
      <p>{say(inWholePounds(chain.raise))}</p>
      <p className="aside">{CHAIN_ASIDES.eachItsOwn}</p>
    </>
  );
}

function ChainTable({ chain, name }: { readonly chain: UpliftChain; readonly name: string }) {
  return (
    <table className="gives asked-of-joint">
      <caption className="unseen">What lifts {name} and what holds it, from the sheet down to the soil</caption>
      <thead>
        <tr>
          <th scope="col">
            <span className="unseen">link</span>
          </th>
          {['lifted by', 'holds', 'ratio'].map((head) => (
            <th key={head} scope="col" className="number">
              {head}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {chain.links.map((link, i) => (
          <LinkRow key={link.name} link={link} isWeakest={i === chain.weakest && link.row !== null} />
        ))}
      </tbody>
    </table>
  );
}

/** The weakest is marked with a word; where nothing is asked of any link, none is. */
function LinkRow({ link, isWeakest }: { readonly link: ChainLink; readonly isWeakest: boolean }) {
  const system = useWorkbench((state) => state.system);
  const { name, row, addedLb } = link;
  return (
    <tr className={isWeakest ? 'weakest' : undefined}>
      <th scope="row">
        {CHAIN_WORDS[name]}
        {isWeakest && <strong> weakest</strong>}
        {addedLb >= 1 && (
          <span className="quiet"> {showQuantity({ value: Math.floor(addedLb), unit: 'lb' }, system)} more on it</span>
        )}
      </th>
      <td className="number">{forceIn(row?.demand, system)}</td>
      <td className="number">{forceIn(row?.capacity, system)}</td>
      <td className={row?.status === 'fail' ? 'number marked' : 'number'}>{ratioOrWord(row)}</td>
    </tr>
  );
}

/** What is judged by a sum of shares has no force to show. */
const forceIn = (quantity: Quantity | null | undefined, system: UnitSystem): string =>
  quantity && quantity.unit !== '1' ? showQuantity(quantity, system) : '';

const ratioOrWord = (row: ChainLink['row']): string =>
  row === null ? NO_ROW_WORDS.notAsked : row.ratio === null ? STATUS_WORDS[row.status] : showRatio(row.ratio);

/** Nobody weighs a wind to a thousandth of a pound. */
const inWholePounds = ({ code, values }: Message): Message => ({
  code,
  values: Object.fromEntries(
    Object.entries(values).map(([key, value]) => [key, typeof value === 'number' ? Math.round(value) : value]),
  ),
});
