/** The solids of fasteners: head, body, washer, set tail or nut, tip. */
import { crossProduct, scalarProduct, vector3 } from "../../algebra/matrix3.js";
import { reachOfSolid } from "../../assembly/index.js";
import {
  bodyDiameter,
  type ContentPart,
  type Face,
  type Fastening,
  frameOf,
  frameOn,
  type PanelPart,
  type Parts,
  type PieceFrame,
  type StripPart,
  secondHoldOf,
  vectorOf,
} from "../../design/index.js";
import { type Box2, circle, type Point2 } from "../../shape/index.js";
import { gripOf, tailBodies, washerInside } from "../joints/joint-stack.js";
import type { CaseSolid, FastenerPiece } from "./case-solid.js";
import { type Prism, plate } from "./prisms.js";
import { facingId } from "./sheet-solids.js";

/**
 * Sizes over the body's diameter where the tables have none. Heads and nuts as usual products of 4 to 6 mm have them
 * (dome head of a blind rivet, hexagon bolt and nut, pan head screw; from memory); of a set tail, which no standard
 * found gives, common practice.
 */
const overDiameter = {
  rivetHead: 0.42,
  boltHead: 0.7,
  nut: 0.875,
  screwHead: 0.6,
  tailWidth: tailBodies,
  tailDepth: 1.05,
  tip: 1,
} as const;

/** A row of fasteners on a panel: where, and from which side. */
interface Row {
  /** The plane of the panel's inside. */
  readonly frame: PieceFrame;
  /** Where they go through it. */
  readonly at: readonly Point2[];
  /** Under their heads, outwards from the panel's inside, m. */
  readonly under: number;
  /** Whether heads are on the inside, so that points go outwards. */
  readonly fromInside: boolean;
  /** Whether the places are spread evenly for want of others. */
  readonly byHand: boolean;
}

/** Every fastener, where it stands. Of stays nobody says where they are, so theirs have none. */
export function fastenerSolids(parts: Parts, others: readonly CaseSolid[]): readonly CaseSolid[] {
  const sections = new Map(others.map(({ part, section }) => [part, section]));
  const known = new Set(others.map(({ part }) => part));
  return parts.fastenings.flatMap((group) => {
    const row = rowOf(group, parts, others);
    if (!row) return [];
    const joins = joinedBy(group, parts, known);
    const section = sections.get(group.panel) ?? "";
    const pieces = fastenerPieces(group, row.fromInside);
    const shared = { section, kind: "fastener", group: group.id, joins } as const;
    const byHand = row.byHand ? ({ placedByHand: true } as const) : {};
    return row.at.flatMap((at, i): readonly CaseSolid[] => {
      const part = `${group.id} ${i + 1}`;
      const name = `${group.fastener.kind} ${i + 1} of ${group.id}`;
      return pieces.map(({ piece, diameter, way }) => {
        const { outline, holes, place, depth } = rodFrom(row, at, diameter, way);
        const key = `${part} ${piece}`;
        return { outline, holes, place, depth, key, part, name, piece, ...shared, ...byHand };
      });
    });
  });
}

/** What a fastener shares space with as it should: the panel with its laminate, what it holds, what it bites. */
function joinedBy({ panel, holds }: Fastening, parts: Parts, known: ReadonlySet<string>): readonly string[] {
  const joint = parts.joints.find(({ id }) => id === holds);
  const shelf = parts.shelves.find((one) => one.shelf.name === holds)?.panel.id;
  const drawer = parts.drawers.find((one) => one.drawer.name === holds);
  const content = parts.contents.find(
    (one) => one.content.name === holds || secondHoldOf(one.content.name) === holds,
  )?.content.name;
  const slides = /^slides of (.*)$/.exec(holds)?.[1];
  const run = parts.drawers.find((one) => one.drawer.name === slides);
  const hardware = parts.hardware.find(({ id }) => id === holds);
  const own = [
    holds,
    panel,
    ...(joint ? [...joint.panels, ...[...known].filter((id) => id.startsWith(`${joint.id} `))] : []),
    ...[...known].filter((id) => id.startsWith(`${holds} `)),
    ...(shelf ? [shelf] : []),
    // Its slides lie over the screws of its box, which are sunk.
    ...(drawer ? [`slides of ${holds}`, ...drawer.panels.map(({ id }) => id)] : []),
    ...(run?.panels.map(({ id }) => id) ?? []),
    ...(content ? [content] : []),
    ...(hardware?.item.duty === "stay" ? hardware.panels : []),
  ];
  return own.flatMap((id) => [id, facingId(id, "outside"), facingId(id, "inside")]);
}

/** One piece of a fastener, from under its head. */
export interface SetPiece {
  /** What it is. */
  readonly piece: FastenerPiece;
  /** m */
  readonly diameter: number;
  /** From under the head, m; negative outside. */
  readonly way: readonly [number, number];
}

/**
 * The pieces of a fastener of a group.
 *
 * @param fromInside whether its head is on the inside, where no washer goes behind
 */
