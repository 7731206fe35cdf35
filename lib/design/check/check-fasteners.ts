/** Extrusions, fasteners and inserts: where they have room, and what they sit in. */

import { fastenerTraits } from "../../fastening/index.js";
import { Length } from "../../quantity/index.js";
import type { Point2 } from "../../shape/index.js";
import type { CaseBody, Content } from "../case.js";
import { edgeAxis } from "../derive/axes.js";
import { type EdgeBar, hasRoomForRivets } from "../derive/bars.js";
import type { CornerSpot } from "../derive/corners.js";
import {
  contentFastenings,
  cornerFastenings,
  edgeFastenings,
  hardwareFastenings,
} from "../derive/fastenings.js";
import type { HardwareSpot } from "../derive/hardware-spots.js";
import { hasRoomForScrews, type JointedEdge } from "../derive/jointed-edges.js";
import { leavesOf } from "../derive/leaves.js";
import { sameness } from "../derive/outline.js";
import { type CasePlan, type NearestEdge, nearestEdge, type Piece, pieceNamed } from "../derive/plan.js";
import type { Fastening } from "../parts.js";
import type { CasePath } from "../read/case-text.js";
import type { Ruler } from "../ruler.js";
import { bodyDiameter, type Stock, stockNamed } from "../stock.js";
import { placePath } from "./check-hardware.js";
import { openingPath } from "./check-openings.js";
import { buildPaths, type Fault } from "./fault.js";

/** Every group with a hole that breaks out of its sheet. How near an edge is too near is a finding's business. */
export function checkFasteners(plan: CasePlan, stock: Stock, ruler: Ruler): Fault[] {
  return [
    ...plan.bars.filter(hasRoomForRivets).flatMap((bar) => checkRivets(bar, plan, stock, ruler)),
    ...plan.spots.flatMap((spot) => checkSpot(spot, plan, stock, ruler)),
    ...plan.corners.flatMap((corner) =>
      cornerFastenings(corner, stock, plan)
        .flatMap((group) => tooNear(group, plan))
        .map((near) => {
          const { name } = corner.item;
          return faultOf(near, { path: ["hardware", name, "item"], cause: `corners ${name}` }, ruler);
        }),
    ),
  ];
}

/**
 * An opening in the way of an edge's rivets is itself misplaced; a row that begins too near an end of its panel needs a
 * larger end distance; else the bar does not suit the panels.
 */
function checkRivets(bar: EdgeBar, plan: CasePlan, stock: Stock, ruler: Ruler): Fault[] {
  const near = edgeFastenings(bar, stock, plan).flatMap((group) => tooNear(group, plan));
  return near.map((one) => {
    const { opening } = one.nearest;
    if (isMendedInwards(one)) return endFault(bar, one, ruler);
    const { layout } = one.piece.surface;
    const where =
      opening?.why === "case"
        ? { path: openingPath(layout, opening.name) }
        : { ...barWord(bar, "bar"), cause: `holes of ${bar.extrusion.bar}` };
    return faultOf(one, where, ruler);
  });
}

/** Whether a row's first or last hole would be whole if it stood further in along the row. */
function isMendedInwards({ group: { at }, piece, nearest, hole, least }: NearGroup): boolean {
  const [first, last] = [at[0], at.at(-1)];
  const next = hole === first ? last : hole === last ? first : undefined;
  const long = next ? Math.hypot(next.x - hole.x, next.y - hole.y) : 0;
  if (!next || long === 0 || nearest.opening) return false;
  const share = (least - nearest.distance) / long;
  const inwards = { x: hole.x + share * (next.x - hole.x), y: hole.y + share * (next.y - hole.y) };
  return nearestEdge(piece, inwards).distance >= least - sameness;
}

function endFault(bar: EdgeBar, { group, nearest, least }: NearGroup, ruler: Ruler): Fault {
  const { endDistance } = bar.extrusion;
  const enough = ruler(endDistance + least - nearest.distance);
  return {
    ...barWord(bar, "end distance"),
    cause: `end distance of ${bar.extrusion.bar}`,
    value: ruler(endDistance),
    expected: `an end distance of at least ${enough}, so that the outermost holes of ${group.holds} are whole in ${group.panel}`,
  };
}

