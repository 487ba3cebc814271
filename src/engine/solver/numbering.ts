/**
 * An order of the points of a graph in which neighbours stand close together: breadth first from a far-out point, the
 * less connected neighbours first, then turned round (reverse Cuthill-McKee). It keeps the stiffness matrix narrow.
 * Graphs in several pieces are ordered piece by piece.
 */
export function narrowOrder(neighbours: readonly (readonly number[])[]): number[] {
  const degree = neighbours.map((list) => list.length);
  const sorted = neighbours.map((list) => [...list].sort((a, b) => degree[a]! - degree[b]! || a - b));
  const levels = new Int32Array(neighbours.length);

  /** Points reached from `start`, nearest first; `levels` holds how far away each is. */
  const reach = (start: number): number[] => {
    levels.fill(-1);
    levels[start] = 0;
    const reached = [start];
    for (let i = 0; i < reached.length; i++) {
      const point = reached[i]!;
      for (const next of sorted[point]!) {
        if (levels[next]! >= 0) continue;
        levels[next] = levels[point]! + 1;
        reached.push(next);
      }
    }
    return reached;
  };
  const depthOf = (reached: readonly number[]) => levels[reached[reached.length - 1]!]!;

  /** Walk to the far end again and again until the way gets no longer. */
  const fromFarOut = (start: number): number[] => {
    let reached = reach(start);
    let depth = depthOf(reached);
    for (;;) {
      const farthest = reached.filter((point) => levels[point] === depth);
      const end = farthest.reduce((best, point) => (degree[point]! < degree[best]! ? point : best));
      const again = reach(end);
      if (depthOf(again) <= depth) return again;
      reached = again;
      depth = depthOf(again);
    }
  };

  const placed = new Uint8Array(neighbours.length);
  const order: number[] = [];
  for (let point = 0; point < neighbours.length; point++) {
    if (placed[point]) continue;
    for (const reached of fromFarOut(point)) {
      placed[reached] = 1;
      order.push(reached);
    }
  }
  return order.reverse();
}
