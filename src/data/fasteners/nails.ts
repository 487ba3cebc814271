import type { Cited } from '../wood/cited.ts';

export interface NailSize {
  readonly kind: 'nail' | 'spike';
  readonly name: string;
  readonly diameterIn: number;
  readonly lengthIn: number;
  /** flat round head; null: oval or countersunk head, nothing printed that we know */
  readonly headIn: number | null;
}

const nail = (name: string, diameterIn: number, lengthIn: number, headIn: number): NailSize => ({
  kind: 'nail',
  name: `${name} common nail`,
  diameterIn,
  lengthIn,
  headIn,
});
const spike = (name: string, diameterIn: number, lengthIn: number): NailSize => ({
  kind: 'spike',
  name: `${name} spike`,
  diameterIn,
  lengthIn,
  headIn: null,
});

/** Common wire nails: diameter, length, head. @source NDS Appendix L, Table L4 */
export const NAILS: Cited & { readonly rows: readonly NailSize[] } = {
  rows: [
    nail('6d', 0.113, 2, 0.266),
    nail('8d', 0.131, 2.5, 0.281),
    nail('10d', 0.148, 3, 0.312),
    nail('12d', 0.148, 3.25, 0.312),
    nail('16d', 0.162, 3.5, 0.344),
    nail('20d', 0.192, 4, 0.406),
    nail('30d', 0.207, 4.5, 0.438),
    nail('40d', 0.225, 5, 0.469),
    nail('50d', 0.244, 5.5, 0.5),
    nail('60d', 0.263, 6, 0.531),
  ],
  source: 'NDS',
  where: 'Appendix L, Table L4',
  seen: 'memory',
};

/** Round wire spikes: diameter and length. @source F1667 common spikes */
export const SPIKES: Cited & { readonly rows: readonly NailSize[] } = {
  rows: [
    spike('20d', 0.225, 4),
    spike('30d', 0.244, 4.5),
    spike('40d', 0.263, 5),
    spike('50d', 0.283, 5.5),
    spike('60d', 0.283, 6),
    spike('5/16 in.', 0.312, 7),
    spike('3/8 in.', 0.375, 8.5),
  ],
  source: 'F1667',
  where: 'common spikes',
  seen: 'memory',
};
