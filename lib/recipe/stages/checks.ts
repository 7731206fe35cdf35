/** What to measure at each step of the work, what it should be and how far off it may be, with a blank for what it is. */

import type { HungLeaf } from "../../design/index.js";
import { listed } from "../../findings/index.js";
import { diagonalDifference, thicknessAllowed, tolerance } from "../../model/index.js";
import { hardwareAt } from "../../plan/index.js";
import { Length } from "../../quantity/index.js";
import { type AsBuiltKey, blanks, type GroupBlock, group, sentence, when } from "../recipe.js";
import { sectionMass } from "../section-mass.js";
import { total } from "../words.js";
import type { Workshop } from "../workshop.js";
import { gapsBeside } from "./doors.js";

/** Thickness of what is bought. */
export function stockChecks({ parts, purchases, rule }: Workshop): GroupBlock {
  return group(
    purchases.facings.length > 0 ? "Sheets and laminate, when they arrive" : "Sheets, when they arrive",
    sentence(
      "Use the calliper at three places near the edges. If one is out, stop: sizes and fasteners must be worked out again.",
    ),
    blanks(
      [
        ...purchases.sheets.map(({ stock }) => {
          const { over, under } = thicknessAllowed(stock, parts);
          const allowed = `+${rule.fine(over)}, -${rule.fine(under)}`;
          return { name: stock.name, thickness: stock.thickness, allowed };
        }),
        ...purchases.facings.map(({ stock: { name, thickness } }) => ({
          name,
          thickness,
          allowed: "as its maker says",
        })),
        ...slotRows(purchases),
      ],
      [
        { heading: "Stock", cell: ({ name }) => name, align: "left" },
        { heading: "Thickness planned", cell: ({ thickness }) => rule.fine(thickness), align: "left" },
        { heading: "Allowed", cell: ({ allowed }) => allowed, align: "left" },
      ],
      ["1", "2", "3"],
      ({ name }) =>
        ["1", "2", "3"].map((at) => ({ ...(slotsOf.get(name) ?? { what: "thickness", of: name }), at })),
    ),
  );
}

/** Slots that are measured in an offcut, and what they are in as-built.csv. */
const slotsOf: ReadonlyMap<string, AsBuiltKey> = new Map([
  ["slot of the blade for sheets", { what: "kerf", of: "sheets" }],
  ["slot of the blade for bars", { what: "kerf", of: "bars" }],
]);

function slotRows({ kerfs, bars }: Workshop["purchases"]) {
  const slot = (of: "sheets" | "bars") => ({
    name: `slot of the blade for ${of}`,
    thickness: kerfs[of].kerf,
    allowed: "no wider",
  });
  return [slot("sheets"), ...when(bars.length > 0, () => slot("bars"))];
}

/** Boxes, clamped: sizes and diagonals. */
export function boxChecks({ parts, rule }: Workshop, section: string): GroupBlock {
  const views = parts.sections
    .filter(({ name }) => name === section)
    .flatMap(({ name, outside: { size } }) => [
      { name, at: "front", across: "width", up: "height", one: size.x, other: size.z } as const,
      { name, at: "side", across: "depth", up: "height", one: size.y, other: size.z } as const,
      { name, at: "top", across: "width", up: "depth", one: size.x, other: size.y } as const,
    ]);
  return group(
    `Measure ${section}, clamped, before it is fixed`,
    sentence(
      `Sizes are within ${rule.fine(tolerance.box)}, and it stands without rocking. If it is out, loosen the clamps, push the longer diagonal shorter, clamp and measure again.`,
    ),
    blanks(
      views,
      [
        { heading: "Section", cell: ({ name }) => name },
        { heading: "Face", cell: ({ at, across, up }) => `${at}, ${across} × ${up}` },
        { heading: "Size", cell: ({ one, other }) => rule.size(one, other), align: "left" },
        {
          heading: "Diagonals apart",
          cell: ({ one, other }) => rule.fine(diagonalDifference(one, other)),
          align: "left",
        },
      ],
      ["Across", "Up", "Apart"],
      ({ name: of, at, across, up }) => [
        { what: `outside ${across}`, of, at },
        { what: `outside ${up}`, of, at },
        { what: "diagonals apart", of, at },
      ],
    ),
  );
}