/** A hole off the sheet means hardware off its panel, over an opening or a cut-out: reported there, unless it is in a door's gap. */
function checkSpot(spot: HardwareSpot, plan: CasePlan, stock: Stock, ruler: Ruler): Fault[] {
  const doors = spot.layout.panel.openings
    .filter((opening) => leavesOf(opening).length > 0)
    .map(({ name }) => name);
  return hardwareFastenings(spot, stock, plan)
    .flatMap((group) => tooNear(group, plan))
    .filter(({ nearest: { distance, opening } }) => distance >= 0 || doors.includes(opening?.name ?? ""))
    .map((near) => faultOf(near, { path: placePath(spot) }, ruler));
}

/** A group whose nearest hole is too near. */
interface NearGroup {
  /** The group that comes too near. */
  readonly group: Fastening;
  /** The panel or leaf it is in. */
  readonly piece: Piece;
  /** Its hole that comes nearest to an edge or an opening. */
  readonly hole: Point2;
  /** That edge or opening. */
  readonly nearest: NearestEdge;
  /** Least distance at which its holes are whole: their radius, in metres. */
  readonly least: number;
}

function tooNear(group: Fastening, plan: CasePlan): NearGroup[] {
  const piece = pieceNamed(plan, group.panel);
  const least = bodyDiameter(group.fastener) / 2;
  const near = group.at
    .map((hole) => ({ hole, nearest: nearestEdge(piece, hole) }))
    .reduce((a, b) => (b.nearest.distance < a.nearest.distance ? b : a));
  return near.nearest.distance < least - sameness ? [{ group, piece, ...near, least }] : [];
}

function faultOf(
  { group: { holds, panel }, nearest: { distance, opening }, least }: NearGroup,
  where: Pick<Fault, "path" | "inheritedFrom" | "cause">,
  ruler: Ruler,
): Fault {
  const edge = opening ? `the opening "${opening.name}" of ${panel}` : `the edge of ${panel}`;
  const expected = `the holes of ${holds} whole, their middles at least ${ruler(least)} from ${edge}`;
  const value = distance < 0 ? `${ruler(-distance)} off the sheet` : ruler(distance);
  return { ...where, value, expected };
}

// Extrusions: long enough for their rivets, and cut back from the metal corners

/** Where a word about a bar stands, at its edge or in a build. */
function barWord({ section, edge }: EdgeBar, word: string): Pick<Fault, "path" | "inheritedFrom"> {
  const path: CasePath = ["sections", section.section.name, "edges", edge, word];
  return { path, inheritedFrom: buildPaths(section.section.name, ["edges", word]) };
}

/** The faults of one bar. */
export function checkBars(bar: EdgeBar, ruler: Ruler): Fault[] {
  const { endDistance } = bar.extrusion;
  if (hasRoomForRivets(bar)) return [];
  const word = bar.length > 2 * sameness ? "end distance" : "set back";
  const expected =
    `set-backs and end distances (${ruler(endDistance)}) that leave room for rivets ` +
    `on the ${ruler(bar.edgeLength)} of ${bar.id}`;
  return [{ ...barWord(bar, word), cause: `${word} of ${bar.extrusion.bar}`, expected }];
}

/** The faults of one edge without an extrusion: pieces that do not fit along it, or have no room for their screws. */
export function checkJoints(one: JointedEdge, ruler: Ruler): Fault[] {
  const { id, section, edge, joint, stretches } = one;
  const word = (key: string): Pick<Fault, "path" | "inheritedFrom"> => ({
    path: ["sections", section.section.name, "edges", edge, key],
    inheritedFrom: buildPaths(section.section.name, ["edges", key]),
  });
  const clear = section.inside[edgeAxis(edge)];
  const taken = stretches.reduce((sum, { length }) => sum + Math.max(length, 0), 0);
  const fits =
    stretches.every(({ length }) => length > sameness) && taken <= clear - 2 * joint.setBack + sameness;
  if (joint.strip !== undefined && !fits) {
    const expected = `pieces that fit between the set-backs of ${id}, which is ${ruler(clear)} long inside`;
    return [{ ...word(joint.joint === "cleat" ? "set back" : "block length"), expected }];
  }
  if (joint.screw === undefined || hasRoomForScrews(one)) return [];
  const shortest = Length.si(Math.min(...stretches.map(({ length }) => length)));
  const expected = `end distances that leave room for screws on the ${ruler(shortest)} of a piece of ${id}`;
  return [{ ...word("end distance"), expected }];
}

