/** What happens to shelves and drawers inside a case: jolted, pushed by the road, and pulled out with their load. */
import type { Box, ShelfPart } from "../../design/index.js";
import type { ReviewInput } from "../../model/index.js";
import type { RideWay, TipWay } from "../../moving/index.js";
import { Length } from "../../quantity/index.js";
import type { Box2, Point2 } from "../../shape/index.js";
import { styleOf } from "../amount.js";
import {
  axisOf,
  boxShape,
  type CasePlane,
  casePlane,
  cornersOfBox,
  insideOf,
  type PlaneAxis,
  signOf,
} from "./case-plane.js";
import type { Figure, FigureShape } from "./figure.js";
import { groundUnder, seenFrom } from "./standing-figures.js";

/** Down. */
const down = -Math.PI / 2;

/** A section cut open, with one of its shelves and what stands on that. */
interface CutShelf {
  /** The section. */
  readonly plane: CasePlane;
  /** The shelf edge on. */
  readonly shelf: Box2;
  /** The shelf and all that it carries. */
  readonly loaded: Box2;
  /** The walls, other things inside, the shelf and its load. */
  readonly shapes: readonly FigureShape[];
}

function cutShelf(input: ReviewInput, { panel, shelf, carries }: ShelfPart, axis: PlaneAxis): CutShelf {
  const plane = casePlane(input, axis, [shelf.section]);
  const flat = (box: Box): Box2 => flatOn(plane, box);
  const own = new Set(carries.map(({ content }) => content.name));
  const others = [
    ...input.parts.contents
      .filter(({ content }) => content.section === shelf.section && !own.has(content.name))
      .map(({ box }) => box),
    ...input.parts.drawers.filter(({ drawer }) => drawer.section === shelf.section).map(({ box }) => box),
  ];
  const things = carries.map(({ box }) => flat(box));
  const board = flat(panel.box);
  return {
    plane,
    shelf: board,
    loaded: {
      ...board,
      height: Math.max(board.height, ...things.map(({ bottom, height }) => bottom + height - board.bottom)),
    },
    shapes: [
      boxShape("sheet", plane.box),
      boxShape("inside", insideOf(input, shelf.section, plane)),
      ...others.map((box) => boxShape("hidden", flat(box))),
      ...things.map((box) => boxShape("thing", box)),
      boxShape("sheet", board),
    ],
  };
}

/** A box of the case as it is seen. */
function flatOn({ axis, on }: CasePlane, { low, size }: Box): Box2 {
  const { x, y } = on(low);
  return { left: x, bottom: y, width: size[axis], height: size.z };
}

/** How deep a shelf is drawn to sag, over its length. */
const drawnSag = 0.04;

/** A shelf bending in a jolt, and the room under it. */
export function joltedFigure(
  input: ReviewInput,
  part: ShelfPart,
  { load, room, free }: { readonly load: string; readonly room: Length; readonly free: string },
): Figure {
  const { plane, shelf, loaded, shapes } = cutShelf(input, part, "x");
  const [right, middle] = [shelf.left + shelf.width, shelf.left + shelf.width / 2];
  const bent = Array.from({ length: 13 }, (_, i): Point2 => {
    const share = i / 12;
    return {
      x: shelf.left + share * shelf.width,
      y: shelf.bottom - drawnSag * shelf.width * Math.sin(Math.PI * share),
    };
  });
  const outside = plane.box.left + plane.box.width;
  return {
    title: `The ${part.shelf.name} in a jolt`,
    description: `Cut open, seen from the ${seenFrom(plane)}. The broken curve is how it bends, drawn larger than it is. Broken boxes are what else is inside.`,
    shapes,
    lines: [{ what: "reach", points: bent }],
    arrows: [
      {
        at: { x: middle, y: shelf.bottom + loaded.height },
        way: down,
        acts: "pushing",
        share: 0.8,
        words: load,
      },
    ],
    places: [shelf.left, right].map((x) => ({ what: "edge" as const, at: { x, y: shelf.bottom } })),
    sizes: [
      {
        from: { x: outside, y: shelf.bottom - room },
        to: { x: outside, y: shelf.bottom },
        off: -1.5,
        words: free,
      },
    ],
  };
}

