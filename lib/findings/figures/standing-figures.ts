/** The case on its feet with what would tip it: a lean, a push, the wind, a child, a slope. */
import {
  type Footprint,
  footprint,
  type ReviewInput,
  stackTop,
  standingHeight,
  tippingArm,
} from "../../model/index.js";
import { type TipWay, tipWays } from "../../moving/index.js";
import { Angle, Length, Mass } from "../../quantity/index.js";
import { Refusal } from "../../refusal.js";
import type { Point2 } from "../../shape/index.js";
import { styleOf } from "../amount.js";
import { axisOf, type CasePlane, casePlane, cornersOfBox, posed, signOf, turnedAbout } from "./case-plane.js";
import type { Figure, FigureArrow, FigureLine, FigurePlace, FigureSize } from "./figure.js";

/** The case on the ground, seen so that it falls to the left or to the right of the paper. */
export interface Standing {
  /** The case. */
  readonly plane: CasePlane;
  /** Its centre of gravity. */
  readonly centre: Point2;
  /** Where the line that it tips over goes through the paper. */
  readonly edge: Point2;
  /** To that edge: 1 to the right, -1 to the left. */
  readonly sign: 1 | -1;
  /** The ground under it. */
  readonly ground: FigureLine;
  /** Its weight in words. */
  readonly weight: string;
}

/** Down. */
const down = -Math.PI / 2;

/** The case on the ground, seen along the edge that it tips over to a side. */
export function standingTo(
  input: ReviewInput,
  side: TipWay,
  standing: Footprint = footprint(input),
): Standing {
  const plane = casePlane(input, axisOf(side));
  const { mass, ...place } = standing.balance.value;
  const centre = plane.on(place);
  const sign = signOf(side);
  return {
    plane,
    centre,
    edge: { x: centre.x + sign * tippingArm(standing, side), y: 0 },
    sign,
    ground: groundUnder(plane),
    weight: Mass.show(mass, styleOf(input.case)),
  };
}

/** The side to which the case tips at the least lean. */
export function firstSide(standing: Footprint): TipWay {
  const [first] = tipWays(standing);
  if (!first) throw new Refusal("picture of the case: it does not stand over its base");
  return first.way;
}

/** The ground under the case, a fifth of its width beyond it. */
export function groundUnder({ box }: CasePlane): FigureLine {
  const beyond = 0.25 * box.width;
  return {
    what: "ground",
    points: [
      { x: box.left - beyond, y: 0 },
      { x: box.left + box.width + beyond, y: 0 },
    ],
  };
}

/** The weight at the centre of gravity. */
export function weightAt(
  centre: Point2,
  words: string,
): { readonly arrow: FigureArrow; readonly place: FigurePlace } {
  return {
    arrow: { at: centre, way: down, acts: "pulling", share: 0.8, words },
    place: { what: "centre of gravity", at: centre },
  };
}

/** The height of a place above the ground, beside the case on the side away from the push. */
function heightOf({ y }: Point2, x: number, off: number, words: string): FigureSize {
  return { from: { x, y: 0 }, to: { x, y }, off, words };
}

/** The case as it stands, with its weight, the edge that it tips over and the lever of its weight. */
function upright(input: ReviewInput, found: Standing): Omit<Figure, "title" | "description"> {
  const { plane, centre, edge, ground, weight } = found;
  const { arrow, place } = weightAt(centre, weight);
  const arm = Length.show(Length.si(Math.abs(edge.x - centre.x)), styleOf(input.case));
  const [from, to] = edge.x > centre.x ? [centre.x, edge.x] : [edge.x, centre.x];
  return {
    shapes: plane.shapes,
    lines: [ground],
    arrows: [arrow],
    places: [place, { what: "edge", at: edge }],
    sizes: [{ from: { x: from, y: 0 }, to: { x: to, y: 0 }, off: -2.6, words: arm }],
  };
}

/** The case at the lean at which it tips: its centre of gravity stands over the edge. */
export function leaningFigure(input: ReviewInput, standing: Footprint = footprint(input)): Figure {
  const side = firstSide(standing);
  const found = standingTo(input, side, standing);
  const { plane, centre, edge, sign, ground, weight } = found;
  const lean = Math.atan2(Math.abs(edge.x - centre.x), centre.y);
  const pose = turnedAbout(edge, -sign * lean);
  const over = pose(centre);
  const { arrow, place } = weightAt(over, weight);
  const shown = Angle.show(Angle.si(lean), { digits: 2 });
  return {
    title: `The lean at which it tips to the ${side}`,
    description: `Seen from the ${seenFrom(plane)}. At ${shown} its centre of gravity stands straight over the edge of its base.`,
    shapes: [{ what: "hidden", points: cornersOfBox(plane.box) }, ...posed(plane.shapes, pose)],
    lines: [ground, { what: "reach", points: [over, edge] }],
    arrows: [arrow],
    places: [
      { ...place, words: shown },
      { what: "edge", at: edge },
    ],
  };
}

