/** The case on the road and let fall: strapped down while the vehicle brakes, and above the ground that stops it. */
import type { Content, Lashing } from "../../design/index.js";
import { type Footprint, type ReviewInput, ridesOnBlocks, sectionBalance } from "../../model/index.js";
import { Angle, Length, Mass } from "../../quantity/index.js";
import { Refusal } from "../../refusal.js";
import type { Point2 } from "../../shape/index.js";
import { styleOf } from "../amount.js";
import {
  boxShape,
  type CasePlane,
  casePlane,
  cornersOfBox,
  posed,
  raised,
  turnedAbout,
} from "./case-plane.js";
import type { Figure, FigureArrow, FigureLine, FigureShape } from "./figure.js";
import { groundUnder, seenFrom, weightAt } from "./standing-figures.js";

/** What is strapped down. */
export interface Strapped {
  /** Its sections; all where left out. */
  readonly sections?: readonly string[];
  /** How it rides. */
  readonly standing: Footprint;
  /** Its straps. */
  readonly straps: Lashing;
}

/** Strapped to the floor of the vehicle, seen from the front, a turn of the road pushing it aside. */
export function strappedFigure(
  input: ReviewInput,
  { sections, standing, straps }: Strapped,
  words: string | undefined,
): Figure {
  const plane = casePlane(input, "x", sections);
  const { mass, ...place } = standing.balance.value;
  const centre = plane.on(place);
  const { box } = plane;
  const top = box.bottom + box.height;
  const [left, right] = [box.left, box.left + box.width];
  const out = top / Math.tan(Math.max(straps.angle, 0.3));
  const ground = groundUnder(plane);
  const floor: FigureLine = {
    ...ground,
    points: [
      { x: left - out - 0.1 * box.width, y: 0 },
      { x: right + out + 0.1 * box.width, y: 0 },
    ],
  };
  const { arrow, place: mark } = weightAt(centre, Mass.show(mass, styleOf(input.case)));
  const pull = (x: number, sign: 1 | -1): FigureArrow => ({
    at: { x: x + 0.35 * sign * out, y: 0.65 * top },
    way: -Math.PI / 2 + sign * (Math.PI / 2 - straps.angle),
    acts: "pulling",
    share: 0.6,
    ...(sign > 0 && words !== undefined ? { words } : {}),
  });
  return {
    title: "Strapped down in the vehicle",
    description: `Seen from the ${seenFrom(plane)}. Straps over the top pull it down; the road pushes it at its centre of gravity.${ridesOnBlocks(input) ? " It stands on blocks." : ""}`,
    shapes: [...(ridesOnBlocks(input) ? blocksUnder(plane) : []), ...plane.shapes],
    lines: [
      floor,
      {
        what: "strap",
        points: [
          { x: left - out, y: 0 },
          { x: left, y: top },
          { x: right, y: top },
          { x: right + out, y: 0 },
        ],
      },
    ],
    arrows: [
      arrow,
      { at: { x: left, y: centre.y }, way: 0, acts: "pushing", share: 0.8, words: "push of the road" },
      pull(left, -1),
      pull(right, 1),
    ],
    places: [
      mark,
      { what: "point", at: { x: right + out, y: 0 }, words: Angle.show(straps.angle, { digits: 2 }) },
    ],
  };
}

/** A block under each end of what rides on blocks. */
function blocksUnder({ box: { left, bottom, width } }: CasePlane): readonly FigureShape[] {
  const wide = 0.08 * width;
  if (bottom <= 0) return [];
  return [left, left + width - wide].map((at) =>
    boxShape("foam", { left: at, bottom: 0, width: wide, height: bottom }),
  );
}

/** How a section lands. */
export type Landing = "flat" | "edge" | "corner" | "side" | "casters";

