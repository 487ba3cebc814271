import { RULES } from '../../data/rules.ts';
import { say } from '../../data/words/say.ts';
import type { CheckRow, Evaluation } from '../../engine/evaluation.ts';
import type { Shelter } from '../../engine/geometry/shelter.ts';
import { combinationOf } from '../../engine/load-pictures.ts';
import type { LoadCase } from '../../engine/loads/cases.ts';
import { combinationInWords, sayCase } from '../cord/combination.ts';
import { placeInWords, type Names } from '../cord/places.ts';
import { useWorkbench } from '../state/use-workbench.ts';
import { actsOnOf, lookAtLoads } from './loads-view.ts';

interface GoverningProps {
  readonly row: CheckRow;
  readonly evaluation: Evaluation;
  readonly cases: readonly LoadCase[];
  readonly kcr: number;
  readonly names: Names;
}

/** The combination that governs a check, case by case with its factor; each can be looked at. */
export function Governing({ row, evaluation, cases, kcr, names }: GoverningProps) {
  const system = useWorkbench((state) => state.system);
  const combination = combinationOf(cases, row.combinationId, kcr);
  const forLine = lineOf(evaluation.shelter, row.memberId);
  const where = [names.get(row.memberId) ?? '', placeInWords(row, names, system)].filter((part) => part !== '');
  const show = (id: string): void => lookAtLoads({ by: 'case', id, forLine, actsOn: actsOnOf(RULES[row.ruleId].link) });
  return (
    <section className="loads-governing" aria-label="What governs">
      <h3>What governs</h3>
      <p>
        {RULES[row.ruleId].words}, {where.join(', ')}: {combinationInWords(evaluation.loads, row)}.
      </p>
      {combination && (
        <ul>
          {combination.dead.factor !== 0 && (
            <Counted
              factor={combination.dead.factor}
              words={combination.dead.weight === 'light' ? 'dead load, light where it helps' : 'dead load'}
              onShow={() => show('dead')}
            />
          )}
          {combination.factors.map(({ caseId, factor }) => {
            const found = cases.find(({ id }) => id === caseId);
            return (
              <Counted
                key={caseId}
                factor={factor}
                words={found ? say(sayCase(found.words)) : caseId}
                onShow={() => show(caseId)}
              />
            );
          })}
        </ul>
      )}
    </section>
  );
}

interface CountedProps {
  readonly factor: number;
  readonly words: string;
  readonly onShow: () => void;
}

function Counted({ factor, words, onShow }: CountedProps) {
  return (
    <li>
      {Math.round(factor * 1000) / 1000} × {words}{' '}
      <button type="button" className="opens" onClick={onShow}>
        show<span className="unseen"> {words}</span>
      </button>
    </li>
  );
}

function lineOf({ beams, posts, braces, lines }: Shelter, memberId: string): string | null {
  const postId = braces.find(({ id }) => id === memberId)?.postId ?? memberId;
  const part = [...beams, ...posts].find(({ id }) => id === postId);
  return part?.line ?? lines.find(({ id }) => id === memberId)?.id ?? null;
}
