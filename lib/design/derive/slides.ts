/** The slides that a shelf or a drawer runs on: bought as a pair, screwed to the two walls beside it. */
import { Length } from "../../quantity/index.js";
import type { Shelf } from "../case.js";
import type { DrawerPart, Fastening, HardwarePart, PanelPart } from "../parts.js";
import type { Face, Point } from "../place.js";
import type { Stock } from "../stock.js";
import { stockNamed } from "../stock.js";
import { casePoint } from "./case-point.js";
import { isDrawerSide, wallsBeside } from "./drawers.js";
import { byHand, byHandThrough } from "./fastenings.js";
import { layoutNamed } from "./hardware-spots.js";
import { middleOf } from "./in-case.js";
import { panelAt, type SectionLayout } from "./layout.js";
import type { CasePlan } from "./plan.js";

/** A pair of slides under a shelf or beside a drawer. */
export interface Slides {
  /** What runs on them. */
  readonly name: string;
  /** The section they are in. */
  readonly section: string;
  /** A name of hardware.csv. */
  readonly item: string;
  /** The walls they are screwed to. */
  readonly walls: readonly [Face, Face];
  /** The sides of the drawer that runs on them; absent for a shelf, whose own joint holds it. */
  readonly sides?: readonly PanelPart[];
  /** The middle of the pair, in the stacked case. */
  readonly centre: Point;
}

/** The slides of the shelves that name some. */
export function shelfSlides(shelf: Shelf, layouts: readonly SectionLayout[]): readonly Slides[] {
  const { name, slides, section, at, width, depth } = shelf;
  if (slides === undefined) return [];
  const { x, y, z } = layoutNamed(layouts, section).insideLow;
  const centre = casePoint(x + at.x + width / 2, y + at.y + depth / 2, z + at.z);
  return [{ name, section, item: slides, walls: ["left", "right"], centre }];
}

/** The slides of a drawer. */
export function drawerSlides({ drawer: { name, section, slides }, face, box, panels }: DrawerPart): Slides {
  const sides = panels.filter(isDrawerSide);
  return { name, section, item: slides, walls: wallsBeside(face), centre: middleOf(box), sides };
}

function idOf({ name }: Slides): string {
  return `slides of ${name}`;
}

/** A pair of slides as one piece of hardware. */
export function slidesPart(slides: Slides, stock: Stock, layouts: readonly SectionLayout[]): HardwarePart {
  const { section, item, walls, centre } = slides;
  const id = idOf(slides);
  return {
    id,
    item: { name: id, item, duty: "slide", places: [] },
    stock: stockNamed(stock, "hardware", item),
    section,
    panels: walls.map((wall) => panelAt(layoutNamed(layouts, section), wall).id),
    centre,
  };
}

/** The fasteners of a pair of slides: shared by the walls, and by the sides of a drawer that runs on them. */
export function slideFastenings(slides: Slides, stock: Stock, plan: CasePlan): readonly Fastening[] {
  const { fastener, fasteners, flange } = stockNamed(stock, "hardware", slides.item);
  const layout = layoutNamed(plan.layouts, slides.section);
  const { walls, sides = [] } = slides;
  const held = walls.length + sides.length;
  const group = (i: number) =>
    ({
      holds: idOf(slides),
      why: "hardware",
      fastener: stockNamed(stock, "fasteners", fastener),
      count: Math.floor((fasteners + held - 1 - i) / held),
      metal: Length.si(flange),
    }) as const;
  return [
    ...walls.map((wall, i) => byHand(group(i), panelAt(layout, wall), plan)),
    ...sides.map((side, i) => byHandThrough(side, group(walls.length + i))),
  ];
}