/** A section let fall from a height, with what rides in it on its foam. */
export function fallingFigure(
  input: ReviewInput,
  section: string,
  landing: Landing,
  height: Length,
  content?: Content,
): Figure {
  const plane = casePlane(input, "x", [section]);
  const { mass, ...place } = sectionBalance(input, section).value;
  const centre = plane.on(place);
  const pose = poseOf(plane, centre, landing, height);
  const style = styleOf(input.case);
  const { arrow, place: mark } = weightAt(pose(centre), Mass.show(mass, style));
  const corners = posed(plane.shapes, pose).flatMap(({ points }) => points);
  const right = Math.max(...corners.map(({ x }) => x));
  const inside = content ? foamShapes(input, plane, content) : [];
  return {
    title: `Fall of ${section}, ${landingWords[landing]}`,
    description: `Seen from the ${seenFrom(plane)}, at the height that it falls from. Its centre of gravity stands over what strikes first.`,
    shapes: posed([...plane.shapes, ...inside], pose),
    lines: [groundUnder(plane)],
    arrows: [arrow],
    places: [mark],
    sizes: [
      {
        from: { x: right, y: 0 },
        to: { x: right, y: Math.min(...corners.map(({ y }) => y)) },
        off: -1.5,
        words: Length.show(height, style),
      },
    ],
  };
}

const landingWords: Readonly<Record<Landing, string>> = {
  flat: "flat",
  edge: "on an edge",
  corner: "on a corner",
  side: "flat on a side",
  casters: "on its casters",
};

/** The fall as it is drawn: turned so that the centre stands over what strikes, then raised. */
function poseOf({ box, shapes }: CasePlane, centre: Point2, landing: Landing, height: Length) {
  const corner = { x: box.left, y: box.bottom };
  const tilted = landing === "edge" || landing === "corner";
  const turn = tilted
    ? Math.atan2(centre.x - corner.x, centre.y - corner.y)
    : landing === "side"
      ? Math.PI / 2
      : 0;
  const turned = turnedAbout(centre, turn);
  const low = Math.min(...posed(shapes, turned).flatMap(({ points }) => points.map(({ y }) => y)));
  const up = raised(height - low);
  return (at: Point2): Point2 => up(turned(at));
}

/** What the road does to a thing inside: braking throws it forward, a bounce throws it up. */
export function riddenFigure(
  input: ReviewInput,
  content: Content,
  road: "braking" | "bounce",
  words: string,
): Figure {
  const plane = casePlane(input, "y", [content.section]);
  const shapes = foamShapes(input, plane, content);
  const places = shapes.at(-1)?.points ?? [];
  const [xs, ys] = [places.map(({ x }) => x), places.map(({ y }) => y)];
  const middle = { x: (Math.min(...xs) + Math.max(...xs)) / 2, y: (Math.min(...ys) + Math.max(...ys)) / 2 };
  const thrown =
    road === "braking"
      ? { at: { x: Math.min(...xs), y: middle.y }, way: Math.PI }
      : { at: { x: middle.x, y: Math.max(...ys) }, way: Math.PI / 2 };
  return {
    title: `The ${content.name} ${road === "braking" ? "under braking" : "in a bounce"}`,
    description: `Seen from the ${seenFrom(plane)}, as if the front rode ahead. The arrow is what the road does to it.`,
    shapes: [{ what: "inside", points: cornersOfBox(plane.box) }, ...shapes],
    lines: [groundUnder(plane)],
    arrows: [{ ...thrown, acts: "pulling", words }],
  };
}

/** A thing in its place, and the foam that it lies on. */
function foamShapes({ parts }: ReviewInput, plane: CasePlane, content: Content) {
  const part = parts.contents.find((one) => one.content.name === content.name);
  if (!part) throw new Refusal(`picture of a fall: no ${content.name}`);
  const { low, size } = part.box;
  const at = plane.on(low);
  const thing = boxShape("thing", { left: at.x, bottom: at.y, width: size.x, height: size.z }, content.name);
  const { foam } = content.needs;
  if (!foam) return [thing];
  const left = at.x + (size.x - foam.padWidth) / 2;
  const pad = { left, bottom: at.y - foam.thickness, width: foam.padWidth, height: foam.thickness };
  return [{ what: "foam" as const, points: cornersOfBox(pad) }, thing];
}
