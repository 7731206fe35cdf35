/** What comes out of an offcut, how much of a roll is taken, and whether a thinner blade saves a sheet. */
import { bestValueSheet, planSheets, shortestStrip } from "../../cutting/index.js";
import { type FacingStock, sheetPieces } from "../../design/index.js";
import { memoize } from "../../kept/index.js";
import type { ReviewInput } from "../../model/index.js";
import { Area, Length, mm, Time } from "../../quantity/index.js";
import { boughtOf, facingPiece, kerfFor, panelPiece, sheetJobs } from "./cut-plans.js";

/** An offcut at hand, or one somebody offers. */
export interface Offcut {
  /** Name of the sheet it is of. */
  readonly sheet: string;
  /** Along the face grain. */
  readonly length: Length;
  /** Across the face grain. */
  readonly width: Length;
}

/** What comes out of an offcut. */
export interface OffcutUse {
  /** Ids of the panels. */
  readonly panels: readonly string[];
  /** Of those panels. */
  readonly area: Area;
  /** No choice of panels has more. */
  readonly atMost: Area;
}

/** The search for the best use of an offcut ends after so long. */
const offcutEffort = Time.of(1, "s");

/**
 * The panels that use most of an offcut, their grain kept. Sizes are taken to the next whole millimetre, panels and
 * kerf upwards, the offcut downwards.
 */
export function offcutUse(input: ReviewInput, { sheet, length, width }: Offcut): OffcutUse {
  const up = (size: Length): Length => mm(Math.ceil(Length.in(size, "mm") - 1e-6));
  const down = (size: Length): Length => mm(Math.floor(Length.in(size, "mm") + 1e-6));
  const pieces = sheetPieces(input.parts)
    .filter((panel) => panel.sheet.name === sheet)
    .map(panelPiece)
    .map(({ name, length: along, width: across, count }) => {
      return { name, length: up(along), width: up(across), value: along * across, max: count };
    });
  const {
    pieces: cut,
    value,
    bound,
  } = bestValueSheet({
    length: down(length),
    width: down(width),
    kerf: up(kerfFor("sheets", input).kerf),
    pieces,
    effort: offcutEffort,
  });
  return { panels: cut.map(({ name }) => name).sort(), area: Area.si(value), atMost: Area.si(bound) };
}

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
const rollEffort = Time.of(0.2, "s");

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
      const strip = shortestStrip({ pieces, width: stock.width, kerf, effort: rollEffort });
      return { stock, length: strip.length, atLeast: strip.bound };
    });
}

/** Sheets bought of one stock at one kerf. */
export interface KerfRow {
  /** The name of the sheet. */
  readonly stock: string;
  /** Width of the cut. */
  readonly kerf: Length;
  /** How many sheets are bought. */
  readonly sheets: number;
}

/** Whether a thinner blade saves a sheet; each kerf is planned once a case. */
export function kerfSweep(input: ReviewInput, kerfs: readonly Length[]): readonly KerfRow[] {
  return kerfs.flatMap((kerf) => rowsAt(input, kerf));
}

const rowsAt = memoize((input: ReviewInput, kerf: Length): readonly KerfRow[] =>
  sheetJobs(input).map(({ stock, job }) => {
    const plan = planSheets({ ...job, kerf });
    return { stock: stock.name, kerf, sheets: boughtOf({ stock, plan }) };
  }),
);
