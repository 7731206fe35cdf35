/** The room that tools, hands and arms take: the builder's own in tools.csv, else usual ones. */
import { doorwaysIn } from "../assembly/index.js";
import { Length } from "../quantity/index.js";
import type { Point2, Shape } from "../shape/index.js";
import type { ToolRoom } from "./measured.js";

/** What is set with a tool, or goes through an opening. */
export type ToolUse = ToolRoom["use"];

/** Room of one tool, or of an arm. */
export interface Room {
  /** Free width round its middle line; of a hand or an arm, of the opening that it passes. */
  readonly diameter: Length;
  /** Free length off the head; of a hand or an arm, how far it reaches from the opening. */
  readonly length: Length;
}

const room = (diameter: number, length: number): Room => ({
  diameter: Length.of(diameter, "mm"),
  length: Length.of(length, "mm"),
});

/**
 * Rooms where tools.csv has no row. Tools: the nose of a hand riveter, a stubby driver, a socket; common practice, no
 * source. A hand without its thumb: EN 547-3, 97 mm; an arm: there too, the 95th percentile of the upper arm, 121 mm (both
 * from memory, fairly sure); from the shoulder to the finger tips 555 mm to the grip and six tenths of a hand of 160 mm,
 * tables of British women, 5th percentile (read). Nobody holds washers on a stick unless tools.csv has one. A hand is as
 * deep as it is long.
 */
const usualRooms: Readonly<Record<ToolUse, Room>> = {
  rivet: room(20, 60),
  screw: room(30, 120),
  insert: room(30, 120),
  bolt: room(25, 60),
  hand: room(97, 160),
  arm: room(121, 650),
  stick: room(0, 0),
};

/**
 * The room for a use: the smallest of the builder's own tools for it; of arms the one that reaches furthest.
 *
 * @param tools rows of tools.csv
 */
export function roomFor(use: ToolUse, tools: readonly ToolRoom[]): Room {
  const own = tools.filter((tool) => tool.use === use);
  const isLimb = use === "hand" || use === "arm" || use === "stick";
  const [best] = [...own].sort((a, b) => (isLimb ? b.length - a.length : a.diameter - b.diameter));
  return best ?? usualRooms[use];
}

/** What of a person gets through an opening. */
export interface Limb {
  /** Where its middle can be in the opening. */
  readonly at: readonly Point2[];
  /** How far it reaches from there. */
  readonly reach: Length;
}

/** The whole arm if it passes an opening, else the hand alone; undefined where neither does. */
export function limbThrough(opening: Shape, tools: readonly ToolRoom[]): Limb | undefined {
  return (["arm", "hand"] as const)
    .map((use) => roomFor(use, tools))
    .map(({ diameter, length }) => ({ at: doorwaysIn(opening, diameter), reach: length }))
    .find(({ at }) => at.length > 0);
}

/** Whether tools.csv says nothing of a use. */
export function isUsual(use: ToolUse, tools: readonly ToolRoom[]): boolean {
  return !tools.some((tool) => tool.use === use);
}
