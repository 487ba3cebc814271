import type { Combination } from './loads/combination.ts';
import type { LoadCase } from './loads/cases.ts';
import { combine, deadOverTheYears, serviceCombinations } from './loads/combine.ts';
import { givensOf } from './givens.ts';
import { guarded } from './guarded.ts';
import { componentPictures } from './load-pictures/component-pictures.ts';
import { framePictures } from './load-pictures/frame-pictures.ts';
import { leftOutOf } from './load-pictures/left-out.ts';
import type { LoadPicture } from './load-pictures/picture.ts';
import type { Fault, Message } from './message.ts';
import type { Project } from './project/model.ts';

export interface RoofPictures {
  readonly ok: true;
  /** dead load first, then kind by kind; on the frame, then on sheet, purlins and rafters by their own area */
  readonly pictures: readonly LoadPicture[];
  /** every case that a combination may name */
  readonly cases: readonly LoadCase[];
  /** does not apply, and why, beside what the load report names */
  readonly leftOut: readonly Message[];
}
export type RoofPicturesAnswer = RoofPictures | { readonly ok: false; readonly faults: readonly Fault[] };

/**
 * Every load case as it acts on the shelter, made of the very objects that the analysis is given. Total: never throws; a
 * shelter that cannot be placed answers with its faults.
 */
export function roofPictures(project: Project): RoofPicturesAnswer {
  return guarded((): RoofPicturesAnswer => {
    const givens = givensOf(project);
    if ('faults' in givens) return { ok: false, faults: givens.faults };
    const frame = framePictures(givens);
    const components = componentPictures(givens);
    const pictures = [...frame.pictures, ...components.pictures];
    return {
      ok: true,
      pictures,
      leftOut: leftOutOf(givens, pictures),
      cases: [...frame.cases, ...components.cases],
    };
  });
}

/**
 * The combination that an id names, put together anew from the cases in it.
 * @param kcr whole sag after years over the sag at once
 * @returns null where the id names no combination of these cases
 */
export function combinationOf(cases: readonly LoadCase[], id: string, kcr: number): Combination | null {
  const named = id.split('+');
  const chosen = cases.filter((c, i) => named.includes(c.id) && cases.findIndex((other) => other.id === c.id) === i);
  const all = [...combine(chosen), ...serviceCombinations(chosen, kcr), deadOverTheYears(kcr)];
  return all.find((c) => c.id === id) ?? null;
}
