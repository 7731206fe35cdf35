/** The case as it looks from the front or from its right side, on a plane whose y is the height above the ground. */
import type { HardwarePart, PanelPart, Point, SectionPart } from "../../design/index.js";
import { type ReviewInput, standingHeight, supportsOf } from "../../model/index.js";
import type { TipWay } from "../../moving/index.js";
import { Refusal } from "../../refusal.js";
import { type Box2, type Point2, type Shape, sampled } from "../../shape/index.js";
import type { FigureShape, FigureStuff } from "./figure.js";

/** The axis that runs to the right: x seen from the front, y seen from the right, where the front is at the left. */
export type PlaneAxis = "x" | "y";

/** A way to move what is drawn: stood on a slope, tilted over an edge. */
export type Pose = (at: Point2) => Point2;

/** Some sections of a case, seen from one side. */
export interface CasePlane {
  /** The axis that runs to the right. */
  readonly axis: PlaneAxis;
  /** The outside of all of it without what it stands on, m. */
  readonly box: Box2;
  /** Everything that is seen of it. */
  readonly shapes: readonly FigureShape[];
  /** A place of the case on the plane. */
  on(point: Point): Point2;
}

/** Arcs as chords of so much, rad. */
const chord = 0.6;

/**
 * Some sections of the case, standing on the ground.
 *
 * @param names of the sections; all where left out
 * @throws Refusal where there is none of them
 */
export function casePlane(input: ReviewInput, axis: PlaneAxis, names?: readonly string[]): CasePlane {
  const sections = input.parts.sections.filter(({ name }) => names?.includes(name) ?? true);
  if (sections.length === 0) throw new Refusal("picture of the case: it has no such section");
  const supports = supportsOf(input).filter(({ section }) => sections.some(({ name }) => name === section));
  const low = Math.min(...sections.map(({ outside }) => outside.low.z));
  const lift = supports.length > 0 ? standingHeight(input) : 0;
  const on = (point: Point): Point2 => ({ x: point[axis], y: point.z - low + lift });
  const boxes = sections.map((section) => boxOf(section, axis, low - lift));
  return {
    axis,
    box: around(boxes),
    shapes: [
      ...onePlaceEach(supports, on).flatMap((part) => supportShapes(part, on, lift, input)),
      ...sections.flatMap((section) => sectionShapes(section, axis, input, on)),
    ],
    on,
  };
}

/**
 * The room inside a section, on its plane.
 *
 * @throws Refusal where there is no such section
 */
export function insideOf(
  { parts, case: { sections } }: ReviewInput,
  section: string,
  { axis, on }: CasePlane,
): Box2 {
  const part = parts.sections.find(({ name }) => name === section);
  const inside = sections.find(({ name }) => name === section)?.inside;
  if (!part || !inside) throw new Refusal(`picture of the inside: no section ${section}`);
  const { x, y } = on(part.insideLow);
  return { left: x, bottom: y, width: axis === "x" ? inside.width : inside.depth, height: inside.height };
}

/** The axis along which a side is seen edge on. */
export function axisOf(side: TipWay): PlaneAxis {
  return side === "left" || side === "right" ? "x" : "y";
}

/** The way to a side on its plane: 1 to the right, -1 to the left. */
export function signOf(side: TipWay): 1 | -1 {
  return side === "right" || side === "back" ? 1 : -1;
}

/** Turned to the left about a point, rad. */
export function turnedAbout(about: Point2, angle: number): Pose {
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  return ({ x, y }) => ({
    x: about.x + cos * (x - about.x) - sin * (y - about.y),
    y: about.y + sin * (x - about.x) + cos * (y - about.y),
  });
}

/** Raised by so much, m. */
export function raised(by: number): Pose {
  return ({ x, y }) => ({ x, y: y + by });
}

/** What is drawn, moved. */
export function posed(shapes: readonly FigureShape[], pose: Pose): readonly FigureShape[] {
  return shapes.map((shape) => ({ ...shape, points: shape.points.map(pose) }));
}

/** The corners of a box. */
export function cornersOfBox({ left, bottom, width, height }: Box2): readonly Point2[] {
  return [
    { x: left, y: bottom },
    { x: left + width, y: bottom },
    { x: left + width, y: bottom + height },
    { x: left, y: bottom + height },
  ];
}

/** A box as a shape. */
export function boxShape(what: FigureStuff, box: Box2, words?: string): FigureShape {
  return { what, points: cornersOfBox(box), ...(words === undefined ? {} : { words }) };
}

/** An outline as a shape, moved. */
export function outlineShape(what: FigureStuff, outline: Shape, by: Point2): FigureShape {
  return { what, points: sampled(outline, chord).map(({ x, y }) => ({ x: x + by.x, y: y + by.y })) };
}

