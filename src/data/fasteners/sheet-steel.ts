import type { Cited } from '../wood/cited.ts';

export interface SheetGauge {
  readonly gauge: number;
  /** steel alone, without zinc and paint */
  readonly thicknessIn: number;
}

/** Usual sheets of a steel roof; common practice, the thin one of the figures in use for a gauge (safe side). The maker's own goes before. */
export const SHEET_GAUGES: Cited & { readonly rows: readonly SheetGauge[] } = {
  rows: [
    { gauge: 29, thicknessIn: 0.0142 },
    { gauge: 26, thicknessIn: 0.0179 },
    { gauge: 24, thicknessIn: 0.0225 },
    { gauge: 22, thicknessIn: 0.0285 },
  ],
  source: 'OWN',
  where: 'sheet steel by gauge, common practice',
  seen: 'memory',
};
