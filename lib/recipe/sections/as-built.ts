/** The record to fill in, so that the next one can be built from what really happened. */
import { groupBill } from "../../money/index.js";
import { Money, showNumber, Time } from "../../quantity/index.js";
import {
  blanks,
  flowingSection,
  type GroupBlock,
  group,
  notes,
  type RecipeSection,
  sentence,
  when,
} from "../recipe.js";
import { total } from "../words.js";
import type { Workshop } from "../workshop.js";

/** Empty lines for what came out otherwise than planned. */
const deviationLines = 6;

/** The section of the record to fill in. */
export function asBuiltSection(workshop: Workshop): RecipeSection {
  return flowingSection("As-built record", who(workshop), paid(workshop), times(workshop), deviations());
}

function who({ case: { name }, purchases }: Workshop): GroupBlock {
  const lines = [
    "Case",
    "Number or mark on it",
    "Built by",
    "Begun on",
    "Finished on",
    "Sheets: supplier and batch",
    ...when(purchases.adhesives.length > 0, () => "Adhesive: batch and date"),
    "Temperature and damp in the workshop",
    "Checked by",
  ];
  return group(
    "Who and when",
    notes(
      lines.map((line) => ({ line, given: line === "Case" ? name : "" })),
      [{ heading: "What", cell: ({ line, given }) => (given ? `${line}: ${given}` : line) }],
      ["Written down"],
    ),
  );
}

function deviations(): GroupBlock {
  return group(
    "What came out otherwise than planned",
    notes(
      Array.from({ length: deviationLines }, (_, line) => line + 1),
      [{ heading: "No.", cell: (line) => line }],
      ["Part", "Planned", "As built", "Why, and what to do next time"],
    ),
  );
}

function paid({ bill: { lines } }: Workshop): GroupBlock {
  return group(
    "What was paid",
    blanks(
      groupBill(lines, "supplier"),
      [
        { heading: "Supplier", cell: ({ name }) => name },
        { heading: "On the buy list", cell: ({ total: cost }) => Money.show(cost), align: "left" },
      ],
      ["Paid"],
      ({ name: of }) => [{ what: "price paid", of }],
    ),
  );
}

function times({ times: works = [], case: { business, leftOut } }: Workshop): GroupBlock {
  const lines = works.map(({ work, tool, unit, pieces, each, time }) => ({
    record: [{ what: "time", of: work, at: tool, pieces: Number(pieces.toPrecision(3)) } as const],
    work: `${work} (${tool})`,
    pace: `${Time.show(each, { digits: 2 })} a ${unit}`,
    pieces: showNumber(pieces, 3),
    planned: Time.show(time, { digits: 2 }),
  }));
  const guess = leftOut.includes("business") ? "" : Time.show(business.buildingTime, { digits: 2 });
  const timed = Time.show(Time.si(total(works, ({ time }) => time)), { digits: 2 });
  const planned = works.length > 0 ? timed : guess;
  const whole = { record: [], work: "The whole case", pace: "", pieces: "", planned };
  return group(
    "Times",
    ...when(works.length > 0, () =>
      sentence("The times are planned from the paces you measured so far, with the tool named."),
    ),
    blanks(
      [...lines, whole],
      [
        { heading: "Work", cell: ({ work }) => work },
        { heading: "Pace", cell: ({ pace }) => pace, align: "left" },
        { heading: "Count", cell: (line) => line.pieces, align: "left" },
        { heading: "Planned", cell: (line) => line.planned, align: "left" },
      ],
      ["Taken"],
      ({ record }) => record,
    ),
  );
}
