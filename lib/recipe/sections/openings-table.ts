/** The openings of one panel as a table. */
import type { OpeningOutline, PlacedOpening } from "../../design/index.js";
import { tableOf } from "../../page/index.js";
import { Length } from "../../quantity/index.js";
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
        cell: ({ low, width, outline }) => edgeMarks(low.u, width, outline, rule),
        align: "left",
      },
      {
        heading: "Up, from bottom",
        cell: ({ low, height, outline }) => edgeMarks(low.v, height, outline, rule),
        align: "left",
      },
    ],
    "Openings",
  );
}

/** Where an opening begins and ends; a round one is placed by its centre. */
function edgeMarks(low: Length, size: Length, { kind }: OpeningOutline, rule: Rule): string {
  if (kind === "circle") return `centre ${rule.length(Length.si(low + size / 2))}`;
  return rule.marks([low, Length.si(low + size)]);
}

function shapeWords({ outline, width, height }: PlacedOpening, rule: Rule): string {
  switch (outline.kind) {
    case "circle":
      return `round, ${rule.length(width)} across`;
    case "rectangle":
      return outline.cornerRadius > 0
        ? `${rule.size(width, height)}, corner radius ${rule.length(outline.cornerRadius)}`
        : `${rule.size(width, height)}, square corners`;
    case "polygon":
      return `corners across ${rule.marks(outline.points.map(({ u }) => u))}, each up ${rule.marks(outline.points.map(({ v }) => v))}`;
  }
}
