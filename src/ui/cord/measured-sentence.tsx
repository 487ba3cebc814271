import { RULES } from '../../data/rules.ts';
import { measuredBy } from '../../engine/checks/measured.ts';
import type { CheckRow } from '../../engine/evaluation.ts';
import { usualErrorIn } from '../../engine/material/usual-error.ts';
import { setAt } from '../../engine/project/edits/set-at.ts';
import type { Log } from '../../engine/project/model.ts';
import { CommandButton } from '../fields/command-choice.tsx';
import { Yours } from '../fields/yours.tsx';
import { useWorkbench } from '../state/use-workbench.ts';
import { showLength } from '../units/show-length.ts';
import { showRatio } from '../units/show-quantity.ts';
import type { UnitSystem } from '../units/system.ts';

interface MeasuredProps {
  readonly log: Log;
  readonly memberId: string;
  readonly of: string;
}

/** How well the log was measured, what the worst end of that makes of its checks, and how much wood it may lose. */
export function MeasuredSentence({ log, memberId, of }: MeasuredProps) {
  const checks = useWorkbench(({ evaluation }) => evaluation?.checks);
  const system = useWorkbench((state) => state.system);
  const rows = checks?.filter((row) => row.memberId === memberId) ?? [];
  const measured = measuredBy(rows, log.errorIn);
  const usual = usualErrorIn(log);
  return (
    <p className="sentence">
      Its diameters are right within <Yours path={`logs[${log.id}].errorIn`} label={`${of}: error of its diameters`} />
      {log.errorIn !== usual && (
        <>
          {' '}
          <CommandButton
            words={`take the usual ${lengthOf(usual, system)}`}
            name="the usual error of measurement"
            perform={(p) => setAt(p, `logs[${log.id}].errorIn`, usual)}
          />
        </>
      )}
      .{measured && <> {whatItMakes(measured, system)}</>}
    </p>
  );
}

function whatItMakes(
  { asTyped, atWorst, mayLose, leftOut }: NonNullable<ReturnType<typeof measuredBy<CheckRow>>>,
  system: UnitSystem,
): string {
  const error = `With all of that missing the worst ratio goes from ${showRatio(asTyped.ratio)} to ${showRatio(atWorst.ratio)} (${nameOf(atWorst.row)}), forces held.`;
  const eighths = Math.floor(mayLose.inches * 8) / 8;
  const loss =
    eighths > 0
      ? `Peeling, shaping and decay may take ${lengthOf(eighths, system)} off its diameter before the first of its checks reaches 1 (${nameOf(mayLose.row)}).`
      : `It has no wood to lose (${nameOf(mayLose.row)}).`;
  const beside =
    leftOut?.ratio === undefined || leftOut.ratio === null
      ? ''
      : ` Contacts, cuts and push with bending are not in these figures; the worst of them is at ${showRatio(leftOut.ratio)} (${nameOf(leftOut)}).`;
  return `${error} ${loss}${beside}`;
}

const nameOf = ({ ruleId }: CheckRow): string => RULES[ruleId].words.toLowerCase();

const lengthOf = (inches: number, system: UnitSystem): string =>
  showLength(inches, system, { nearest: 16, feetFrom: 'never' });
