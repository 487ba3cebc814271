import { describe, expect, it } from 'vitest';
import { between, missingRuns, mostMissing, runsOf, type Needed } from '../../../src/ui/log/silhouette.ts';

const place = (atIn: number, hasIn: number, needsIn: number): Needed => ({ atIn, hasIn, needsIn });

describe('the thinnest log that would do, as it is drawn', () => {
  it('breaks where there is no answer', () => {
    const places = [place(0, 10, 4), place(1, 10, 5), place(2, 10, NaN), place(3, 10, 6), place(4, 10, Infinity)];
    expect(runsOf(places).map((run) => run.map(({ atIn }) => atIn))).toEqual([[0, 1]]);
  });

  // straight between stations: 8 needed rises to 12 over 10 in. and passes an even 10 in. log half way
  it('lacks wood from where the two lines cross', () => {
    const missing = missingRuns([place(0, 10, 8), place(10, 10, 12), place(20, 10, 12), place(30, 10, 8)]);
    expect(missing).toEqual([[place(5, 10, 10), place(10, 10, 12), place(20, 10, 12), place(25, 10, 10)]]);
  });

  it('lacks wood from the first station where that is too thin already, and nowhere on a log that is thick enough', () => {
    expect(missingRuns([place(0, 10, 12), place(10, 10, 8)])).toEqual([[place(0, 10, 12), place(5, 10, 10)]]);
    expect(missingRuns([place(0, 10, 9), place(10, 10, 8)])).toEqual([]);
  });

  it('names the place where most is missing, and none where nothing is or no thickness would do', () => {
    expect(mostMissing([place(0, 10, 10.5), place(5, 9, 10.25), place(9, 9, Infinity)])).toEqual({
      atIn: 5,
      inches: 1.25,
      isMore: false,
    });
    expect(mostMissing([place(0, 10, 9)])).toBeNull();
  });

  // straight between: at a quarter of the way from 10 to 12 and from 4 to 8
  it('can be cut down to a stretch, with its ends put in between places', () => {
    const places = [place(0, 10, 4), place(8, 12, 8), place(16, 12, 8)];
    expect(between(places, 2, 8)).toEqual([place(2, 10.5, 5), place(8, 12, 8)]);
    expect(between(places, 2, 6)).toEqual([place(2, 10.5, 5), place(6, 11.5, 7)]);
    expect(between(places, -1, 20)).toEqual(places);
  });
});
