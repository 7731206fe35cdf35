/** The room that tools, hands and arms take: the builder's own in tools.csv, else usual ones. */
import { handPasses, type ToolRoom } from "../../design/index.js";
import { Length } from "../../quantity/index.js";
import type { ReviewInput } from "../review-input.js";

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
 * source. An arm: EN 547-3, the 95th percentile of the upper arm, 121 mm (from memory, fairly sure); from the shoulder to
 * the finger tips 555 mm to the grip and six tenths of a hand of 160 mm, tables of British women, 5th percentile (read).
 * Nobody holds washers on a stick unless tools.csv has one. A hand is as deep as it is long.
 */
export const usualRooms: Readonly<Record<ToolUse, Room>> = {
  rivet: room(20, 60),
  screw: room(30, 120),
  insert: room(30, 120),
  bolt: room(25, 60),
  hand: { diameter: handPasses, length: Length.of(160, "mm") },
  arm: room(121, 650),
  stick: room(0, 0),
};

/** The room for a use: the smallest of the builder's own tools for it; of arms the one that reaches furthest. */
export function roomFor(use: ToolUse, { measurements }: ReviewInput): Room {
  const own = measurements.tools.filter((tool) => tool.use === use);
  const isLimb = use === "hand" || use === "arm" || use === "stick";
  const [best] = [...own].sort((a, b) => (isLimb ? b.length - a.length : a.diameter - b.diameter));
  return best ?? usualRooms[use];
}

/** Whether tools.csv says nothing of a use. */
export function isUsual(use: ToolUse, { measurements }: ReviewInput): boolean {
  return !measurements.tools.some((tool) => tool.use === use);
}
