/** The cheapest sheets for a job, and what no others can beat: quick fillings, then proof, then fillings again. */

import { costOfFills, type Effort } from "./exact/cover.js";
import { proveCover } from "./exact/prove.js";
import type { Patience } from "./patience.js";
import type { Item } from "./rectangles/item.js";
import {
  type BoardRules,
  type BoardStock,
  costOfBoards,
  type LeastBoards,
  leastBoards,
  type UsedBoard,
} from "./rectangles/least-boards.js";
import { SheetModel } from "./sheet-model.js";

/** What is to be laid on what, and how. */
export interface BoardsJob {
  /** Every single piece. */ readonly items: readonly Item[];
  /** The cheapest first. */ readonly boards: readonly BoardStock[];
  /** What the saw can do. */ readonly rules: BoardRules;
}

/** Sheets in hand and their bound. */
export interface SearchedBoards {
  /** With their pieces. */ readonly used: readonly UsedBoard[];
  /** No plan costs less. */ readonly bound: number;
  /** How they were found, in words. */ readonly method: string;
}

/** How long to look. */
export interface SearchLimits {
  /** A cost no plan can beat, known beforehand. */ readonly goal: number;
  /** After which no step is begun. */ readonly patience: Patience;
  /** Fillings to try after the proof. */ readonly rounds: number;
  /** Sets of pieces to look at in the proof. */ readonly sets: number;
}

/** Told of the sheets in hand when they are better than those before. */
export type ReportBoards = (cost: number, count: number, bound: number) => void;

/** Fillings to try before a proof is begun, and after the bound is met for the sake of a larger offcut. */
const quickRounds = 400;
const extra = 400;
/** Relaxations to solve before a proof is given up, and its share of the time. */
const steps = 3000;
const provingShare = 0.9;

/** Searches until the bound is met or the effort is spent. Nothing where there are too few sheets. */
export function searchBoards(
  job: BoardsJob,
  limits: SearchLimits,
  report: ReportBoards,
): SearchedBoards | undefined {
  const tried: (readonly UsedBoard[])[] = [];
  const first = fill(job, limits, { rounds: quickRounds, goal: limits.goal }, report, (used) =>
    tried.push(used),
  );
  if (!first || meets(first.worth.cost, limits.goal)) return first && filled(first, limits.goal);
  const best = proven(job, limits, first, tried);
  const cost = costOfBoards(best.used, job.boards);
  if (cost < first.worth.cost) report(cost, best.used.length, best.bound);
  if (meets(cost, best.bound)) return best;
  const again = fill(job, limits, { rounds: limits.rounds, goal: best.bound }, report);
  return again && again.worth.cost < cost - 1e-9 ? filled(again, best.bound) : best;
}

function fill(
  { items, boards, rules }: BoardsJob,
  { patience }: SearchLimits,
  { rounds, goal }: Pick<SearchLimits, "rounds" | "goal">,
  report: ReportBoards,
  onFilled?: (used: readonly UsedBoard[]) => void,
): LeastBoards | undefined {
  const effort = { rounds, extra, goal, patience };
  return leastBoards(items, boards, rules, effort, ({ cost, count }) => report(cost, count, goal), onFilled);
}

/** The sheets in hand or better ones, with the bound of the exact search; cuts of any shape have none. */
function proven(
  { items, boards, rules }: BoardsJob,
  { goal, patience, sets }: SearchLimits,
  first: LeastBoards,
  tried: readonly (readonly UsedBoard[])[],
): SearchedBoards {
  if (rules.cuts === "any shape") return filled(first, goal);
  const effort = { steps, sets, patience: patience.share(provingShare) };
  const proof = proveBoards(items, boards, rules.cuts, { best: first.used, others: tried }, effort);
  const bound = Math.max(goal, proof.bound);
  if (!proof.better) return filled(first, bound);
  return { used: proof.better, bound, method: "column generation and a search over ways to cut a sheet" };
}

function filled({ used, rounds }: LeastBoards, bound: number): SearchedBoards {
  return { used, bound, method: `filled in many orders and by several rules; this plan is number ${rounds}` };
}

function meets(cost: number, bound: number): boolean {
  return cost <= bound + 1e-9 * Math.max(1, bound);
}

/** Sheets found by the exact search, and what no others can beat. */
interface ProvenBoards {
  /** Missing where the sheets in hand are not beaten. */ readonly better?: readonly UsedBoard[];
  /** No sheets cost less. */ readonly bound: number;
}

/** Sheets that are possible. */
interface BoardsInHand {
  /** The cheapest of them. */ readonly best: readonly UsedBoard[];
  /** More such, for their ways to fill a sheet. */
  readonly others: readonly (readonly UsedBoard[])[];
}

/** What the search may do before it gives up. */
interface ProofEffort extends Effort {
  /** Sets of pieces to look at. */ readonly sets: number;
}

/**
 * Weighs every way to fill a sheet by straight cuts against all others, starting from sheets in hand.
 *
 * @param stages changes of direction of the cuts
 */
function proveBoards(
  items: readonly Item[],
  boards: readonly BoardStock[],
  stages: number,
  { best, others }: BoardsInHand,
  effort: ProofEffort,
): ProvenBoards {
  const model = new SheetModel(items, boards, stages, effort);
  const fills = model.fillsOf(best);
  const pool = others.flatMap((used) => model.fillsOf(used));
  const proof = proveCover(model.fills, model.all, fills, effort, pool);
  const better = costOfFills(model.fills, proof.fills) < costOfFills(model.fills, fills);
  return { bound: proof.bound * model.unit, ...(better ? { better: model.boardsOf(proof.fills) } : {}) };
}
