/** A made-up book: three notebooks as a kernel would leave them, formulas and checks. */
import type { BookNotebook, BookRequest, Cell, Output } from "../../lib/book/index.js";
import { byDanger } from "../../lib/findings/index.js";
import { type Formula, formula } from "../../lib/formula.js";
import { withStills } from "../../lib/notebook/bundle.js";
import { answer, cautions, type Showable, toViews, viewMime } from "../../lib/page/index.js";
import { Force, Length } from "../../lib/quantity/index.js";
import { cite } from "../../lib/source.js";
import { sampleCharts } from "../notebook/sample-charts.js";
import {
  sampleDrawing,
  sampleFindings,
  sampleLine,
  samplePicture,
  sampleTable,
} from "../page/sample-views.js";

/** What a builder might put into a CSV by mistake, or somebody else on purpose. */
export const nasty = `<script>globalThis.ran = true; document.title = "ran"</script><img src="x" onerror="globalThis.ran = true">`;

/** A display output as show() makes it for the book. */
export function shown(...things: readonly Showable[]): Output {
  const views = withStills(things.flatMap((thing) => toViews(thing)));
  const data = JSON.parse(JSON.stringify({ [viewMime]: views, "text/plain": "text" })) as Record<
    string,
    unknown
  >;
  return { output_type: "display_data", data, metadata: {} };
}

function notebook(
  name: string,
  ...cells: readonly (string | readonly [string, ...Output[]])[]
): BookNotebook {
  const made = cells.map((cell, i): Cell => {
    const id = `c${i}`;
    if (typeof cell === "string") return { cell_type: "markdown", id, metadata: {}, source: cell };
    const [source, ...outputs] = cell;
    return { cell_type: "code", id, metadata: {}, source, execution_count: i, outputs };
  });
  return { name, notebook: { nbformat: 4, nbformat_minor: 5, metadata: {}, cells: made } };
}

const charts = Object.values(sampleCharts);

const stiffness = notebook(
  "01-stiffness",
  "# Will thin ply stay stiff?\n\nA front with a big window carries little. We look at how far it sags under a leaning hand, and what a thicker ply or a closer batten would change.\n\nThe figures are made up.",
  ['import { show } from "casewright";'],
  ["show(lineChart({ ... }));", shown(...charts.slice(0, 3))],
  "## What the window leaves\n\nThe panel *to scale*, with its openings.",
  ["show(drawing);", shown(sampleDrawing, sampleTable)],
  "## The working\n\n- one strip beside the window\n- both strips share the load",
  ["show(findings);", shown(sampleFindings.slice(0, 2), sampleLine)],
  [
    "show(answer(...));",
    shown(answer("The front sags 1.9 mm under a leaning hand; 3 mm would show.", "holds")),
  ],
);

const joints = notebook(
  "02-buying",
  "# What to buy?\n\nWhich adhesive, how many cans, and where the money goes.",
  ["show(rankedBars({ ... }));", shown(...charts.slice(3))],
  [
    "show(findings);",
    shown(sampleFindings.slice(2), cautions("Contact cement burns: open the doors, no flame.")),
  ],
  [
    "show(answer(...));",
    shown(answer("Two-part epoxy at 14.75 USD for a square metre; the spray costs half as much again.")),
  ],
);

const strangers = notebook("03-strangers", `# What did others write?\n\nText from a file: ${nasty}`, [
  `show(${JSON.stringify(nasty)});`,
  shown({ ...sampleTable, rows: [[nasty, nasty, nasty, nasty, nasty]], caption: nasty }, nasty),
  { output_type: "stream", name: "stdout", text: `\u001b[31m${nasty}\u001b[0m\n` },
  { output_type: "stream", name: "stderr", text: "careful\n" },
  { output_type: "error", ename: "RangeError", evalue: nasty, traceback: ["at cell"] },
  { output_type: "display_data", metadata: {}, data: { "text/html": `<b>bold</b>${nasty}` } },
  {
    output_type: "display_data",
    metadata: {},
    data: { "image/svg+xml": `<svg xmlns="http://www.w3.org/2000/svg" width="9" height="9">${nasty}</svg>` },
  },
  { output_type: "display_data", metadata: {}, data: { [viewMime]: [{ kind: "table" }, { kind: nasty }] } },
  { output_type: "display_data", metadata: {}, data: { "text/markdown": `*kept* ${nasty}` } },
]);

const lever: Formula<{ readonly load: Force; readonly arm: Length }, Force> = formula({
  id: "sample.lever",
  title: "Force at the end of a lever",
  equation: "F = \\frac{W a}{1\\,\\mathrm{m}}",
  inputs: {
    load: { symbol: "W", kind: Force, meaning: "load" },
    arm: { symbol: "a", kind: Length, meaning: "arm of the load" },
  },
  result: { symbol: "F", kind: Force, meaning: "force of the hand" },
  source: [cite("statics", "moments about the pivot")],
  validity: "A stiff lever at rest, one metre long.",
  compute: ({ load, arm }) => load * arm,
});

/** Everything but the folder. */
export const sampleBook: Omit<BookRequest, "outDir"> = {
  title: "A case for the sample",
  job: "sample",
  introduction: "All figures in this book are made up.",
  firstPage: (findings) => ({
    released: false,
    release: "One question of safety is not answered with yes.",
    facts: [{ name: "Size over metal", value: "782 mm × 622 mm × 1375 mm" }],
    picture: samplePicture,
    settle: [{ id: "fit-out.fan", verdict: "fails", sentence: "It gets too warm.", remedy: "Fit a fan." }],
    measure: [{ sentence: "Measure the pull: it settles 1 question.", how: "With a scale." }],
    asked: byDanger(findings),
  }),
  notebooks: [stiffness, joints, strangers],
  formulas: [lever.declaration],
  checks: [
    {
      formula: "sample.lever",
      result: "value",
      expected: "40 N",
      ours: "40.0000 N",
      error: 0,
      tolerance: 1e-6,
      holds: true,
      source: "Equilibrium of forces and moments",
      where: "moments about the pivot",
      known: "derived",
    },
  ],
  extraFiles: [{ file: "recipe.md", title: "The recipe as text", text: "# Recipe\n" }],
  extraPages: [{ name: "recipe", title: "The recipe", views: [cautions("Wear goggles."), sampleTable] }],
};
