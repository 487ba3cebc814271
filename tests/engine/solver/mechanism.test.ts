import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { factorFrame } from '../../../src/engine/solver/factor.ts';
import type { BarElement, BeamElement, FrameModel, Support } from '../../../src/engine/solver/model.ts';
import { cutFiner, withShortEnds } from './frames.ts';
import { bents } from './random-frames.ts';

const beam = (id: string, from: string, to: string): BeamElement => ({
  kind: 'beam',
  id,
  from,
  to,
  E: 1.2e6,
  section: { kind: 'round', fromDiameterIn: 8, toDiameterIn: 7 },
});
const bar = (id: string, from: string, to: string): BarElement => ({ kind: 'bar', id, from, to, EA: 1e7 });
const pin = (node: string): Support => ({ node, u: true, w: true, turn: false });
const roller = (node: string): Support => ({ node, u: false, w: true, turn: false });

/** A square of bars on a pin and a roller, without a diagonal. */
const square: FrameModel = {
  nodes: [
    { id: 'a', u: 0, w: 0 },
    { id: 'b', u: 100, w: 0 },
    { id: 'c', u: 100, w: 80 },
    { id: 'd', u: 0, w: 80 },
  ],
  elements: [bar('ab', 'a', 'b'), bar('bc', 'b', 'c'), bar('cd', 'c', 'd'), bar('da', 'd', 'a')],
  supports: [pin('a'), roller('b')],
};

describe('a frame that moves without force', () => {
  it('posts hinged top and bottom fold sideways; braces hold them, however tapered and however high', () => {
    fc.assert(
      fc.property(bents, ({ model, unbraced }) => {
        expect(factorFrame(model).ok).toBe(true);
        const feetTurn = model.supports.every(({ turn }) => turn === false);
        const folded = factorFrame(unbraced);
        // the level of the seats is what moves, so it moves sideways
        expect(folded.ok || folded.moves).toBe(feetTurn ? 'u' : true);
      }),
      { numRuns: 300, seed: 7 },
    );
  });

  it('is told from one that holds also with the shortest elements allowed beside every node', () => {
    fc.assert(
      fc.property(bents, ({ model, unbraced }) => {
        expect(factorFrame(withShortEnds(model)).ok).toBe(true);
        const feetTurn = model.supports.every(({ turn }) => turn === false);
        expect(factorFrame(withShortEnds(unbraced)).ok).toBe(!feetTurn);
      }),
      { numRuns: 100, seed: 13 },
    );
  });

  it('is told from a slender one that holds, also when every member is cut into many short elements', () => {
    fc.assert(
      fc.property(bents, fc.constantFrom(4, 12, 30), ({ model, unbraced }, pieces) => {
        expect(factorFrame(cutFiner(model, pieces)).ok).toBe(true);
        const feetTurn = model.supports.every(({ turn }) => turn === false);
        expect(factorFrame(cutFiner(unbraced, pieces)).ok).toBe(!feetTurn);
      }),
      { numRuns: 60, seed: 11 },
    );
  });

  it('names the first top of a bent that folds', () => {
    const portal: FrameModel = {
      nodes: [
        { id: 'foot A', u: 0, w: 0 },
        { id: 'top A', u: 0, w: 100 },
        { id: 'foot B', u: 120, w: 0 },
        { id: 'top B', u: 120, w: 100 },
        { id: 'seat A', u: 0, w: 100, hingedTo: 'top A' },
        { id: 'seat B', u: 120, w: 100, hingedTo: 'top B' },
      ],
      elements: [beam('A', 'foot A', 'top A'), beam('B', 'foot B', 'top B'), beam('AB', 'seat A', 'seat B')],
      supports: [pin('foot A'), pin('foot B')],
    };
    expect(factorFrame(portal)).toEqual({ ok: false, node: 'top A', moves: 'u' });
    const fixed = { ...portal, supports: [pin('foot A'), { ...pin('foot B'), turn: true }] };
    expect(factorFrame(fixed).ok).toBe(true);
    const sprung = { ...portal, supports: [pin('foot A'), { ...pin('foot B'), turn: { lbInPerRad: 1e5 } }] };
    expect(factorFrame(sprung).ok).toBe(true);
    const noSpring = { ...portal, supports: [pin('foot A'), { ...pin('foot B'), turn: { lbInPerRad: 0 } }] };
    expect(factorFrame(noSpring).ok).toBe(false);
  });

  it('a square of bars folds until it has a diagonal', () => {
    expect(factorFrame(square)).toEqual({ ok: false, node: 'c', moves: 'u' });
    expect(factorFrame({ ...square, elements: [...square.elements, bar('ac', 'a', 'c')] }).ok).toBe(true);
  });

  it('a beam on rollers alone rolls away, and on one support it drops', () => {
    const nodes = [
      { id: 'a', u: 0, w: 0 },
      { id: 'b', u: 100, w: 0 },
    ];
    const elements = [beam('ab', 'a', 'b')];
    expect(factorFrame({ nodes, elements, supports: [roller('a'), roller('b')] })).toMatchObject({ moves: 'u' });
    expect(factorFrame({ nodes, elements, supports: [pin('a')] })).toEqual({ ok: false, node: 'b', moves: 'w' });
    expect(factorFrame({ nodes, elements, supports: [{ ...pin('a'), turn: true }] }).ok).toBe(true);
  });

  it('a beam with a hinge in its span drops at the hinge', () => {
    const hinged: FrameModel = {
      nodes: [
        { id: 'a', u: 0, w: 0 },
        { id: 'h', u: 60, w: 0 },
        { id: 'g', u: 60, w: 0, hingedTo: 'h' },
        { id: 'b', u: 120, w: 0 },
      ],
      elements: [beam('ah', 'a', 'h'), beam('gb', 'g', 'b')],
      supports: [pin('a'), roller('b')],
    };
    expect(factorFrame(hinged)).toEqual({ ok: false, node: 'h', moves: 'w' });
    expect(factorFrame({ ...hinged, supports: [{ ...pin('a'), turn: true }, roller('b')] }).ok).toBe(true);
  });

  it('a node that nothing meets is named', () => {
    const loose = { ...square, nodes: [...square.nodes, { id: 'loose', u: 300, w: 0 }] };
    const held = { ...loose, elements: [...square.elements, bar('ac', 'a', 'c')] };
    expect(factorFrame(held)).toMatchObject({ ok: false, node: 'loose' });
  });
});
