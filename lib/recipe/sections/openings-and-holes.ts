/** Every panel with its openings and holes, each measured from the panel's bottom left corner. */
import { type Fastening, type PanelPart, type Parts, sheetPieces } from "../../design/index.js";
import { steps, tableOf } from "../../page/index.js";
import { type LetteredGroup, panelHolesDrawing } from "../drawings/panel-holes.js";
import { bitFor, drillStageOf, drillStages, type HoleMarks, holeMarks } from "../drilling.js";
import type { CodedPiece } from "../pieces.js";
import {
  flowingSection,
  type GroupBlock,
  group,
  type RecipeBlock,
  type RecipeSection,
  sentence,
  when,
} from "../recipe.js";
import type { Rule } from "../rule.js";
import { counted, listed, total } from "../words.js";
import type { Workshop } from "../workshop.js";
import { openingsTable } from "./openings-table.js";

/** The section on openings and holes. */
export function openingsAndHolesSection(workshop: Workshop): RecipeSection {
  const cut = workshop.pieces.panels.filter(({ part }) => hasWork(part, workshop));
  const plain = workshop.pieces.panels.filter(({ part }) => !hasWork(part, workshop));
  return flowingSection(
    "Openings and holes",
    ...when(cut.length > 0, () => workOrder(workshop)),
    ...(plain.length > 0 ? [plainPieces(plain)] : []),
    ...cut.map((piece) => panelGroup(piece, workshop)),
  );
}

/** Why not everything is drilled at once. */
const drillOrder =
  'The tables say when each group is drilled. "Bench": now, on the flat panel. "Metal": later, when the box is clamped up square, through bar or corner and panel together. "Door" and "stack": when the door hangs, when the sections stand stacked. "Hand": where the thing turns out to sit. Mark them all now, and compare when you get there. Marks "in pairs" go together, the first across with the first up, the second with the second.';

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
      ...(parts.fastenings.length > 0 ? [drillOrder] : []),
      "Drill with scrap behind the panel, so that the back does not break out, and square to the face.",
    ],
    "Order of work",
  );
}

function hasWork({ id, openings }: PanelPart, { parts }: Workshop): boolean {
  return openings.length > 0 || parts.fastenings.some(({ panel }) => panel === id);
}

function plainPieces(pieces: readonly CodedPiece<PanelPart>[]): RecipeBlock {
  return sentence(
    `Nothing to cut out or drill: ${listed(pieces.map(({ code, name }) => `${code} ${name}`))}.`,
  );
}

function panelGroup({ code, part: panel }: CodedPiece<PanelPart>, workshop: Workshop): GroupBlock {
  const { parts, rule } = workshop;
  const groups = letterGroups(
    parts.fastenings.filter((fastening) => fastening.panel === panel.id),
    parts,
  );
  return group(
    `${code} ${panel.id}`,
    panelHolesDrawing(panel, groups, rule),
    ...when(panel.openings.length > 0, () => openingsTable(panel.openings, rule)),
    ...when(groups.length > 0, () => holesTable(groups, workshop)),
  );
}

/** A, B ... Z, AA, AB ..., what is drilled first first. */
function letterGroups(fastenings: readonly Fastening[], parts: Parts): readonly LetteredGroup[] {
  return drillStages
    .flatMap((stage) => fastenings.filter((fastening) => drillStageOf(fastening, parts) === stage))
    .map((fastening, i) => ({ letter: letterOf(i), fastening }));
}

function letterOf(index: number): string {
  const last = String.fromCharCode(65 + (index % 26));
  return index < 26 ? last : letterOf(Math.floor(index / 26) - 1) + last;
}

function holesTable(
  groups: readonly LetteredGroup[],
  { parts, rule, case: { units } }: Workshop,
): RecipeBlock {
  const marked = groups.map(({ letter, fastening }) => ({ letter, fastening, marks: holeMarks(fastening) }));
  return tableOf(
    marked,
    [
      { heading: "Group", cell: ({ letter }) => letter },
      { heading: "Holds", cell: ({ fastening }) => fastening.holds },
      { heading: "Drill", cell: ({ fastening }) => drillStageOf(fastening, parts) },
      { heading: "Bit", cell: ({ fastening }) => bitFor(fastening.fastener, units).name, align: "left" },
      { heading: "Holes", cell: ({ fastening }) => fastening.count },
      { heading: "Across, from left", cell: ({ marks }) => acrossWords(marks, rule), align: "left" },
      { heading: "Up, from bottom", cell: ({ marks }) => upWords(marks, rule), align: "left" },
      {
        heading: "Pitch",
        cell: ({ fastening: { pitch } }) => (pitch ? rule.drawn(pitch) : ""),
        align: "right",
      },
      {
        heading: "Edge",
        cell: ({ fastening: { edgeDistance } }) => (edgeDistance ? rule.drawn(edgeDistance) : ""),
        align: "right",
      },
    ],
    holesCaption(groups),
  );
}

function acrossWords(marks: HoleMarks | undefined, rule: Rule): string {
  return marks ? rule.marks(marks.across) : "to fit";
}

function upWords(marks: HoleMarks | undefined, rule: Rule): string {
  if (!marks) return "";
  return `${rule.marks(marks.up)}${marks.read === "pairs" ? ", in pairs" : ""}`;
}

function holesCaption(groups: readonly LetteredGroup[]): string {
  const marked = total(groups, ({ fastening }) => fastening.at.length);
  const byHand = total(groups, ({ fastening }) => fastening.count) - marked;
  const fitted = byHand > 0 ? `, and ${byHand} to fit by hand` : "";
  return `${counted(marked, "hole")}, one at every crossing of its marks${fitted}.`;
}
