import { clause, remembered } from '../../../data/sources.ts';
import { notNegative, positive } from '../../errors.ts';
import { put, type Note, type Step } from '../../note.ts';
import { quantity } from '../../units.ts';

/**
 * What a shank can carry across the plane between two pieces. In each piece it may crush the wood along its whole length,
 * turn in it as a stiff rod, or bend and form a hinge in it; what both pieces do makes the mode. The general equations of
 * TR 12 say the same as NDS Table 12.3.1A and hold for a gap between the pieces too.
 */
export type YieldMode = 'Im' | 'Is' | 'II' | 'IIIm' | 'IIIs' | 'IV';
type BentMode = Exclude<YieldMode, 'Im' | 'Is'>;
type Motion = 'turns' | 'hinges';

const EQUATIONS = remembered('NDS', 'Table 12.3.1A; TR 12, Table 1-1');
const GAP = remembered('TR12', 'Table 1-1');
const HINGE = clause('MECHANICS', 'plastic moment of a round rod');

export const MODE_WORDS: Readonly<Record<YieldMode, string>> = {
  Im: 'the shank crushes the main piece',
  Is: 'the shank crushes the side piece',
  II: 'the shank turns in both pieces',
  IIIm: 'the shank bends in the side piece and turns in the main one',
  IIIs: 'the shank bends in the main piece and turns in the side one',
  IV: 'the shank bends in both pieces',
};

const BENT: Readonly<Record<BentMode, { readonly main: Motion; readonly side: Motion }>> = {
  II: { main: 'turns', side: 'turns' },
  IIIm: { main: 'turns', side: 'hinges' },
  IIIs: { main: 'hinges', side: 'turns' },
  IV: { main: 'hinges', side: 'hinges' },
};

export interface PressedPiece {
  /** dowel bearing strength */
  readonly FePsi: number;
  /** of the shank in it */
  readonly lengthIn: number;
}

export interface ShearPlane {
  readonly main: PressedPiece;
  readonly side: PressedPiece;
  /** that bears and bends */
  readonly diameterIn: number;
  readonly FybPsi: number;
  /** air, or a layer that bears nothing, between the pieces; 0 where they touch */
  readonly gapIn: number;
  /** two planes: the main piece between two side pieces, each like `side` */
  readonly planes: 1 | 2;
}

export interface YieldLoad {
  readonly mode: YieldMode;
  readonly loadLb: number;
}

/**
 * Load at which the shank yields in each mode that can happen, not yet reduced.
 * @returns loads [lb]; with two planes modes II and IIIm cannot happen and the others count on both planes
 * @throws MisuseError if a strength, a length or the diameter is not above zero or the gap below zero
 * @source NDS Table 12.3.1A and TR 12 Table 1-1, from memory; both agree where the pieces touch
 */
export function yieldLoads(plane: ShearPlane, note?: Note): readonly YieldLoad[] {
  const D = positive('diameterIn', plane.diameterIn);
  const main = pressed(plane.main, D);
  const side = pressed(plane.side, D);
  const g = notNegative('gapIn', plane.gapIn);
  const M = hingeMoment(positive('FybPsi', plane.FybPsi), D, note);
  const modes: readonly BentMode[] = plane.planes === 1 ? ['II', 'IIIm', 'IIIs', 'IV'] : ['IIIs', 'IV'];
  return [
    crushing('Im', plane.main, main, D, 1, note),
    crushing('Is', plane.side, side, D, plane.planes, note),
    ...modes.map((mode) => bending(mode, main, side, g, M, plane.planes, note)),
  ];
}

interface Pressed {
  /** what the piece pushes back on each inch of shank [lb/in] */
  readonly q: number;
  readonly l: number;
}

const pressed = ({ FePsi, lengthIn }: PressedPiece, D: number): Pressed => ({
  q: positive('FePsi', FePsi) * D,
  l: positive('lengthIn', lengthIn),
});

function hingeMoment(Fyb: number, D: number, note?: Note): number {
  const M = (Fyb * D ** 3) / 6;
  note?.({
    symbol: 'M',
    words: 'moment of a hinge in the shank',
    formula: 'Fyb × D^3 / 6',
    put: [put('Fyb', Fyb, 'psi', 'bending yield strength'), put('D', D, 'in', 'diameter that bends')],
    result: quantity(M, 'lb·in'),
    clause: HINGE,
  });
  return M;
}

