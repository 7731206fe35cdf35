/** Every panel with its openings and holes, each measured from the panel's bottom left corner. */

import { type Fastening, type PanelPart, sheetPieces } from "../../design/index.js";
import { listed } from "../../findings/index.js";
import { takesWasher } from "../../model/index.js";
import { steps, tableOf } from "../../page/index.js";
import { Length } from "../../quantity/index.js";
import { circleOf, roundedBoxOf } from "../../shape/index.js";
import { type LetteredGroup, panelHolesDrawing } from "../drawings/panel-holes.js";
import { type DrillStage, drillFor, drillStageOf, type HoleMarks, holeMarks } from "../drilling.js";
import { letteredGroups } from "../lettered-groups.js";
import type { CodedPiece } from "../pieces.js";
import {
  checklist,
  flowingSection,
  type GroupBlock,
  page,
  type RecipeBlock,
  type RecipeSection,
  sentence,
  when,
} from "../recipe.js";
import type { Rule } from "../rule.js";
import { needed, type ShopStep, type Supply, step, supplies, using } from "../supplies.js";
import { counted, distinct, grouped, total } from "../words.js";
import type { Workshop } from "../workshop.js";
import { openingsTable } from "./openings-table.js";

/** The section on openings and holes: a page a panel. */
export function openingsAndHolesSection(workshop: Workshop): RecipeSection {
  const drawn = workshop.pieces.panels.filter(({ part }) => hasMarks(part, workshop));
  const cut = workshop.pieces.panels.filter(({ part }) => hasWork(part, workshop));
  const plain = workshop.pieces.panels.filter((piece) => !cut.includes(piece));
  const boards = workshop.pieces.strips.filter(({ name }) => isDrilled(name, workshop));
  const inPlace = [...cut.filter((piece) => !drawn.includes(piece)), ...boards];
  return flowingSection(
    "Openings and holes",
    ...when(cut.length > 0, () =>
      steps(
        panelSteps(workshop).map(({ text }) => text),
        "Order of work",
      ),
    ),
    ...when(cut.length > 0, () => outOfPlace),
    ...drawn.map((piece) => panelGroup(piece, workshop)),
    ...when(inPlace.length > 0, () => byHandList(inPlace, workshop)),
    ...plainPieces(plain),
  );
}

const outOfPlace: RecipeBlock = sentence(
  "If an opening is too small, file it. If it is too large, or out of place by more than the table says, stop and saw the panel anew. Plug a stray hole with a glued dowel.",
);

/** Words of the column "When". */
const stageWords: readonly string[] = [
  "bench means now, on the flat panel",
  "metal means later, clamped up square, through bar or corner and panel together",
  "door means when the door hangs",
  "stack means when the sections stand stacked",
  "place means where the table of the stage puts the thing",
];

/** Every step on the flat panels. */
export function panelSteps(workshop: Workshop): ShopStep[] {
  const { parts } = workshop;
  const openings = sheetPieces(parts).flatMap((panel) => panel.openings);
  const { tape_measure: tape, drill, backer, router, openingBit, deburr, eyes, mask, sealer } = supplies;
  return [
    step`Lay the panel OUTSIDE face up. Hook the ${tape} at 0, its bottom left corner; mark all positions without moving it.`,
    ...when(openings.length > 0, () =>
      using(
        step`Cut the openings first: drill the corners, then cut between them with the ${router} and a ${openingBit}, or a ${supplies.jigsaw}. Finish to the line.`,
        ...openingTools(workshop),
        eyes,
        mask,
      ),
    ),
    ...when(
      openings.length > 0,
      () => step`Coat every cut edge with ${sealer}, with a ${supplies.brush}, and let it dry.`,
    ),
    ...when(parts.fastenings.length > 0, () => step`This is when to drill. ${sentenceOf(stageWords)}.`),
    ...when(parts.fastenings.length > 0, () =>
      using(
        step`Drill square with the ${drill}, ${backer} behind. "Each across × each up" means a hole where every line across meets every line up.`,
        ...drillBits(workshop),
        deburr,
        eyes,
      ),
    ),
  ];
}

function sentenceOf(words: readonly string[]): string {
  return words.join(". ").replace(/(^|\. )\w/g, (first) => first.toUpperCase());
}

/** Cutters for round openings and corners, by their size. */
function openingTools({ parts, rule }: Workshop): Supply[] {
  const openings = sheetPieces(parts).flatMap((panel) => panel.openings);
  const rounds = openings.flatMap(({ outline, width }) => (circleOf(outline) ? [width] : []));
  const corners = openings.flatMap(({ outline }) => {
    const radius = circleOf(outline) ? 0 : (roundedBoxOf(outline)?.radius ?? 0);
    return radius > 0 ? [Length.si(2 * radius)] : [];
  });
  const sizes = distinct([...rounds, ...corners].map((size) => rule.length(size)));
  return sizes.map((size) =>
    needed(`hole saw or circle cutter, ${size}`, "round openings and corners of openings", "1"),
  );
}

/** Every bit that the holes take. */
function drillBits({ parts, case: { units } }: Workshop): Supply[] {
  const names = distinct(
    parts.fastenings.flatMap((one) => drillFor(one, units).bits.map(({ name }) => name)),
  );
  return names.map((name) => needed(`drill bit ${name}`, "holes of fasteners", "2"));
}

function hasMarks({ id, openings }: PanelPart, { parts }: Workshop): boolean {
  return openings.length > 0 || parts.fastenings.some(({ panel, at }) => panel === id && at.length > 0);
}

