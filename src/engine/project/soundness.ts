import type { Fault } from '../message.ts';
import type { Project } from './model.ts';
import { braceFaults, tieFaults } from './soundness/braces-and-ties.ts';
import { hardwareFaults } from './soundness/hardware.ts';
import { heightFaults } from './soundness/heights.ts';
import { idFaults } from './soundness/ids.ts';
import { beamFaults, postFaults } from './soundness/line-members.ts';
import { logFaults } from './soundness/logs.ts';
import { logUseFaults } from './soundness/log-use.ts';
import { ownLoadFaults } from './soundness/own-loads.ts';
import { referenceFaults } from './soundness/references.ts';
import { planeFaults, purlinFaults, rafterFaults } from './soundness/roof.ts';
import { lateralFaults } from './soundness/sway.ts';
import { surroundingsFaults } from './soundness/surroundings.ts';
import { typedValueFaults } from './soundness/typed-values.ts';

const RULES: readonly ((project: Project) => readonly Fault[])[] = [
  idFaults,
  referenceFaults,
  heightFaults,
  planeFaults,
  rafterFaults,
  purlinFaults,
  logFaults,
  logUseFaults,
  beamFaults,
  postFaults,
  braceFaults,
  tieFaults,
  surroundingsFaults,
  lateralFaults,
  ownLoadFaults,
  hardwareFaults,
  typedValueFaults,
];

/**
 * What contradicts itself in a project of the right shape: every fault at once, each with its path and how to mend it.
 * What needs levels and lengths (a brace below its post's foot, a post's log too short) is geometry's to find.
 */
export const soundnessFaults = (project: Project): readonly Fault[] => RULES.flatMap((faults) => faults(project));
