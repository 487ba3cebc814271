import { useMemo } from 'react';
import { RULES, type RuleId } from '../../data/rules.ts';
import { measuredBy, type Measured } from '../../engine/checks/measured.ts';
import type { Evaluation } from '../../engine/evaluation.ts';
import { usualErrorIn } from '../../engine/material/usual-error.ts';
import { setAt } from '../../engine/project/edits/set-at.ts';
import type { Log } from '../../engine/project/model.ts';
import { sectionsOfMembers } from '../../engine/thinnest.ts';
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
  const evaluation = useWorkbench((state) => state.evaluation);
  const system = useWorkbench((state) => state.system);
  const { errorIn } = log;
  // asks every section of the log anew: once for an evaluation, not whenever the page is drawn
  const measured = useMemo(
    () => evaluation && measuredOf(evaluation, memberId, errorIn),
    [evaluation, memberId, errorIn],
  );
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

function measuredOf(evaluation: Evaluation, memberId: string, errorIn: number): Measured | null {
  const rows = evaluation.checks.filter((row) => row.memberId === memberId);
  const sections =
    sectionsOfMembers(evaluation)
      .find((member) => member.memberId === memberId)
      ?.sections() ?? [];
  return measuredBy(rows, sections, errorIn);
}

function whatItMakes({ asTyped, atWorst, mayLose, leftOut, broken }: Measured, system: UnitSystem): string {
  const error = `With all of that missing the worst ratio goes from ${showRatio(asTyped.ratio)} to ${showRatio(atWorst.ratio)} (${nameOf(atWorst)}), forces held.`;
  const eighths = Math.floor(mayLose.inches * 8) / 8;
  const loss =
    eighths > 0
      ? `Peeling, shaping and decay may take ${lengthOf(eighths, system)} off its diameter before the first of these checks reaches 1 (${nameOf(mayLose)}).`
      : `It has no wood to lose (${nameOf(mayLose)}).`;
  const beside =
    leftOut === null
      ? ''
      : ` Contacts and slenderness are not in these figures; the worst of them is at ${showRatio(leftOut.ratio)} (${nameOf(leftOut)}).`;
  const without =
    broken.length === 0
      ? ''
      : ` It fails beside them, without a ratio: ${broken.map((id) => nameOf({ ruleId: id })).join(', ')}.`;
  return `${error} ${loss}${beside}${without}`;
}

const nameOf = ({ ruleId }: { readonly ruleId: RuleId }): string => RULES[ruleId].words.toLowerCase();

const lengthOf = (inches: number, system: UnitSystem): string =>
  showLength(inches, system, { nearest: 16, feetFrom: 'never' });
