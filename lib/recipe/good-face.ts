/** Which face of a sheet piece is the better one, and where it goes. */
import type { PanelPart } from "../design/index.js";
import type { CodedPiece } from "./pieces.js";

/** Where the better veneer goes: out of the case, into it, up on a shelf, or wherever it falls. */
export type GoodFace = "out" | "in" | "up" | "either";

/** Common practice: the better veneer goes where it is seen. */
export function goodFaceOf({ role, facing }: Pick<PanelPart, "role" | "facing">): GoodFace {
  if (facing?.sides === "both") return "either";
  if (facing) return "in";
  return role === "shelf" ? "up" : "out";
}

/** The same with its reason, for a list. */
export const goodFaceWords: Readonly<Record<GoodFace, string>> = {
  either: "either, both get laminate",
  in: "inside, the outside gets laminate",
  up: "up",
  out: "outside",
};

/** Looks the good face of a piece up by its name in a cut plan. */
export function goodFaces(panels: readonly CodedPiece<PanelPart>[]): (name: string) => GoodFace | undefined {
  const faces = new Map(panels.map(({ name, part }) => [name, goodFaceOf(part)]));
  return (name) => faces.get(name);
}
