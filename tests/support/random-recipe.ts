import * as fc from 'fast-check';
import type { Id } from '../../src/engine/project/model.ts';
import { sixteenths } from './random-parts.ts';

const FORMS = {
  shed: { ys: [0, 1], planes: [[0, 1]], ledger: false },
  deepShed: { ys: [0, 1, 2], planes: [[0, 1, 2]], ledger: false },
  leanTo: { ys: [0, 1], planes: [[0, 1]], ledger: true },
  deepLeanTo: { ys: [0, 1, 2], planes: [[0, 1, 2]], ledger: true },
  gable: {
    ys: [-1, 0, 1],
    planes: [
      [1, 0],
      [1, 2],
    ],
    ledger: false,
  },
} as const;

/** The measures that everything else follows from. */
export const recipe = fc.record({
  form: fc.constantFrom(...(Object.keys(FORMS) as (keyof typeof FORMS)[])),
  idLength: fc.constantFrom(0, 0, 60),
  baysIn: fc.array(sixteenths(60, 168), { minLength: 1, maxLength: 5 }),
  pastIn: sixteenths(0, 48),
  betweenLinesIn: sixteenths(66, 144),
  risePer12: sixteenths(0.5, 8),
  lowestBearingIn: sixteenths(96, 120),
  highOverhangIn: sixteenths(3, 24),
  lowOverhangIn: sixteenths(3, 24),
  rafterSpacingIn: sixteenths(16, 48),
  purlinSpacingIn: sixteenths(18, 36),
  isSpliced: fc.boolean(),
  hasTies: fc.boolean(),
  bracesAt: fc.constantFrom('ends', 'all', 'none'),
  sheetOn: fc.constantFrom('purlins', 'rafters'),
  rafters: fc.constantFrom('simple', 'continuous'),
  set: fc.constantFrom('top', 'axis', 'underside'),
  along: fc.constantFrom('kneeBraces', 'building', 'ratedWalls', 'none', null),
  across: fc.constantFrom('transverseFrame', 'building', 'ratedWalls', 'none', null),
  stands: fc.constantFrom('pattern', 'log'),
  embedded: fc.boolean(),
});
export type Recipe = typeof recipe extends fc.Arbitrary<infer R> ? R : never;

/** Where everything stands, from the recipe alone. */
export function layout(r: Recipe) {
  const form = FORMS[r.form];
  const name = (what: string): Id => `${what}${'-W'.repeat(30)}`.slice(0, Math.max(what.length, r.idLength));
  const postXs = r.baysIn.reduce((xs, bay) => [...xs, xs.at(-1)! + bay], [0]);
  const reachIn: readonly [number, number] = [0 - r.pastIn, postXs.at(-1)! + r.pastIn];
  const lines = form.ys.map((y, i) => ({ id: name(`line-${i}`), yIn: 0 + y * r.betweenLinesIn, i }));
  const frames = form.ledger ? lines.slice(1) : lines;
  const beams = frames.flatMap(({ id, i }) => {
    const cuts = r.isSpliced ? postXs.slice(1, -1) : [];
    const ends = [reachIn[0], ...cuts, reachIn[1]];
    return ends.slice(1).map((toXIn, k) => ({ id: name(`beam-${i}-${k}`), line: id, fromXIn: ends[k]!, toXIn }));
  });
  const posts = frames.flatMap(({ id, i }) =>
    postXs.map((xIn, k) => ({ id: name(`post-${i}-${k}`), line: id, i, k, xIn })),
  );
  return { form, name, postXs, reachIn, lines, frames, beams, posts };
}
export type Layout = ReturnType<typeof layout>;
