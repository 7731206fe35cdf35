/** The openings of one panel as a table. */
import type { PlacedOpening } from "../../design/index.js";
import { tableOf } from "../../page/index.js";
import { Length } from "../../quantity/index.js";
import { circleOf, cornersOf, type Point2, roundedBoxOf, type Shape } from "../../shape/index.js";
import type { RecipeBlock } from "../recipe.js";
import type { Rule } from "../rule.js";

/** Shape, size and place of each opening. */
export function openingsTable(openings: readonly PlacedOpening[], rule: Rule): RecipeBlock {
  return tableOf(
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
    ],
    "Openings",
  );
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
