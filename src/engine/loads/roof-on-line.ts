import { message, type Message } from '../message.ts';
import { atEnds, type PartPressure, type Pressure } from './rafter-reactions.ts';
import type { RoofCase } from './roof-cases.ts';
import { alternatePatterns, partialPatterns, type LoadPattern } from './site/patterns.ts';
import { patternFactor, type Stretch } from './stretches.ts';

/** Roof live load as it counts on one line [psf]. */
export interface RoofLive {
  readonly psf: number;
  readonly unreducedPsf: number;
}

/**
 * Every case of the roof as it counts on one frame line: those of the whole roof, partial snow over the stretches of its
 * beam, and roof live load, on part of the beam too where it is reduced.
 */
export function roofOnLine(
  roof: readonly RoofCase[],
  stretches: readonly Stretch[],
  live: RoofLive,
): readonly RoofCase[] {
  const whole: RoofCase = {
    id: 'roof-live',
    kind: 'roofLive',
    words: message('caseRoofLive'),
    swaysAlong: false,
    windAlong: 0,
    spansPattern: null,
    pressure: () => ({ plumbPsf: live.psf, squarePsf: 0 }),
  };
  const over = (c: RoofCase, pattern: LoadPattern, id: string, words: Message): RoofCase => ({
    ...c,
    id: `${id}-${pattern.id}`,
    words,
    spansPattern: null,
    pressure: (rafter, part) => scaled(c.pressure(rafter, part), patternFactor(stretches, pattern.factors, rafter.xIn)),
  });
  const snowPatterns = partialPatterns(stretches.length);
  const livePatterns = live.psf < live.unreducedPsf ? alternatePatterns(stretches.length) : [];
  return [
    ...roof.flatMap((c) => [
      c,
      ...(c.spansPattern === 'snow' ? snowPatterns : []).map((p) =>
        over(c, p, 'snow-along', message('caseSnowAlong', { pattern: p.id })),
      ),
    ]),
    whole,
    ...livePatterns.map((p) => over(whole, p, 'roof-live', message('caseRoofLivePattern', { pattern: p.id }))),
  ];
}

function scaled({ plumbPsf, squarePsf }: PartPressure, factor: number): PartPressure {
  const times = (pressure: Pressure) => {
    const { low, high } = atEnds(pressure);
    return { low: low * factor, high: high * factor };
  };
  return { plumbPsf: times(plumbPsf), squarePsf: times(squarePsf) };
}
