/** What to measure at each step of the work, what it should be and how far off it may be, with a blank for what it is. */
import { type HungLeaf, sheetPieces } from "../../design/index.js";
import { Length, Mass } from "../../quantity/index.js";
import { hardwareAt } from "../hardware-stage.js";
import { blanks, type GroupBlock, group, type RecipeSection, section, sentence, when } from "../recipe.js";
import { diagonalDifference, diagonalOf, thicknessTolerance, tolerance } from "../tolerances.js";
import { listed, total } from "../words.js";
import type { Workshop } from "../workshop.js";
import { gapsBeside } from "./doors.js";
import { adhesiveFor } from "./gluing.js";
import { sectionMass } from "./what-you-build.js";

/** The section on what to measure. */
export function checksSection(workshop: Workshop): RecipeSection {
  return section(
    "What to measure at each step",
    sentence(
      "Thickness and squareness follow EN 315 as remembered: squareness a thousandth of the length; look it up if it matters to you. Every other allowance is common practice. Write down what you measure, also when it is right.",
    ),
    stockChecks(workshop),
    panelChecks(workshop),
    ...when(workshop.parts.facings.length > 0, () => glueChecks(workshop)),
    ...when(hasOpenings(workshop), () => openingChecks(workshop)),
    ...when(workshop.parts.bars.length > 0, () => barChecks(workshop)),
    boxChecks(workshop),
    ...when(workshop.parts.fastenings.length > 0, () => fastenerChecks(workshop)),
    ...when(leavesOf(workshop).length > 0, () => doorChecks(workshop)),
    finishedChecks(workshop),
  );
}

function stockChecks({ purchases, rule }: Workshop): GroupBlock {
  return group(
    purchases.facings.length > 0 ? "Sheets and laminate, when they arrive" : "Sheets, when they arrive",
    sentence("Calliper at three places near the edges."),
    blanks(
      [
        ...purchases.sheets.map(({ stock: { name, thickness } }) => {
          const { over, under } = thicknessTolerance(thickness);
          return { name, thickness, allowed: `+${rule.fine(over)}, -${rule.fine(under)}` };
        }),
        ...purchases.facings.map(({ stock: { name, thickness } }) => ({
          name,
          thickness,
          allowed: "as its maker says",
        })),
      ],
      [
        { heading: "Stock", cell: ({ name }) => name, align: "left" },
        { heading: "Thickness planned", cell: ({ thickness }) => rule.fine(thickness), align: "left" },
        { heading: "Allowed", cell: ({ allowed }) => allowed, align: "left" },
      ],
      ["1", "2", "3"],
    ),
  );
}

function panelChecks({ pieces, rule }: Workshop): GroupBlock {
  return group(
    "Sheet pieces, after sawing",
    sentence(
      `Width and height within ${rule.fine(tolerance.sawn)}; the two diagonals no further apart than the table says.`,
    ),
    blanks(
      pieces.panels,
      [
        { heading: "Piece", cell: ({ code, name }) => `${code} ${name}` },
        { heading: "Width × height", cell: ({ part }) => rule.size(part.width, part.height), align: "left" },
        {
          heading: "Diagonals",
          cell: ({ part }) => rule.drawn(diagonalOf(part.width, part.height)),
          align: "left",
        },
        {
          heading: "Apart",
          cell: ({ part }) => rule.fine(diagonalDifference(part.width, part.height)),
          align: "left",
        },
      ],
      ["Width", "Height", "Diag. 1", "Diag. 2"],
    ),
  );
}

function glueChecks(workshop: Workshop): GroupBlock {
  const { facings } = workshop.parts;
  return group(
    "Adhesive, on each panel",
    sentence(
      `Out of the can within ${100 * tolerance.adhesive} % of the plan; no hollow sound anywhere after curing.`,
    ),
    blanks(
      facings,
      [
        { heading: "Panel", cell: ({ panel, side }) => `${panel}, ${side}` },
        {
          heading: "Planned",
          cell: (facing) => {
            const mass = adhesiveFor(facing, workshop);
            return mass === undefined ? "–" : Mass.show(mass, { unit: "g", digits: 3 });
          },
        },
      ],
      ["Can before", "Can after", "Hollow spots"],
    ),
  );
}

function hasOpenings({ parts }: Workshop): boolean {
  return sheetPieces(parts).some(({ openings }) => openings.length > 0);
}

function openingChecks({ parts, rule }: Workshop): GroupBlock {
  return group(
    "Openings, after cutting",
    sentence(`Size and place within ${rule.fine(tolerance.opening)}; no crack at a corner; edges sealed.`),
    blanks(
      sheetPieces(parts).flatMap(({ id, openings }) => openings.map((opening) => ({ id, opening }))),
      [
        { heading: "Panel", cell: ({ id }) => id },
        { heading: "Opening", cell: ({ opening }) => opening.name },
        {
          heading: "Width × height",
          cell: ({ opening }) => rule.size(opening.width, opening.height),
          align: "left",
        },
      ],
      ["Width", "Height"],
    ),
  );
}

function barChecks({ pieces, rule }: Workshop): GroupBlock {
  return group(
    "Edge bars, after sawing",
    sentence(
      `Length within ${rule.fine(tolerance.bar)}, ends square or mitred within half a degree, no burr.`,
    ),
    blanks(
      pieces.bars,
      [
        { heading: "Bar", cell: ({ code, name }) => `${code} ${name}` },
        { heading: "Length", cell: ({ part }) => rule.length(part.length), align: "left" },
      ],
      ["Measured"],
    ),
  );
}

