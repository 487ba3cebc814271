import { clause } from '../../../data/sources.ts';
import { put, type Note } from '../../note.ts';
import { quantity } from '../../units.ts';
import type { PurlinLoading, PurlinResponse } from './purlin-loading.ts';

/** Writes the even load on a purlin square to the slope and along it; it tells the numbers of its responses. */
export function tellPurlinLoad(loading: PurlinLoading, r: PurlinResponse, note: Note): void {
  const acting = r.combination.factors.map(({ caseId, factor }) => ({
    factor,
    found: loading.cases.find((c) => c.id === caseId)!,
  }));
  const plumb = acting.filter((a) => !a.found.isWind);
  const wind = acting.filter((a) => a.found.isWind);
  const term = (letter: string, count: number, width: string): readonly string[] =>
    Array.from({ length: count }, (_, i) => `f${letter}${i + 1} × ${letter}${i + 1} × ${width} / 144`);
  const puts = (letter: string, of: typeof acting) =>
    of.flatMap(({ factor, found }, i) => [
      put(`f${letter}${i + 1}`, factor, '1', `factor of ${found.id}`),
      put(
        `${letter}${i + 1}`,
        found.psf,
        'psf',
        found.zone ? `${found.id}, zone ${found.zone}` : found.id,
        found.steps(),
      ),
    ]);
  const level = ['D', ...term('p', plumb.length, 'b × cos θ')].join(' + ');
  const shared = [
    put('D', r.dead, 'lb/in', 'dead load that counts, plumb'),
    put('b', loading.purlin.tributaryWidthIn, 'in', 'width of slope it carries'),
    put('θ', loading.purlin.slopeDeg, 'deg', 'roof slope'),
    ...puts('p', plumb),
  ];
  note({
    symbol: 'w',
    words: 'load on the purlin, square to the slope',
    formula: [`(${level}) × cos θ`, ...term('q', wind.length, 'b')].join(' + '),
    put: [...shared, ...puts('q', wind)],
    result: quantity(r.square, 'lb/in'),
    clause: clause('ASCE7', '2.4.1'),
  });
  note({
    symbol: 'v',
    words: 'load on the purlin, along the slope',
    formula: `(${level}) × sin θ`,
    put: shared,
    result: quantity(r.along, 'lb/in'),
    clause: clause('ASCE7', '2.4.1'),
  });
}
