import { describe, expect, test } from "vitest";
import type { Finding } from "../../lib/findings/index.js";
import { openJob } from "../../lib/job/index.js";
import {
  codePieces,
  type Recipe,
  type RecipeInput,
  recipeMarkdown,
  recipeViews,
  writeRecipe,
} from "../../lib/recipe/index.js";
import { supplies } from "../../lib/recipe/supplies.js";
import {
  flatBlocks,
  plainInput,
  recipeInput,
  rowsOf,
  sectionNamed,
  smallInput,
  smallRecipe,
} from "./recipes.js";

const demoInput: RecipeInput = recipeInput(openJob("soil-lab-draft"));
const demoRecipe: Recipe = writeRecipe(demoInput);
const jobs: [string, RecipeInput, Recipe][] = [
  ["the small job", smallInput, smallRecipe],
  ["the demo job", demoInput, demoRecipe],
];

const amountIn = (text = ""): number => Number(text.replace(/[^\d.]/g, ""));
const sum = (numbers: readonly number[]): number => numbers.reduce((all, one) => all + one, 0);
const words = (recipe: Recipe, title: string): string => JSON.stringify(sectionNamed(recipe, title).blocks);

/** Everything that is ticked off a list, in one section or in all. */
function ticksOf({ sections }: Recipe, title?: string): readonly string[] {
  return sections
    .filter((section) => title === undefined || section.title === title)
    .flatMap(({ blocks }) => flatBlocks(blocks))
    .flatMap((block) => (block.kind === "checklist" ? block.items : []));
}

