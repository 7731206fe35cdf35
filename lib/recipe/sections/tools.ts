/** The tools that this case asks for, each with what it is for. */
import { type PlacedOpening, sheetPieces } from "../../design/index.js";
import { tableOf } from "../../page/index.js";
import { Money } from "../../quantity/index.js";
import { flowingSection, when } from "../make-block.js";
import type { RecipeSection } from "../recipe.js";
import { distinct, listed } from "../words.js";
import type { Workshop } from "../workshop.js";
import { fastening, gluing, safety, type Tool } from "./joining-tools.js";

/** The section. */
export function toolsSection(workshop: Workshop): RecipeSection {
  const { tools } = workshop.case.business;
  return flowingSection(
    "Tools",
    tableOf(
      [
        ...measuring(workshop),
        ...sawing(workshop),
        ...cuttingOut(workshop),
        ...gluing(workshop),
        ...fastening(workshop),
        ...safety(workshop),
      ],
      [
        { heading: "Tool", cell: ({ tool }) => tool },
        { heading: "For", cell: ({ use }) => use },
      ],
    ),
    ...when(tools.length > 0, () =>
      tableOf(
        tools,
        [
          { heading: "Tool", cell: ({ name }) => name },
          { heading: "Price", cell: ({ price }) => Money.show(price), align: "right" },
        ],
        "Tools counted in the cost of this case",
      ),
    ),
  );
}

function measuring({ purchases }: Workshop): Tool[] {
  return [
    { tool: "Tape, steel rule, square, fine pencil", use: "marking out; one tape for the whole job" },
    { tool: "Calliper", use: "thickness of sheets, bits, fasteners" },
    { tool: "Floor or hanging scale", use: "each section before it is lifted" },
    ...when(purchases.adhesives.length > 0, () => ({
      tool: "Kitchen scale",
      use: "adhesive can before and after each panel",
    })),
  ];
}

function sawing({ parts }: Workshop): Tool[] {
  const mitred = parts.bars.some(({ ends }) => ends === "mitred");
  return [
    { tool: "Circular or table saw, fine-toothed blade, straight guide", use: "panels from sheets" },
    ...when(parts.bars.length > 0, () => ({
      tool: `${mitred ? "Mitre saw" : "Saw with a square stop"}, blade for non-ferrous metal`,
      use: mitred ? "edge bars, mitred ends" : "edge bars, square ends",
    })),
    ...when(parts.bars.length > 0, () => ({
      tool: "File and deburring tool",
      use: "every cut end and hole in metal",
    })),
  ];
}

function cuttingOut({ parts, rule, case: { units } }: Workshop): Tool[] {
  const openings = sheetPieces(parts).flatMap((panel) => panel.openings);
  const straight = openings.filter(({ outline }) => outline.kind !== "circle");
  const rounds = sizes(
    openings.filter(({ outline }) => outline.kind === "circle"),
    ({ width }) => width,
  );
  const radii = sizes(straight, ({ outline }) => (outline.kind === "rectangle" ? outline.cornerRadius : 0));
  const corner = radii.filter((radius) => radius > 0);
  const both = units === "inch" ? rule.length : rule.fine;
  return [
    ...when(straight.length > 0, () => ({
      tool: "Jigsaw, or router with a template",
      use: "openings with straight sides",
    })),
    ...when(rounds.length > 0, () => ({
      tool: `Hole saw or circle cutter: ${listed(rounds.map((size) => both(size)))}`,
      use: "round openings",
    })),
    ...when(corner.length > 0, () => ({
      tool: `Bit or hole saw of twice the corner radius: ${listed(corner.map((radius) => both((2 * radius) as typeof radius)))}`,
      use: "corners of openings, drilled first",
    })),
  ];
}

function sizes(
  openings: readonly PlacedOpening[],
  sizeOf: (opening: PlacedOpening) => number,
): PlacedOpening["width"][] {
  const tenths = distinct(openings.map((opening) => Math.round(sizeOf(opening) * 10_000)));
  return tenths.sort((a, b) => a - b).map((size) => (size / 10_000) as PlacedOpening["width"]);
}
