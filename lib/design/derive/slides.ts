/** The slides that a shelf runs on: bought as a pair, screwed to the two walls beside it. */
import { Length } from "../../quantity/index.js";
import type { Shelf } from "../case.js";
import type { Fastening, HardwarePart } from "../parts.js";
import type { Stock } from "../stock.js";
import { stockNamed } from "../stock.js";
import { casePoint } from "./case-point.js";
import { byHand } from "./fastenings.js";
import { layoutNamed } from "./hardware-spots.js";
import { panelAt, type SectionLayout } from "./layout.js";
import type { CasePlan } from "./plan.js";

const walls = ["left", "right"] as const;

/** What the slides of a shelf are called. */
function slidesOf({ name }: Shelf): string {
  return `slides of ${name}`;
}

/** The pair of slides of a shelf, where it names one. */
export function shelfSlides(
  shelf: Shelf,
  stock: Stock,
  layouts: readonly SectionLayout[],
): readonly HardwarePart[] {
  const { slides, section, at, width, depth } = shelf;
  if (slides === undefined) return [];
  const layout = layoutNamed(layouts, section);
  const { x, y, z } = layout.insideLow;
  const id = slidesOf(shelf);
  return [
    {
      id,
      item: { name: id, item: slides, duty: "slide", places: [] },
      stock: stockNamed(stock, "hardware", slides),
      section,
      panels: walls.map((wall) => panelAt(layout, wall).id),
      centre: casePoint(x + at.x + width / 2, y + at.y + depth / 2, z + at.z),
    },
  ];
}

/** The fasteners of a pair of slides, half of them in each wall. */
export function slideFastenings(shelf: Shelf, stock: Stock, plan: CasePlan): readonly Fastening[] {
  if (shelf.slides === undefined) return [];
  const { fastener, fasteners, flange } = stockNamed(stock, "hardware", shelf.slides);
  const layout = layoutNamed(plan.layouts, shelf.section);
  return walls.map((wall, i) =>
    byHand(
      {
        holds: slidesOf(shelf),
        why: "hardware",
        fastener: stockNamed(stock, "fasteners", fastener),
        count: i === 0 ? Math.ceil(fasteners / 2) : Math.floor(fasteners / 2),
        metal: Length.si(flange),
      },
      panelAt(layout, wall),
      plan,
    ),
  );
}
