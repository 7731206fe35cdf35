/** The slides that a shelf or a drawer runs on: bought as a pair, screwed to what stands beside it, walls or boards. */
import { Length } from "../../quantity/index.js";
import type { Shelf } from "../case.js";
import type { DrawerPart, Fastening, HardwarePart, PanelPart, StripPart } from "../parts.js";
import type { Box, Face } from "../place.js";
import type { Stock } from "../stock.js";
import { stockNamed } from "../stock.js";
import { type Axis, faceAxes } from "./axes.js";
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
  /** What they are screwed to. */
  readonly walls: readonly SlideWall[];
  /** The sides of the drawer that runs on them; absent for a shelf, whose own joint holds it. */
  readonly sides?: readonly PanelPart[];
  /** The room of the pair with what runs on it, in the stacked case. */
  readonly room: Box;
}

/** A wall of the section, or a strip of wood between that and what runs on the slides. */
export type SlideWall = { readonly face: Face } | { readonly board: StripPart };

/** A board that stands so far into the room of the slides is still beside it, m: no wood is truer; common practice. */
const slack = 1e-3;

/** What a slide is screwed to at one end of its room: the nearest strip that stands beside the middle of it, or the wall. */
function wallAt(face: Face, room: Box, strips: readonly StripPart[]): SlideWall {
  const { normal: across, end } = faceAxes[face];
  const middle = middleOf(room);
  const others = (["x", "y", "z"] as const).filter((axis) => axis !== across);
  const standsIn = ({ low, size }: Box, axis: Axis): boolean =>
    low[axis] < middle[axis] && middle[axis] < low[axis] + size[axis];
  const gapOf = ({ low, size }: Box): number =>
    end === "low"
      ? room.low[across] - low[across] - size[across]
      : low[across] - room.low[across] - room.size[across];
  const [nearest] = strips
    .filter(({ box }) => others.every((axis) => standsIn(box, axis)) && gapOf(box) > -slack)
    .sort((one, other) => gapOf(one.box) - gapOf(other.box));
  return nearest ? { board: nearest } : { face };
}

/** The slides of the shelves that name some. */
export function shelfSlides(
  shelf: Shelf,
  layouts: readonly SectionLayout[],
  strips: readonly StripPart[],
): readonly Slides[] {
  const { name, slides, section, at, width, depth } = shelf;
  if (slides === undefined) return [];
  const { x, y, z } = layoutNamed(layouts, section).insideLow;
  const room = { low: casePoint(x + at.x, y + at.y, z + at.z), size: casePoint(width, depth, 0) };
  const own = strips.filter((strip) => strip.section === section);
  const walls = (["left", "right"] as const).map((face) => wallAt(face, room, own));
  return [{ name, section, item: slides, walls, room }];
}

/** The slides of a drawer. */
export function drawerSlides(
  { drawer: { name, section, slides }, face, box, panels }: DrawerPart,
  strips: readonly StripPart[],
): Slides {
  const sides = panels.filter(isDrawerSide);
  const own = strips.filter((strip) => strip.section === section);
  const walls = wallsBeside(face).map((wall) => wallAt(wall, box, own));
  return { name, section, item: slides, walls, room: box, sides };
}

function idOf({ name }: Slides): string {
  return `slides of ${name}`;
}

/** A pair of slides as one piece of hardware. */
export function slidesPart(slides: Slides, stock: Stock, layouts: readonly SectionLayout[]): HardwarePart {
  const { section, item, walls, room } = slides;
  const id = idOf(slides);
  return {
    id,
    item: { name: id, item, duty: "slide", places: [] },
    stock: stockNamed(stock, "hardware", item),
    section,
    panels: walls.map((wall) =>
      "board" in wall ? wall.board.id : panelAt(layoutNamed(layouts, section), wall.face).id,
    ),
    centre: middleOf(room),
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
    ...walls.map((wall, i) =>
      "board" in wall
        ? byHandThrough(wall.board.id, thicknessOf(wall.board), group(i))
        : byHand(group(i), panelAt(layout, wall.face), plan),
    ),
    ...sides.map(({ id, sheet }, i) => byHandThrough(id, sheet.thickness, group(walls.length + i))),
  ];
}

/** The thickness of a board beside a slide: the least of its sizes. */
function thicknessOf({ box: { size } }: StripPart): Length {
  return Length.si(Math.min(size.x, size.y, size.z));
}
