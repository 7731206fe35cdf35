/** Groups of fasteners: along edges, in hardware, and in what shelves and contents hang on. */

import { fastenerTraits } from "../../fastening/index.js";
import { Length } from "../../quantity/index.js";
import { distanceTo, type Point2, type Shape } from "../../shape/index.js";
import type { Content, Shelf } from "../case.js";
import type { Fastening, Layer } from "../parts.js";
import type { Face } from "../place.js";
import { facesAt } from "../place.js";
import type { Fastener, SheetStock, Stock } from "../stock.js";
import { stockNamed } from "../stock.js";
import { barHoles, type EdgeBar, rivetsOf } from "./bars.js";
import type { CornerSpot } from "./corners.js";
import { type HardwareSpot, layoutNamed, surfaceIds } from "./hardware-spots.js";
import { type PanelLayout, panelAt } from "./layout.js";
import { type CasePlan, nearestEdge, type Piece, pieceNamed } from "./plan.js";

/** What a group of fasteners has beside its panel. */
export type FastenerGroup = Pick<Fastening, "holds" | "why" | "fastener" | "at" | "count" | "into"> & {
  readonly pitch?: Length;
  /** Thickness of the metal on the outside, zero for none. */
  readonly metal: number;
  /** Thickness of wood behind the panel that it goes through too. */
  readonly behind?: Length;
};

/** A group of fasteners in its piece. */
export function fasten({ metal, behind, ...group }: FastenerGroup, piece: Piece): Fastening {
  const { surface } = piece;
  const distances = group.at.map((hole) => nearestEdge(piece, hole).distance);
  return {
    id: `${group.holds} on ${surface.id}`,
    panel: surface.id,
    ...group,
    stack: fastenerTraits[group.fastener.kind].hasInsert
      ? metalOf(metal)
      : [...stackOf(surface.layout, metal), ...(behind ? [{ what: "ply" as const, thickness: behind }] : [])],
    backIsBareWood: behind !== undefined || surface.layout.facing?.sides !== "both",
    ...(distances.length > 0 ? { edgeDistance: Length.si(Math.min(...distances)) } : {}),
  };
}

/** Of an insert the screw closes no more than the part it goes through; the insert itself sits in the sheet. */
function metalOf(metal: number): Layer[] {
  return metal > 0 ? [{ what: "metal", thickness: Length.si(metal) }] : [];
}

/** Layers from the outside in. */
function stackOf({ sheet, facing }: PanelLayout, metal: number): Layer[] {
  const laminate: Layer[] = facing ? [{ what: "facing", thickness: facing.stock.thickness }] : [];
  return [
    ...metalOf(metal),
    ...laminate,
    { what: "ply", thickness: sheet.thickness },
    ...(facing?.sides === "both" ? laminate : []),
  ];
}

/** The rivets of a bar, one row on each of its two panels. */
export function edgeFastenings(bar: EdgeBar, stock: Stock, plan: CasePlan): Fastening[] {
  const fastener = stockNamed(stock, "fasteners", bar.extrusion.rivet);
  return facesAt(bar.edge).map((face) => {
    const layout = panelAt(bar.section, face);
    const at = barHoles(bar, layout);
    const { pitch } = rivetsOf(bar, face);
    const group = {
      holds: bar.id,
      why: "edge",
      fastener,
      at,
      count: at.length,
      pitch,
      metal: bar.stock.wall,
    } as const;
    return fasten(group, pieceNamed(plan, layout.id));
  });
}

/** The fasteners of a piece of hardware: a group on the panel, and one on a leaf it reaches onto. */
export function hardwareFastenings(
  { id, holes, stock: { flange, fastener } }: HardwareSpot,
  stock: Stock,
  plan: CasePlan,
): Fastening[] {
  return surfaceIds(holes).map((surfaceId) => {
    const at = holes.filter(({ surface }) => surface.id === surfaceId).map((hole) => hole.at);
    return fasten(
      hardwareGroup(id, stockNamed(stock, "fasteners", fastener), at, flange),
      pieceNamed(plan, surfaceId),
    );
  });
}

/** The fasteners of a corner, a group on each of its three panels. */
export function cornerFastenings(spot: CornerSpot, stock: Stock, plan: CasePlan): Fastening[] {
  const fastener = stockNamed(stock, "fasteners", spot.stock.fastener);
  return spot.legs.map(({ layout, holes }) =>
    fasten(hardwareGroup(spot.id, fastener, holes, spot.stock.flange), pieceNamed(plan, layout.id)),
  );
}

