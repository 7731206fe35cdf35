import type { PanelPart, Parts } from "./parts.js";

/** Everything sawn from a sheet: faces, the leaves of doors, and shelves. */
export function sheetPieces({ panels, shelves }: Parts): readonly PanelPart[] {
  return [...panels, ...shelves.map(({ panel }) => panel)];
}
