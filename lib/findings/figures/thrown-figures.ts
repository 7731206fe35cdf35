/** A thing thrown at a side of the case when the van brakes. */
import { faceAxes, type PanelPart } from "../../design/index.js";
import type { ReviewInput, ThrownContent } from "../../model/index.js";
import { Length } from "../../quantity/index.js";
import { Refusal } from "../../refusal.js";
import { styleOf } from "../amount.js";
import { boxShape, casePlane } from "./case-plane.js";
import type { Figure } from "./figure.js";
import { groundUnder, seenFrom } from "./standing-figures.js";

/**
 * A section cut open, the thing where it stands, and where it strikes.
 *
 * @param words of the force that it strikes with
 * @throws Refusal for a panel that nothing slides against
 */
export function thrownFigure(
  input: ReviewInput,
  { section, face, box: panel, id }: PanelPart,
  { part, way }: ThrownContent,
  words: string,
): Figure {
  const side = face && faceAxes[face];
  if (!side || side.normal === "z") throw new Refusal(`picture of what is thrown: ${id} is no side`);
  const { normal: axis } = side;
  const sign = side.end === "low" ? -1 : 1;
  const plane = casePlane(input, axis, [section]);
  const flat = ({ low, size }: PanelPart["box"]) => {
    const at = plane.on(low);
    return { left: at.x, bottom: at.y, width: size[axis], height: size.z };
  };
  const thing = flat(part.box);
  const sheet = flat(panel);
  const struck = { ...thing, left: thing.left + sign * way };
  const front = thing.left + (sign > 0 ? thing.width : 0);
  const middle = thing.bottom + thing.height / 2;
  const stands = plane.shapes.filter(({ points }) => points.every(({ y }) => y <= plane.box.bottom + 1e-9));
  return {
    title: `What flies at ${id}`,
    description: `Seen from the ${seenFrom(plane)}, cut open. When the van brakes, only the panel stops the ${part.content.name}.`,
    shapes: [
      ...stands,
      boxShape("inside", plane.box),
      boxShape("pressed", sheet, id),
      ...(way > 0 ? [boxShape("hidden", struck)] : []),
      boxShape("thing", thing, part.content.name),
    ],
    lines: [groundUnder(plane)],
    arrows: [
      { at: { x: front, y: middle }, way: sign > 0 ? 0 : Math.PI, acts: "pulling", share: 0.7, words },
    ],
    sizes:
      way > 0
        ? [
            {
              from: { x: front, y: thing.bottom },
              to: { x: front + sign * way, y: thing.bottom },
              off: sign > 0 ? -1.5 : 1.5,
              words: Length.show(way, styleOf(input.case)),
            },
          ]
        : [],
  };
}
