import { describe, expect, it } from 'vitest';
import type { Capacity, JointKind, Project } from '../../../src/engine/project/model.ts';
import { frontPicture } from '../../../src/ui/drawing/front-picture.ts';
import { onScreen } from '../../../src/ui/drawing/paper.ts';
import { sectionPicture } from '../../../src/ui/drawing/section-picture.ts';
import { hardwareMarks } from '../../../src/ui/joint/marks.ts';
import { EXAMPLES, exampleText, soundProject } from '../../support/files.ts';
import { plainShed } from '../../support/plain-shed.ts';
import { tiedShed } from '../../support/tied-shed.ts';
import { showFeet } from '../drawing/show.ts';
import { HARDWARE, ofKind, placed, row } from './hardware.ts';

const withHardware = (project: Project, kinds: Partial<Record<JointKind, Capacity>>): Project => ({
  ...project,
  joints: {
    own: [],
    defaults: Object.entries(kinds).map(([kind, capacity]) => ({ kind: kind as JointKind, capacity })),
  },
});
const marksOf = (project: Project) => hardwareMarks(project, placed(project).shelter);
const lag: Capacity = { kind: 'fasteners', rows: [row({ lengthIn: 8 })], shoulder: false };

describe('marks of hardware on the views of a shelter', () => {
  it('are none where joints are rated, and none for the screws of a sheet', () => {
    const rated = soundProject(exampleText('undersized-shed'));
    expect(marksOf(rated)).toEqual([]);
    expect(marksOf(withHardware(rated, { sheetPurlin: HARDWARE.sheetPurlin }))).toEqual([]);
  });

  it('show a driven fastener as long as it is, on its line alone', () => {
    const project = withHardware(plainShed(), { bracePost: lag });
    const { shelter } = placed(project);
    const marks = marksOf(project);
    expect(marks).toHaveLength(shelter.braces.length);
    for (const { line, lineId, isInSection, hasHead } of marks) {
      const [[x, , z], [toX, , toZ]] = line;
      expect(Math.hypot(toX - x, toZ - z)).toBeCloseTo(8, 9);
      expect(shelter.lines.map(({ id }) => id)).toContain(lineId);
      // braces along a line are hidden in the section behind their posts
      expect([isInSection, hasHead]).toEqual([false, true]);
    }
  });

  it('show a strap from one piece to the other', () => {
    const plate = { thicknessIn: 0.25, widthIn: 2, steel: 'plate', each: 1 } as const;
    const rows = [row({ lengthIn: 3, count: 2, spacingIn: 2.5, endIn: 4, plate })];
    const project = withHardware(plainShed(), { beamPost: { kind: 'fasteners', rows, shoulder: false } });
    const seat = ofKind(placed(project), 'beamPost');
    const [mark] = marksOf(project);
    const [z, toZ] = mark!.line.map((p) => p[2]).toSorted((a, b) => a - b);
    // 4 in. under the seat and one spacing further down; half a spacing above the middle of the beam
    expect(z).toBeCloseTo(seat.at[2] - 6.5, 6);
    expect(toZ).toBeCloseTo(seat.upper.shape!.axisAt[2] + 1.25, 6);
    expect(mark!.hasHead).toBe(false);
    expect(marksOf(project).filter(({ isInSection }) => isInSection)).toHaveLength(2);
  });

  it('show braces and ties across in the section and not from the front', () => {
    const project = withHardware(tiedShed(), { tiePost: HARDWARE.tiePost, bracePost: lag });
    const across = marksOf(project).filter(({ lineId }) => lineId === null);
    expect(across.length).toBeGreaterThan(0);
    expect(across.every(({ isInSection }) => isInSection)).toBe(true);
  });

  it.each(EXAMPLES)('are drawn on both views of %s, and left out where the view is tiny', (name) => {
    const project = withHardware(soundProject(exampleText(name)), HARDWARE);
    const { shelter } = placed(project);
    const line = shelter.lines.find(({ kind }) => kind === 'frame')!;
    const hardware = marksOf(project);
    const strokes = (widthPx: number, marks: typeof hardware): readonly number[] => {
      const options = { paper: onScreen(widthPx, widthPx), showLength: showFeet, hardware: marks };
      return [frontPicture(shelter, line.id, options)!, sectionPicture(shelter, options)].map((p) => p.strokes.length);
    };
    const [large, largeBare] = [strokes(900, hardware), strokes(900, [])];
    for (const [i, count] of large.entries()) expect(count).toBeGreaterThan(largeBare[i]!);
    expect(strokes(140, hardware)).toEqual(strokes(140, []));
  });
});
