/** A section that is pushed out of square, and a door that hangs open on its hinges. */
import type { HardwarePart, PanelPart } from "../../design/index.js";
import type { ReviewInput } from "../../model/index.js";
import type { TipWay } from "../../moving/index.js";
import { Refusal } from "../../refusal.js";
import {
  axisOf,
  boxShape,
  type CasePlane,
  casePlane,
  cornersOfBox,
  type PlaneAxis,
  posed,
  signOf,
} from "./case-plane.js";
import type { Figure, FigureArrow } from "./figure.js";
import { groundUnder, seenFrom } from "./standing-figures.js";

/** Down. */
const down = -Math.PI / 2;

/** How far the top leans in a picture, as a share of the height: the racking itself is too small to be seen. */
const drawnLean = 0.07;

/** What a push at the top of a section does. */
export interface Pushed {
  /** The section. */
  readonly section: string;
  /** The axis that it is pushed along. */
  readonly axis: PlaneAxis;
  /** The push in words. */
  readonly push: string;
  /** What comes of it: "Its top moves 0.001 in". */
  readonly outcome: string;
  /** How far the top moves, in words; absent where something else is asked. */
  readonly racks?: string | undefined;
}

/** A section held at its bottom and pushed at its top edge, with its shape at rest. */
export function rackedFigure(input: ReviewInput, { section, axis, push, outcome, racks }: Pushed): Figure {
  const plane = casePlane(input, axis, [section]);
  const { left, bottom, width, height } = bodyOf(plane, input, section);
  const top = bottom + height;
  const pose = ({ x, y }: { x: number; y: number }) => ({ x: x + drawnLean * Math.max(0, y - bottom), y });
  return {
    title: `${section} pushed at its top`,
    description: `Seen from the ${seenFrom(plane)}. Its bottom is held. ${outcome}; the lean is drawn much larger, and broken lines show it at rest.`,
    shapes: [
      ...posed(plane.shapes, pose),
      { what: "hidden", points: cornersOfBox({ left, bottom, width, height }) },
    ],
    lines: [groundUnder(plane)],
    arrows: [{ at: pose({ x: left, y: top }), way: 0, acts: "pushing", words: push }],
    places: [
      { what: "edge", at: { x: left, y: bottom } },
      { what: "edge", at: { x: left + width, y: bottom } },
      {
        what: "point",
        at: pose({ x: left + width, y: top }),
        ...(racks === undefined ? {} : { words: racks }),
      },
    ],
  };
}

/** A section without what it stands on, on a plane. */
function bodyOf({ axis, on }: CasePlane, { parts }: ReviewInput, name: string) {
  const own = parts.sections.find((one) => one.name === name)?.outside;
  if (!own) throw new Refusal(`picture of the box: no section ${name}`);
  const { x, y } = on(own.low);
  return { left: x, bottom: y, width: own.size[axis], height: own.size.z };
}

const sides: readonly string[] = ["left", "right", "front", "back"] satisfies readonly TipWay[];

function isSide(face: string | undefined): face is TipWay {
  return face !== undefined && sides.includes(face);
}

/** A door of a side stood open, its hinges one above the other: its weight, and what it does to them. */
export function hangingDoorFigure(
  input: ReviewInput,
  { id, section, face, box }: PanelPart,
  hinges: readonly HardwarePart[],
  weight: string,
): Figure {
  if (!isSide(face)) throw new Refusal(`picture of ${id}: it is no door of a side`);
  const plane = casePlane(input, axisOf(face), [section]);
  const body = bodyOf(plane, input, section);
  const sign = signOf(face);
  const edge = sign > 0 ? body.left + body.width : body.left;
  const heights = hinges.map(({ centre }) => plane.on(centre).y);
  const [low, high] = [Math.min(...heights), Math.max(...heights)];
  if (!(high > low)) throw new Refusal(`picture of ${id}: its hinges do not stand one above the other`);
  const width = plane.axis === "x" ? box.size.y : box.size.x;
  const bottom = plane.on(box.low).y;
  const leaf = { left: Math.min(edge, edge + sign * width), bottom, width, height: box.size.z };
  const pulled = sign > 0 ? 0 : Math.PI;
  const hinge = (y: number, way: number, acts: FigureArrow["acts"]): FigureArrow => ({
    at: { x: edge, y },
    way,
    acts,
    share: 0.5,
  });
  return {
    title: `${id}, open`,
    description: `Seen from the ${seenFrom(plane)}. The weight of the open door pulls its upper hinge off and presses on the lower one.`,
    shapes: [...plane.shapes, boxShape("thing", leaf)],
    lines: [groundUnder(plane)],
    arrows: [
      {
        at: { x: edge + (sign * width) / 2, y: bottom + leaf.height / 2 },
        way: down,
        acts: "pulling",
        words: weight,
      },
      hinge(high, pulled, "pulling"),
      hinge(low, Math.PI - pulled, "pushing"),
    ],
    places: [
      { what: "point", at: { x: edge, y: high } },
      { what: "point", at: { x: edge, y: low } },
    ],
  };
}
