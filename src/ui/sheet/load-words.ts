import { ASD_COMBINATIONS } from '../../data/loads/combinations.ts';
import { LOAD_KINDS } from '../../data/words/sheet.ts';

const KIND_OF_CASE: readonly (readonly [prefix: string, kind: string])[] = [
  ['snow', 'snow'],
  ['roof-live', 'roofLive'],
  ['person', 'person'],
  ['own-live', 'ownLive'],
  ['own-snow', 'snow'],
  ['own-wind', 'wind'],
  ['wind', 'wind'],
  ['notional', 'notional'],
  ['seismic', 'seismic'],
];

/** A combination as a reviewer writes it: `0.6 dead + 0.6 wind`; '' where no load is involved. */
export function loadWords(combinationId: string): string {
  if (combinationId === '') return '';
  const [rule = '', ...caseIds] = combinationId.split('+');
  const kinds = new Set(caseIds.map((id) => KIND_OF_CASE.find(([prefix]) => id.startsWith(prefix))?.[1] ?? id));
  const named = [...kinds].map((kind) => LOAD_KINDS[kind] ?? kind);
  if (rule === 'sag') return `${named.join(' + ')} alone`;
  if (rule === 'years') return ['creep of dead', ...named].join(' + ');
  const combination = ASD_COMBINATIONS.find((c) => c.id === rule);
  if (!combination) return combinationId;
  // an own live load stands in the rule of the standard even where nothing hangs on this shelter
  const parts = Object.entries(combination.factors).filter(([kind]) => kind !== 'ownLive' || kinds.has('ownLive'));
  // the person at work stands where the rule speaks of roof live load
  const nameOf = (kind: string): string =>
    LOAD_KINDS[kind === 'roofLive' && kinds.has('person') ? 'person' : kind] ?? kind;
  return [['dead', combination.dead.factor] as const, ...parts]
    .map(([kind, factor]) => `${factor === 1 ? '' : `${factor} `}${nameOf(kind)}`)
    .join(' + ');
}
