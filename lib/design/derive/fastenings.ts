/** Groups of fasteners: along edges, in hardware, and in what shelves and contents hang on. */
import { Length } from "../../quantity/index.js";
import type { Content, Shelf } from "../case.js";
import type { Fastening, Layer, PanelPart } from "../parts.js";
import type { Face, PanelPoint } from "../place.js";
import type { Fastener, Stock } from "../stock.js";
import { facesAt } from "./axes.js";
import { barHoles, type EdgeBar, rivetRow } from "./bars.js";
import type { CornerSpot } from "./corners.js";
import { type HardwareSpot, layoutNamed, surfaceIds } from "./hardware-spots.js";
import type { PanelLayout, SectionLayout } from "./layout.js";
import { distanceTo, panelPoint } from "./outline.js";
import { stockNamed } from "./stock-named.js";

/** Finds a panel part by id. */
export type PanelFinder = (id: string) => PanelPart;

/** What a group of fasteners has beside its panel. */
type Group = Pick<Fastening, "holds" | "why" | "fastener" | "at" | "count"> & {
  readonly pitch?: Length;
  /** Thickness of the metal on the outside, zero for none. */
  readonly metal: number;
};

function fasten(group: Group, panel: PanelPart): Fastening {
  const { metal, ...rest } = group;
  return {
    id: `${group.holds} on ${panel.id}`,
    panel: panel.id,
    ...rest,
    stack: stackOf(panel, metal),
    backIsBareWood: panel.facing?.sides !== "both",
    ...(group.at.length > 0 ? { edgeDistance: leastEdgeDistance(panel, group.at) } : {}),
  };
}

/** Layers from the outside in. */
function stackOf({ sheet, facing }: PanelPart, metal: number): Layer[] {
  const laminate: Layer[] = facing ? [{ what: "facing", thickness: facing.stock.thickness }] : [];
  return [
    ...(metal > 0 ? [{ what: "metal", thickness: Length.si(metal) } as const] : []),
    ...laminate,
    { what: "ply", thickness: sheet.thickness },
    ...(facing?.sides === "both" ? laminate : []),
  ];
}

/** Least distance from any of the holes to the panel's outline or an opening in it. */
function leastEdgeDistance(panel: PanelPart, holes: readonly PanelPoint[]): Length {
  return Length.si(Math.min(...holes.map((hole) => holeEdgeDistance(panel, hole))));
}

/** Distance from a hole's centre to the panel's outline or the nearest opening; negative when it misses the panel. */
export function holeEdgeDistance(panel: PanelPart, hole: PanelPoint): number {
  const { width, height, cornerRadius } = panel;
  const outline = { kind: "rectangle", cornerRadius } as const;
  const inwards = -distanceTo({ low: panelPoint(0, 0), width, height, outline }, hole);
  return Math.min(inwards, ...panel.openings.map((opening) => distanceTo(opening, hole)));
}

/** The rivets of a bar, one row on each of its two panels. */
export function edgeFastenings(bar: EdgeBar, stock: Stock, panel: PanelFinder): Fastening[] {
  const fastener = stockNamed(stock, "fasteners", bar.extrusion.rivet);
  return facesAt(bar.edge).map((face) => {
    const layout = bar.section.panels[face];
    const at = barHoles(bar, layout);
    const { pitch } = rivetRow(bar);
    const group = {
      holds: bar.id,
      why: "edge",
      fastener,
      at,
      count: at.length,
      pitch,
      metal: bar.stock.wall,
    } as const;
    return fasten(group, panel(layout.id));
  });
}

/** The fasteners of a piece of hardware: a group on the panel, and one on a leaf it reaches onto. */
export function hardwareFastenings(
  { id, holes, stock: { flange, fastener } }: HardwareSpot,
  stock: Stock,
  panel: PanelFinder,
): Fastening[] {
  return surfaceIds(holes).map((surfaceId) => {
    const at = holes.filter(({ surface }) => surface.id === surfaceId).map((hole) => hole.at);
    return fasten(hardwareGroup(id, stockNamed(stock, "fasteners", fastener), at, flange), panel(surfaceId));
  });
}

/** The fasteners of a corner, a group on each of its three panels. */
export function cornerFastenings(spot: CornerSpot, stock: Stock, panel: PanelFinder): Fastening[] {
  const fastener = stockNamed(stock, "fasteners", spot.stock.fastener);
  return spot.legs.map(({ layout, holes }) =>
    fasten(hardwareGroup(spot.id, fastener, holes, spot.stock.flange), panel(layout.id)),
  );
}

function hardwareGroup(holds: string, fastener: Fastener, at: readonly PanelPoint[], metal: number): Group {
  return { holds, why: "hardware", fastener, at, count: at.length, metal };
}

const bearingFaces: Readonly<Record<Shelf["support"], readonly Face[]>> = {
  "two ends": ["left", "right"],
  "ends and back": ["left", "right", "back"],
  "back only": ["back"],
};

/** The fasteners of a shelf, shared as evenly as whole fasteners allow by the panels that bear it. */
export function shelfFastenings(
  { name, section, support, joint }: Shelf,
  stock: Stock,
  layouts: readonly SectionLayout[],
  panel: PanelFinder,
): Fastening[] {
  const fastener = stockNamed(stock, "fasteners", joint.fastener);
  const borne = bearingFaces[support];
  return borne.map((face, i) => {
    const count = Math.floor(joint.count / borne.length) + (i < joint.count % borne.length ? 1 : 0);
    return byHand(name, "shelf", fastener, count, layoutNamed(layouts, section).panels[face], panel);
  });
}

/** The fasteners of a content that is screwed, riveted or hung. */
export function contentFastenings(
  { name, section, held }: Content,
  stock: Stock,
  layouts: readonly SectionLayout[],
  panel: PanelFinder,
): Fastening[] {
  if (!("fastener" in held)) return [];
  const fastener = stockNamed(stock, "fasteners", held.fastener);
  const face = held.by === "hung" ? "top" : held.to;
  return [byHand(name, "content", fastener, held.count, layoutNamed(layouts, section).panels[face], panel)];
}

function byHand(
  holds: string,
  why: "shelf" | "content",
  fastener: Fastener,
  count: number,
  { id }: PanelLayout,
  panel: PanelFinder,
): Fastening {
  return fasten({ holds, why, fastener, count, at: [], metal: 0 }, panel(id));
}
