/** What a solver takes for an accuracy, between and beyond the meshes it was run on. */

/** One mesh: how far off its answer was, and what it took. */
export interface MeshRun {
  /** As a share of the right answer. */
  readonly error: number;
  /** s */
  readonly time: number;
  /** MiB */
  readonly memory: number;
}

/** What an accuracy takes. */
export interface Effort {
  /** In s. */
  readonly time: number;
  /** In MiB. */
  readonly memory: number;
  /** "at most": already the coarsest mesh is better; "about": no mesh was so fine. */
  readonly sure: "" | "at most" | "about";
}

/**
 * Effort for an accuracy, on straight lines of logarithms between meshes that get better; beyond the finest, along
 * the last two.
 *
 * @param runs of one solver on one case
 * @param error the accuracy, as a share
 * @returns undefined when the meshes do not get better
 */
export function effortFor(runs: readonly MeshRun[], error: number): Effort | undefined {
  const better = improving(runs);
  const [coarsest] = better;
  if (!coarsest) return undefined;
  if (coarsest.error <= error) return { time: coarsest.time, memory: coarsest.memory, sure: "at most" };
  const next = better.findIndex((run) => run.error <= error);
  const fine = next < 0 ? better.length - 1 : next;
  const [from, to] = [better[fine - 1], better[fine]];
  if (!from || !to) return undefined;
  const share = Math.log(error / from.error) / Math.log(to.error / from.error);
  const between = (a: number, b: number): number => a * (b / a) ** share;
  return {
    time: between(from.time, to.time),
    memory: between(from.memory, to.memory),
    sure: next < 0 ? "about" : "",
  };
}

/** From the cheapest mesh on, those better than all cheaper ones. */
function improving(runs: readonly MeshRun[]): readonly MeshRun[] {
  const kept: MeshRun[] = [];
  for (const run of [...runs].sort((a, b) => a.time - b.time))
    if (kept.every(({ error }) => run.error < error)) kept.push(run);
  return kept;
}

/**
 * The power of the unknowns with which a cost grows: slope of the straight line through the logarithms.
 *
 * @param points at least two
 */
export function growthPower(points: readonly (readonly [unknowns: number, cost: number])[]): number {
  const logs = points.map(([x, y]) => [Math.log(x), Math.log(y)] as const);
  const mean = (axis: 0 | 1): number => logs.reduce((sum, point) => sum + point[axis], 0) / logs.length;
  const [meanX, meanY] = [mean(0), mean(1)];
  const [both, own] = logs.reduce(
    ([xy, xx], [x, y]) => [xy + (x - meanX) * (y - meanY), xx + (x - meanX) ** 2],
    [0, 0],
  );
  return both / own;
}
