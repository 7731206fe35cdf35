import { costOfFills } from "./exact/cover.js";
import { proveCover } from "./exact/prove.js";
import type { Effort } from "./exact/search.js";
import type { Item } from "./rectangles/item.js";
import type { BoardStock, UsedBoard } from "./rectangles/least-boards.js";
import { SheetModel } from "./sheet-model.js";

/** Sheets found by the exact search, and what no others can beat. */
export interface ProvenBoards {
  /** Missing where the sheets in hand are not beaten. */
  readonly better?: readonly UsedBoard[];
  /** No sheets cost less. */
  readonly bound: number;
}

/** Sheets that are possible. */
export interface BoardsInHand {
  /** The cheapest of them. */
  readonly best: readonly UsedBoard[];
  /** More such, for their ways to fill a sheet. */
  readonly others: readonly (readonly UsedBoard[])[];
}

/** What the search may do before it gives up. */
export interface ProofEffort extends Effort {
  /** Sets of pieces to look at. */
  readonly sets: number;
}

/**
 * Weighs every way to fill a sheet by straight cuts against all others, starting from sheets in hand.
 *
 * @param stages changes of direction of the cuts
 */
export function proveBoards(
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
