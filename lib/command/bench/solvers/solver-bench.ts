/** Ours against the general-purpose solver: whole process against whole process, on the same cases. */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { showNumber } from "../../../quantity/index.js";
import { textTable } from "../../text-table.js";
import { type Answer, type Contest, contestsOf, generalAnswer, ourAnswer } from "./contests.js";
import { type Effort, effortFor, type MeshRun } from "./equal-accuracy.js";
import { hasGeneralSolver } from "./general-solver.js";

/** Meshes from coarse to fine: ours by the usual one, the general solver's by the size of elements in mm. */
const meshes = {
  panel: { ours: [0.2, 0.5, 1, 3], general: [50, 25, 12.5, 6.25] },
  box: { ours: [2, 1.4, 1, 0.7], general: [100, 50, 25, 12.5] },
} as const;
/** The mesh that is used when nobody says otherwise. */
const usual = 1;
/** Accuracies that both are asked for, as shares. */
const accuracies = [0.01, 0.003, 0.001, 0.0003] as const;
/** A run shorter than this is repeated, and the fastest counts, s. */
const short = 3;
const repeats = 5;

/** One mesh of one contest. */
interface Run extends MeshRun {
  /** How fine its mesh is, as the solver counts it. */
  readonly mesh: number;
  /** Processor time, s. */
  readonly processor: number;
}

/** Both solvers' meshes of one contest. */
interface Raced {
  /** What was solved. */
  readonly contest: Contest;
  /** Our runs, from rough to fine. */
  readonly ours: readonly Run[];
  /** The general solver's runs, from rough to fine. */
  readonly general: readonly Run[];
}

/**
 * Runs both solvers and tells what they took, as text.
 *
 * @param say is told of every contest that begins
 */
export async function solverBench(say: (line: string) => void): Promise<string> {
  if (!hasGeneralSolver())
    return "NOT MEASURED: ours against the general solver. Install calculix-ccx (Debian) and run again.";
  const raced: Raced[] = [];
  for (const contest of contestsOf(publicCases())) {
    say(`both solvers: ${contest.name}`);
    const { ours, general } = meshes[contest.kind];
    raced.push({
      contest,
      ours: await runsOf(contest, ours, ourAnswer),
      general: await runsOf(contest, general, generalAnswer),
    });
  }
  return [
    "Ours (casewright) and the general solver (ccx, one thread), each a process of its own from start to end.",
    "Panels: largest deflection; boxes: way of the force. Error against the published extrapolated value.",
    textTable(runHeader, raced.flatMap(runRows)),
    "At equal accuracy: how many times the time and memory of ours the general solver takes. < the coarsest mesh is " +
      "better already, ~ beyond the finest mesh, * closer than the published value itself is sure.",
    textTable(ratioHeader, raced.flatMap(ratioRows)),
  ].join("\n\n");
}

function publicCases(): readonly unknown[] {
  const file = join(
    import.meta.dirname,
    "..",
    "..",
    "..",
    "..",
    "..",
    "tests",
    "reference",
    "fe",
    "public-cases.json",
  );
  return (JSON.parse(readFileSync(file, "utf8")) as { readonly cases: readonly unknown[] }).cases;
}

async function runsOf(
  contest: Contest,
  sizes: readonly number[],
  answer: (contest: Contest, mesh: number) => Promise<Answer>,
): Promise<readonly Run[]> {
  const runs: Run[] = [];
  for (const mesh of sizes) {
    const answers = [await answer(contest, mesh)];
    while (answers.length < repeats && answers[0]!.cost.wall < short)
      answers.push(await answer(contest, mesh));
    const least = (of: (one: Answer) => number): number => Math.min(...answers.map(of));
    runs.push({
      mesh,
      error: Math.abs(answers[0]!.value / contest.expected - 1),
      time: least(({ cost }) => cost.wall),
      processor: least(({ cost }) => cost.processor),
      memory: Math.max(...answers.map(({ cost }) => cost.memory)),
    });
  }
  return runs;
}

const runHeader = ["case", "solver", "mesh", "error", "wall s", "processor s", "peak MiB"];

function runRows({ contest, ours, general }: Raced): readonly (readonly string[])[] {
  const row = (solver: string, mesh: string, run: Run): readonly string[] => [
    contest.name,
    solver,
    mesh,
    percent(run.error),
    showNumber(run.time, 3),
    showNumber(run.processor, 3),
    showNumber(run.memory, 3),
  ];
  return [
    ...ours.map((run) => row("ours", run.mesh === usual ? "usual" : `usual x ${run.mesh}`, run)),
    ...general.map((run) => row("ccx", `${run.mesh} mm`, run)),
  ];
}

const ratioHeader = ["case", "at", "ours s", "ccx s", "times as fast", "ours MiB", "ccx MiB", "memory"];

/** At the accuracies asked for, and at what ours reaches on its usual mesh. */
function ratioRows({ contest, ours, general }: Raced): readonly (readonly string[])[] {
  const own = ours.find(({ mesh }) => mesh === usual);
  const at = (error: number): string => `${percent(error)}${error < contest.unsure ? " *" : ""}`;
  return [
    ...accuracies.map((error) =>
      ratioRow(contest.name, at(error), effortFor(ours, error), effortFor(general, error)),
    ),
    ...(own
      ? [
          ratioRow(
            contest.name,
            `${at(own.error)}, usual mesh`,
            { ...own, sure: "" },
            effortFor(general, own.error),
          ),
        ]
      : []),
  ];
}

function ratioRow(name: string, at: string, ours?: Effort, general?: Effort): readonly string[] {
  if (!ours || !general) return [name, at, "not reached"];
  const sure = [ours, general].map(({ sure }) => ({ "": "", "at most": "<", about: "~" })[sure]);
  return [
    name,
    at,
    sure[0] + showNumber(ours.time, 3),
    sure[1] + showNumber(general.time, 3),
    showNumber(general.time / ours.time, 2),
    showNumber(ours.memory, 3),
    showNumber(general.memory, 3),
    showNumber(general.memory / ours.memory, 2),
  ];
}

function percent(share: number): string {
  return `${showNumber(100 * share, 2)} %`;
}
