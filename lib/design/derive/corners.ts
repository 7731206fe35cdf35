/** Metal corners: one at each of a section's eight corners, over three panels. */
import type { Length } from "../../quantity/index.js";
import type { Point2 } from "../../shape/index.js";
import type { CaseBody, PlacedHardware } from "../case.js";
import type { Face, PanelSide, Point } from "../place.js";
import type { Hardware, Stock } from "../stock.js";
import { stockNamed } from "../stock.js";
import { type Axis, neighbour } from "./axes.js";
import { casePoint } from "./case-point.js";
import { layoutNamed } from "./hardware-spots.js";
import { inCase } from "./in-case.js";
import { type PanelLayout, panelAt, type SectionLayout } from "./layout.js";
import { panelPoint } from "./outline.js";

/** One corner of a section with the metal over it. */
export interface CornerSpot {
  /** "lower corner 3". */
  readonly id: string;
  /** What the case says of it. */
  readonly item: PlacedHardware;
  /** The piece of hardware it is. */
  readonly stock: Hardware;
  /** The section whose corner it covers. */
  readonly section: SectionLayout;
  /** The three panels under it with the holes on each. */
  readonly legs: readonly { readonly layout: PanelLayout; readonly holes: readonly Point2<Length>[] }[];
}

/** Every corner that the case puts metal on: those at which three panels meet. */
export function cornerSpots(
  { hardware }: CaseBody,
  stock: Stock,
  layouts: readonly SectionLayout[],
): readonly CornerSpot[] {
  return hardware.flatMap((item) => {
    if (!("cornersOf" in item.places)) return [];
    const section = layoutNamed(layouts, item.places.cornersOf);
    const metal = stockNamed(stock, "hardware", item.item);
    const closed = corners.filter((meeting) => meeting.every((face) => section.panels[face]));
    return closed.map((meeting, i) => ({
      id: `${item.name} ${i + 1}`,
      item,
      stock: metal,
      section,
      legs: meeting.map((face) => {
        const layout = panelAt(section, face);
        return { layout, holes: legHoles(metal, layout, meeting) };
      }),
    }));
  });
}

/** The three faces that meet at each corner, bottom first, front before back, left before right. */
const corners: readonly (readonly [Face, Face, Face])[] = (["bottom", "top"] as const).flatMap((level) =>
  (["front", "back"] as const).flatMap((depth) =>
    (["left", "right"] as const).map((width) => [level, depth, width] as const),
  ),
);

/** Holes on one face, spread from one side of its diagonal to the other. */
function legHoles(metal: Hardware, layout: PanelLayout, meeting: readonly Face[]): Point2<Length>[] {
  const sideOf = (one: PanelSide, other: PanelSide): PanelSide =>
    meeting.includes(neighbour(layout.face, one)) ? one : other;
  const across = sideOf("left", "right");
  const up = sideOf("bottom", "top");
  const { holeWidth: far, holeHeight: near } = metal;
  const count = metal.holeColumns * metal.holeRows;
  return Array.from({ length: count }, (_, i) => {
    const share = count === 1 ? 0.5 : i / (count - 1);
    const u = far + share * (near - far) - layout.inset[across];
    const v = near + share * (far - near) - layout.inset[up];
    return panelPoint(across === "left" ? u : layout.width - u, up === "bottom" ? v : layout.height - v);
  });
}

/** Middle of the corner's metal: the mean of its holes, on the outside of its three panels. */
export function cornerCentre({ legs }: CornerSpot): Point {
  const points = legs.flatMap(({ layout, holes }) =>
    holes.map((hole) => inCase(layout, hole, layout.thickness)),
  );
  const mean = (axis: Axis): number => points.reduce((sum, point) => sum + point[axis], 0) / points.length;
  return casePoint(mean("x"), mean("y"), mean("z"));
}
