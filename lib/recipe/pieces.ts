/** Every piece that is cut, with the short code that the cut list, the plans and the drawings share, and with its better face. */
import {
  type BarPart,
  type FacingPart,
  type PanelPart,
  type PanePart,
  type Parts,
  type StripPart,
  sheetPieces,
} from "../design/index.js";

/** A piece under its code: P1 for sheet, L1 for laminate, B1 for bars, S1 for strips, W1 for panes. */
export interface CodedPiece<Part> {
  /** The short code, P1 for instance. */
  readonly code: string;
  /** As the cut plans name it. */
  readonly name: string;
  /** The part of the case that the piece becomes. */
  readonly part: Part;
}

/** All pieces of a case. */
export interface CodedPieces {
  /** The pieces of sheet. */
  readonly panels: readonly CodedPiece<PanelPart>[];
  /** The pieces of laminate. */
  readonly facings: readonly CodedPiece<FacingPart>[];
  /** The pieces of extrusion. */
  readonly bars: readonly CodedPiece<BarPart>[];
  /** The panes. */
  readonly panes: readonly CodedPiece<PanePart>[];
  /** The pieces of wooden strip. */
  readonly strips: readonly CodedPiece<StripPart>[];
}

/** Gives every piece its code, in the order of the parts. */
export function codePieces(parts: Parts): CodedPieces {
  return {
    panels: coded("P", sheetPieces(parts), ({ id }) => id),
    facings: coded("L", parts.facings, ({ panel, side }) => `${panel}, ${side}`),
    bars: coded("B", parts.bars, ({ id }) => id),
    panes: coded("W", parts.panes, ({ id }) => id),
    strips: coded("S", parts.strips, ({ id }) => id),
  };
}

function coded<Part>(
  letter: string,
  parts: readonly Part[],
  nameOf: (part: Part) => string,
): CodedPiece<Part>[] {
  return parts.map((part, i) => ({ code: `${letter}${i + 1}`, name: nameOf(part), part }));
}

/** The code of a piece by its name in a cut plan; the name itself for a piece that is no part of the case. */
export function codeOf(pieces: readonly CodedPiece<unknown>[], name: string): string {
  return pieces.find((piece) => piece.name === name)?.code ?? name;
}

/** One sheet or bar out of all that are bought, numbered through the needs. */
export interface NumberedStock<Cut> {
  /** "Sheet 3". */
  readonly label: string;
  /** How it is cut up. */
  readonly cut: Cut;
}

/** Numbers every sheet or bar of a trade's plans. */
export function numberStock<Cut>(word: string, cuts: readonly Cut[]): readonly NumberedStock<Cut>[] {
  return cuts.map((cut, i) => ({ label: `${word}\u00a0${i + 1}`, cut }));
}

/** Where a piece comes from: "Sheet 2", or a dash for one that no plan has. */
export function sourceOf(
  stock: readonly NumberedStock<{ readonly pieces: readonly { readonly name: string }[] }>[],
  name: string,
): string {
  return stock.find(({ cut }) => cut.pieces.some((piece) => piece.name === name))?.label ?? "–";
}

/** Where the better veneer goes: out of the case, into it, up on a shelf, or wherever it falls. */
export type GoodFace = "out" | "in" | "up" | "either";

/** Common practice: the better veneer goes where it is seen. */
export function goodFaceOf({ role, facing }: Pick<PanelPart, "role" | "facing">): GoodFace {
  if (facing?.sides === "both") return "either";
  if (facing) return "in";
  return role === "shelf" ? "up" : "out";
}

/** Looks the good face of a piece up by its name in a cut plan. */
export function goodFaces(panels: readonly CodedPiece<PanelPart>[]): (name: string) => GoodFace | undefined {
  const faces = new Map(panels.map(({ name, part }) => [name, goodFaceOf(part)]));
  return (name) => faces.get(name);
}