/** Boxes, clamped: sizes and diagonals. */
function boxChecks({ parts, rule }: Workshop): GroupBlock {
  const views = parts.sections.flatMap(({ name, outside: { size } }) => [
    { name, view: "front, width × height", one: size.x, other: size.z },
    { name, view: "side, depth × height", one: size.y, other: size.z },
    { name, view: "top, width × depth", one: size.x, other: size.y },
  ]);
  return group(
    "Boxes, clamped, before they are fixed",
    sentence(
      `Outside sizes within ${rule.fine(tolerance.box)}; the two diagonals of a face no further apart than the table says. It should stand on a flat floor without rocking.`,
    ),
    blanks(
      views,
      [
        { heading: "Section", cell: ({ name }) => name },
        { heading: "Face", cell: ({ view }) => view },
        { heading: "Size", cell: ({ one, other }) => rule.size(one, other), align: "left" },
        {
          heading: "Diagonals apart",
          cell: ({ one, other }) => rule.fine(diagonalDifference(one, other)),
          align: "left",
        },
      ],
      ["Size", "Diag. 1", "Diag. 2"],
    ),
  );
}

/** How every fastener sits. */
function fastenerChecks({ parts, pieces }: Workshop): GroupBlock {
  const panels = pieces.panels.filter(({ name }) => parts.fastenings.some(({ panel }) => panel === name));
  const count = (id: string): number =>
    total(
      parts.fastenings.filter(({ panel }) => panel === id),
      (one) => one.count,
    );
  return group(
    "Rivets and screws, after each panel",
    sentence(
      "Every head flat on the metal: a slip of paper does not go under it. No washer turns with the fingers, no layer gapes. Drill out and set anew what fails.",
    ),
    blanks(
      panels,
      [
        { heading: "Panel", cell: ({ code, name }) => `${code} ${name}` },
        { heading: "Fasteners", cell: ({ name }) => count(name) },
      ],
      ["Right", "Set anew"],
    ),
  );
}

/** The door leaves of the case. */
function leavesOf({ parts }: Workshop): { readonly id: string; readonly leaf: HungLeaf }[] {
  return parts.panels.flatMap((panel) => (panel.leaf ? [{ id: panel.id, leaf: panel.leaf }] : []));
}

/** The gaps round doors. */
function doorChecks(workshop: Workshop): GroupBlock {
  const { rule } = workshop;
  return group(
    "Doors, hung",
    sentence(
      `Gap within ${rule.fine(tolerance.gap)} all round; it opens and shuts without rubbing, also with the box lifted at one corner.`,
    ),
    blanks(
      leavesOf(workshop),
      [
        { heading: "Door", cell: ({ id }) => id },
        {
          heading: "Gap planned",
          cell: ({ leaf }) => listed([rule.fine(leaf.clearance), ...gapsBeside(leaf, rule)]),
          align: "left",
        },
      ],
      ["Left", "Right", "Top", "Bottom"],
    ),
  );
}

interface FinishedCheck {
  /** What to measure, and how. */
  readonly what: string;
  /** What it should be, in words. */
  readonly planned: string;
  /** How far off it may be, in words. */
  readonly allowed: string;
}

/** Base to lift to for the tip check: IEC 62368-1, clause 8.6, tilts equipment by 10 degrees. */
const tilt = (10 * Math.PI) / 180;

/** The last group of checks. */
function finishedChecks(workshop: Workshop): GroupBlock {
  return group(
    "The whole case, finished",
    sentence(
      "Tip check: two people, one on each side, the loose contents out, wheels braked if it has any, floor clear. Lift one long side slowly, only as far as the table says, and feel whether it wants to come back; never let go and never stand where it would fall. Leave it out if the review says it may tip.",
    ),
    blanks(
      [...latchChecks(workshop), ...wheelChecks(workshop), ...massChecks(workshop), tipCheck(workshop)],
      [
        { heading: "What", cell: ({ what }) => what },
        { heading: "Planned", cell: ({ planned }) => planned, align: "left" },
        { heading: "Allowed", cell: ({ allowed }) => allowed, align: "left" },
      ],
      ["Measured"],
    ),
  );
}

function latchChecks({ parts, rule }: Workshop): FinishedCheck[] {
  return when(hardwareAt("joining", parts).length > 0, () => ({
    what: "Gap between stacked sections, latches shut",
    planned: "none",
    allowed: `up to ${rule.fine(Length.of(1, "mm"))}, even all round`,
  }));
}

function wheelChecks({ parts, rule }: Workshop): FinishedCheck[] {
  return when(hardwareAt("wheels", parts).length > 0, () => ({
    what: "Casters on a flat floor, rocked corner to corner",
    planned: "all touch",
    allowed: `up to ${rule.fine(Length.of(1, "mm"))} under one`,
  }));
}

function massChecks(workshop: Workshop): FinishedCheck[] {
  const { parts, rule } = workshop;
  return parts.sections.flatMap(({ name }) => {
    const mass = sectionMass(workshop, name);
    const within = mass ? `within ${100 * tolerance.mass} %` : "write it down";
    const rides = parts.contents.some(({ content }) => content.section === name);
    return (rides ? (["empty", "loaded"] as const) : (["empty"] as const)).map((which) => ({
      what: `Weight of ${name}, ${which}`,
      planned: mass ? rule.mass(mass[which]) : "not reckoned",
      allowed: within,
    }));
  });
}

function tipCheck({ parts, rule }: Workshop): FinishedCheck {
  const base = parts.sections[0]?.outside.size;
  const lift = base ? rule.length(Length.si(Math.min(base.x, base.y) * Math.sin(tilt))) : "10 degrees";
  return {
    what: "Tip check, one long side lifted 10 degrees",
    planned: `lift ${lift}, no further`,
    allowed: "wants to come back",
  };
}
