import type { Box, Face } from "../../design/index.js";
import { Length } from "../../quantity/index.js";
import { Refusal } from "../../refusal.js";
import type { ReviewInput } from "../review-input.js";

/** A thing inside a section, by its name, in the stacked case. */
export interface Body {
  /** The section it is in. */
  readonly section: string;
  /** Its name, unique in the case. */
  readonly name: string;
  /** Its box in the stacked case. */
  readonly box: Box;
}

const sides: Readonly<Record<Face, { readonly axis: "x" | "y" | "z"; readonly high: boolean }>> = {
  left: { axis: "x", high: false },
  right: { axis: "x", high: true },
  front: { axis: "y", high: false },
  back: { axis: "y", high: true },
  bottom: { axis: "z", high: false },
  top: { axis: "z", high: true },
};

/**
 * From a face of a content to the wall that it looks at.
 *
 * @throws Refusal when there is no such section
 */
export function wallAt(input: ReviewInput, { section: where, box }: Body, face: Face): Length {
  const { axis, high } = sides[face];
  const section = input.case.sections.find((one) => one.name === where);
  const part = input.parts.sections.find((one) => one.name === where);
  if (!section || !part) throw new Refusal(`room: no section ${where}`);
  const size = { x: section.inside.width, y: section.inside.depth, z: section.inside.height };
  const wall = high ? part.insideLow[axis] + size[axis] : part.insideLow[axis];
  return Length.si(Math.abs(wall - (high ? box.low[axis] + box.size[axis] : box.low[axis])));
}

/** What is nearer than this touches, m: less is rounding. */
const touching = 1e-6;

/**
 * Free way from a face of a content to the wall or to the next thing in front of it.
 *
 * @throws Refusal when there is no such section
 */
export function roomAt(input: ReviewInput, body: Body, face: Face): Length {
  const { name, box } = body;
  const { axis, high } = sides[face];
  const toWall = wallAt(input, body, face);
  const from = high ? box.low[axis] + box.size[axis] : box.low[axis];
  const others = [
    ...input.parts.contents.map(({ content, box: other }) => ({ name: content.name, box: other })),
    ...input.parts.shelves.map(({ shelf, panel }) => ({ name: shelf.name, box: panel.box })),
    ...input.parts.drawers.map(({ drawer, box: taken }) => ({ name: drawer.name, box: taken })),
  ].filter((other) => other.name !== name);
  const ways = others
    .filter((other) => faces(other.box, box, axis))
    .map((other) => (high ? other.box.low[axis] - from : from - other.box.low[axis] - other.box.size[axis]))
    .filter((way) => way >= -touching);
  const least = Math.min(toWall, ...ways);
  return Length.si(least > touching ? least : 0);
}

/** Does one box stand before the other along an axis? */
function faces(one: Box, other: Box, axis: "x" | "y" | "z"): boolean {
  return (["x", "y", "z"] as const)
    .filter((across) => across !== axis)
    .every(
      (across) =>
        one.low[across] < other.low[across] + other.size[across] &&
        other.low[across] < one.low[across] + one.size[across],
    );
}
