import { describe, expect, it } from 'vitest';
import { withWindDepartures } from '../../../src/engine/checks/wind-departures.ts';
import { evaluate } from '../../../src/engine/evaluate.ts';
import { message } from '../../../src/engine/message.ts';
import type { Project } from '../../../src/engine/project/model.ts';
import { exampleText, soundProject } from '../../support/files.ts';

const rowsOf = (project: Project) => {
  const answer = evaluate(project);
  if (!answer.ok) throw new Error(JSON.stringify(answer.faults));
  return answer.evaluation;
};
const demo = soundProject(exampleText('firewood-shed'));
/** A mean roof height typed in, 12 ft deep and 18 ft long: h/L beyond 1 both ways (ASCE 7-16 Fig. 27.3-4 note: 0.25 to 1). */
const tall: Project = {
  ...demo,
  instead: [{ what: 'meanRoofHeightFt', of: null, value: 20, why: 'a tall roof, for this test' }],
};

describe('coefficients beyond their figure', () => {
  it('leave every check that such wind governs judged, with the reason on its row and in the count', () => {
    const { checks, departures } = rowsOf(tall);
    const byWind = checks.filter(
      (c) => c.combinationId.includes('wind-') && (c.status === 'pass' || c.status === 'fail'),
    );
    expect(byWind.length).toBeGreaterThan(20);
    expect(byWind.filter((c) => c.reason === undefined)).toEqual([]);
    expect(byWind.some((c) => c.reason?.code === 'beyondFigureAcross')).toBe(true);
    expect(byWind.some((c) => c.reason?.code === 'beyondFigureAlong')).toBe(true);
    expect(departures).toBe(
      checks.filter((c) => c.status === 'pass' && c.capacity !== null && c.reason !== undefined).length,
    );
  });

  it('are not said of rows that no wind governs, nor of a roof inside the figure', () => {
    const said = (project: Project) =>
      rowsOf(project).checks.filter(
        (c) => c.reason?.code === 'beyondFigureAcross' || c.reason?.code === 'beyondFigureAlong',
      );
    expect(said(tall).filter((c) => !c.combinationId.includes('wind-'))).toEqual([]);
    expect(said(demo)).toEqual([]);
  });

  it('are those of a free roof where a canopy hangs on a wall, and each row that wind governs says so', () => {
    const leanTo = rowsOf(soundProject(exampleText('lean-to')));
    const said = leanTo.checks.filter((c) => c.reason?.code === 'attachedCanopy');
    expect(said.length).toBeGreaterThan(10);
    expect(said.filter((c) => !c.combinationId.includes('wind-'))).toEqual([]);
  });

  it('of a frame more solid than its table are said where wind on the main frame governs, not on components', () => {
    const { checks } = rowsOf(demo);
    const beyond = message('solidityOverTable', { solidity: 0.8, limit: 0.7 });
    const said = withWindDepartures(
      checks.filter((row) => row.reason === undefined),
      demo,
      { departures: [beyond] },
    ).filter((row) => row.reason?.code === 'solidityOverTable');
    expect(said.length).toBeGreaterThan(10);
    expect(said.filter((row) => !/wind-(0|180|along)-/.test(row.combinationId))).toEqual([]);
  });
});
