/** Every panel with its openings and holes, each measured from the panel's bottom left corner. */
import type { Fastening, PanelPart, PlacedOpening } from "../../design/index.js";
import { steps, tableOf } from "../../page/index.js";
import { Length } from "../../quantity/index.js";
import { type LetteredGroup, panelHolesDrawing } from "../drawings/panel-holes.js";
import { bitFor } from "../drill-bits.js";
import { holeMarks } from "../hole-marks.js";
import { group, section, when } from "../make-block.js";
import { type CodedPiece, sheetPieces } from "../pieces.js";
import type { GroupBlock, RecipeBlock, RecipeSection } from "../recipe.js";
import type { Rule } from "../rule.js";
import { counted } from "../words.js";
import type { Workshop } from "../workshop.js";

/** The section. */
export function openingsAndHolesSection(workshop: Workshop): RecipeSection {
  const cut = workshop.pieces.panels.filter(({ part }) => hasWork(part, workshop));
  const plain = workshop.pieces.panels.filter(({ part }) => !hasWork(part, workshop));
  return section(
    "Openings and holes",
    workOrder(workshop),
    ...(plain.length > 0 ? [plainPieces(plain)] : []),
    ...cut.map((piece) => panelGroup(piece, workshop)),
  );
}

function workOrder({ parts }: Workshop): RecipeBlock {
  const openings = sheetPieces(parts).some((panel) => panel.openings.length > 0);
  return steps(
    [
      "Work from the outside face. Measure everything from the bottom left corner with the tape hooked there once; adding up steps adds up errors.",
      ...(openings
        ? [
            "Openings first: drill the corners, then saw between them and finish to the line. Keep the piece if a door leaf is to be matched to it.",
          ]
        : []),
      "Drill the holes on the bench only for what is fixed to a single panel. Holes under edge bars and corners are drilled through the metal when the box is clamped together square: mark them here, and check that they agree.",
      "Drill with scrap behind the panel, so that the back does not break out, and square to the face.",
    ],
    "Order of work",
  );
}

function hasWork({ id, openings }: PanelPart, { parts }: Workshop): boolean {
  return openings.length > 0 || parts.fastenings.some(({ panel }) => panel === id);
}

function plainPieces(pieces: readonly CodedPiece<PanelPart>[]): RecipeBlock {
  return tableOf(
    pieces,
    [
      { heading: "Code", cell: ({ code }) => code },
      { heading: "Piece", cell: ({ name }) => name },
    ],
    "Pieces without openings or holes",
  );
}

function panelGroup({ code, part: panel }: CodedPiece<PanelPart>, workshop: Workshop): GroupBlock {
  const groups = letterGroups(workshop.parts.fastenings.filter((fastening) => fastening.panel === panel.id));
  const { rule } = workshop;
  return group(
    `${code} ${panel.id}`,
    panelHolesDrawing(panel, groups, rule),
    ...when(panel.openings.length > 0, () => openingsTable(panel.openings, rule)),
    ...when(groups.length > 0, () => holesTable(groups, workshop)),
  );
}

/** A, B ... Z, AA, AB ... */
function letterGroups(fastenings: readonly Fastening[]): readonly LetteredGroup[] {
  return fastenings.map((fastening, i) => ({ letter: letterOf(i), fastening }));
}

function letterOf(index: number): string {
  const last = String.fromCharCode(65 + (index % 26));
  return index < 26 ? last : letterOf(Math.floor(index / 26) - 1) + last;
}

function openingsTable(openings: readonly PlacedOpening[], rule: Rule): RecipeBlock {
  return tableOf(
    openings,
    [
      { heading: "Opening", cell: ({ name }) => name },
      { heading: "Shape", cell: (opening) => shapeWords(opening, rule), align: "left" },
      {
        heading: "Across, from the left edge",
        cell: ({ low, width }) => rule.marks([low.u, Length.si(low.u + width)]),
        align: "left",
      },
      {
        heading: "Up, from the bottom edge",
        cell: ({ low, height }) => rule.marks([low.v, Length.si(low.v + height)]),
        align: "left",
      },
      { heading: "Saw line", cell: ({ perimeter }) => rule.length(perimeter), align: "left" },
    ],
    "Openings, by their four edges",
  );
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

function holesTable(groups: readonly LetteredGroup[], { rule, case: { units } }: Workshop): RecipeBlock {
  const marked = groups.map(({ letter, fastening }) => ({ letter, fastening, marks: holeMarks(fastening) }));
  return tableOf(
    marked,
    [
      { heading: "Group", cell: ({ letter }) => letter },
      { heading: "Holds", cell: ({ fastening }) => fastening.holds },
      { heading: "Bit", cell: ({ fastening }) => bitFor(fastening.fastener, units).name, align: "left" },
      { heading: "Holes", cell: ({ fastening }) => fastening.count },
      {
        heading: "Across, from the left edge",
        cell: ({ marks }) => (marks ? rule.marks(marks.across) : "by hand, to fit"),
        align: "left",
      },
      {
        heading: "Up, from the bottom edge",
        cell: ({ marks }) =>
          marks ? `${rule.marks(marks.up)}${marks.read === "pairs" ? ", in pairs" : ""}` : "",
        align: "left",
      },
      {
        heading: "Pitch",
        cell: ({ fastening }) => (fastening.pitch ? rule.length(fastening.pitch) : ""),
        align: "left",
      },
      {
        heading: "To edge",
        cell: ({ fastening }) => (fastening.edgeDistance ? rule.length(fastening.edgeDistance) : ""),
        align: "left",
      },
    ],
    `Holes: ${counted(
      groups.reduce((sum, { fastening }) => sum + fastening.count, 0),
      "hole",
    )}. A hole at every crossing of its marks; "in pairs" means the first with the first, the second with the second.`,
  );
}
