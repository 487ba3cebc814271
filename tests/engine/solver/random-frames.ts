import * as fc from 'fast-check';
import type {
  BarElement,
  BeamElement,
  ElementLoad,
  FrameModel,
  FrameNode,
  LoadState,
  NodeLoad,
  Support,
} from '../../../src/engine/solver/model.ts';
import { roundMember } from './frames.ts';

const E = 1.2e6;

export interface Bent {
  readonly model: FrameModel;
  /** the same without its braces */
  readonly unbraced: FrameModel;
}

const inches = (min: number, max: number) => fc.double({ min, max, noNaN: true });

const post = fc.record({
  foot: inches(-20, 20),
  bay: inches(90, 200),
  drop: inches(24, 50),
  /** angle of the brace with the post */
  phi: inches(30, 60),
  butt: inches(7, 12),
  tip: inches(5, 7),
  turn: fc.oneof(
    fc.constant(false),
    fc.constant(true),
    inches(1e4, 1e7).map((lbInPerRad) => ({ lbInPerRad })),
  ),
});

/**
 * Two to four posts of tapered log on piers at different heights, a tapered beam hinged on their tops, a brace from each
 * post toward the next (the last toward the one before), at 30 to 60 degrees.
 */
export const bents: fc.Arbitrary<Bent> = fc
  .record({
    posts: fc.array(post, { minLength: 2, maxLength: 4 }),
    beam: fc.tuple(inches(8, 14), inches(7, 11)),
    seat: inches(90, 140),
    /** at least one foot that can turn freely, so that only the braces hold the bent */
    allFree: fc.boolean(),
    fall: inches(-0.05, 0.05),
  })
  .map(({ posts, beam, seat, allFree, fall }) => {
    const nodes: FrameNode[] = [];
    const elements: (BeamElement | BarElement)[] = [];
    const bars: BarElement[] = [];
    const supports: Support[] = [];
    const ends: { at: number; id: string }[] = [];
    let u = 0;
    const length = posts.slice(1).reduce((sum, p) => sum + p.bay, 0);
    const level = (at: number) => seat + fall * at;
    posts.forEach(({ foot, bay, drop, phi, butt, tip, turn }, i) => {
      if (i > 0) u += bay;
      const top = { u, w: level(u) };
      nodes.push({ id: `foot${i}`, u, w: foot }, { id: `top${i}`, ...top });
      const cut = (top.w - drop - foot) / (top.w - foot);
      const member = roundMember(`post${i}`, [`foot${i}`, { u, w: foot }, `top${i}`, top], [butt, tip], E, [cut]);
      nodes.push(...member.nodes);
      elements.push(...member.elements);
      supports.push({ node: `foot${i}`, u: true, w: true, turn: allFree ? false : turn });
      const run = Math.min(drop * Math.tan((phi * Math.PI) / 180), 40);
      const at = i === posts.length - 1 ? u - run : u + run;
      ends.push({ at: u, id: `seat${i}` }, { at, id: `brace${i}` });
      nodes.push({ id: `seat${i}`, ...top, hingedTo: `top${i}` }, { id: `brace${i}`, u: at, w: level(at) });
      bars.push({ kind: 'bar', id: `brace${i}`, from: `post${i}.n1`, to: `brace${i}`, EA: 2e7 });
    });
    const stops = ends.sort((a, b) => a.at - b.at);
    const diameterAt = (at: number) => beam[0] + (at / length) * (beam[1] - beam[0]);
    stops.slice(1).forEach(({ at, id }, i) => {
      const before = stops[i] ?? { at, id };
      elements.push({
        kind: 'beam',
        id: `beam${i}`,
        from: before.id,
        to: id,
        E,
        section: { kind: 'round', fromDiameterIn: diameterAt(before.at), toDiameterIn: diameterAt(at) },
      });
    });
    return { model: { nodes, elements: [...elements, ...bars], supports }, unbraced: { nodes, elements, supports } };
  });

// tenths of a pound, so that no load is next to nothing
const force = fc.integer({ min: -20000, max: 20000 }).map((tenths) => tenths / 10);
const perInch = fc.integer({ min: -400, max: 400 }).map((tenths) => tenths / 10);

/** Loads of every kind on a model: pushes and moments at some nodes, straight loads on some of the elements. */
export const loadsOn = (model: FrameModel): fc.Arbitrary<LoadState> => {
  const barOnly = new Set(model.nodes.map(({ id }) => id));
  for (const element of model.elements)
    if (element.kind === 'beam') [element.from, element.to].forEach((id) => barOnly.delete(id));
  const beamNodes = model.nodes.map(({ id }) => id).filter((id) => !barOnly.has(id));
  const nodeLoad: fc.Arbitrary<NodeLoad> = fc.record({
    node: fc.constantFrom(...beamNodes),
    u: force,
    w: force,
    turn: force,
  });
  const elementLoad: fc.Arbitrary<ElementLoad> = fc.record({
    element: fc.constantFrom(...model.elements.map(({ id }) => id)),
    fromU: perInch,
    toU: perInch,
    fromW: perInch,
    toW: perInch,
  });
  return fc.record({
    nodes: fc.array(nodeLoad, { minLength: 1, maxLength: 4 }),
    elements: fc.array(elementLoad, { minLength: 1, maxLength: 6 }),
  });
};
