import { bestValueSheet } from "../../cutting/index.js";
import { sheetPieces } from "../../design/index.js";
import type { ReviewInput } from "../../model/index.js";
import { Area, Length, mm, Time } from "../../quantity/index.js";
import { panelPiece } from "./cut-plans.js";
import { kerfFor } from "./shop-allowances.js";

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

const patience = Time.of(1, "s");

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
    timeLimit: patience,
  });
  return { panels: cut.map(({ name }) => name).sort(), area: Area.si(value), atMost: Area.si(bound) };
}
