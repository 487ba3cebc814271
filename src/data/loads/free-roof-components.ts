import type { Seen, SourceKey } from '../sources.ts';
import type { Flow, RoofForm } from './free-roof-main.ts';

// One printed figure in one file, row by row, so that it can be held beside the page: long on purpose.

/** Effective wind area against the square of the edge width a: up to a2, up to 4 a2, above. */
export type AreaClass = 'upToA2' | 'upTo4A2' | 'over4A2';
/** Where the classes end, in squares of a; an area at a limit belongs to the smaller class. */
export const AREA_LIMITS = { small: 1, middle: 4 } as const;
/** 3 at corners, 2 along edges, 1 elsewhere. */
export type RoofZone = 1 | 2 | 3;
/** Greatest and least net coefficient, plus is down on the top face. */
export type BothWays = readonly [positive: number, negative: number];
/** In the order of the figure: zone 3, zone 2, zone 1. */
export type ByZone = readonly [corner: BothWays, edge: BothWays, field: BothWays];

export interface ComponentRow {
  readonly slopeDeg: number;
  readonly areaClass: AreaClass;
  readonly coefficients: Readonly<Record<Flow, ByZone>>;
  readonly source: SourceKey;
  readonly seen: Seen;
  /** a cell that the copy misprints: what was taken and why; that cell is from memory */
  readonly disputed?: string;
}

const row = (
  slopeDeg: number,
  areaClass: AreaClass,
  clear: ByZone,
  obstructed: ByZone,
  disputed?: string,
): ComponentRow => ({
  slopeDeg,
  areaClass,
  coefficients: { clear, obstructed },
  source: 'BNBC',
  seen: disputed === undefined ? 'public copy' : 'memory',
  ...(disputed === undefined ? {} : { disputed }),
});