/** How every fastener sits. */
export function fastenerChecks({ parts }: Workshop, section: string): GroupBlock {
  const here = new Set(parts.panels.flatMap((panel) => (panel.section === section ? [panel.id] : [])));
  const count = total(
    parts.fastenings.filter(({ panel }) => here.has(panel)),
    (one) => one.count,
  );
  return group(
    `Look at the fasteners of ${section}`,
    sentence(
      "No slip of paper goes under a head; no washer turns with the fingers; no layer gapes. If it is out: drill it out, set a new one.",
    ),
    blanks(
      [{ section, count }],
      [
        { heading: "Section", cell: (row) => row.section },
        { heading: "Fasteners in its panels", cell: (row) => row.count },
      ],
      ["Right", "Set anew"],
    ),
  );
}

/** The door leaves of a section. */
function leavesOf({ parts }: Workshop, section: string): { readonly id: string; readonly leaf: HungLeaf }[] {
  return parts.panels.flatMap((panel) =>
    panel.leaf && panel.section === section ? [{ id: panel.id, leaf: panel.leaf }] : [],
  );
}

/** The gaps round doors. */
export function doorChecks(workshop: Workshop, section: string): GroupBlock {
  const { rule } = workshop;
  return group(
    "Measure the doors, hung",
    sentence(
      `The gap is within ${rule.fine(tolerance.gap)} all round. It shuts without rubbing, also with one corner of the box lifted. If it is out, plane the leaf, or shim its hinges.`,
    ),
    blanks(
      leavesOf(workshop, section),
      [
        { heading: "Door", cell: ({ id }) => id },
        {
          heading: "Gap planned",
          cell: ({ leaf }) => listed([rule.fine(leaf.clearance), ...gapsBeside(leaf, rule)]),
          align: "left",
        },
      ],
      ["Left", "Right", "Top", "Bottom"],
      ({ id: of }) => ["left", "right", "top", "bottom"].map((at) => ({ what: "gap", of, at })),
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
  /** What it becomes in as-built.csv, where it is a figure. */
  readonly record?: AsBuiltKey;
}

/** Base to lift to for the tip check: IEC 62368-1, clause 8.6, tilts equipment by 10 degrees. */
const tilt = (10 * Math.PI) / 180;

/** The last group of checks. */
export function finishedChecks(workshop: Workshop): GroupBlock {
  return group(
    "Measure the whole case, finished",
    sentence(
      "Check tipping with two people, loose contents out, brakes on and the floor clear. Lift one long side slowly, never let go, and stand where it cannot fall. Leave it out if it may tip. If a weight is out: ask for the lifting and tipping checks anew.",
    ),
    blanks(
      [...latchChecks(workshop), ...wheelChecks(workshop), ...massChecks(workshop), tipCheck(workshop)],
      [
        { heading: "What", cell: ({ what }) => what },
        { heading: "Planned", cell: ({ planned }) => planned, align: "left" },
        { heading: "Allowed", cell: ({ allowed }) => allowed, align: "left" },
      ],
      ["Measured"],
      ({ record }) => (record ? [record] : []),
    ),
  );
}

function latchChecks({ parts, rule }: Workshop): FinishedCheck[] {
  return when(hardwareAt("joining", parts).length > 0, () => ({
    what: "Gap between stacked sections, latches shut",
    planned: "even all round, metal on metal",
    allowed: `${rule.fine(Length.of(1, "mm"))} more on one side than on another`,
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
      record: { what: `weight ${which}`, of: name } as const,
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
