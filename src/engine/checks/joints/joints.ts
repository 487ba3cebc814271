import type { Shelter } from '../../geometry/shelter.ts';
import type { Project } from '../../project/model.ts';
import { frameJoints } from './frame-joints.ts';
import type { JointSetting } from './joint-setting.ts';
import { roofJoints } from './roof-joints.ts';

/** Every place of a shelter where two pieces meet, from the sheet to the piers. */
export const jointsOf = (project: Project, shelter: Shelter): readonly JointSetting[] => [
  ...roofJoints(project, shelter),
  ...frameJoints(shelter),
];
