import type { FrameModel } from './model.ts';

/** Larger side of the rectangle round all nodes, 1 for a single node: makes turns comparable with shifts [in]. */
export function frameSize(model: FrameModel): number {
  const span = (values: readonly number[]) => Math.max(...values) - Math.min(...values);
  return Math.max(span(model.nodes.map((n) => n.u)), span(model.nodes.map((n) => n.w))) || 1;
}
