/** Fasteners: none nearer than one and a half diameters to an edge of the sheet (common practice). */
import { hasRoomForRivets } from "../derive/bars.js";
import { cornerFastenings, edgeFastenings, hardwareFastenings } from "../derive/fastenings.js";
import { sameness } from "../derive/openings.js";
import { type CasePlan, type NearestEdge, nearestEdge, pieceNamed } from "../derive/plan.js";
import type { Fastening } from "../parts.js";
import type { Stock } from "../stock.js";
import { barWord } from "./check-bars.js";
import { placePath } from "./check-hardware.js";
import { openingPath } from "./check-openings.js";
import type { Fault } from "./fault.js";
import type { Ruler } from "./ruler.js";

/** Least distance from a hole's centre to an edge, in diameters of the fastener (common practice). */
export const leastEdgeDiameters = 1.5;

/** Every group of fasteners that comes too near an edge or an opening. */
export function checkFasteners(plan: CasePlan, stock: Stock, ruler: Ruler): Fault[] {
  const check = (fastening: Fastening, where: Pick<Fault, "path" | "inheritedFrom">): Fault[] =>
    checkGroup(fastening, where, plan, ruler);
  return [
    ...plan.bars
      .filter(hasRoomForRivets)
      .flatMap((bar) =>
        edgeFastenings(bar, stock, plan).flatMap((group) => check(group, barWord(bar, "bar"))),
      ),
    ...plan.spots.flatMap((spot) =>
      hardwareFastenings(spot, stock, plan).flatMap((group) => check(group, { path: placePath(spot) })),
    ),
    ...plan.corners.flatMap((corner) =>
      cornerFastenings(corner, stock, plan).flatMap((group) =>
        check(group, { path: ["hardware", corner.item.name, "item"] }),
      ),
    ),
  ];
}

function checkGroup(
  { holds, panel, fastener, at }: Fastening,
  where: Pick<Fault, "path" | "inheritedFrom">,
  plan: CasePlan,
  ruler: Ruler,
): Fault[] {
  const piece = pieceNamed(plan, panel);
  const least = leastEdgeDiameters * fastener.diameter;
  const nearest = at
    .map((hole) => nearestEdge(piece, hole))
    .reduce((a, b) => (b.distance < a.distance ? b : a));
  if (nearest.distance >= least - sameness) return [];
  const expected = `the fasteners of ${holds} at least ${ruler(least)} (1.5 diameters) from ${edgeInWords(nearest, panel)}`;
  const value = nearest.distance < 0 ? `${ruler(-nearest.distance)} off the sheet` : ruler(nearest.distance);
  const { opening } = nearest;
  const culprit = opening?.why === "case" ? { path: openingPath(piece.surface.layout, opening.name) } : where;
  return [{ ...culprit, value, expected }];
}

function edgeInWords({ opening }: NearestEdge, panel: string): string {
  return opening ? `the opening "${opening.name}" of ${panel}` : `the edge of ${panel}`;
}