function crushing(
  mode: 'Im' | 'Is',
  piece: PressedPiece,
  { q, l }: Pressed,
  D: number,
  planes: 1 | 2,
  note?: Note,
): YieldLoad {
  const loadLb = planes * q * l;
  note?.({
    symbol: `P(${mode})`,
    words: MODE_WORDS[mode],
    formula: 'n × Fe × D × l',
    put: [
      put('n', planes, '1', 'pieces that press alike'),
      put('Fe', piece.FePsi, 'psi', 'dowel bearing strength'),
      put('D', D, 'in', 'diameter that bears'),
      put('l', l, 'in', 'bearing length'),
    ],
    result: quantity(loadLb, 'lb'),
    clause: EQUATIONS,
  });
  return { mode, loadLb };
}

/** What a piece brings to the balance of moments on the shank. */
interface Share {
  readonly motion: Motion;
  readonly piece: Pressed;
  /** how far it gives under a pound on each inch */
  readonly give: number;
  readonly armIn: number;
  readonly hold: number;
}

function shareOf(motion: Motion, piece: Pressed, M: number): Share {
  const { q, l } = piece;
  return motion === 'turns'
    ? { motion, piece, give: 1 / q, armIn: l / 2, hold: (q * l * l) / 4 }
    : { motion, piece, give: 2 / q, armIn: 0, hold: M };
}

/**
 * Force P at which the shank yields: P^2 / (4 Q) + P B = K, the balance of moments on it. Q is how stiffly the wood
 * stands against it, B the arm of P, K what wood and hinges hold.
 */
function bending(
  mode: BentMode,
  main: Pressed,
  side: Pressed,
  g: number,
  M: number,
  planes: 1 | 2,
  note?: Note,
): YieldLoad {
  const m = shareOf(BENT[mode].main, main, M);
  const s = shareOf(BENT[mode].side, side, M);
  const Q = 1 / (m.give + s.give);
  const B = m.armIn + g + s.armIn;
  const K = m.hold + s.hold;
  const loadLb = planes * 2 * Q * (Math.sqrt(B * B + K / Q) - B);
  if (note) {
    const [stiffness, arm, held] = balanceSteps(m, s, g, M, { Q, B, K });
    note({
      symbol: `P(${mode})`,
      words: MODE_WORDS[mode],
      formula: 'n × 2 × Q × (sqrt(B^2 + K / Q) - B)',
      put: [
        put('n', planes, '1', 'planes of shear'),
        put('Q', Q, 'lb/in', stiffness.words, [stiffness]),
        put('B', B, 'in', arm.words, [arm]),
        put('K', K, 'lb·in', held.words, [held]),
      ],
      result: quantity(loadLb, 'lb'),
      clause: EQUATIONS,
    });
  }
  return { mode, loadLb };
}

/** The three numbers of the balance, put together for the pieces as they move. */
function balanceSteps(
  main: Share,
  side: Share,
  g: number,
  M: number,
  { Q, B, K }: { readonly Q: number; readonly B: number; readonly K: number },
): readonly [Step, Step, Step] {
  const both = [
    { of: 'm', share: main },
    { of: 's', share: side },
  ] as const;
  const turning = both.filter(({ share }) => share.motion === 'turns');
  const push = ({ of, share }: (typeof both)[number]) => put(`q${of}`, share.piece.q, 'lb/in', `Fe${of} × D`);
  const length = ({ of, share }: (typeof both)[number]) =>
    put(
      `l${of}`,
      share.piece.l,
      'in',
      of === 'm' ? 'bearing length in the main piece' : 'bearing length in the side piece',
    );
  const hinge = turning.length < both.length ? [put('M', M, 'lb·in', 'moment of a hinge')] : [];
  return [
    {
      symbol: 'Q',
      words: 'how stiffly the wood stands against the shank',
      formula: `1 / (${both.map(({ of, share }) => `${share.motion === 'turns' ? 1 : 2} / q${of}`).join(' + ')})`,
      put: both.map(push),
      result: quantity(Q, 'lb/in'),
      clause: EQUATIONS,
    },
    {
      symbol: 'B',
      words: 'arm of the force',
      formula: ['g', ...turning.map(({ of }) => `l${of} / 2`)].join(' + '),
      put: [put('g', g, 'in', 'gap between the pieces'), ...turning.map(length)],
      result: quantity(B, 'in'),
      clause: GAP,
    },
    {
      symbol: 'K',
      words: 'moment that wood and hinges hold',
      formula: both.map(({ of, share }) => (share.motion === 'turns' ? `q${of} × l${of}^2 / 4` : 'M')).join(' + '),
      put: [...hinge, ...turning.flatMap((each) => [push(each), length(each)])],
      result: quantity(K, 'lb·in'),
      clause: EQUATIONS,
    },
  ];
}