export function fastenerPieces(group: Fastening, fromInside = false): readonly SetPiece[] {
  const { fastener } = group;
  const { kind, diameter: d, headDiameter, length } = fastener;
  const round = (piece: FastenerPiece, diameter: number, from: number, to: number): SetPiece[] =>
    to - from > 1e-6 ? [{ piece, diameter, way: [from, to] }] : [];
  const head = (share: number): SetPiece[] => round("head", headDiameter, -share * d, 0);
  if (kind === "screw" || kind === "insert") {
    const point = overDiameter.tip * d;
    const metal = group.stack.find(({ what }) => what === "metal")?.thickness ?? 0;
    const insert = fastener.insertLength ?? 0;
    return [
      ...head(overDiameter.screwHead),
      ...round("body", d, 0, length - point),
      ...round("tip", d, Math.max(0, length - point), length),
      ...(kind === "insert" ? round("insert", bodyDiameter(fastener), metal, metal + insert) : []),
    ];
  }
  const grip = gripOf(group);
  const inside = fromInside ? undefined : washerInside(group);
  const washer = inside ? round("washer", Math.max(inside.diameter, d), grip - inside.thickness, grip) : [];
  if (kind === "bolt")
    return [
      ...head(overDiameter.boltHead),
      ...round("body", d, 0, length),
      ...washer,
      ...round("nut", headDiameter, grip, grip + overDiameter.nut * d),
    ];
  const behind = length - grip;
  return [
    ...head(overDiameter.rivetHead),
    ...round("body", d, 0, grip),
    ...washer,
    ...round("tail", overDiameter.tailWidth * d, grip, grip + Math.min(behind, overDiameter.tailDepth * d)),
    ...round("entering", d, grip, length),
  ];
}

function rodFrom(
  { frame, under, fromInside }: Row,
  at: Point2,
  diameter: number,
  [from, to]: readonly [number, number],
): Prism {
  const way: readonly [number, number] = fromInside ? [under + from, under + to] : [under - to, under - from];
  return plate(frame, circle(at, diameter / 2), way);
}

function rowOf(group: Fastening, parts: Parts, others: readonly CaseSolid[]): Row | undefined {
  const panel = parts.panels.find(({ id }) => id === group.panel);
  if (panel && group.at.length > 0)
    return {
      frame: frameOf(panel),
      at: group.at,
      under: outsideOf(panel, group),
      fromInside: false,
      byHand: false,
    };
  if (panel) return rowByHand(group, panel, parts, others);
  const board = parts.strips.find(({ id }) => id === group.panel);
  if (board) return rowInBoard(group, board, others);
  const drawer = parts.drawers.find(({ panels }) => panels.some(({ id }) => id === group.panel));
  const side = drawer?.panels.find(({ id }) => id === group.panel);
  if (!drawer || !side || group.count === 0) return undefined;
  const frame = frameOn(sideFace(side, drawer.panels), side.box);
  const { thickness } = side.sheet;
  const under = thickness + metalOf(group);
  const rect = shadowOf(side.box, frame);
  const ends = insetBy(rect, thickness / 2);
  const at = group.why === "drawer" ? inColumns(ends, group.count) : inRow(rect, group.count);
  return { frame, at, under, fromInside: false, byHand: true };
}

/** The metal that a fastener of a group goes through first, m. */
function metalOf({ stack }: Fastening): number {
  const [first] = stack;
  return first?.what === "metal" ? first.thickness : 0;
}

/** From a panel's inside to under the heads outside. */
function outsideOf({ sheet, facing }: PanelPart, group: Fastening): number {
  return sheet.thickness + (facing?.stock.thickness ?? 0) + metalOf(group);
}

/** From a panel's inside to under the heads inside. */
function insideOf({ facing }: PanelPart, group: Fastening): number {
  return -(facing?.sides === "both" ? facing.stock.thickness : 0) - metalOf(group);
}

/** A group without places, spread evenly over what it holds. */
function rowByHand(
  group: Fastening,
  panel: PanelPart,
  parts: Parts,
  others: readonly CaseSolid[],
): Row | undefined {
  const { holds, why, count, fastener } = group;
  if (count === 0) return undefined;
  const frame = frameOf(panel);
  const through = { frame, under: outsideOf(panel, group), fromInside: false, byHand: true };
  const inside = { frame, under: insideOf(panel, group), fromInside: true, byHand: true };
  if (why === "shelf") {
    const shelf = parts.shelves.find(
      (one) => one.shelf.name === holds && one.panel.section === panel.section,
    );
    return shelf && { ...through, at: inRow(shadowOf(shelf.panel.box, frame), count) };
  }
  if (why === "content") {
    const content = parts.contents.find(
      (one) => one.content.name === holds || secondHoldOf(one.content.name) === holds,
    );
    if (!content) return undefined;
    const at = contentPlaces(content, holds, frame, count);
    return fastener.kind === "insert" ? { ...inside, at } : { ...through, at };
  }
  if (why === "pane") {
    const pane = parts.panes.find(({ id }) => id === holds);
    if (!pane) return undefined;
    const rim = insetBy(shadowOf(pane.box, frame), pane.pane.overlap / 2);
    return { ...(pane.pane.side === "inside" ? inside : through), at: inColumns(rim, count) };
  }
  const [slide] = runnersOf(holds, others);
  return slide && { ...inside, at: inRow(shadowOfSolid(slide, frame), count) };
}

