/** Which cuts a box may begin with, where cuts change direction only so often. */
import type { CutDirection } from "./cut-tree.js";

/** Boxes of one kind: those that begin with cuts of these directions, or are taken over from below. */
export interface CutLevel {
  readonly directions: readonly CutDirection[];
  /** Index of the level whose boxes need no cut of these directions. */
  readonly below?: number;
}

/** One level where cuts may turn as they like; two a stage otherwise, one for each first direction. */
export function cutLevels(stages: number): readonly CutLevel[] {
  if (!Number.isFinite(stages)) return [{ directions: ["along", "across"] }];
  return Array.from({ length: 2 * stages }, (_, i): CutLevel => {
    const directions = [i % 2 === 0 ? "along" : "across"] as const;
    return i < 2 ? { directions } : { directions, below: i % 2 === 0 ? i - 1 : i - 3 };
  });
}

/** The levels that use all stages. */
export function topLevels(levels: readonly CutLevel[]): readonly number[] {
  return [...levels.keys()].slice(-2);
}