/** From where a case is seen. */
export function seenFrom({ axis }: CasePlane): string {
  return axis === "x" ? "front" : "right, its front at the left";
}

/** A level push at a height, towards the edge that it tips over first. */
export function pushFigure(input: ReviewInput, height: number, words: string | undefined): Figure {
  const standing = footprint(input);
  const side = firstSide(standing);
  const found = standingTo(input, side, standing);
  const { plane, sign } = found;
  const { box } = plane;
  const style = styleOf(input.case);
  const at = { x: sign > 0 ? box.left : box.left + box.width, y: height };
  const still = upright(input, found);
  return {
    ...still,
    title: `A push towards the ${side}`,
    description: `Seen from the ${seenFrom(plane)}. The push turns it about the edge of its base, and its weight turns it back.`,
    arrows: [
      ...(still.arrows ?? []),
      { at, way: sign > 0 ? 0 : Math.PI, acts: "pushing", ...(words === undefined ? {} : { words }) },
    ],
    sizes: [
      ...(still.sizes ?? []),
      heightOf(
        at,
        sign > 0 ? box.left + box.width : box.left,
        sign > 0 ? -2 : 2,
        Length.show(Length.si(height), style),
      ),
    ],
  };
}

/** Arrows of the wind up the side that it blows on. */
const gusts = 4;

/** The wind on the side that tips the case first. */
export function windFigure(input: ReviewInput, words: string | undefined): Figure {
  const standing = footprint(input);
  const side = firstSide(standing);
  const found = standingTo(input, side, standing);
  const { plane, sign } = found;
  const { left, width, bottom, height } = plane.box;
  const still = upright(input, found);
  const arrows = Array.from({ length: gusts }, (_, i): FigureArrow => {
    const at = { x: sign > 0 ? left : left + width, y: bottom + ((i + 0.5) / gusts) * height };
    const told = i === gusts - 1 && words !== undefined ? { words } : {};
    return { at, way: sign > 0 ? 0 : Math.PI, acts: "pushing", share: 0.6, ...told };
  });
  return {
    ...still,
    title: `The wind towards the ${side}`,
    description: `Seen from the ${seenFrom(plane)}. The wind presses on the whole side, and its weight turns it back.`,
    arrows: [...(still.arrows ?? []), ...arrows],
  };
}

/** What is open and climbed on. */
export interface ClimbedOn {
  /** The drawer or door in words. */
  readonly name: string;
  /** The side of the case that it opens on. */
  readonly side: TipWay;
  /** The section that it is in. */
  readonly section: string;
  /** From the face of the case to its outer edge, m. */
  readonly out: number;
}

/** A child on the edge of what is open. */
export function childFigure(
  input: ReviewInput,
  standing: Footprint,
  { name, side, section, out }: ClimbedOn,
  words: string | undefined,
): Figure {
  const found = standingTo(input, side, standing);
  const { plane, sign } = found;
  const own = input.parts.sections.find((one) => one.name === section)?.outside;
  if (!own) throw new Refusal(`picture of ${name}: no section ${section}`);
  const drawer = input.parts.drawers.find((one) => one.drawer.name === name)?.box;
  const opened = drawer ?? input.parts.panels.find(({ id }) => id === name)?.box ?? own;
  const corner = plane.on(opened.low);
  const face = sign > 0 ? own.low[plane.axis] + own.size[plane.axis] : own.low[plane.axis];
  const height = drawer ? opened.size.z : Math.min(opened.size.z, own.size.z);
  const edge = { x: face + sign * out, y: corner.y + height };
  const still = upright(input, found);
  return {
    ...still,
    title: `A child on the open ${name}`,
    description: `Seen from the ${seenFrom(plane)}. The child's weight on its outer edge turns the case about the edge of its base.`,
    shapes: [
      ...still.shapes,
      {
        what: "thing",
        points: cornersOfBox({ left: Math.min(face, edge.x), bottom: corner.y, width: out, height }),
      },
    ],
    arrows: [
      ...(still.arrows ?? []),
      { at: edge, way: down, acts: "pushing", share: 0.8, ...(words === undefined ? {} : { words }) },
    ],
    lines: [...(still.lines ?? [])],
  };
}

/** The top of the stack above the ground, m. */
export function topAboveGround(input: ReviewInput): number {
  return stackTop(input) + standingHeight(input);
}
