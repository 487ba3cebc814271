// @vitest-environment jsdom
import { screen } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { afterEach, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import type { Project } from '../../../src/engine/project/model.ts';
import { acts, present } from '../../../src/ui/state/use-workbench.ts';
import { valueAt } from '../../../src/ui/state/value-at.ts';
import { bringTheRest, closeFrame, exampleProject, linkHead, openFrame, pretendBrowser } from '../frame/page.tsx';

const at = (path: string): unknown => valueAt(present().project!, path);
const statusOf = (key: string): string | undefined => present().evaluation!.checks.find((c) => c.key === key)?.status;
const choose = (label: string, words: string): Promise<void> =>
  userEvent.setup().selectOptions(screen.getByRole('combobox', { name: label }), words);
const said = (): string => document.querySelector('.link-body')?.textContent ?? '';

/** The demo with logs that are long enough to stand in the ground as well. */
function withLongLogs(): Project {
  const demo = exampleProject('firewood-shed');
  return {
    ...demo,
    logs: demo.logs.map((log) => ({
      ...log,
      stations: log.stations.map((s, i) =>
        i === log.stations.length - 1 ? { ...s, fromButtIn: s.fromButtIn + 120 } : s,
      ),
    })),
  };
}

/** The same with no brace on any post. */
function withoutBraces(): Project {
  const project = withLongLogs();
  return { ...project, members: project.members.filter(({ role }) => role !== 'brace') };
}
const SHORT_PUSH = 'Soil against short pushes, of all posts in the ground';

async function openPier(project?: Project): Promise<void> {
  openFrame(project);
  await userEvent.setup().click(linkHead(/^pier/));
  await userEvent.setup().click(screen.getByRole('radio', { name: 'A1' }));
}

beforeAll(bringTheRest);
beforeEach(() => pretendBrowser());
afterEach(closeFrame);

describe('the pier of a post', () => {
  it('tells what one of many posts brings to it; of few that is told above', async () => {
    await openPier(exampleProject('gable'));
    const { lines, shelter } = present().evaluation!;
    const { id } = shelter.posts.find(({ label }) => label === 'A1')!;
    const { greatestDownLb } = lines.flatMap((line) => line.posts).find(({ postId }) => postId === id)!;
    expect(said()).toContain(
      `A1 presses down with ${Math.round(greatestDownLb).toLocaleString('en-US')} lb at the worst`,
    );
  });

  it('tells the concrete that it and all of them take', async () => {
    await openPier();
    expect(said()).not.toContain('presses down with');
    // 24 in across, 68 in long: pi x 5-2/3 ft3 = 17.802, in bags of 0.45 and 0.6 ft3; four of them 71.209
    expect(said()).toContain('It takes 17.80 ft³ of concrete, 40 bags of 60 lb or 30 bags of 80 lb of dry mix');
    expect(said()).toContain('all 4 together 71.21 ft³, 159 bags of 60 lb or 119 bags of 80 lb.');
  });

  it('asks what lies around it, and a bare earth fails a pier that is only 6 in high', async () => {
    await openPier();
    expect(statusOf('post.clearance/post-1/whole')).toBe('pass');
    await choose('Pier of A1: earth around it', 'bare');
    expect(at('groups[posts].foot.earthCovered')).toBe(false);
    expect(statusOf('post.clearance/post-1/whole')).toBe('fail');
    await choose('Pier of A1: earth around it', 'as nobody has said yet');
    expect(at('groups[posts].foot.earthCovered')).toBeUndefined();
    expect(statusOf('post.clearance/post-1/whole')).toBe('notGiven');
  });

  it('takes every value of a class of soil at once, marked as presumed', async () => {
    await openPier();
    await choose("What the ground is, by the code's classes", 'sand, silty or clayey sand, silty or clayey gravel');
    expect(at('site.soil.bearingPsf.value')).toBe(2000);
    expect(at('site.soil.lateralPsfPerFt.value')).toBe(150);
    expect(at('site.soil.friction')).toEqual({
      value: 0.25,
      givenBy: 'owner',
      date: null,
      from: 'presumptive value of the code',
    });
    await choose(
      "What the ground is, by the code's classes",
      'clay, sandy clay, silty clay, clayey silt, silt, sandy silt',
    );
    expect([at('site.soil.friction'), at('site.soil.cohesionPsf.value')]).toEqual([undefined, 130]);
    acts().undo();
    expect(at('site.soil.friction.value')).toBe(0.25);
  });

  it('changes into a post in the ground, which asks for its treatment, and back', async () => {
    await openPier(withLongLogs());
    await choose('What A1 stands on', 'in the ground');
    expect(statusOf('pier.treatment/post-1/whole')).toBe('outside');
    expect(said()).toContain('for use category');
    await choose('Foot of A1: filled with', 'gravel, tamped in layers of 8 in');
    expect(said()).not.toContain('of concrete, ');
    await userEvent.setup().click(screen.getByRole('button', { name: 'give it a pad' }));
    expect(at('groups[posts].foot.pad')).toEqual({ acrossIn: 24, thickIn: 8 });
    // braces lean on this post all the time: the doubled value of the soil (IBC 1806.3.4, from memory) is not offered
    expect(screen.queryByRole('combobox', { name: SHORT_PUSH })).toBeNull();
    await choose('What A1 stands on', 'on a pier');
    expect(at('groups[posts].foot.kind')).toBe('pier');
    expect(statusOf('post.standOff/post-1/whole')).toBe('pass');
  });

  it('[pier.embedded] offers twice the soil against short pushes where half an inch at the ground does no harm', async () => {
    await openPier(withoutBraces());
    expect(screen.queryByRole('combobox', { name: SHORT_PUSH })).toBeNull();
    await choose('What A1 stands on', 'in the ground');
    expect(said()).toContain('That the posts may move by 1/2 in at the ground in wind or an earthquake');
    expect(at('calculation.doubledLateralSoil')).toBe(false);
    expect(said()).toContain('the soil holds sideways as it does always');
    await choose(SHORT_PUSH, 'does no harm');
    expect(at('calculation.doubledLateralSoil')).toBe(true);
    expect(said()).toContain('the soil then holds twice as much sideways');
  });
});