function runnersOf(slides: string, others: readonly CaseSolid[]): readonly CaseSolid[] {
  return others.filter(({ part, kind }) => part === slides && kind === "runner");
}

/** Screws of a slide in the board that stands beside it, through the slide. */
function rowInBoard(group: Fastening, { box }: StripPart, others: readonly CaseSolid[]): Row | undefined {
  const [slide] = runnersOf(group.holds, others);
  if (!slide || group.count === 0) return undefined;
  const axis = box.size.x < box.size.y ? "x" : "y";
  const { low } = reachOfSolid(slide);
  const isBelow = box.low[axis] < low[axis === "x" ? 0 : 1];
  const face: Face = axis === "x" ? (isBelow ? "left" : "right") : isBelow ? "front" : "back";
  const frame = frameOn(face, box);
  const at = inRow(shadowOfSolid(slide, frame), group.count);
  return { frame, at, under: -metalOf(group), fromInside: true, byHand: true };
}

/** Feet of a content: near the corners of what it covers; those of a second hold along its middle. */
function contentPlaces(
  part: ContentPart,
  holds: string,
  frame: PieceFrame,
  count: number,
): readonly Point2[] {
  const shadow = shadowOf(part.box, frame);
  if (holds !== part.content.name) return inRow(shadow, count);
  return inColumns(insetBy(shadow, Math.min(shadow.width, shadow.height) / 6), count);
}

/** What a box covers of a plane, seen square to it. */
function shadowOf(
  { low, size }: { readonly low: PanelPart["box"]["low"]; readonly size: PanelPart["box"]["size"] },
  frame: PieceFrame,
): Box2 {
  const corner = vectorOf(low);
  const far = vector3((i) => corner[i] + vectorOf(size)[i]);
  return between(corner, far, frame);
}

function shadowOfSolid({ place, outline, depth }: CaseSolid, frame: PieceFrame): Box2 {
  const ends = outline.sides.map(({ from }) => from);
  const [right, top] = [Math.max(...ends.map(({ x }) => x)), Math.max(...ends.map(({ y }) => y))];
  const out = crossProduct(place.x, place.y);
  const far = vector3((i) => place.origin[i] + right * place.x[i] + top * place.y[i] + depth * out[i]);
  return between(place.origin, far, frame);
}

function between(one: PieceFrame["origin"], other: PieceFrame["origin"], { origin, x, y }: PieceFrame): Box2 {
  const along = (point: PieceFrame["origin"], axis: PieceFrame["origin"]): number =>
    scalarProduct(
      vector3((i) => point[i] - origin[i]),
      axis,
    );
  const xs = [along(one, x), along(other, x)];
  const ys = [along(one, y), along(other, y)];
  const [left, bottom] = [Math.min(...xs), Math.min(...ys)];
  return { left, bottom, width: Math.max(...xs) - left, height: Math.max(...ys) - bottom };
}

function insetBy({ left, bottom, width, height }: Box2, by: number): Box2 {
  const [a, b] = [Math.min(by, width / 2), Math.min(by, height / 2)];
  return { left: left + a, bottom: bottom + b, width: width - 2 * a, height: height - 2 * b };
}

/** So many places along the middle of the longer side. */
function inRow({ left, bottom, width, height }: Box2, count: number): readonly Point2[] {
  return Array.from({ length: count }, (_, i) => {
    const share = (i + 0.5) / count;
    return width >= height
      ? { x: left + share * width, y: bottom + height / 2 }
      : { x: left + width / 2, y: bottom + share * height };
  });
}

/**
 * So many places on the left and right sides of a rectangle; an odd one in its middle, or at the top over two, so that
 * a mirrored rectangle has its places mirrored.
 */
function inColumns({ left, bottom, width, height }: Box2, count: number): readonly Point2[] {
  const [each, middle] = [Math.floor(count / 2), left + width / 2];
  const isOdd = count % 2 === 1;
  const single = isOdd ? 0 : 0.5;
  const column = (x: number): readonly Point2[] =>
    Array.from({ length: each }, (_, i) => ({
      x,
      y: bottom + height * (each === 1 ? single : i / (each - 1)),
    }));
  const odd = isOdd ? [{ x: middle, y: bottom + height * (each === 1 ? 1 : 0.5) }] : [];
  return [...column(left), ...column(left + width), ...odd];
}

/** The face that the side of a drawer's box looks to, away from the other side. */
function sideFace(side: PanelPart, panels: readonly PanelPart[]): Face {
  const other = panels.find(({ id }) => id !== side.id && id.endsWith(" side"));
  const axis = side.box.size.x < side.box.size.y ? "x" : "y";
  const low = !other || side.box.low[axis] < other.box.low[axis];
  if (axis === "x") return low ? "left" : "right";
  return low ? "front" : "back";
}