/** A bar that reaches under a corner's metal. */
export function checkSetBacks(
  { stock, section, id }: CornerSpot,
  bars: readonly EdgeBar[],
  ruler: Ruler,
): Fault[] {
  const leg = Math.max(stock.width, stock.height);
  return bars
    .filter((bar) => bar.section === section && bar.extrusion.setBack < leg - sameness)
    .map((bar) => {
      const expected = `at least ${ruler(leg)}, the leg of the corner "${id.replace(/ \d+$/, "")}"`;
      return { ...barWord(bar, "set back"), value: ruler(bar.extrusion.setBack), expected };
    });
}

// Threaded inserts: only where a part says how thick it is, and no longer than their sheet

/** Every insert that is out of place. */
export function checkInserts(description: CaseBody, plan: CasePlan, stock: Stock, ruler: Ruler): Fault[] {
  const tooLong = (groups: readonly Fastening[], path: CasePath): Fault[] =>
    groups.flatMap((group) => longerThanSheet(group, path, plan, ruler));
  return [
    ...plan.spots.flatMap((spot) => tooLong(hardwareFastenings(spot, stock, plan), placePath(spot))),
    ...plan.corners.flatMap((spot) =>
      tooLong(cornerFastenings(spot, stock, plan), ["hardware", spot.item.name, "item"]),
    ),
    ...description.contents.flatMap((content) => [
      ...tooLong(contentFastenings(content, stock, plan), ["contents", content.name, "held", "fastener"]),
      ...checkFoot(content, stock),
    ]),
    ...description.shelves.flatMap(({ name, joint }) =>
      noPlace(joint.fastener, ["shelves", name, "joint", "fastener"], stock),
    ),
  ];
}

function longerThanSheet(
  { fastener, panel }: Fastening,
  path: CasePath,
  plan: CasePlan,
  ruler: Ruler,
): Fault[] {
  const { thickness } = pieceNamed(plan, panel).surface.layout.sheet;
  const { insertLength = 0 } = fastener;
  if (insertLength <= thickness + sameness) return [];
  const expected = `an insert no longer than the sheet of ${panel}, ${ruler(thickness)}`;
  return [{ path, value: `${fastener.name}, ${ruler(insertLength)} long`, expected }];
}

/** The screw of an insert goes through something whose thickness must be known; other fasteners need no such word. */
function checkFoot({ name, held }: Content, stock: Stock): Fault[] {
  if (!("fastener" in held)) return [];
  const path = ["contents", name, "held", "fastener"];
  if (held.by === "rivets" || held.by === "hung") {
    const second = held.by === "hung" && typeof held.secondHold === "object" ? held.secondHold : undefined;
    return [
      ...noPlace(held.fastener, path, stock),
      ...(second
        ? noPlace(second.fastener, ["contents", name, "held", "second hold", "fastener"], stock)
        : []),
    ];
  }
  const insert = isInsert(held.fastener, stock);
  if (insert === (held.foot !== undefined)) return [];
  const expected = insert
    ? "foot, how thick the part is that the screw goes through, with an insert"
    : `an insert beside foot, not "${held.fastener}"`;
  return [{ path: ["contents", name, "held", "foot"], expected }];
}

function noPlace(fastener: string, path: CasePath, stock: Stock): Fault[] {
  return isInsert(fastener, stock)
    ? [{ path, expected: 'no insert here: inserts hold hardware, and contents "by: screws"' }]
    : [];
}

function isInsert(fastener: string, stock: Stock): boolean {
  return fastenerTraits[stockNamed(stock, "fasteners", fastener).kind].hasInsert;
}
