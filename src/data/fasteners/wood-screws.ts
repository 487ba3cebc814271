import type { Cited } from '../wood/cited.ts';

export interface WoodScrewSize {
  readonly gauge: number;
  readonly nominalIn: number;
  /** at the root of the thread */
  readonly rootIn: number;
}

const size = (gauge: number, nominalIn: number, rootIn: number): WoodScrewSize => ({ gauge, nominalIn, rootIn });

/** Cut-thread wood screws: gauge, nominal diameter, root diameter. @source NDS Appendix L, Table L3 */
export const WOOD_SCREWS: Cited & { readonly rows: readonly WoodScrewSize[] } = {
  rows: [
    size(6, 0.138, 0.113),
    size(7, 0.151, 0.122),
    size(8, 0.164, 0.131),
    size(9, 0.177, 0.142),
    size(10, 0.19, 0.152),
    size(12, 0.216, 0.171),
    size(14, 0.242, 0.196),
    size(16, 0.268, 0.209),
    size(18, 0.294, 0.232),
    size(20, 0.32, 0.255),
    size(24, 0.372, 0.298),
  ],
  source: 'NDS',
  where: 'Appendix L, Table L3',
  seen: 'memory',
};

/** Share of its length over which a cut-thread wood screw is threaded, tip included. */
export const SCREW_THREAD: Cited & { readonly share: number } = {
  share: 2 / 3,
  source: 'NDS',
  where: 'Appendix L, Table L3',
  seen: 'memory',
};
