import type { PulledKind } from '../../../data/fasteners/kind.ts';
import { remembered } from '../../../data/sources.ts';
import { MisuseError, notNegative, positive } from '../../errors.ts';
import { put, type Note } from '../../note.ts';
import { degreesFromRadians, quantity, radiansFromDegrees } from '../../units.ts';

/** Along the shank and square to it [lb]. */
export interface PullAndPush {
  readonly pullLb: number;
  readonly pushLb: number;
}

const THREADED = remembered('NDS', '12.4.1');
const PLAIN = remembered('NDS', '12.4.2');

/**
 * What one driven fastener carries of a force at an angle to the surface of the wood.
 * A bolt has no such rule: its washers and its steel are asked instead.
 * @param carries W'p and Z', every factor in [lb]
 * @param angleDeg between the force and the surface, 0 to 90 [deg]: 0 pushes sideways, 90 pulls
 * @returns Zα' [lb]
 * @throws MisuseError if a capacity is not above zero or the angle not from 0 to 90
 * @source NDS 12.4.1, equation 12.4-1 (lag and wood screws); 12.4.2, equation 12.4-2 (nails and spikes), from memory
 */
export function combinedResistance(kind: PulledKind, carries: PullAndPush, angleDeg: number, note?: Note): number {
  const W = positive('pullLb', carries.pullLb);
  const Z = positive('pushLb', carries.pushLb);
  if (notNegative('angleDeg', angleDeg) > 90) throw new MisuseError('angleDeg', angleDeg, 'an angle from 0 to 90');
  const isThreaded = kind === 'lag' || kind === 'screw';
  const power = isThreaded ? 2 : 1;
  // at 90 degrees the cosine of a float is not quite zero, which would not matter, but never below it either
  const cos = Math.max(0, Math.cos(radiansFromDegrees(angleDeg)));
  const sin = Math.sin(radiansFromDegrees(angleDeg));
  const allowed = (W * Z) / (W * cos ** power + Z * sin ** power);
  note?.({
    symbol: "Zα'",
    words: 'what it carries pulled and pushed sideways at once',
    formula: `W'p × Z' / (W'p × cos(α)^${power} + Z' × sin(α)^${power})`,
    put: [
      put("W'p", W, 'lb', 'against pull alone'),
      put("Z'", Z, 'lb', 'sideways alone'),
      put('α', angleDeg, 'deg', 'between the force and the surface of the wood'),
    ],
    result: quantity(allowed, 'lb'),
    clause: isThreaded ? THREADED : PLAIN,
  });
  return allowed;
}

/**
 * Share that a pull and a push at once take of what one driven fastener carries; above 1 it carries too little.
 * @param asked pull and push on it [lb]
 * @param carries W'p and Z', every factor in [lb]
 * @returns force over Zα'; 0 where nothing is asked
 * @throws MisuseError if a force is below zero or a capacity not above it
 * @source NDS 12.4 (from memory)
 */
export function shareOfCombined(kind: PulledKind, asked: PullAndPush, carries: PullAndPush, note?: Note): number {
  const pull = notNegative('pullLb', asked.pullLb);
  const push = notNegative('pushLb', asked.pushLb);
  if (pull === 0 && push === 0) return 0;
  const R = Math.hypot(pull, push);
  const angleDeg = degreesFromRadians(Math.atan2(pull, push));
  const allowed = combinedResistance(kind, carries, angleDeg, note);
  const share = R / allowed;
  note?.({
    symbol: "R / Zα'",
    words: 'share of what it carries',
    formula: "sqrt(N^2 + V^2) / Zα'",
    put: [
      put('N', pull, 'lb', 'pull along it'),
      put('V', push, 'lb', 'push square to it'),
      put("Zα'", allowed, 'lb', 'pulled and pushed at once'),
    ],
    result: quantity(share, '1'),
    clause: kind === 'lag' || kind === 'screw' ? THREADED : PLAIN,
  });
  return share;
}
