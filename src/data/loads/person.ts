import { remembered } from '../sources.ts';

/** A person at work on a roof: weight, spread over a square of this side. */
export const PERSON = { lb: 300, squareIn: 30, clause: remembered('ASCE7', '4.4, Table 4.3-1') } as const;
