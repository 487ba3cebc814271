import { clause, remembered, type ClauseRef } from '../../data/sources.ts';
import { put, stepsOf, type Note, type Step } from '../note.ts';
import { givenStep } from './citation.ts';
import type { DesignValues, ValuesBasis, ValueSymbol } from './values.ts';

/** Why wet service takes nothing where it does not. */
export type WetReason = 'green' | 'poles' | 'typedWet' | 'typedHeld' | 'timber' | 'usedDry';

const WET_WORDS: Readonly<Record<WetReason, string>> = {
  green: 'worked out from green wood, without a gain for drying',
  poles: 'pole values hold wet and dry',
  typedWet: 'typed values are those of wet wood',
  typedHeld: 'held in the typed values',
  timber: 'wet timbers lose nothing here',
  usedDry: 'used dry, at most 19 % moisture',
};

interface FactorAtOne {
  readonly words: string;
  readonly where: ClauseRef;
}

const at = (words: string, where: ClauseRef): FactorAtOne => ({ words, where });

const FACTORS = {
  Ct: at('temperature: never held above 100 °F for long', remembered('NDS', '2.3.3')),
  Cct: at('conditioning: green or dried in the air, not kiln-dried, steamed or boiled', clause('D2899', 'Table 2')),
  CF: at('size: a timber not deeper than 12 in.', clause('NDS', '4.3.6')),
  Cfu: at('flat use: loaded on the narrow face, or graded for both', clause('NDS', '4.3.7')),
  Ci: at('incising: not incised', remembered('NDS', '4.3.8')),
  Ccs: at('critical section: judged at its own diameter, no gain toward the butt', remembered('NDS', '6.3.9')),
  Cls: at('load sharing: every pole carries alone', remembered('NDS', '6.3.11')),
  C_other: at('every other factor: typed for these logs as they are', clause('OWN', 'values as typed')),
} as const;
type Factor = 'CM' | keyof typeof FACTORS;

const CLEAR_LOG: readonly Factor[] = ['CM', 'Ct', 'Cct'];
const HOME_SAWN: readonly Factor[] = ['CM', 'Ct', 'Ci'];
const SAWN: readonly Factor[] = ['CM', 'Ct', 'Ci'];
const TYPED: readonly Factor[] = ['CM', 'Ct', 'C_other'];
/** worked out from a value that has been through its factors */
const THROUGH: readonly Factor[] = [];

/** @source NDS (2018) Tables 4.3.1 (sawn) and 6.3.1 (round), from memory: which factor applies to which value */
const APPLY: Readonly<Record<ValuesBasis, Readonly<Record<ValueSymbol, readonly Factor[]>>>> = {
  derived: {
    Fb: CLEAR_LOG,
    Fv: CLEAR_LOG,
    Fcp: CLEAR_LOG,
    Fc: [...CLEAR_LOG, 'Ccs'],
    Ft: THROUGH,
    E: ['CM', 'Ct'],
    Emin: THROUGH,
  },
  homeSawn: { Fb: HOME_SAWN, Fv: HOME_SAWN, Fcp: HOME_SAWN, Fc: HOME_SAWN, Ft: THROUGH, E: HOME_SAWN, Emin: THROUGH },
  poles: {
    Fb: [...CLEAR_LOG, 'Cls'],
    Fv: CLEAR_LOG,
    Fcp: CLEAR_LOG,
    Fc: [...CLEAR_LOG, 'Ccs', 'Cls'],
    Ft: THROUGH,
    E: ['CM', 'Ct'],
    Emin: ['CM', 'Ct'],
  },
  typed: { Fb: TYPED, Fv: TYPED, Fcp: TYPED, Fc: TYPED, Ft: TYPED, E: TYPED, Emin: TYPED },
  graded: {
    Fb: [...SAWN, 'CF', 'Cfu'],
    Fv: SAWN,
    Fcp: SAWN,
    Fc: [...SAWN, 'CF'],
    Ft: [...SAWN, 'CF'],
    E: [...SAWN, 'Cfu'],
    Emin: [...SAWN, 'Cfu'],
  },
};

/** The same values, their steps told with every factor of the standard that stays at 1.0 and why it does. */
export const withFactorsAtOne = (values: DesignValues, wet: WetReason): DesignValues => ({
  ...values,
  steps: (of) =>
    stepsOf((note?: Note) => {
      if (note) tellWithFactors(values, of, wet, note);
    }).steps,
});

function tellWithFactors(values: DesignValues, of: ValueSymbol, wet: WetReason, note: Note): void {
  const steps = values.steps(of);
  const last = steps.at(-1);
  if (!last) return;
  const ones = APPLY[values.basis][of]
    .filter((symbol) => !steps.some((step) => step.symbol === symbol))
    .map((symbol): Step => {
      const { words, where } =
        symbol === 'CM' ? at(`wet service: ${WET_WORDS[wet]}`, clause('NDS', '4.3.3, 6.3.3')) : FACTORS[symbol];
      return givenStep(symbol, words, 1, '1', where, 'stated value');
    });
  for (const step of steps.slice(0, -1)) note(step);
  // a value that is only read, not worked out, becomes the first term of a product
  const isRead = last.put.length === 0 && ones.length > 0;
  const read = { ...last, symbol: `${last.symbol}_ref` };
  if (isRead) note(read);
  for (const one of ones) note(one);
  const terms = [isRead ? read.symbol : last.formula, ...ones.map(({ symbol }) => symbol)];
  note({
    ...last,
    formula: terms.join(' × '),
    put: [
      ...(isRead ? [put(read.symbol, last.result.value, last.result.unit, 'reference value')] : last.put),
      ...ones.map(({ symbol, words }) => put(symbol, 1, '1', words)),
    ],
  });
}