/** ASCE 7-16 Fig. 30.7-1 and 30.7-2 (figure numbers from memory), read in a copy that follows ASCE 7-05. */
export const COMPONENT_ROWS: Readonly<Record<RoofForm, readonly ComponentRow[]>> = {
  monoslope: [
    row(
      0,
      'upToA2',
      [
        [2.4, -3.3],
        [1.8, -1.7],
        [1.2, -1.1],
      ],
      [
        [1, -3.6],
        [0.8, -1.8],
        [0.5, -1.2],
      ],
    ),
    row(
      0,
      'upTo4A2',
      [
        [1.8, -1.7],
        [1.8, -1.7],
        [1.2, -1.1],
      ],
      [
        [0.8, -1.8],
        [0.8, -1.8],
        [0.5, -1.2],
      ],
    ),
    row(
      0,
      'over4A2',
      [
        [1.2, -1.1],
        [1.2, -1.1],
        [1.2, -1.1],
      ],
      [
        [0.5, -1.2],
        [0.5, -1.2],
        [0.5, -1.2],
      ],
    ),
    row(
      7.5,
      'upToA2',
      [
        [3.2, -4.2],
        [2.4, -2.1],
        [1.6, -1.4],
      ],
      [
        [1.6, -5.1],
        [1.2, -2.6],
        [0.8, -1.7],
      ],
      'zone 2, obstructed: the copy prints +0.5; +1.2 taken (memory, zone pattern)',
    ),
    row(
      7.5,
      'upTo4A2',
      [
        [2.4, -2.1],
        [2.4, -2.1],
        [1.6, -1.4],
      ],
      [
        [1.2, -2.6],
        [1.2, -2.6],
        [0.8, -1.7],
      ],
    ),
    row(
      7.5,
      'over4A2',
      [
        [1.6, -1.4],
        [1.6, -1.4],
        [1.6, -1.4],
      ],
      [
        [0.8, -1.7],
        [0.8, -1.7],
        [0.8, -1.7],
      ],
    ),
    row(
      15,
      'upToA2',
      [
        [3.6, -3.8],
        [2.7, -2.9],
        [1.8, -1.9],
      ],
      [
        [2.4, -4.2],
        [1.8, -3.2],
        [1.2, -2.1],
      ],
    ),
    row(
      15,
      'upTo4A2',
      [
        [2.7, -2.9],
        [2.7, -2.9],
        [1.8, -1.9],
      ],
      [
        [1.8, -3.2],
        [1.8, -3.2],
        [1.2, -2.1],
      ],
    ),
    row(
      15,
      'over4A2',
      [
        [1.8, -1.9],
        [1.8, -1.9],
        [1.8, -1.9],
      ],
      [
        [1.2, -2.1],
        [1.2, -2.1],
        [1.2, -2.1],
      ],
      'zone 1, obstructed: the copy prints -2.3; -2.1 taken (rows above, main-frame extreme)',
    ),
    row(
      30,
      'upToA2',
      [
        [5.2, -5],
        [3.9, -3.8],
        [2.6, -2.5],
      ],
      [
        [3.2, -4.6],
        [2.4, -3.5],
        [1.6, -2.3],
      ],
    ),
    row(
      30,
      'upTo4A2',
      [
        [3.9, -3.8],
        [3.9, -3.8],
        [2.6, -2.5],
      ],
      [
        [2.4, -3.5],
        [2.4, -3.5],
        [1.6, -2.3],
      ],
    ),
    row(
      30,
      'over4A2',
      [
        [2.6, -2.5],
        [2.6, -2.5],
        [2.6, -2.5],
      ],
      [
        [1.6, -2.3],
        [1.6, -2.3],
        [1.6, -2.3],
      ],
    ),
    row(
      45,
      'upToA2',
      [
        [5.2, -4.6],
        [3.9, -3.5],
        [2.6, -2.3],
      ],
      [
        [4.2, -3.8],
        [3.2, -2.9],
        [2.1, -1.9],
      ],
    ),
    row(
      45,
      'upTo4A2',
      [
        [3.9, -3.5],
        [3.9, -3.5],
        [2.6, -2.3],
      ],
      [
        [3.2, -2.9],
        [3.2, -2.9],
        [2.1, -1.9],
      ],
    ),
    row(
      45,
      'over4A2',
      [
        [2.6, -2.3],
        [2.6, -2.3],
        [2.6, -2.3],
      ],
      [
        [2.1, -1.9],
        [2.1, -1.9],
        [2.1, -1.9],
      ],
    ),
  ],
  pitched: [
    row(
      0,
      'upToA2',
      [
        [2.4, -3.3],
        [1.8, -1.7],
        [1.2, -1.1],
      ],
      [
        [1, -3.6],
        [0.8, -1.8],
        [0.5, -1.2],
      ],
    ),
    row(
      0,
      'upTo4A2',
      [
        [1.8, -1.7],
        [1.8, -1.7],
        [1.2, -1.1],
      ],
      [
        [0.8, -1.8],
        [0.8, -1.8],
        [0.5, -1.2],
      ],
    ),
    row(
      0,
      'over4A2',
      [
        [1.2, -1.1],
        [1.2, -1.1],
        [1.2, -1.1],
      ],
      [
        [0.5, -1.2],
        [0.5, -1.2],
        [0.5, -1.2],
      ],
    ),
    row(
      7.5,
      'upToA2',
      [
        [2.2, -3.6],
        [1.7, -1.8],
        [1.1, -1.2],
      ],
      [
        [1, -5.1],
        [0.8, -2.6],
        [0.5, -1.7],
      ],
    ),
    row(
      7.5,
      'upTo4A2',
      [
        [1.7, -1.8],
        [1.7, -1.8],
        [1.1, -1.2],
      ],
      [
        [0.8, -2.6],
        [0.8, -2.6],
        [0.5, -1.7],
      ],
    ),
    row(
      7.5,
      'over4A2',
      [
        [1.1, -1.2],
        [1.1, -1.2],
        [1.1, -1.2],
      ],
      [
        [0.5, -1.7],
        [0.5, -1.7],
        [0.5, -1.7],
      ],
    ),
    row(
      15,
      'upToA2',
      [
        [2.2, -2.2],
        [1.7, -1.7],
        [1.1, -1.1],
      ],
      [
        [1, -3.2],
        [0.8, -2.4],
        [0.5, -1.6],
      ],
    ),
    row(
      15,
      'upTo4A2',
      [
        [1.7, -1.7],
        [1.7, -1.7],
        [1.1, -1.1],
      ],
      [
        [0.8, -2.4],
        [0.8, -2.4],
        [0.5, -1.6],
      ],
    ),
    row(
      15,
      'over4A2',
      [
        [1.1, -1.1],
        [1.1, -1.1],
        [1.1, -1.1],
      ],
      [
        [0.5, -1.6],
        [0.5, -1.6],
        [0.5, -1.6],
      ],
    ),
    row(
      30,
      'upToA2',
      [
        [2.6, -1.8],
        [2, -1.4],
        [1.3, -0.9],
      ],
      [
        [1, -2.4],
        [0.8, -1.8],
        [0.5, -1.2],
      ],
    ),
    row(
      30,
      'upTo4A2',
      [
        [2, -1.4],
        [2, -1.4],
        [1.3, -0.9],
      ],
      [
        [0.8, -1.8],
        [0.8, -1.8],
        [0.5, -1.2],
      ],
    ),
    row(
      30,
      'over4A2',
      [
        [1.3, -0.9],
        [1.3, -0.9],
        [1.3, -0.9],
      ],
      [
        [0.5, -1.2],
        [0.5, -1.2],
        [0.5, -1.2],
      ],
    ),
    row(
      45,
      'upToA2',
      [
        [2.2, -1.6],
        [1.7, -1.2],
        [1.1, -0.8],
      ],
      [
        [1, -2.4],
        [0.8, -1.8],
        [0.5, -1.2],
      ],
    ),
    row(
      45,
      'upTo4A2',
      [
        [1.7, -1.2],
        [1.7, -1.2],
        [1.1, -0.8],
      ],
      [
        [0.8, -1.8],
        [0.8, -1.8],
        [0.5, -1.2],
      ],
    ),
    row(
      45,
      'over4A2',
      [
        [1.1, -0.8],
        [1.1, -0.8],
        [1.1, -0.8],
      ],
      [
        [0.5, -1.2],
        [0.5, -1.2],
        [0.5, -1.2],
      ],
    ),
  ],
};
