/** A metric job speaks in metric units and an inch job in its own, in findings, recipe and check. */
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { expect, test, vi } from "vitest";
import { check } from "../../lib/command/check.js";
import { reviewCase } from "../../lib/findings/index.js";
import { writeRecipe } from "../../lib/recipe/index.js";
import { lidAndDrawers } from "../design/lid-and-drawers-job.js";
import { designOf, rolling, smallJob } from "../design/small-job.js";
import { trayJob } from "../design/tray-job.js";
import { recipeInput } from "../recipe/recipes.js";

type Texts = Readonly<Record<string, string>>;

async function checked(texts: Texts): Promise<string> {
  const folder = mkdtempSync(join(tmpdir(), "unit-words-"));
  const log = vi.spyOn(console, "log").mockImplementation(() => {});
  for (const [file, text] of Object.entries(texts)) writeFileSync(join(folder, file), text);
  await check([folder]);
  const said = log.mock.calls.flat().join("\n");
  log.mockRestore();
  rmSync(folder, { recursive: true });
  return said;
}

/** Every text of a value, however deep. */
function textsIn(value: unknown): readonly string[] {
  if (typeof value === "string") return [value];
  if (typeof value !== "object" || value === null) return [];
  return Object.values(value).flatMap(textsIn);
}

/** The one section that gives the other unit too, in brackets: its sizes are asked for in a shop. */
const shopping = "Buy list";

/** All that is told of a job, without what its stock is called, and of shopping without its brackets. */
async function told(texts: Texts): Promise<readonly string[]> {
  const design = designOf(texts);
  const names = Object.values(design.stock)
    .flat()
    .map(({ name }) => name);
  const { findings } = reviewCase(design);
  const said = [
    ...findings.flatMap((one) =>
      textsIn([one.question, one.answer, one.cautions, one.assumes, one.missing, one.demand, one.capacity]),
    ),
    ...writeRecipe(recipeInput(design)).sections.flatMap((section) =>
      textsIn(section).map((text) => (section.title === shopping ? text.replace(/ \([^()]*\)/g, "") : text)),
    ),
    await checked(texts),
  ];
  return said.map((text) => names.reduce((left, name) => left.replaceAll(name, "it"), text));
}

const inches =
  /\d[\s-]?(in|in2|ft|ft2|lb|lbf|oz|mph|psi|psf)\b(?! (the|a|all|each|its|one|two|every|which|use|place)\b)|\d\s?°F/;
const metric = /\d\s?(m|mm|mm2|cm|m2|kg|N|kN|kPa|MPa|GPa|km\/h|Nm)\b|\d\s?°C/;

test.each([
  ["a chest with a lid and drawers", lidAndDrawers],
  ["a box on casters", rolling(smallJob)],
])(
  "%s in millimetres says nothing in inches or pounds",
  async (_, texts) => {
    expect((await told(texts)).filter((text) => inches.test(text))).toEqual([]);
  },
  600_000,
);

test("a tray in inches says millimetres or newtons only in brackets behind its own", async () => {
  const said = (await told(trayJob)).map((text) => text.replace(/(in|lb|oz|ft2?) \([^()]*\)/g, "$1"));
  expect(said.filter((text) => metric.test(text))).toEqual([]);
}, 600_000);
