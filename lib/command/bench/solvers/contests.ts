/** Cases that both solvers run: what is right, and how each is run on a mesh. */
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { type BoxCase, boxCase } from "../../reference/fe/box-file.js";
import { type PanelCase, panelCase } from "../../reference/fe/case-file.js";
import { type BoxLoading, boxDeck, isStraightBox } from "./box-deck.js";
import type { Deck } from "./deck.js";
import {
  type GeneralAnswer,
  largestAcross,
  type ProcessCost,
  runGeneralSolver,
  runProcess,
  workWayOf,
} from "./general-solver.js";
import { oneFile } from "./one-file.js";
import { isStraight, panelDeck } from "./panel-deck.js";

/** A displacement and what it took. */
export interface Answer {
  /** mm */
  readonly value: number;
  /** What the process took. */
  readonly cost: ProcessCost;
}

/** One case under one load. */
export interface Contest {
  /** Name of the case. */
  readonly name: string;
  /** A panel alone, or a box. */
  readonly kind: "panel" | "box";
  /** Extrapolated value of the published case, mm, and how unsure it is, as a share. */
  readonly expected: number;
  /** How unsure the expected value is, as a share. */
  readonly unsure: number;
  /** The case as it came: ours reads it in a process of its own. */
  readonly found: unknown;
  /** What ours is told: panel, racking or twist. */
  readonly loading: string;
  /** Input of the general solver on elements of a size, mm. */
  readonly deck: (size: number) => Deck;
  /** The displacement in the general solver's answer, mm. */
  readonly valueOf: (deck: Deck, answer: GeneralAnswer) => number;
}

/** Contests for all cases of a file that can be cut in straight rows. */
export function contestsOf(cases: readonly unknown[]): readonly Contest[] {
  return cases.flatMap((found) =>
    (found as { readonly kind: string }).kind === "panel"
      ? panelContest(panelCase.parse(found))
      : boxContests(boxCase.parse(found)),
  );
}

function panelContest(found: PanelCase): Contest[] {
  if (!isStraight(found)) return [];
  return [
    {
      name: found.id,
      kind: "panel",
      ...expectedOf(found.expected.mindlin.wmax),
      found,
      loading: "panel",
      deck: (size) => panelDeck(found, size),
      valueOf: (_, { displacements }) => largestAcross(displacements),
    },
  ];
}

/** The force whose way is asked for, N. */
const forces: Readonly<Record<BoxLoading, number>> = { racking: 500, twist: 200 };

function boxContests(found: BoxCase): Contest[] {
  if (!isStraightBox(found)) return [];
  return (["racking", "twist"] as const).map((loading) => ({
    name: `${found.id} ${loading}`,
    kind: "box",
    ...expectedOf(found.expected.mindlin[loading]?.work_displacement),
    found,
    loading,
    deck: (size) => boxDeck(found, loading, size),
    valueOf: (deck, { displacements }) => workWayOf(deck, displacements, forces[loading]),
  }));
}

function expectedOf(value: unknown): Pick<Contest, "expected" | "unsure"> {
  const { value: expected, u } = value as { readonly value: number; readonly u: number };
  return { expected, unsure: u / expected };
}

/** Our own script that solves one case, as one file; made once. */
let script: Promise<string> | undefined;

/** Ours in a process of its own; mesh multiplies the usual element target of a panel, or the usual size in a box. */
export async function ourAnswer({ found, loading }: Contest, mesh: number): Promise<Answer> {
  script ??= oneFile(join(import.meta.dirname, "solve-case.js"));
  const folder = mkdtempSync(join(tmpdir(), "casewright-bench-"));
  try {
    writeFileSync(join(folder, "solve.cjs"), await script);
    writeFileSync(join(folder, "case.json"), JSON.stringify(found));
    const args = ["solve.cjs", "case.json", loading, String(mesh)];
    const cost = await runProcess(process.execPath, args, folder);
    return { value: Number(cost.output), cost };
  } finally {
    rmSync(folder, { recursive: true });
  }
}

/** The general solver's on elements of a size, mm. */
export async function generalAnswer(contest: Contest, size: number): Promise<Answer> {
  const deck = contest.deck(size);
  const answer = await runGeneralSolver(deck);
  return { value: contest.valueOf(deck, answer), cost: answer.cost };
}