function boxOf({ outside: { low, size } }: SectionPart, axis: PlaneAxis, ground: number): Box2 {
  return { left: low[axis], bottom: low.z - ground, width: size[axis], height: size.z };
}

function around(boxes: readonly Box2[]): Box2 {
  const left = Math.min(...boxes.map((box) => box.left));
  const bottom = Math.min(...boxes.map((box) => box.bottom));
  return {
    left,
    bottom,
    width: Math.max(...boxes.map((box) => box.left + box.width)) - left,
    height: Math.max(...boxes.map((box) => box.bottom + box.height)) - bottom,
  };
}

function sectionShapes(
  section: SectionPart,
  axis: PlaneAxis,
  { parts }: ReviewInput,
  on: CasePlane["on"],
): readonly FigureShape[] {
  const face = axis === "x" ? "front" : "right";
  const { low, size } = section.outside;
  const corner = on(low);
  const panel = parts.panels.find(
    (one) => one.section === section.name && one.role === "face" && one.face === face,
  );
  const leaves = parts.panels.filter(
    (one) => one.section === section.name && one.role === "leaf" && one.face === face,
  );
  const fronts = parts.drawers
    .filter((one) => one.face === face && one.drawer.section === section.name)
    .flatMap(({ panels }) => panels.slice(0, 1));
  const own = parts.hardware.filter((part) => part.section === section.name);
  return [
    boxShape(panel ? "sheet" : "opening", {
      left: corner.x,
      bottom: corner.y,
      width: size[axis],
      height: size.z,
    }),
    ...(panel ? openingShapes(panel, on) : []),
    ...[...leaves, ...fronts].map((leaf) => outlineShape("sheet", leaf.outline, on(leaf.box.low))),
    ...own.flatMap((part) => fittingShape(part, section, axis, on)),
  ];
}

function openingShapes({ openings, box }: PanelPart, on: CasePlane["on"]): readonly FigureShape[] {
  return openings
    .filter(({ why }) => why === "case")
    .map(({ outline }) => outlineShape("opening", outline, on(box.low)));
}

/** How far a fitting on a wall that is seen edge on stands out, m; as drawn, since the tables do not say. */
const standsOut = 0.02;

/** A handle or a latch: its face on the side that is seen, a strip on the sides seen edge on. */
function fittingShape(
  { item: { duty }, centre, size }: HardwarePart,
  { outside: { low, size: outside } }: SectionPart,
  axis: PlaneAxis,
  on: CasePlane["on"],
): readonly FigureShape[] {
  if (!size || (duty !== "lift" && duty !== "close")) return [];
  const at = on(centre);
  const { width, height } = size;
  const left = low[axis];
  const right = left + outside[axis];
  const isAt = (end: number): boolean => Math.abs(at.x - end) < standsOut;
  const bottom = at.y - height / 2;
  if (isAt(left)) return [boxShape("metal", { left: left - standsOut, bottom, width: standsOut, height })];
  if (isAt(right)) return [boxShape("metal", { left: right, bottom, width: standsOut, height })];
  const across = axis === "x" ? "y" : "x";
  const isSeen = axis === "x" ? centre[across] < low[across] + standsOut : false;
  const isOnRight = axis === "y" && centre.x > low.x + outside.x - standsOut;
  return isSeen || isOnRight ? [boxShape("metal", { left: at.x - width / 2, bottom, width, height })] : [];
}

/** Of supports that stand one behind the other the first. */
function onePlaceEach(supports: readonly HardwarePart[], on: CasePlane["on"]): readonly HardwarePart[] {
  const places = supports.map(({ centre }) => Math.round(1e4 * on(centre).x));
  return supports.filter((_, i) => places.indexOf(places[i]!) === i);
}

/** A caster as its wheel under its plate, a foot as a block. */
function supportShapes(
  { item, centre, size, stock: { width, height } }: HardwarePart,
  on: CasePlane["on"],
  lift: number,
  { case: { journey } }: ReviewInput,
): readonly FigureShape[] {
  if (lift <= 0) return [];
  const { x } = on(centre);
  if (item.duty !== "roll") {
    const wide = size?.width ?? width;
    return [boxShape("metal", { left: x - wide / 2, bottom: 0, width: wide, height: lift })];
  }
  const radius = Math.min(0.45 * lift, (journey.wheel ?? 0.8 * lift) / 2);
  const rim = Array.from({ length: 16 }, (_, i) => {
    const angle = (i * Math.PI) / 8;
    return { x: x + radius * Math.cos(angle), y: radius + radius * Math.sin(angle) };
  });
  const plate = { left: x - height / 2, bottom: lift - 0.006, width: height, height: 0.006 };
  const fork = { left: x - 0.3 * radius, bottom: radius, width: 0.6 * radius, height: lift - radius };
  return [boxShape("metal", plate), boxShape("metal", fork), { what: "wheel", points: rim }];
}
