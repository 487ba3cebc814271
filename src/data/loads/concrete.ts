import type { SourceKey, Seen } from '../sources.ts';

/** Plain concrete with stone aggregate [pcf]: 22.8 kN/m3. @source BNBC (2020) unit weights of materials */
export const PLAIN_CONCRETE_PCF = 145;

export interface ConcreteBag {
  /** dry mix in the bag [lb] */
  readonly lb: number;
  /** concrete that it makes [ft3] */
  readonly ft3: number;
  readonly source: SourceKey;
  readonly seen: Seen;
}

/** Bags of dry mix and what they make: common practice, as such bags are marked. To buy by; nothing is judged with it. */
export const CONCRETE_BAGS: readonly ConcreteBag[] = [
  { lb: 60, ft3: 0.45, source: 'OWN', seen: 'public copy' },
  { lb: 80, ft3: 0.6, source: 'OWN', seen: 'public copy' },
];
