/** Where each piece of hardware placed on a face sits, and where its fasteners go. */
import type { Length } from "../../quantity/index.js";
import type { Point2 } from "../../shape/index.js";
import type { CaseBody, HardwarePlace, PlacedHardware } from "../case.js";
import type { Hardware, Stock } from "../stock.js";
import { stockNamed } from "../stock.js";
import { type PanelLayout, panelAt, type SectionLayout } from "./layout.js";
import { fromCorner } from "./openings.js";
import { panelPoint } from "./outline.js";
import { onSurface, type Surface, surfaceAt } from "./surfaces.js";

/** How wide and how high a pattern of holes is. */
export interface Size {
  /** Along u, in metres. */
  readonly width: number;
  /** Along v, in metres. */
  readonly height: number;
}

/** One piece of hardware at one place of a face; sizes turned as it is. */
export interface HardwareSpot {
  /** "carry handle 2". */
  readonly id: string;
  /** What the case says of it. */
  readonly item: PlacedHardware;
  /** The place as the case says it. */
  readonly place: HardwarePlace;
  /** Position in the item's list of places. */
  readonly index: number;
  /** The piece of hardware it is. */
  readonly stock: Hardware;
  /** The panel of the face it is on. */
  readonly layout: PanelLayout;
  /** What its centre lies on. */
  readonly surface: Surface;
  /** In the axes of the face's panel. */
  readonly centre: Point2<Length>;
  /** Its size on the panel. */
  readonly size: Size;
  /** The cut-out it needs, zero for none. */
  readonly cut: Size;
  /** Where its fasteners go. */
  readonly holes: readonly SpotHole[];
}

/** One hole of a piece of hardware: on the face's panel or on a leaf in it. */
export interface SpotHole {
  /** The panel or leaf that it lies on. */
  readonly surface: Surface;
  /** In the axes of that surface. */
  readonly at: Point2<Length>;
}

/** Every spot of a case, in the order of the case file. Corners have none. */
export function hardwareSpots(
  { hardware }: CaseBody,
  stock: Stock,
  layouts: readonly SectionLayout[],
): readonly HardwareSpot[] {
  return hardware.flatMap((item) =>
    "cornersOf" in item.places
      ? []
      : item.places.map((place, index) => spot(item, place, index, stock, layouts)),
  );
}

/** The section of a name. Throws RangeError when there is none. */
export function layoutNamed(layouts: readonly SectionLayout[], name: string): SectionLayout {
  const found = layouts.find(({ section }) => section.name === name);
  if (!found) throw new RangeError(`case sections: no "${name}"`);
  return found;
}

function spot(
  item: PlacedHardware,
  place: HardwarePlace,
  index: number,
  stock: Stock,
  layouts: readonly SectionLayout[],
): HardwareSpot {
  const hardware = stockNamed(stock, "hardware", item.item);
  const layout = panelAt(layoutNamed(layouts, place.section), place.face);
  const centre = fromCorner(layout, place.from, place);
  const turn = (width: number, height: number): Size =>
    place.turned ? { width: height, height: width } : { width, height };
  return {
    id: `${item.name} ${index + 1}`,
    item,
    place,
    index,
    stock: hardware,
    layout,
    surface: surfaceAt(layout, centre),
    centre,
    size: turn(hardware.width, hardware.height),
    cut: turn(hardware.cutWidth, hardware.cutHeight),
    holes: holePattern(hardware, centre, place.turned).map((hole) => {
      const surface = surfaceAt(layout, hole);
      return { surface, at: onSurface(surface, hole) };
    }),
  };
}

/** Rows and columns of holes, evenly spread round a centre. */
function holePattern(
  { holeColumns, holeRows, holeWidth, holeHeight }: Hardware,
  centre: Point2<Length>,
  turned: boolean,
): readonly Point2<Length>[] {
  return evenly(holeRows, holeHeight).flatMap((up) =>
    evenly(holeColumns, holeWidth).map((across) =>
      turned ? panelPoint(centre.x - up, centre.y + across) : panelPoint(centre.x + across, centre.y + up),
    ),
  );
}

/** So many positions over a length, the middle at zero; a single one sits there. */
function evenly(count: number, length: number): number[] {
  if (count === 1) return [0];
  return Array.from({ length: count }, (_, i) => length * (i / (count - 1) - 0.5));
}

/** Ids of the surfaces that holes lie on, each once. */
export function surfaceIds(holes: readonly SpotHole[]): readonly string[] {
  return [...new Set(holes.map(({ surface }) => surface.id))];
}
