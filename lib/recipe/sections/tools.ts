/** The tools that this case asks for, each with what it is for. */

import { adhesiveTraits } from "../../bonding/index.js";
import { type PlacedOpening, sheetPieces } from "../../design/index.js";
import type { FastenerKind } from "../../fastening/index.js";
import { takesWasher } from "../../model/index.js";
import { tableOf } from "../../page/index.js";
import { Money } from "../../quantity/index.js";
import { circleOf, cornersOf, roundedBoxOf } from "../../shape/index.js";
import { bitFor } from "../drilling.js";
import { flowingSection, type RecipeSection, when } from "../recipe.js";
import { distinct, listed } from "../words.js";
import type { Workshop } from "../workshop.js";

/** The section on tools. */
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
  const others = openings.filter(({ outline }) => !circleOf(outline));
  const isCurved = ({ outline }: PlacedOpening): boolean => !(roundedBoxOf(outline) ?? cornersOf(outline));
  const [straight, curved] = [others.filter((one) => !isCurved(one)), others.filter(isCurved)];
  const rounds = sizes(
    openings.filter(({ outline }) => circleOf(outline)),
    ({ width }) => width,
  );
  const radii = sizes(straight, ({ outline }) => roundedBoxOf(outline)?.radius ?? 0);
  const corner = radii.filter((radius) => radius > 0);
  const both = units === "inch" ? rule.length : rule.fine;
  return [
    ...when(straight.length > 0, () => ({
      tool: "Jigsaw, or router with a template",
      use: "openings with straight sides",
    })),
    ...when(curved.length > 0, () => ({
      tool: "Router with a template, or jigsaw with a narrow blade",
      use: `curved openings: ${listed(distinct(curved.map(({ kind }) => kind)))}`,
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

/** A tool and what it is for. */
export interface Tool {
  /** The tool, or a few that go together. */
  readonly tool: string;
  /** What it is for. */
  readonly use: string;
}

/** For laying laminate. */
export function gluing({ purchases, parts }: Workshop): Tool[] {
  if (parts.facings.length === 0) return [];
  const traits = purchases.adhesives.map(({ stock }) => adhesiveTraits[stock.kind]);
  const contact = traits.some(({ gripsOnTouch }) => gripsOnTouch);
  const pressed = traits.some(({ gripsOnTouch }) => !gripsOnTouch);
  return [
    ...when(
      traits.some(({ sprayed }) => !sprayed),
      () => ({ tool: "Roller or notched spreader", use: "spreading adhesive" }),
    ),
    ...when(
      traits.some(({ sprayed }) => sprayed),
      () => ({ tool: "Spray gun or canister hose", use: "spray adhesive" }),
    ),
    ...when(contact, () => ({
      tool: "Hard hand roller (J-roller), dowels as slip sticks",
      use: "laying laminate with contact adhesive",
    })),
    ...when(pressed, () => ({
      tool: "Flat cauls and clamps, or weights",
      use: "pressing laminate until the glue holds",
    })),
    { tool: "Router with a flush-trim bit, file", use: "trimming laminate to the panel" },
  ];
}

/** The tools that set fasteners of each kind, given their names. */
const settingTools: Readonly<Record<FastenerKind, (names: readonly string[]) => Tool>> = {
  rivet: (names) => ({ tool: `Blind rivet tool with nosepieces for: ${listed(names)}`, use: "riveting" }),
  screw: () => ({ tool: "Screwdriver, bits to match", use: "screws" }),
  insert: () => ({
    tool: "Insert driver, depth stop on the drill, screwdriver",
    use: "threaded inserts and their screws",
  }),
  bolt: () => ({ tool: "Two wrenches", use: "bolts and nuts" }),
};

/** For holes and fasteners. */
export function fastening({ parts, case: { units } }: Workshop): Tool[] {
  const { fastenings } = parts;
  const named = (kind: FastenerKind): string[] =>
    distinct(
      fastenings.filter(({ fastener }) => fastener.kind === kind).map(({ fastener }) => fastener.name),
    );
  const used = (Object.keys(settingTools) as FastenerKind[])
    .map((kind) => ({ kind, names: named(kind) }))
    .filter(({ names }) => names.length > 0);
  const bits = distinct(fastenings.map(({ fastener }) => bitFor(fastener, units).name));
  return [
    ...when(bits.length > 0, () => ({
      tool: `Drill with bits: ${listed(bits)}`,
      use: "holes for fasteners; drill a try hole in scrap first",
    })),
    ...when(fastenings.some(takesWasher), () => ({
      tool: "Long-nosed pliers, adhesive tape",
      use: "holding washers on the inside",
    })),
    ...used.map(({ kind, names }) => settingTools[kind](names)),
    { tool: "Clamps, four corner squares", use: "dry fit and edges" },
  ];
}

/** For the builder. */
export function safety({ purchases }: Workshop): Tool[] {
  const solvent = purchases.adhesives.some(({ stock }) => stock.solvent !== "none");
  return [
    { tool: "Eye and hearing protection, dust mask, dust extraction", use: "all work with power tools" },
    { tool: "Gloves", use: "carrying sheets and metal, never at a spinning blade" },
    ...when(solvent, () => ({
      tool: "Respirator and gloves as the safety data sheet says",
      use: "solvent adhesive",
    })),
  ];
}