function hardwareGroup(
  holds: string,
  fastener: Fastener,
  at: readonly Point2<Length>[],
  metal: number,
): FastenerGroup {
  return { holds, why: "hardware", fastener, at, count: at.length, metal };
}

/** The faces that bear a shelf. */
export const bearingFaces: Readonly<Record<Shelf["support"], readonly Face[]>> = {
  "two ends": ["left", "right"],
  "ends and back": ["left", "right", "back"],
  "back only": ["back"],
};

/** The fasteners of a shelf, shared as evenly as whole fasteners allow by the panels that bear it. */
export function shelfFastenings(
  { name, section, support, joint }: Shelf,
  stock: Stock,
  plan: CasePlan,
): Fastening[] {
  const fastener = stockNamed(stock, "fasteners", joint.fastener);
  const borne = bearingFaces[support];
  const share = (i: number): number =>
    Math.floor(joint.count / borne.length) + (i < joint.count % borne.length ? 1 : 0);
  return borne
    .map((face, i) =>
      byHand(
        { holds: name, why: "shelf", fastener, count: share(i), metal: 0 },
        panelAt(layoutNamed(plan.layouts, section), face),
        plan,
      ),
    )
    .filter(({ count }) => count > 0);
}

/** The fasteners of a content that is screwed, riveted or hung, and of its second hold. */
export function contentFastenings(
  { name, section, held }: Content,
  stock: Stock,
  plan: CasePlan,
): Fastening[] {
  if (!("fastener" in held)) return [];
  const face = held.by === "hung" ? "top" : held.to;
  const second = held.by === "hung" && typeof held.secondHold === "object" ? held.secondHold : undefined;
  const foot = held.by === "screws" ? (held.foot ?? 0) : 0;
  const group = (holds: string, { fastener, count }: { fastener: string; count: number }): Fastening =>
    byHand(
      { holds, why: "content", fastener: stockNamed(stock, "fasteners", fastener), count, metal: foot },
      panelAt(layoutNamed(plan.layouts, section), face),
      plan,
    );
  return [group(name, held), ...(second ? [group(secondHoldOf(name), second)] : [])];
}

/** What the fasteners of a second hold are said to hold. */
export function secondHoldOf(content: string): string {
  return `second hold of ${content}`;
}

/** A group of fasteners that is placed by hand on a face's panel. */
export function byHand(group: Omit<FastenerGroup, "at">, { id }: PanelLayout, plan: CasePlan): Fastening {
  return byHandOn(id, group, plan);
}

/** A group of fasteners at its places in a bare piece of sheet that is no panel: a shelf. */
export function fastenBare(
  { metal, behind, ...group }: FastenerGroup,
  { id, sheet, outline }: { readonly id: string; readonly sheet: SheetStock; readonly outline: Shape },
): Fastening {
  const through: Layer[] = [{ what: "ply", thickness: sheet.thickness }];
  const stack = behind ? [...through, { what: "ply" as const, thickness: behind }] : through;
  const distances = group.at.map((hole) => -distanceTo(outline, hole));
  return {
    id: `${group.holds} on ${id}`,
    panel: id,
    ...group,
    stack: [...metalOf(metal), ...stack],
    backIsBareWood: true,
    edgeDistance: Length.si(Math.min(...distances)),
  };
}

/** A group of fasteners that is placed by hand through bare wood that is no panel: the side of a drawer, a board. */
export function byHandThrough(
  id: string,
  thickness: Length,
  { metal, ...group }: Omit<FastenerGroup, "at" | "behind">,
): Fastening {
  const ply: Layer = { what: "ply", thickness };
  const stack = fastenerTraits[group.fastener.kind].hasInsert ? metalOf(metal) : [...metalOf(metal), ply];
  return { id: `${group.holds} on ${id}`, panel: id, ...group, stack, backIsBareWood: true, at: [] };
}

/** The same on a panel or a leaf, by its id. */
export function byHandOn(id: string, group: Omit<FastenerGroup, "at">, plan: CasePlan): Fastening {
  return fasten({ ...group, at: [] }, pieceNamed(plan, id));
}
