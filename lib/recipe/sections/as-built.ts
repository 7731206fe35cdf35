/** The record to fill in, so that the next one can be built from what really happened. */
import type { CutSheet } from "../../cutting/index.js";
import type { Timing } from "../../design/index.js";
import { Time } from "../../quantity/index.js";
import { blanks, group, section, sentence } from "../make-block.js";
import type { GroupBlock, RecipeSection } from "../recipe.js";
import { grouped, total } from "../words.js";
import type { Workshop } from "../workshop.js";

/** Empty lines for what came out otherwise than planned. */
const deviationLines = 10;

/** The section. */
export function asBuiltSection(workshop: Workshop): RecipeSection {
  return section("As-built record", who(workshop), deviations(), weights(workshop), times(workshop));
}

function who({ case: { name } }: Workshop): GroupBlock {
  const lines = [
    "Case",
    "Number or mark on it",
    "Built by",
    "Begun on",
    "Finished on",
    "Sheets: supplier and batch",
    "Adhesive: batch and date",
    "Temperature and damp in the workshop",
    "Checked by",
  ];
  return group(
    "Who and when",
    blanks(
      lines.map((line) => ({ line, given: line === "Case" ? name : "" })),
      [{ heading: "What", cell: ({ line, given }) => (given ? `${line}: ${given}` : line) }],
      ["Written down"],
    ),
  );
}

function deviations(): GroupBlock {
  return group(
    "What came out otherwise than planned",
    blanks(
      Array.from({ length: deviationLines }, (_, line) => line + 1),
      [{ heading: "No.", cell: (line) => line }],
      ["Part", "Planned", "As built", "Why, and what to do next time"],
    ),
  );
}

function weights({ parts }: Workshop): GroupBlock {
  return group(
    "Weights, on the scale",
    blanks(
      parts.sections,
      [{ heading: "Section", cell: ({ name }) => name }],
      ["Empty", "Loaded", "Scale used"],
    ),
  );
}

interface TimeLine {
  readonly work: string;
  readonly pace: string;
  readonly count: string;
  readonly planned: string;
}

function times(workshop: Workshop): GroupBlock {
  const { timings = [], case: described } = workshop;
  const lines = grouped(timings, ({ work, unit, tool }) => [work, unit, tool].join("|")).map(([, some]) =>
    timeLine(some, workshop),
  );
  const whole = {
    work: "The whole case",
    pace: "",
    count: "",
    planned: Time.show(described.business.buildingTime),
  };
  return group(
    "Times",
    ...(lines.length > 0 ? [sentence("Planned from the paces you measured so far, at the tool named.")] : []),
    blanks(
      [...lines, whole],
      [
        { heading: "Work", cell: ({ work }) => work },
        { heading: "Pace", cell: ({ pace }) => pace, align: "left" },
        { heading: "Count", cell: ({ count }) => count, align: "left" },
        { heading: "Planned", cell: ({ planned }) => planned, align: "left" },
      ],
      ["Taken"],
    ),
  );
}

function timeLine(timings: readonly Timing[], workshop: Workshop): TimeLine {
  const { work, unit, tool } = timings[0] as Timing;
  const pace = total(timings, ({ time }) => time) / total(timings, ({ pieces }) => pieces);
  const count = countOf(unit, workshop);
  return {
    work: `${work} (${tool})`,
    pace: `${Time.show(Time.si(pace), { digits: 2 })} a ${unit}`,
    count: String(Number(count.toPrecision(3))),
    planned: Time.show(Time.si(pace * count), { digits: 2 }),
  };
}

/** How many of a unit of work the case has. */
function countOf(unit: Timing["unit"], { parts, pieces, sheets, laminates, bars }: Workshop): number {
  const cuts = (some: readonly { readonly cut: CutSheet }[]): number =>
    total(some, ({ cut }) => cut.cuts.length);
  switch (unit) {
    case "panel":
      return pieces.panels.length;
    case "cut":
      return cuts(sheets) + cuts(laminates) + total(bars, ({ cut }) => cut.pieces.length);
    case "hole":
      return total(parts.fastenings, ({ count }) => count);
    case "rivet":
      return total(
        parts.fastenings.filter(({ fastener }) => fastener.kind === "rivet"),
        ({ count }) => count,
      );
    case "bar":
      return pieces.bars.length;
    case "hardware":
      return parts.hardware.length;
    case "square metre":
      return total(parts.facings, ({ gluedArea }) => gluedArea);
    case "case":
      return 1;
  }
}
