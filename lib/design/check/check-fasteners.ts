/** Fasteners: none nearer to an edge of the sheet than the trade allows. */
import { edgeDiameters } from "../../fastening/index.js";
import { type EdgeBar, hasRoomForRivets } from "../derive/bars.js";
import { cornerFastenings, edgeFastenings, hardwareFastenings } from "../derive/fastenings.js";
import type { HardwareSpot } from "../derive/hardware-spots.js";
import { sameness } from "../derive/outline.js";
import { type CasePlan, type NearestEdge, nearestEdge, type Piece, pieceNamed } from "../derive/plan.js";
import type { Fastening } from "../parts.js";
import { bodyDiameter, type Stock } from "../stock.js";
import { barWord } from "./check-bars.js";
import { placePath } from "./check-hardware.js";
import { openingPath } from "./check-openings.js";
import type { Fault } from "./fault.js";
import type { Ruler } from "./ruler.js";

/** Every group of fasteners that comes too near an edge or an opening. */
export function checkFasteners(plan: CasePlan, stock: Stock, ruler: Ruler): Fault[] {
  return [
    ...plan.bars.filter(hasRoomForRivets).flatMap((bar) => checkRivets(bar, plan, stock, ruler)),
    ...plan.spots.flatMap((spot) => checkSpot(spot, plan, stock, ruler)),
    ...plan.corners.flatMap((corner) =>
      cornerFastenings(corner, stock, plan)
        .flatMap((group) => tooNear(group, plan))
        .map((near) => faultOf(near, { path: ["hardware", corner.item.name, "item"] }, ruler)),
    ),
  ];
}

/** An opening in the way of an edge's rivets is itself misplaced; else the bar does not suit the panels. */
function checkRivets(bar: EdgeBar, plan: CasePlan, stock: Stock, ruler: Ruler): Fault[] {
  const near = edgeFastenings(bar, stock, plan).flatMap((group) => tooNear(group, plan));
  return near.map((one) => {
    const { opening } = one.nearest;
    const { layout } = one.piece.surface;
    const where = opening?.why === "case" ? { path: openingPath(layout, opening.name) } : barWord(bar, "bar");
    return faultOf(one, where, ruler);
  });
}

/** A hole off the sheet means hardware off its panel, over an opening or a cut-out: reported there, unless it is in a door's gap. */
function checkSpot(spot: HardwareSpot, plan: CasePlan, stock: Stock, ruler: Ruler): Fault[] {
  const doors = spot.layout.panel.openings.filter(({ leaf }) => leaf).map(({ name }) => name);
  return hardwareFastenings(spot, stock, plan)
    .flatMap((group) => tooNear(group, plan))
    .filter(({ nearest: { distance, opening } }) => distance >= 0 || doors.includes(opening?.name ?? ""))
    .map((near) => faultOf(near, { path: placePath(spot) }, ruler));
}

/** A group whose nearest hole is too near. */
interface NearGroup {
  readonly group: Fastening;
  readonly piece: Piece;
  readonly nearest: NearestEdge;
  readonly least: number;
}

function tooNear(group: Fastening, plan: CasePlan): NearGroup[] {
  const piece = pieceNamed(plan, group.panel);
  const least = edgeDiameters.least * bodyDiameter(group.fastener);
  const nearest = group.at
    .map((hole) => nearestEdge(piece, hole))
    .reduce((a, b) => (b.distance < a.distance ? b : a));
  return nearest.distance < least - sameness ? [{ group, piece, nearest, least }] : [];
}

function faultOf(
  { group: { holds, panel }, nearest: { distance, opening }, least }: NearGroup,
  where: Pick<Fault, "path" | "inheritedFrom">,
  ruler: Ruler,
): Fault {
  const edge = opening ? `the opening "${opening.name}" of ${panel}` : `the edge of ${panel}`;
  const expected = `the fasteners of ${holds} at least ${ruler(least)} (${edgeDiameters.least} diameters) from ${edge}`;
  const value = distance < 0 ? `${ruler(-distance)} off the sheet` : ruler(distance);
  return { ...where, value, expected };
}
