import { shortestStrip } from "../../cutting/index.js";
import type { FacingStock } from "../../design/index.js";
import type { ReviewInput } from "../../model/index.js";
import { type Length, Time } from "../../quantity/index.js";
import { facingPiece } from "./cut-plans.js";
import { kerfFor } from "./shop-allowances.js";

/** How much of one roll the facings take. */
export interface RollLength {
  /** The roll. */
  readonly stock: FacingStock;
  /** To pull off it, all facings of the case cut by straight cuts. */
  readonly length: Length;
  /** No plan takes less. */
  readonly atLeast: Length;
}

/** A fraction of a second for each roll; more seldom saves a hand's breadth. */
const patience = Time.of(0.2, "s");

/** For every laminate sold by the roll: the shortest length that gives all facings of the case. */
export function rollLengths(input: ReviewInput): readonly RollLength[] {
  const pieces = input.parts.facings.map(facingPiece);
  const { kerf } = kerfFor("sheets", input);
  return input.stock.facings
    .filter(
      ({ form, width }) =>
        form === "roll" && pieces.every((piece) => Math.min(piece.length, piece.width) <= width),
    )
    .map((stock) => {
      const strip = shortestStrip({ pieces, width: stock.width, kerf, timeLimit: patience });
      return { stock, length: strip.length, atLeast: strip.bound };
    });
}