describe.each(jobs)("the recipe of %s", (_, { parts, purchases, bill }, recipe) => {
  const panels = [...parts.panels, ...parts.shelves.map(({ panel }) => panel)];

  test("lists every sheet piece once, with the sheet it comes from", () => {
    const rows = rowsOf(recipe, "Cut list", "Code").filter(([code]) => code?.startsWith("P"));
    expect(rows.map(([, name]) => name)).toEqual(panels.map(({ id }) => id));
    expect(rows.every((row) => row.some((cell) => /^Sheet\s\d+$/.test(cell)))).toBe(true);
  });

  test("lists every laminate and every bar, with what it comes from", () => {
    const ticked = ticksOf(recipe);
    for (const { code, name } of codePieces(parts).facings)
      expect(ticked.filter((item) => item.startsWith(`${code} ${name}: `))).toEqual([
        expect.stringMatching(/, from Laminate\s\d+$/),
      ]);
    for (const { code, name } of codePieces(parts).bars)
      expect(ticked.filter((item) => item.startsWith(`${code} ${name}, `))).toEqual([
        expect.stringMatching(/, from Bar\s\d+$/),
      ]);
  });

  test("draws every sheet and bar that is bought", () => {
    const drawn = recipe.sections
      .filter(({ title }) => /^(Cut list|Laminate|Bars)/.test(title))
      .flatMap(({ blocks }) => flatBlocks(blocks))
      .filter(({ kind }) => kind === "drawing");
    const sheets = sum([...purchases.sheets, ...purchases.facings].map(({ plan }) => plan.sheets.length));
    expect(drawn).toHaveLength(sheets + purchases.bars.length);
  });

  test("needs what is bought, spares and washers beside", () => {
    const totals = rowsOf(recipe, "Riveting and screwing", "Fastener");
    expect(totals).toHaveLength(purchases.fasteners.length);
    for (const { stock, count, spares, washers } of purchases.fasteners) {
      const [, , , , needed, spare, washed] = totals.find(([name]) => name === stock.name) ?? [];
      expect([Number(needed), Number(spare)]).toEqual([count, spares]);
      expect(Number(washed)).toBeLessThanOrEqual(washers);
    }
  });

  test("marks every hole of every panel, and lists those that are drilled in place", () => {
    const rows = rowsOf(recipe, "Openings and holes", "Group");
    const marked = parts.fastenings.filter(({ at }) => at.length > 0);
    expect(rows).toHaveLength(marked.length);
    expect(sum(rows.map((row) => Number(row[2])))).toBe(sum(marked.map(({ at }) => at.length)));
    const said = JSON.stringify(sectionNamed(recipe, "Openings and holes").blocks);
    for (const { at, count, holds } of parts.fastenings)
      if (at.length === 0)
        expect(said).toMatch(new RegExp(`${count} (holes? for ${holds}|[^"]* for ${holds})`));
  });

  test("has as many marks as holes, read back from the page of each panel", () => {
    for (const [, , count, places = ""] of rowsOf(recipe, "Openings and holes", "Group")) {
      const holes = places.split(";").map((one) => one.split(" × ").map((side) => side.split(",").length));
      expect(sum(holes.map(([across = 0, up = 0]) => across * up))).toBe(Number(count));
    }
  });

  test("gives every opening its place", () => {
    const names = rowsOf(recipe, "Openings and holes", "Opening").map(([name]) => name);
    expect(names).toEqual(panels.flatMap(({ openings }) => openings.map(({ name }) => name)));
  });

  test("assembles every bar, item of hardware, shelf, door and content", () => {
    const assembly = words(recipe, "Assembly");
    const named = [
      ...codePieces(parts).bars.map(({ code }) => code),
      ...parts.hardware.map(({ item }) => item.name),
      ...parts.shelves.map(({ shelf }) => shelf.name),
      ...parts.panels.filter(({ role }) => role === "leaf").map(({ id }) => id),
      ...parts.contents.map(({ content }) => content.name),
    ];
    expect(named.filter((name) => !assembly.includes(name))).toEqual([]);
  });

  test("adds the costs of the buy list up to its total", () => {
    const costs = rowsOf(recipe, "Buy list", "Supplier")
      .filter((row) => row.length === 7)
      .map((row) => amountIn(row[5]));
    const total = costs.pop();
    expect(total).toBeCloseTo(sum(costs), 1);
    expect(total).toBeCloseTo(bill.total.amount, 1);
  });

  test("adds the totals of the suppliers up", () => {
    const groups = rowsOf(recipe, "Buy list", "Supplier").filter((row) => row.length === 4);
    const costs = groups.map((row) => amountIn(row[2]));
    expect(costs.pop()).toBeCloseTo(sum(costs), 1);
    expect(amountIn(groups.at(-1)?.[2])).toBeCloseTo(bill.total.amount, 1);
  });

  test("buys or has everything that any step names", () => {
    const listed = ticksOf(recipe, "Buy list");
    const said = recipe.sections
      .flatMap(({ blocks }) => flatBlocks(blocks))
      .flatMap((block) => (block.kind === "list" ? block.items : []))
      .join(" ");
    const named = Object.values(supplies).filter(({ name }) => said.includes(name));
    expect(named.length).toBeGreaterThan(5);
    expect(
      named.map(({ name }) => name).filter((name) => !listed.some((item) => item.startsWith(name))),
    ).toEqual([]);
  });

  test("speaks in one system of units, but where it is bought", () => {
    const texts = recipe.sections
      .filter(({ title }) => !/^(Buy list|Decisions|Cautions)$/.test(title))
      .flatMap(({ blocks }) => flatBlocks(blocks))
      .flatMap((block) => (block.kind === "list" ? block.items : []));
    expect(texts.filter((text) => /\d\s(in|lb)\b/.test(text) && /\d\smm\b/.test(text))).toEqual([]);
  });

  test("has no more than six steps a stage, and 25 cautions", () => {
    const stages = flatBlocks(sectionNamed(recipe, "Assembly").blocks);
    for (const block of stages) if (block.kind === "list") expect(block.items.length).toBeLessThanOrEqual(6);
    const told = flatBlocks(sectionNamed(recipe, "Cautions").blocks);
    for (const block of told)
      if (block.kind === "cautions") expect(block.items.length).toBeLessThanOrEqual(25);
  });

  test("leaves no hole in a sentence", () => {
    expect(recipeMarkdown(recipe)).not.toMatch(/undefined|NaN|null|\[object|Infinity/);
  });

  test("stays the same through JSON, as a notebook hands it on", () => {
    const views = recipeViews(recipe);
    expect(JSON.parse(JSON.stringify(views))).toEqual(views);
  });
});

describe("what stands first", () => {
  const finding = (verdict: Finding["verdict"], subject: string): Finding => ({
    id: `test.${subject}`,
    asks: "test",
    topic: "joints",
    subject,
    question: `Will the ${subject} hold?`,
    tier: "safety",
    verdict,
    answer: `Answer about the ${subject}.`,
    because: [],
    cautions: [`Caution about the ${subject}.`],
    assumes: [],
    remedies: [],
    source: [],
    ...(verdict === "unknown"
      ? { missing: { measure: `pull the ${subject}`, how: "with a luggage scale" } }
      : {}),
  });

  test("what fails or is unknown stands on the page of decisions, and keeps the papers from release", () => {
    const findings = [finding("holds", "lid"), finding("fails", "handle"), finding("unknown", "latch")];
    const recipe = writeRecipe({ ...smallInput, findings });
    const said = words(recipe, "Decisions");
    for (const text of ["Answer about the handle.", "Measure pull the latch."]) expect(said).toContain(text);
    expect(said).not.toContain("lid");
    expect(recipe.stamp).toBe("NOT RELEASED: 2 questions of safety or strength are open");
  });

  test("a caution is never lost, whatever the verdict", () => {
    const findings = [
      finding("holds", "lid"),
      finding("fails", "handle"),
      finding("close", "shelf"),
      finding("unknown", "latch"),
    ];
    const text = recipeMarkdown(writeRecipe({ ...smallInput, findings }));
    for (const { cautions } of findings) expect(text).toContain(cautions[0]);
  });

  test("a case whose every question holds is released, and has no page of decisions", () => {
    const recipe = writeRecipe({ ...smallInput, findings: [finding("holds", "lid")] });
    expect(recipe.stamp).toBe("RELEASED");
    expect(recipe.sections.map(({ title }) => title)).not.toContain("Decisions");
  });

  test("a recipe without a review says so", () => {
    const recipe = writeRecipe({ ...smallInput, findings: [] });
    expect(words(recipe, "What you are building")).toContain("No review came with this recipe");
  });
});

describe("a plain box without openings, laminate, edges, hardware or shelves", () => {
  const recipe = writeRecipe({ ...plainInput, findings: [] });

  test("has no section about what it has not", () => {
    expect(recipe.sections.map(({ title }) => title)).toEqual([
      "What you are building",
      "Words and marks",
      "Cautions",
      "Buy list",
      "Cut list",
      "Openings and holes",
      "Assembly",
      "As-built record",
    ]);
  });

  test("has no empty table, list or group", () => {
    const empty = recipe.sections
      .flatMap(({ blocks }) => flatBlocks(blocks))
      .filter(
        (block) =>
          ((block.kind === "table" || block.kind === "blanks") && block.rows.length === 0) ||
          ((block.kind === "list" || block.kind === "cautions") && block.items.length === 0) ||
          (block.kind === "group" && block.blocks.length === 0),
      );
    expect(empty).toEqual([]);
  });

  test("speaks of no laminate, rivet or bar that it has not", () => {
    expect(recipeMarkdown(recipe)).not.toMatch(/laminate|rivets|riveting|edge bar|caster/i);
  });
});
