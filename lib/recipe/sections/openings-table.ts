/** The openings of one panel as a table. */

import type { PanelPart, Parts, PlacedOpening } from "../../design/index.js";
import { openingTolerance } from "../../model/index.js";
import { Length } from "../../quantity/index.js";
import { circleOf, cornersOf, type Point2, roundedBoxOf, type Shape } from "../../shape/index.js";
import { blanks, type RecipeBlock } from "../recipe.js";
import type { Rule } from "../rule.js";

/** Shape, size and place of each opening. */
export function openingsTable(
  { id, openings }: Pick<PanelPart, "id" | "openings">,
  parts: Pick<Parts, "panels">,
  rule: Rule,
): RecipeBlock {
  return blanks(
    openings,
    [
      { heading: "Opening", cell: ({ name }) => name },
      { heading: "Shape", cell: (opening) => shapeWords(opening, rule), align: "left" },
      {
        heading: "Across, from left",
        cell: ({ low, width, outline }) => edgeMarks(low.x, width, outline, rule),
        align: "left",
      },
      {
        heading: "Up, from bottom",
        cell: ({ low, height, outline }) => edgeMarks(low.y, height, outline, rule),
        align: "left",
      },
      {
        heading: "Within",
        cell: ({ why, name }) => toleranceWords(why, openingTolerance(`${id}.${name}`, parts), rule),
        align: "left",
      },
    ],
    ["Width", "Height"],
    ({ name }) =>
      (["opening width", "opening height"] as const).map((what) => ({ what, of: `${id}.${name}` })),
  );
}

/** A cut-out for hardware may be larger, never smaller; any other may be off either way, a doorway by less. */
function toleranceWords(why: PlacedOpening["why"], allowed: Length, rule: Rule): string {
  const off = rule.fine(allowed);
  return why === "case" ? `±${off}` : `+${off}, -0`;
}

/** Where an opening begins and ends; a round one is placed by its centre. */
function edgeMarks(low: Length, size: Length, outline: Shape, rule: Rule): string {
  if (circleOf(outline)) return `centre ${rule.length(Length.si(low + size / 2))}`;
  return rule.marks([low, Length.si(low + size)]);
}

function shapeWords({ kind, outline, width, height }: PlacedOpening, rule: Rule): string {
  if (circleOf(outline)) return `round, ${rule.length(width)} across`;
  const box = roundedBoxOf(outline);
  if (box) {
    const corners = box.radius > 0 ? `corner radius ${rule.length(Length.si(box.radius))}` : "square corners";
    return `${rule.size(width, height)}, ${corners}`;
  }
  const corners = cornersOf(outline);
  if (!corners) return `${kind}, ${rule.size(width, height)}`;
  const marks = (axis: keyof Point2): string => rule.marks(corners.map((corner) => Length.si(corner[axis])));
  return `corners across ${marks("x")}, each up ${marks("y")}`;
}
