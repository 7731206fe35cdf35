import { describe, expect, test } from "vitest";
import type { Finding } from "../../lib/findings/index.js";
import { openJob } from "../../lib/job/index.js";
import {
  type Recipe,
  type RecipeInput,
  recipeMarkdown,
  recipeViews,
  writeRecipe,
} from "../../lib/recipe/index.js";
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

describe.each(jobs)("the recipe of %s", (_, { parts, purchases, bill }, recipe) => {
  const panels = [...parts.panels, ...parts.shelves.map(({ panel }) => panel)];

  test("lists every sheet piece once, with the sheet it comes from", () => {
    const rows = rowsOf(recipe, "Cut list", "Code").filter(([code]) => code?.startsWith("P"));
    expect(rows.map(([, name]) => name)).toEqual(panels.map(({ id }) => id));
    expect(rows.every((row) => row.some((cell) => /^Sheet\s\d+$/.test(cell)))).toBe(true);
  });

  test("lists every laminate and every bar, with what it comes from", () => {
    const rows = rowsOf(recipe, "Cut list", "Code");
    const laminates = rows.filter(([code]) => code?.startsWith("L"));
    const bars = rows.filter(([code]) => code?.startsWith("B"));
    expect(laminates.map(([, name]) => name)).toEqual(
      parts.facings.map(({ panel, side }) => `${panel}, ${side}`),
    );
    expect(bars.map(([, name]) => name)).toEqual(parts.bars.map(({ id }) => id));
    expect([...laminates, ...bars].every((row) => /^(Laminate|Bar)\s\d+$/.test(row.at(-1) ?? ""))).toBe(true);
  });

  test("draws every sheet and bar that is bought", () => {
    const drawn = flatBlocks(sectionNamed(recipe, "Cut list").blocks).filter(
      ({ kind }) => kind === "drawing",
    );
    const sheets = sum([...purchases.sheets, ...purchases.facings].map(({ plan }) => plan.sheets.length));
    expect(drawn).toHaveLength(sheets + purchases.bars.length);
  });

  test("rivets every group, and its totals are those of the parts", () => {
    const rows = rowsOf(recipe, "Riveting and screwing list", "Holds");
    expect(sum(rows.map((row) => Number(row[6])))).toBe(sum(parts.fastenings.map(({ count }) => count)));
    for (const { holds, panel, count } of parts.fastenings) {
      expect(
        rows.some(([what, where]) => what === holds && where?.split(", ").includes(`${panel} ${count}`)),
      ).toBe(true);
    }
  });

  test("needs what is bought, spares and washers beside", () => {
    const totals = rowsOf(recipe, "Riveting and screwing list", "Fastener");
    expect(totals).toHaveLength(purchases.fasteners.length);
    for (const { stock, count, spares, washers } of purchases.fasteners) {
      const [, , , needed, spare, washed] = totals.find(([name]) => name === stock.name) ?? [];
      expect([Number(needed), Number(spare)]).toEqual([count, spares]);
      expect(Number(washed)).toBeLessThanOrEqual(washers);
    }
  });

  test("marks every hole of every panel", () => {
    const rows = rowsOf(recipe, "Openings and holes", "Group");
    expect(rows).toHaveLength(parts.fastenings.length);
    expect(sum(rows.map((row) => Number(row[4])))).toBe(sum(parts.fastenings.map(({ count }) => count)));
  });

  test("gives every opening its place", () => {
    const names = rowsOf(recipe, "Openings and holes", "Opening").map(([name]) => name);
    expect(names).toEqual(panels.flatMap(({ openings }) => openings.map(({ name }) => name)));
  });

  test("assembles every bar, item of hardware, shelf, door and content", () => {
    const assembly = words(recipe, "Assembly");
    const named = [
      ...parts.bars.map(({ id }) => id.slice(id.indexOf(".") + 1)),
      ...parts.hardware.map(({ item }) => item.name),
      ...parts.shelves.map(({ shelf }) => shelf.name),
      ...parts.panels.filter(({ role }) => role === "leaf").map(({ id }) => id),
      ...parts.contents.map(({ content }) => content.name),
    ];
    expect(named.filter((name) => !assembly.includes(name))).toEqual([]);
  });

  test("adds the costs of the buy list up to its total", () => {
    const lines = rowsOf(recipe, "Buy list", "Trade").filter((row) => row.length === 7);
    const costs = lines.map((row) => amountIn(row[6]));
    const total = costs.pop();
    expect(total).toBeCloseTo(sum(costs), 1);
  });

  test.each(["Section", "Trade", "Supplier"])("adds the totals of the buy list up by %s", (heading) => {
    const groups = rowsOf(recipe, "Buy list", heading).filter((row) => row.length === 4);
    const costs = groups.map((row) => amountIn(row[2]));
    expect(costs.pop()).toBeCloseTo(sum(costs), 1);
    expect(amountIn(groups.at(-1)?.[2])).toBeCloseTo(bill.total.amount, 1);
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

  test("a finding that fails, is close or unknown stands in front of everything", () => {
    const findings = [
      finding("holds", "lid"),
      finding("fails", "handle"),
      finding("close", "shelf"),
      finding("unknown", "latch"),
    ];
    const [first] = writeRecipe({ ...smallInput, findings }).sections;
    const said = JSON.stringify(first);
    expect(first?.title).toBe("Before you cut");
    for (const text of [
      "Answer about the handle.",
      "Answer about the shelf.",
      "pull the latch",
      "with a luggage scale",
    ]) {
      expect(said).toContain(text);
    }
    expect(said).not.toContain("lid");
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

  test("a case whose every question holds begins with what it is", () => {
    const recipe = writeRecipe({ ...smallInput, findings: [finding("holds", "lid")] });
    expect(recipe.sections[0]?.title).toBe("What you are building");
    expect(words(recipe, "What you are building")).toContain(
      "The review asked 1 question about this case: 1 holds.",
    );
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
      "Cautions",
      "Tools",
      "Buy list",
      "Cut list",
      "Openings and holes",
      "Assembly",
      "What to measure at each step",
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
