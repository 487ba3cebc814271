import { describe, expect, it } from 'vitest';
import { evaluate } from '../../../src/engine/evaluate.ts';
import type { Evaluation } from '../../../src/engine/evaluation.ts';
import type { Log, Project } from '../../../src/engine/project/model.ts';
import { onSheet } from '../../../src/ui/drawing/paper.ts';
import { lineDetailsOf } from '../../../src/ui/frame/line-details.ts';
import { clearLengths } from '../../../src/ui/sheet/clear-spans.ts';
import { SHEET_PAPERS } from '../../../src/ui/sheet/page-format.ts';
import { planSheet } from '../../../src/ui/sheet/plan-sheet.ts';
import { greatestOf, snowPicture, unevenSnowCases } from '../../../src/ui/sheet/snow-cases.ts';
import { exampleText, soundProject, type Example } from '../../support/files.ts';

function evaluated(project: Project): Evaluation {
  const answer = evaluate(project);
  if (!answer.ok) throw new Error(JSON.stringify(answer.faults));
  return answer.evaluation;
}
const planOf = (name: Example) => {
  const project = soundProject(exampleText(name));
  return planSheet(project, evaluated(project), SHEET_PAPERS.letter, 'feet');
};

describe('clear lengths', () => {
  it('are the distance of the axes less half the thickness of each post, between its two ends', () => {
    const project = soundProject(exampleText('undersized-shed'));
    const { shelter } = evaluated(project);
    const line = shelter.lines[0]!;
    const [left, right] = line.postIds.map((id) => shelter.posts.find((p) => p.id === id)!);
    const shown: number[] = [];
    clearLengths(shelter, line.id, (inches) => {
      shown.push(inches);
      return '';
    });
    const axes = right!.xIn - left!.xIn;
    const thickest = (log: Log): number => Math.max(...log.stations.map((s) => s.diameterIn));
    const thinnest = (log: Log): number => Math.min(...log.stations.map((s) => s.diameterIn));
    const logs = project.logs.filter((log) => log.stations.some((s) => s.diameterIn <= 7));
    expect(shown).toHaveLength(1);
    expect(shown[0]!).toBeGreaterThanOrEqual(axes - Math.max(...logs.map(thickest)));
    expect(shown[0]!).toBeLessThanOrEqual(axes - Math.min(...logs.map(thinnest)));
  });

  it('stand under the drawing of their line with what holds it, the axes under the plan', () => {
    const [front, section, plan] = planOf('undersized-shed').drawings.flat();
    expect(front?.says.join(' ')).toMatch(/^Held along: knee braces\. Clear 17' 6 .*"\.$/);
    expect(section?.says.join(' ')).toBe('Held across: not given.');
    expect(plan?.says.join(' ')).toContain('Between axes (working points)');
  });
});

describe('snow that a higher roof brings', () => {
  it('is drawn as two cases, with the pressures of the engine written on them', () => {
    const project = soundProject(exampleText('snow-lean-to'));
    const { shelter, loads } = evaluated(project);
    const cases = unevenSnowCases(project);
    expect(cases.map(({ name }) => name)).toEqual(['Drift at the higher roof', 'Snow slid off above']);
    const pressure = (name: string): number => loads.pressures.find((p) => p.name === name)!.value!;
    const pictures = cases.map(({ name, picture }) =>
      snowPicture(picture, shelter, {
        paper: onSheet(144, 80),
        system: 'feet',
        details: lineDetailsOf(project),
        title: name,
        description: name,
        greatestPsf: greatestOf(cases.map((c) => c.picture)),
      }),
    );
    const written = pictures.map(({ texts }) => texts.map(({ text }) => text));
    // the drift lies on the balanced snow, highest at the wall (ASCE/SEI 7-16 7.7.1)
    expect(written[0]).toContain(`${(pressure('balancedSnow') + pressure('snowDrift')).toFixed(1)} psf`);
    expect(written[1]).toContain(`${(pressure('balancedSnow') + pressure('snowSliding')).toFixed(1)} psf`);
    for (const { view } of pictures) expect(view.height).toBeLessThanOrEqual(80);
  });

  it('is not drawn where nothing stands beside the shelter, and its place is given to words', () => {
    const alone = planOf('gable');
    expect(alone.snow.cases).toEqual([]);
    expect(alone.sideTexts.map(({ caption }) => caption)).toEqual(['What holds it sideways.', 'Not covered.']);
    const beside = planOf('snow-lean-to');
    expect(beside.snow.cases).toHaveLength(2);
    expect(beside.sideTexts).toEqual([]);
    expect(beside.footTexts.map(({ caption }) => caption)).toEqual([
      'What holds it sideways.',
      'Not covered.',
      'Assumed.',
      'Cautions.',
    ]);
  });
});
