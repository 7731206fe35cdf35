import type highs from "highs";
import { type BarJob, planBars } from "../../index.js";

type LoadSolver = typeof highs.default;

/**
 * The same bars as one plain integer program: bar j is bought or not, piece i is cut from bar j so many times.
 * Given to a general solver, for comparison only; nothing in the library uses it.
 *
 * @param patience s, after which the solver is stopped
 * @returns solves it and says what came of it
 * @throws Error when the solver, which only the bench needs, is not installed
 */
export async function plainBars(job: BarJob, patience: number): Promise<() => string> {
  const solver = await generalSolver();
  const model = modelOf(job);
  return () => {
    const { Status, ObjectiveValue } = solver.solve(model, { time_limit: patience });
    return `${Status}, ${Math.round(ObjectiveValue)} bars`;
  };
}

/**
 * Its types describe the CommonJS build; Node loads the ES module, whose default is the loader itself.
 *
 * @throws Error when it is not installed
 */
async function generalSolver(): Promise<Awaited<ReturnType<LoadSolver>>> {
  const found = await import("highs").catch((cause: unknown) => {
    throw new Error('bench: the solver "highs" is not installed; run "npm ci" in the whole project', {
      cause,
    });
  });
  return (found.default as unknown as LoadSolver)();
}

/** In the text format of linear programs. The bars of our own plan are as many as it may buy. */
function modelOf(job: BarJob): string {
  const [stock] = job.stock;
  const bars = [...Array(planBars(job).bars.length + 1).keys()];
  const pieces = [...job.pieces.entries()];
  const size = (length: number): number => Math.round((length + job.kerf) * 1e7) / 1e4;
  const room = size((stock?.length ?? 0) - 2 * (job.endTrim ?? 0));
  const counts = pieces.flatMap(([i]) => bars.map((j) => `x${i}_${j}`));
  return [
    "Minimize",
    ` obj: ${bars.map((j) => `y${j}`).join(" + ")}`,
    "Subject To",
    ...pieces.map(([i, { count }]) => ` d${i}: ${bars.map((j) => `x${i}_${j}`).join(" + ")} >= ${count}`),
    ...bars.map(
      (j) =>
        ` c${j}: ${pieces.map(([i, { length }]) => `${size(length)} x${i}_${j}`).join(" + ")} - ${room} y${j} <= 0`,
    ),
    "Bounds",
    ...bars.map((j) => ` 0 <= y${j} <= 1`),
    "General",
    ` ${[...counts, ...bars.map((j) => `y${j}`)].join(" ")}`,
    "End",
  ].join("\n");
}