/** Holes whose place is another part's: a list without a drawing. */
function byHandList(pieces: readonly CodedPiece<{ readonly id: string }>[], workshop: Workshop): RecipeBlock {
  return checklist(
    "Drilled in place, evenly spread, when the part is fitted",
    pieces.flatMap(({ code, part }) =>
      workshop.parts.fastenings
        .filter(({ panel }) => panel === part.id)
        .map(
          ({ holds, fastener, count, ...rest }) =>
            `${code} ${part.id}: ${count} × ${fastener.name} for ${holds}, bit ${drillFor({ holds, fastener, count, ...rest }, workshop.case.units).words}`,
        ),
    ),
  );
}

function hasWork({ id, openings }: PanelPart, workshop: Workshop): boolean {
  return openings.length > 0 || isDrilled(id, workshop);
}

function isDrilled(id: string, { parts }: Workshop): boolean {
  return parts.fastenings.some(({ panel }) => panel === id);
}

/** So many codes stand in one sentence. */
const mostCodes = 15;

function plainPieces(pieces: readonly CodedPiece<PanelPart>[]): RecipeBlock[] {
  const sentences = Array.from({ length: Math.ceil(pieces.length / mostCodes) }, (_, i) =>
    pieces.slice(i * mostCodes, (i + 1) * mostCodes),
  );
  return sentences.map((some) =>
    sentence(`Nothing to cut out or drill: ${listed(some.map(({ code }) => code))}.`),
  );
}

function panelGroup({ code, part: panel }: CodedPiece<PanelPart>, workshop: Workshop): GroupBlock {
  const { parts, rule } = workshop;
  const groups = letteredGroups(panel.id, parts);
  return page(
    `${code} ${panel.id}${panel.facing ? ", laminate outside" : ""}, ${rule.size(panel.width, panel.height)}`,
    panelHolesDrawing(panel, groups, rule, parts),
    ...when(panel.openings.length > 0, () => openingsTable(panel, parts, rule)),
    ...holesTables(groups, workshop),
    ...when(panel.openings.length > 0, () => sentence(`☐ ${checkOf(panel, rule).join(" ")}`)),
  );
}

/** Distances that a tape checks: each opening to the right and to the top, and neighbours to each other. */
function checkOf({ openings, width, height }: PanelPart, rule: Rule): string[] {
  return openings.map(
    (one) =>
      `Check ${one.name} to the right edge ${rule.length(Length.si(width - one.low.x - one.width))}, to the top ${rule.length(Length.si(height - one.low.y - one.height))}.`,
  );
}

/** The holes with marks, a table for each way of drilling, and those that are drilled in place. */
function holesTables(groups: readonly LetteredGroup[], workshop: Workshop): RecipeBlock[] {
  const rows = groups.map(({ letter, fastening }) => ({ letter, fastening, marks: holeMarks(fastening) }));
  const marked = rows.filter(({ marks }) => marks !== undefined);
  const byHand = rows.filter(({ marks }) => marks === undefined);
  return [
    ...grouped(marked, ({ fastening }) => drillWords(fastening, workshop)).map(([words, some]) =>
      holesTable(words, some, workshop.rule),
    ),
    ...when(byHand.length > 0, () =>
      checklist(
        "Drilled in place, when the part is fitted",
        byHand.map(
          ({ fastening }) =>
            `${counted(fastening.count, "hole")} for ${fastening.holds}: ${drillWords(fastening, workshop)}`,
        ),
      ),
    ),
  ];
}

/** "rivet 3/16 short with washer, bit no. 11, when: metal" */
function drillWords(fastening: Fastening, { parts, case: { units } }: Workshop): string {
  const washer = takesWasher(fastening) ? " with washer" : "";
  const stage = whenWords(drillStageOf(fastening, parts));
  return `${fastening.fastener.name}${washer}, bit ${drillFor(fastening, units).words}, when: ${stage}`;
}

interface HolesRow extends LetteredGroup {
  /** Where its holes are. */
  readonly marks: HoleMarks | undefined;
}

function holesTable(words: string, rows: readonly HolesRow[], rule: Rule): RecipeBlock {
  const count = total(rows, ({ fastening }) => fastening.at.length);
  return tableOf(
    rows,
    [
      { heading: "Group", cell: ({ letter }) => letter },
      { heading: "Holds", cell: ({ fastening }) => fastening.holds },
      { heading: "Count", cell: ({ fastening }) => fastening.count },
      {
        heading: "Across from left × up from bottom",
        cell: ({ marks }) => (marks ? placesWords(marks, rule) : ""),
        align: "left",
      },
      { heading: "☐", cell: () => "☐", align: "center" },
    ],
    `${counted(count, "hole")}: ${words}`,
  );
}

function whenWords(stage: DrillStage): string {
  return stage === "hand" ? "place" : stage;
}

/** "3, 4 × 2-1/2 in": each across × each up. "3 × 2-1/2; 4 × 5 in": a hole each. */
function placesWords({ across, up, read }: HoleMarks, rule: Rule): string {
  const all = (marks: readonly Length[]): string => marks.map((mark) => rule.running(mark)).join(", ");
  const places =
    read === "crossings"
      ? `${all(across)} × ${all(up)}`
      : across.map((x, i) => `${rule.running(x)} × ${rule.running(up[i] ?? Length.si(0))}`).join("; ");
  return `${places}\u00a0${rule.unit}`;
}
