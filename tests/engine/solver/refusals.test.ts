import { describe, expect, it } from 'vitest';
import { MisuseError } from '../../../src/engine/errors.ts';
import { continuousBeam, type BeamOnRollers } from '../../../src/engine/solver/continuous-beam.ts';
import { factorFrame } from '../../../src/engine/solver/factor.ts';
import { insideElement } from '../../../src/engine/solver/inside-element.ts';
import type { BeamElement, FrameModel, LoadState } from '../../../src/engine/solver/model.ts';
import { solveFrame } from './frames.ts';

const round = { kind: 'round', fromDiameterIn: 8, toDiameterIn: 7 } as const;
const log: BeamElement = { kind: 'beam', id: 'log', from: 'a', to: 'b', E: 1.2e6, section: round };
const frame: FrameModel = {
  nodes: [
    { id: 'a', u: 0, w: 0 },
    { id: 'b', u: 100, w: 0 },
    { id: 'c', u: 100, w: 60 },
  ],
  elements: [
    log,
    { kind: 'bar', id: 'tie', from: 'b', to: 'c', EA: 1e6 },
    { kind: 'bar', id: 'stay', from: 'a', to: 'c', EA: 1e6 },
  ],
  supports: [
    { node: 'a', u: true, w: true, turn: false },
    { node: 'b', u: false, w: true, turn: false },
  ],
};
const withLog = (change: Partial<BeamElement>): FrameModel => ({
  ...frame,
  elements: frame.elements.map((element) => (element.kind === 'beam' ? { ...element, ...change } : element)),
});
const nothing: LoadState = { nodes: [], elements: [] };

describe('a frame that contradicts itself is refused', () => {
  const models: readonly [string, FrameModel][] = [
    ['an element between unknown nodes', withLog({ to: 'nowhere' })],
    ['an element without length', withLog({ to: 'a' })],
    ['no modulus of elasticity', withLog({ E: 0 })],
    ['a modulus that is no number', withLog({ E: NaN })],
    ['a diameter below zero', withLog({ section: { ...round, toDiameterIn: -7 } })],
    ['a bar without stiffness', { ...frame, elements: [log, { kind: 'bar', id: 'x', from: 'b', to: 'c', EA: 0 }] }],
    ['two nodes with one id', { ...frame, nodes: [...frame.nodes, { id: 'a', u: 5, w: 5 }] }],
    ['two elements with one id', { ...frame, elements: [log, log] }],
    ['a node nowhere', { ...frame, nodes: [...frame.nodes, { id: 'd', u: NaN, w: 0 }] }],
    ['a hinge between two places', { ...frame, nodes: [...frame.nodes, { id: 'd', u: 1, w: 0, hingedTo: 'a' }] }],
    [
      'hinges in a circle',
      {
        ...frame,
        nodes: [...frame.nodes, { id: 'd', u: 0, w: 0, hingedTo: 'e' }, { id: 'e', u: 0, w: 0, hingedTo: 'd' }],
      },
    ],
    ['a movement held twice', { ...frame, supports: [...frame.supports, ...frame.supports] }],
    [
      'a spring that pushes along',
      { ...frame, supports: [{ node: 'a', u: true, w: true, turn: { lbInPerRad: -1 } }, ...frame.supports.slice(1)] },
    ],
  ];
  it.each(models)('%s', (_, model) => {
    expect(() => factorFrame(model)).toThrow(MisuseError);
  });

  const alongLog = { element: 'log', fromU: 0, toU: 0, fromW: 0, toW: 0 };
  const loads: readonly [string, LoadState][] = [
    ['a load on an unknown node', { ...nothing, nodes: [{ node: 'nowhere', u: 1, w: 0 }] }],
    ['a load on an unknown element', { ...nothing, elements: [{ ...alongLog, element: 'nowhere' }] }],
    ['a load that is no number', { ...nothing, elements: [{ ...alongLog, toW: NaN }] }],
    ['a load without end', { ...nothing, nodes: [{ node: 'b', u: Infinity, w: 0 }] }],
    ['a moment where only bars meet', { ...nothing, nodes: [{ node: 'c', u: 0, w: 0, turn: 10 }] }],
    ['a shift of a node that nothing holds', { ...nothing, shifts: [{ node: 'b', u: 1 }] }],
  ];
  it.each(loads)('%s', (_, load) => {
    expect(() => solveFrame(frame, load)).toThrow(MisuseError);
  });

  it('a place outside an element, or in one that is not there', () => {
    expect(() => insideElement(frame, 'log', 1.1)).toThrow(MisuseError);
    expect(() => insideElement(frame, 'log', NaN)).toThrow(MisuseError);
    expect(() => insideElement(frame, 'nowhere', 0.5)).toThrow(MisuseError);
  });

  it('no load gives no force and no residual', () => {
    const state = solveFrame(frame, nothing);
    expect([...state.moves, ...state.forces, ...state.reactions].every((value) => value === 0)).toBe(true);
    expect(state.residual).toBe(0);
  });
});

describe('a beam on rollers that contradicts itself is refused', () => {
  const beam: BeamOnRollers = {
    lengthIn: 100,
    E: 1.2e6,
    pieces: [{ toIn: 100, section: round }],
    supportsAtIn: [0, 90],
    stationsAtIn: [],
  };
  const beams: readonly [string, BeamOnRollers][] = [
    ['one support', { ...beam, supportsAtIn: [50] }],
    ['supports out of order', { ...beam, supportsAtIn: [90, 0] }],
    ['two supports at one place', { ...beam, supportsAtIn: [0, 50, 50] }],
    ['a support beyond the end', { ...beam, supportsAtIn: [0, 101] }],
    ['a station beyond the end', { ...beam, stationsAtIn: [101] }],
    ['pieces that end too soon', { ...beam, pieces: [{ toIn: 60, section: round }] }],
    ['pieces out of order', { ...beam, pieces: [70, 60, 100].map((toIn) => ({ toIn, section: round })) }],
    ['no length', { ...beam, lengthIn: 0 }],
  ];
  it.each(beams)('%s', (_, wrong) => {
    expect(() => continuousBeam(wrong, [{ lines: [], points: [] }])).toThrow(MisuseError);
  });

  it('a load beyond the end, or from right to left', () => {
    const line = { fromIn: 0, toIn: 101, fromLbPerIn: 1, toLbPerIn: 1 };
    expect(() => continuousBeam(beam, [{ lines: [line], points: [] }])).toThrow(MisuseError);
    expect(() => continuousBeam(beam, [{ lines: [{ ...line, fromIn: 50, toIn: 40 }], points: [] }])).toThrow(
      MisuseError,
    );
    expect(() => continuousBeam(beam, [{ lines: [], points: [{ atIn: -1, lb: 5 }] }])).toThrow(MisuseError);
  });
});
