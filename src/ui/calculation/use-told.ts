import { useEffect, useMemo, useState } from 'react';
import type { Evaluation } from '../../engine/evaluation.ts';
import type { Project } from '../../engine/project/model.ts';
import { pieceNames } from '../sheet/piece-names.ts';
import { governingRows } from './governing.ts';
import { tellSteps, untilNextTurn, type Progress, type Told } from './tell-steps.ts';

/** What was told of an evaluation is kept as long as that is: another paper or other units ask nothing anew. */
const toldOf = new WeakMap<Evaluation, Told>();

interface Telling {
  readonly evaluation: Evaluation;
  readonly told: Told | null;
  readonly progress: Progress;
}

/** The steps of everything that the calculation prints; null while they are being told, with how far it is. */
export function useTold(
  project: Project,
  evaluation: Evaluation | null,
): { readonly told: Told | null; readonly progress: Progress | null } {
  const [telling, setTelling] = useState<Telling | null>(null);
  const known = useMemo(() => (evaluation ? (toldOf.get(evaluation) ?? null) : null), [evaluation]);
  useEffect(() => {
    if (!evaluation || toldOf.has(evaluation)) return undefined;
    let isWanted = true;
    const keys = governingRows(evaluation, pieceNames(project, evaluation)).map(({ row }) => row.key);
    void tellSteps(project, evaluation, keys, {
      rest: untilNextTurn,
      isWanted: () => isWanted,
      report: (progress) => setTelling({ evaluation, told: null, progress }),
    }).then((told) => {
      if (!told || !isWanted) return;
      toldOf.set(evaluation, told);
      setTelling({ evaluation, told, progress: { done: keys.length, of: keys.length } });
    });
    return () => {
      isWanted = false;
    };
  }, [project, evaluation]);
  const present = telling && telling.evaluation === evaluation ? telling : null;
  return { told: known ?? present?.told ?? null, progress: present?.progress ?? null };
}
