import type { PlaneGeometry, PurlinGeometry, RafterGeometry } from '../geometry/shelter.ts';
import type { Project } from '../project/model.ts';
import type { RafterRun } from './rafter-run.ts';
import { wholeWeight, type MemberWeights, type TwoWeights } from './weights.ts';

/**
 * Dead load of a plane per square foot of its own surface: covering layers (or a typed total), and purlins spread over
 * the plane unless the typed total holds them [psf].
 */
export function surfaceWeight(
  project: Project,
  plane: PlaneGeometry,
  purlins: readonly PurlinGeometry[],
  memberWeight: MemberWeights,
): TwoWeights {
  const { dead } = project.roofPlanes.find((p) => p.id === plane.id)!;
  const covering =
    dead.by === 'total'
      ? { heavy: dead.heavyPsf, light: dead.lightPsf }
      : { heavy: sum(dead.layers.map((l) => l.heavyPsf)), light: sum(dead.layers.map((l) => l.lightPsf)) };
  if (dead.by === 'total' && dead.includes.includes('purlins')) return covering;
  const slopeLengthIn = plane.runIn / Math.cos((plane.slopeDeg * Math.PI) / 180);
  const areaFt2 = (slopeLengthIn * (plane.toXIn - plane.fromXIn)) / 144;
  const weights = purlins
    .filter((p) => p.plane === plane.id)
    .map((p) => wholeWeight(memberWeight.of(p.id), p.toXIn - p.fromXIn));
  return {
    heavy: covering.heavy + sum(weights.map((w) => w.heavy)) / areaFt2,
    light: covering.light + sum(weights.map((w) => w.light)) / areaFt2,
  };
}

/** A rafter's own weight on each part of its run, plumb, per inch of slope [lb/in]; none where the typed total holds it. */
export function rafterOwnWeight(
  project: Project,
  rafter: RafterGeometry,
  run: RafterRun,
  memberWeight: MemberWeights,
): readonly TwoWeights[] {
  const { dead } = project.roofPlanes.find((p) => p.id === rafter.plane)!;
  const held = dead.by === 'total' && dead.includes.includes('rafters');
  const at = memberWeight.of(rafter.id);
  return run.parts.map((p) => {
    if (held) return { heavy: 0, light: 0 };
    const whole = wholeWeight((s) => at(p.fromIn + s), p.toIn - p.fromIn);
    return { heavy: whole.heavy / (p.toIn - p.fromIn), light: whole.light / (p.toIn - p.fromIn) };
  });
}

const sum = (values: readonly number[]): number => values.reduce((a, b) => a + b, 0);