/** What the road does to a shelf, as words and as a way on the plane on which that is seen. */
const rides: Readonly<
  Record<RideWay, { readonly axis: PlaneAxis; readonly way: number; readonly when: string }>
> = {
  forward: { axis: "y", way: Math.PI, when: "the vehicle brakes" },
  rearward: { axis: "y", way: 0, when: "the vehicle starts" },
  sideways: { axis: "x", way: 0, when: "the vehicle turns" },
};

/** A shelf with its load on its joints, as the road pushes it. */
export function riddenShelfFigure(input: ReviewInput, part: ShelfPart, ride: RideWay, words: string): Figure {
  const { axis, way, when } = rides[ride];
  const { plane, shelf, loaded, shapes } = cutShelf(input, part, axis);
  const ahead = axis === "y" ? ", as if the front rode ahead" : "";
  const front = way === 0 ? loaded.left + loaded.width : loaded.left;
  const level = loaded.bottom + loaded.height / 2;
  return {
    title: `The ${part.shelf.name} when ${when}`,
    description: `Cut open, seen from the ${seenFrom(plane)}${ahead}. The road pushes the shelf and its load along, and their weight bears down on the same joints.`,
    shapes,
    arrows: [
      { at: { x: front, y: level }, way, acts: "pulling", share: 0.8, words },
      { at: { x: loaded.left + loaded.width / 2, y: level }, way: down, acts: "pulling", share: 0.6 },
    ],
    places: [shelf.left, shelf.left + shelf.width].map((x) => ({
      what: "point" as const,
      at: { x, y: shelf.bottom + shelf.height / 2 },
    })),
  };
}

/** A drawer or a shelf on slides, and where it comes out. */
export interface PulledOut {
  /** What it is called. */
  readonly name: string;
  /** Its section. */
  readonly section: string;
  /** The side of the case that it comes out of. */
  readonly side: TipWay;
  /** The room that it takes when it is shut. */
  readonly box: Box;
  /** How far it comes out. */
  readonly out: Length;
}

/** What is pulled out on its slides, with its load at its middle. */
export function pulledOutFigure(
  input: ReviewInput,
  { name, section, side, box, out }: PulledOut,
  words: string,
): Figure {
  const plane = casePlane(input, axisOf(side), [section]);
  const sign = signOf(side);
  const shut = flatOn(plane, box);
  const opened = { ...shut, left: shut.left + sign * out };
  const face = sign > 0 ? plane.box.left + plane.box.width : plane.box.left;
  const edge = sign > 0 ? opened.left + opened.width : opened.left;
  const [from, to] = [Math.min(face, edge), Math.max(face, edge)];
  const top = opened.bottom + opened.height;
  return {
    title: `The ${name} pulled out`,
    description: `Seen from the ${seenFrom(plane)}. Its weight with a jolt hangs on its slides, which reach out of the case with it. The broken box is its place when it is shut.`,
    shapes: [...plane.shapes, { what: "hidden", points: cornersOfBox(shut) }, boxShape("thing", opened)],
    lines: [
      groundUnder(plane),
      {
        what: "held",
        points: [
          { x: face, y: opened.bottom },
          { x: face - sign * 0.4 * shut.width, y: opened.bottom },
        ],
      },
    ],
    arrows: [
      { at: { x: opened.left + opened.width / 2, y: top }, way: down, acts: "pushing", share: 0.8, words },
    ],
    sizes: [
      {
        from: { x: from, y: opened.bottom },
        to: { x: to, y: opened.bottom },
        off: -1.6,
        words: Length.show(Length.si(to - from), styleOf(input.case)),
      },
    ],
  };
}
