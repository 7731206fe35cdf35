/** The solids of what is sawn: panels with their openings, laminate, shelves, drawers, stiffeners, strips and panes. */
import { frameOf, type PanelPart, type Parts, sheetPieces } from "../../design/index.js";
import type { CaseSolid, SolidKind } from "./case-solid.js";
import { boxPrism, plate } from "./prisms.js";

const kinds: Readonly<Record<PanelPart["role"], SolidKind>> = {
  face: "sheet",
  leaf: "leaf",
  shelf: "shelf",
  drawer: "drawer",
  stiffener: "stiffener",
};

/** Id of the laminate on a side of a panel. */
export function facingId(panel: string, side: "outside" | "inside"): string {
  return `${side} laminate of ${panel}`;
}

/** Every piece that is sawn, where it stands. */
export function sheetSolids(parts: Parts): readonly CaseSolid[] {
  return [
    ...sheetPieces(parts).flatMap((panel) => [sheetSolid(panel), ...facingSolids(panel)]),
    ...parts.strips.map(
      ({ id, section, box, why }): CaseSolid => ({
        ...boxPrism(box),
        ...{ key: id, part: id, name: id, section, joins: [] },
        kind: why === "edge" ? "strip" : "stiffener",
      }),
    ),
    ...parts.panes.map(
      ({ id, section, box }): CaseSolid => ({
        ...boxPrism(box),
        ...{ key: id, part: id, name: id, section, kind: "pane", joins: [] },
      }),
    ),
  ];
}

function sheetSolid(panel: PanelPart): CaseSolid {
  const { id, section, role, face, sheet, outline, openings, box } = panel;
  const holes = openings.map((opening) => opening.outline);
  return {
    ...(face ? plate(frameOf(panel), outline, [0, sheet.thickness], holes) : boxPrism(box)),
    ...{ key: id, part: id, name: id, section, kind: kinds[role], joins: [] },
  };
}

function facingSolids(panel: PanelPart): readonly CaseSolid[] {
  const { id, section, facing, sheet, outline, openings } = panel;
  if (!facing) return [];
  const { thickness } = facing.stock;
  const frame = frameOf(panel);
  const holes = openings.map((opening) => opening.outline);
  const on = (side: "outside" | "inside", way: readonly [number, number]): CaseSolid => {
    const key = facingId(id, side);
    return {
      ...plate(frame, outline, way, holes),
      ...{ key, part: key, name: key, section, kind: "laminate", joins: [] },
    };
  };
  const outside = on("outside", [sheet.thickness, sheet.thickness + thickness]);
  return facing.sides === "both" ? [outside, on("inside", [-thickness, 0])] : [outside];
}
