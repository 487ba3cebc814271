import { describe, expect, it } from 'vitest';
import {
  pullAndBendingOf,
  pushAndBendingOf,
  type BentPost,
} from '../../../../src/engine/checks/post/push-and-bending.ts';
import { redoFaults } from '../redo-step.ts';
import type { ColumnPlane } from '../../../../src/engine/checks/post/column.ts';
import type { RoundStick, SawnStick } from '../../../../src/engine/geometry/shelter.ts';
import { sawnValues } from '../../../../src/engine/material/sawn-values.ts';
import { message } from '../../../../src/engine/message.ts';
import { off } from '../../whole/whole.ts';

const LENGTH_IN = 120;
const plane = (direction: 'along' | 'across', FcEPsi: number): ColumnPlane => ({
  direction,
  length: { lengthIn: LENGTH_IN, Ke: 1, reason: message('effectiveLengthTyped'), ends: 'general' },
  areaIn2: 40,
  sideIn: 6,
  FcEPsi,
  c: 0.8,
  tell: () => undefined,
});
const planes = [plane('along', 1500), plane('across', 900)];

const sawn = (breadthIn: number, depthIn: number): SawnStick => ({
  kind: 'sawn',
  breadthIn,
  depthIn,
  lay: 'edge',
  plies: 1,
  species: 'Western larch',
  grade: null,
  use: 'wet',
});
const valuesOf = (stick: SawnStick) => {
  const answer = sawnValues(stick);
  if (!answer.ok) throw new Error(answer.reason.code);
  return answer.values;
};
const bent: BentPost = {
  fcPsi: 120,
  FcAllowablePsi: 700,
  euler: { alongPsi: 1500, acrossPsi: 900 },
  alongLbIn: -9000,
  acrossLbIn: 4000,
  modulusIn3: 5.5 * (7.5 ** 2 / 6),
  acrossModulusIn3: 7.5 * (5.5 ** 2 / 6),
  CD: 1.6,
};

describe('push and bending of a post', () => {
  it('[post.bending] of a sawn post: NDS 3.9.2 in both planes, the moment across on its own modulus', () => {
    const stick = sawn(5.5, 7.5);
    const values = valuesOf(stick);
    const Fb = values.FbPsi * 1.6;
    const fb1 = 9000 / ((5.5 * 7.5 ** 2) / 6);
    const fb2 = 4000 / ((7.5 * 5.5 ** 2) / 6);
    // Table 3.3.3, last line: lu / d = 120 / 7.5 = 16: le = 1.84 lu; RB2 = le d / b2
    const FbE = (1.2 * values.EminPsi) / ((1.84 * 120 * 7.5) / 5.5 ** 2);
    const a = FbE / Fb;
    const CL = (1 + a) / 1.9 - Math.sqrt(((1 + a) / 1.9) ** 2 - a / 0.95);
    const sum = (120 / 700) ** 2 + fb1 / (Fb * CL * (1 - 120 / 1500)) + fb2 / (Fb * (1 - 120 / 900 - (fb1 / FbE) ** 2));
    expect(off(pushAndBendingOf(stick, planes, values)(bent), sum)).toBeLessThan(1e-9);
  });

  it('[post.bending] of a sawn post that lies the other way: strong axis across', () => {
    const stick = sawn(7.5, 5.5);
    const values = valuesOf(stick);
    const turned = valuesOf(sawn(5.5, 7.5));
    const first = pushAndBendingOf(
      stick,
      planes,
      values,
    )({
      ...bent,
      modulusIn3: bent.acrossModulusIn3,
      acrossModulusIn3: bent.modulusIn3,
    });
    const swapped = pushAndBendingOf(
      sawn(5.5, 7.5),
      [planes[1]!, planes[0]!],
      turned,
    )({
      ...bent,
      euler: { alongPsi: 900, acrossPsi: 1500 },
      alongLbIn: bent.acrossLbIn,
      acrossLbIn: bent.alongLbIn,
    });
    expect(off(first, swapped)).toBeLessThan(1e-12);
  });

  it('[post.bending] of a round post: the resultant moment and the smaller Euler stress', () => {
    const round: RoundStick = { kind: 'round', logId: 'l', woodId: 'w', profile: [], buttAt: 'start', flatIn: 0 };
    const values = valuesOf(sawn(5.5, 7.5));
    const fb = Math.hypot(9000, 4000) / 60;
    const sum = (120 / 700) ** 2 + fb / (values.FbPsi * 1.6 * (1 - 120 / 900));
    expect(off(pushAndBendingOf(round, planes, values)({ ...bent, modulusIn3: 60 }), sum)).toBeLessThan(1e-12);
  });
});

describe('pull and bending of a post', () => {
  const pulled = { ...bent, ftPsi: 150 };

  // NDS 3.9.1, equation 3.9-1; the stresses of two planes add up in a corner of a rectangle
  it('[post.tension] of a sawn post adds the stresses of both planes in one corner', () => {
    const stick = sawn(5.5, 7.5);
    const values = valuesOf(stick);
    const fb = 9000 / ((5.5 * 7.5 ** 2) / 6) + 4000 / ((7.5 * 5.5 ** 2) / 6);
    const sum = 150 / (values.FtPsi * 1.6) + fb / (values.FbPsi * 1.6);
    expect(off(pullAndBendingOf(stick, values)(pulled), sum)).toBeLessThan(1e-9);
    expect(redoFaults((note) => pullAndBendingOf(stick, values)(pulled, note))).toEqual([]);
  });
});
