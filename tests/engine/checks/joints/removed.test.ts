import * as fc from 'fast-check';
import { expect, it } from 'vitest';
import { demandsOf } from '../../../../src/engine/checks/joints/joint-demands.ts';
import type { JointSetting } from '../../../../src/engine/checks/joints/joint-setting.ts';
import { jointsOf } from '../../../../src/engine/checks/joints/joints.ts';
import type { Evaluation } from '../../../../src/engine/evaluation.ts';
import type { Capacity, Project } from '../../../../src/engine/project/model.ts';
import { everythingGivenText, soundProject } from '../../../support/files.ts';
import { evaluated, PATIENCE_MS, runs } from '../../whole/whole.ts';

const project = soundProject(everythingGivenText());
const whole = evaluated(project);
const joints = jointsOf(project, whole.shelter);

/** The same shelter of which one joint has the capacity said, whatever all others have. */
const withOne = (joint: JointSetting, capacity: Capacity): Project => ({
  ...project,
  joints: {
    ...project.joints,
    own: [...project.joints.own.filter((own) => own.key !== joint.key), { key: joint.key, capacity }],
  },
});

/** Rules that the contact of two woods answers, or a shoulder cut into them: no hardware is asked. */
const BY_WOOD = /\.(seat|bearing|shoulder|shoulderShear|crushing)$/;

const notGivenIn = ({ checks }: Evaluation): readonly string[] =>
  checks.filter((c) => c.status === 'notGiven').map((c) => c.key);

/** Rows of a joint that its hardware answers; a beam that rolls is held by its tie too. */
function hardwareRows(joint: JointSetting, evaluation: Evaluation): readonly string[] {
  const rows = Object.values(demandsOf(joint, evaluation)).flatMap((d) => (d.asked ? [d.row] : []));
  const own = rows.filter((row) => !BY_WOOD.test(row.ruleId)).map((row) => row.key);
  // pressed on their seats, the halves of a splice hand the rest into the post: rows of those joints
  return joint.kind === 'beamSplice' ? own.filter((key) => key.startsWith('beam.splice')) : own;
}

it('the file that the joints are taken out of lacks nothing', () => {
  expect(notGivenIn(whole)).toEqual([]);
  expect(joints.length).toBeGreaterThan(50);
});

it(
  'a joint without its hardware turns exactly its own rows to not given',
  () => {
    fc.assert(
      fc.property(fc.constantFrom(...joints), (joint) => {
        const without = evaluated(withOne(joint, null));
        const rolling = notGivenIn(without).filter((key) => key.startsWith('beam.rolling/'));
        const expected = new Set([...hardwareRows(joint, without), ...rolling]);
        expect([joint.id, new Set(notGivenIn(without))]).toEqual([joint.id, expected]);
        expect(joint.kind === 'beamPost' || rolling.length === 0).toBe(true);
      }),
      { seed: 512, numRuns: runs(15, 200) },
    );
  },
  PATIENCE_MS,
);
