import { beforeEach, describe, expect, it } from 'vitest';
import type { StoreApi } from 'zustand/vanilla';
import { setAt } from '../../../src/engine/project/edits/set-at.ts';
import { valueAt } from '../../../src/ui/state/value-at.ts';
import { createWorkbench, type Workbench } from '../../../src/ui/state/workbench.ts';
import { smallProject, testDoors } from './support.ts';

const POST = 'members[post-2].xIn';
const BUTT = 'logs[log-beam].stations[0].diameterIn';

let workbench: StoreApi<Workbench>;
const state = (): Workbench => workbench.getState();
const at = (path: string): unknown => {
  const { project } = state();
  return project ? valueAt(project, path) : undefined;
};
const type = (path: string, ...texts: readonly string[]): void => {
  for (const text of texts) state().act.typeInto({ path, text });
};

beforeEach(() => {
  workbench = createWorkbench(testDoors);
  state().act.adopt(smallProject());
});

describe('typing into a field', () => {
  it('sets what can be read, in the stored unit', () => {
    type(POST, `11' 6"`);
    expect(at(POST)).toBe(138);
    expect(state().stale).toBe(false);
  });

  it('keeps what cannot be read as a draft, and the last valid project', () => {
    type(POST, '11 chairs');
    expect(state().drafts[POST]?.text).toBe('11 chairs');
    expect(state().drafts[POST]?.said.code).toBe('fieldUnitUnknown');
    expect(state().stale).toBe(true);
    expect(at(POST)).toBe(144);
  });

  it('keeps what the project refuses as a draft with the fault of that field', () => {
    type(POST, '5000 ft');
    expect(state().drafts[POST]?.text).toBe('5000 ft');
    expect(state().drafts[POST]?.said).toEqual({ code: 'fieldTooMuch', values: { got: '5000 ft', limit: '500 ft' } });
    expect(at(POST)).toBe(144);
    expect(state().evaluation).not.toBeNull();
  });

  it('goes back to what stood before when the typing ends in nothing usable: 9 on the way to 900 is no entry', () => {
    type(BUTT, '9', '90', '900 in');
    expect(at(BUTT)).toBe(12);
    expect(state().drafts[BUTT]?.text).toBe('900 in');
    expect(state().done).toHaveLength(0);
    type(BUTT, '9');
    state().act.settle();
    type(BUTT, '90');
    expect(at(BUTT)).toBe(9);
  });

  it('keeps what cannot be evaluated as a draft, and the last evaluation', () => {
    type('roofPlanes[roof].risePer12', '22:12');
    expect(state().drafts['roofPlanes[roof].risePer12']?.said.code).toBe('notFinite');
    expect(at('roofPlanes[roof].risePer12')).toBe(3);
    expect(state().evaluation?.fingerprint).toBe('Small');
  });

  it('drops the draft as soon as the text is valid', () => {
    type(POST, '11 chairs', '11 ft');
    expect(state().drafts).toEqual({});
    expect(state().stale).toBe(false);
    expect(at(POST)).toBe(132);
  });

  it('remembers that a station was read by its girth, and forgets it when a diameter is typed', () => {
    type(BUTT, 'girth 38 in');
    expect(at(BUTT)).toBeCloseTo(38 / Math.PI, 12);
    expect(at('logs[log-beam].stations[0].read')).toBe('girth');
    type(BUTT, '12 in');
    expect(at('logs[log-beam].stations[0].read')).toBe('diameter');
  });

  it('writes "not given" where a value may be missing, and asks for one where it may not', () => {
    type('members[post-1].pierTopZIn', '');
    expect(at('members[post-1].pierTopZIn')).toBeNull();
    type(POST, '');
    expect(state().drafts[POST]?.said.code).toBe('fieldEmpty');
    expect(at(POST)).toBe(144);
  });

  it('changes no stored number when the units are switched and back', () => {
    const before = state().project;
    state().act.setSystem('metric');
    type(POST, '3.5 m');
    state().act.undo();
    state().act.setSystem('feet');
    expect(state().project).toEqual(before);
  });
});

describe('undo', () => {
  it('joins the keystrokes of one field until it is left', () => {
    type(POST, '1', '13', '139', '139 in');
    expect(state().done).toHaveLength(1);
    state().act.settle();
    type(POST, '140');
    expect(state().done).toHaveLength(2);
    state().act.undo();
    expect(at(POST)).toBe(139);
    state().act.undo();
    expect(at(POST)).toBe(144);
    state().act.redo();
    expect(at(POST)).toBe(139);
  });

  it('keeps two fields apart even without a pause', () => {
    type(POST, '140');
    type(BUTT, '11');
    expect(state().done).toHaveLength(2);
  });

  it('joins a drag into one entry and ends it with the command that says now', () => {
    const move = (xIn: number, undo: 'now' | 'with-next'): boolean =>
      state().act.perform({ name: 'move post', perform: (project) => setAt(project, POST, xIn), undo });
    move(143, 'with-next');
    move(142, 'with-next');
    move(141, 'now');
    move(140, 'now');
    expect(state().done.map((entry) => entry.name)).toEqual(['move post', 'move post']);
  });

  it('takes a drag back as if it had not been', () => {
    const before = state().project;
    state().act.perform({ name: 'move', perform: (project) => setAt(project, POST, 120), undo: 'with-next' });
    state().act.cancelGesture();
    expect(state().project).toBe(before);
    expect(state().done).toHaveLength(0);
  });

  it('takes refused entries away first, the last typed before the others', () => {
    type(POST, '140');
    state().act.settle();
    type(BUTT, '900 in');
    type(POST, '12 chairs');
    type(BUTT, '901 in');
    state().act.settle();
    state().act.undo();
    expect(Object.keys(state().drafts)).toEqual([POST]);
    state().act.undo();
    expect(state().drafts).toEqual({});
    expect(state().stale).toBe(false);
    expect(at(POST)).toBe(140);
    state().act.undo();
    expect(at(POST)).toBe(144);
  });

  it('drops what was undone once something new is done', () => {
    type(POST, '140');
    state().act.undo();
    type(BUTT, '11');
    expect(state().undone).toHaveLength(0);
  });

  it('of Escape in a field restores the value from before the typing', () => {
    type(POST, '139', '139 chairs');
    state().act.abandon({ path: POST });
    expect(at(POST)).toBe(144);
    expect(state().drafts).toEqual({});
  });
});

describe('a command that would leave no sound shelter', () => {
  it('is refused with its faults, and nothing changes', () => {
    const before = state().project;
    const accepted = state().act.choose('supportLines[low].set', 'sideways', 'set of the line');
    expect(accepted).toBe(false);
    expect(state().project).toBe(before);
    expect(state().refusedChange?.faults.length).toBeGreaterThan(0);
    expect(state().act.choose('supportLines[low].set', 'axis', 'set of the line')).toBe(true);
    expect(state().refusedChange).toBeNull();
  });
});

describe('a project that opens without figures', () => {
  it('can be mended step by step', () => {
    const steep = setAt(smallProject(), 'roofPlanes[roof].risePer12', 22);
    state().act.adopt(steep);
    expect(state().evaluation).toBeNull();
    expect(state().faults).toHaveLength(1);
    type('title.name', 'Mended');
    expect(at('title.name')).toBe('Mended');
    type('roofPlanes[roof].risePer12', '4 in 12');
    expect(state().evaluation).not.toBeNull();
    expect(state().faults).toHaveLength(0);
  });
});
