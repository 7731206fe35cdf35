/** A change of a job's files: applied by range, undone byte for byte, the same as the edit by hand. */
import { readdirSync, readFileSync } from "node:fs";
import { join, resolve } from "node:path";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { parseDocument } from "yaml";
import { add, applyChange, type Change, remove, rename, set } from "../../lib/design/index.js";
import { kg } from "../../lib/quantity/given-units.js";
import { designOf, smallJob, spoilt } from "./small-job.js";

const folder = resolve(import.meta.dirname, "../../data/soil-lab-draft");
const demo: Readonly<Record<string, string>> = Object.fromEntries(
  readdirSync(folder).map((file) => [file, readFileSync(join(folder, file), "utf8")]),
);

const file = "case.yaml";
const yaml = (texts: Readonly<Record<string, string>>): unknown => parseDocument(texts[file] ?? "").toJS();
const changed = (...changes: readonly Change[]) => applyChange(smallJob, ...changes).texts;

test("a table with semicolons keeps them, and its cells are found", () => {
  const bars = (smallJob["bar-stock.csv"] ?? "").replaceAll(",", ";");
  const at = { file: "bar-stock.csv", row: "angle 50", column: "price" };
  const { texts } = applyChange({ ...smallJob, "bar-stock.csv": bars }, set(at, "13"));
  expect(texts["bar-stock.csv"]).toBe(bars.replace("0.4;12;", "0.4;13;"));
});

describe("a change equals the edit by hand", () => {
  const window = "sections.box.panels.front.openings.window";

  test.each<[string, Change, string, string]>([
    [
      "a size in a flow block",
      set(`${window}.rectangle.width`, "210"),
      "width: 200, height: 150,",
      "width: 210, height: 150,",
    ],
    [
      "a size with its unit",
      set(`${window}.rectangle.width`, "8 in"),
      "width: 200, height: 150,",
      "width: 8 in, height: 150,",
    ],
    [
      "a short place",
      set("box.front.window.width", "210"),
      "width: 200, height: 150,",
      "width: 210, height: 150,",
    ],
    ["a value on a line", set("business.own hour", "22"), "own hour: 20", "own hour: 22"],
    ["a list", set("shelves.board.at", "[0, 5, 200]"), "at: [0, 0, 200]", "at: [0, 5, 200]"],
    [
      "a name with a comma",
      set("build.facing.adhesive", "glue, thin"),
      "adhesive: glue,",
      'adhesive: "glue, thin",',
    ],
    [
      "a word that would be a truth value, in quotes",
      set("build.facing.adhesive", '"true"'),
      "adhesive: glue,",
      'adhesive: "true",',
    ],
    ["a value added in a flow block", add("demands.wind", "3"), "push: 100 N }", "push: 100 N, wind: 3 }"],
    [
      "a value added to lines",
      add("build.grain", "up"),
      "end distance: 20, set back: 60 }\n",
      "end distance: 20, set back: 60 }\n  grain: up\n",
    ],
    [
      "a value set that was inherited",
      set("sections.box.panels.back.sheet", "ply 15"),
      "clearance: 3 }\n",
      "clearance: 3 }\n      back: { sheet: ply 15 }\n",
    ],
    [
      "a value of a panel that is not named, at its short place",
      set("box.back.sheet", "ply 15"),
      "clearance: 3 }\n",
      "clearance: 3 }\n      back: { sheet: ply 15 }\n",
    ],
    [
      "an item added to a list",
      add("hardware.handle.places.2", "{ on: box.top, from: top-left, across: 9, up: 9 }"),
      "turned: true }\n",
      "turned: true }\n      - { on: box.top, from: top-left, across: 9, up: 9 }\n",
    ],
    [
      "a block of lines added",
      add("hardware.grip", "item: handle\nduty: lift"),
      "turned: true }\n",
      "turned: true }\n  grip:\n    item: handle\n    duty: lift\n",
    ],
    [
      "a value taken out of a flow block",
      remove("build.facing.adhesive"),
      "laminate: lam 1, adhesive: glue, oversize",
      "laminate: lam 1, oversize",
    ],
    ["the last of a flow block", remove("build.edges.set back"), ", set back: 60 }", " }"],
    ["a line", remove("business.building time"), "  building time: 20 h\n", ""],
    [
      "a block",
      remove("hardware.corner"),
      "  corner: { item: corner 55, duty: protect, corners of: box }\n",
      "",
    ],
    [
      "an item of a list",
      remove("hardware.handle.places.0"),
      "      - { on: box.right, from: bottom-left, across: 200, up: 250 }\n",
      "",
    ],
    ["the name of a block", rename("shelves.board", "low board"), "  board: {", "  low board: {"],
  ])("%s", (_, change, find, replacement) => {
    expect(changed(change)).toEqual(spoilt(file, find, replacement));
  });

  test.each<[string, Change, string, string, string]>([
    [
      "a cell",
      set({ file: "sheet-stock.csv", row: "ply 10", column: "price" }, "66"),
      "sheet-stock.csv",
      "700,60,yard",
      "700,66,yard",
    ],
    [
      "a cell by its line and whole header",
      set({ file: "sheet-stock.csv", row: 2, column: "price (EUR)" }, "66"),
      "sheet-stock.csv",
      "700,60,yard",
      "700,66,yard",
    ],
    [
      "a cell with a comma",
      set({ file: "facings.csv", row: "lam 1", column: "supplier" }, "yard, north"),
      "facings.csv",
      "50,yard",
      '50,"yard, north"',
    ],
    [
      "a cell with a unit, in that of its header",
      set({ file: "sheet-stock.csv", row: "ply 10", column: "length" }, "8 ft"),
      "sheet-stock.csv",
      "ply 10,2500,",
      "ply 10,2438.4,",
    ],
    [
      "a cell that says no such quantity, as it is",
      set({ file: "sheet-stock.csv", row: "ply 10", column: "length" }, "long"),
      "sheet-stock.csv",
      "ply 10,2500,",
      "ply 10,long,",
    ],
    [
      "a cell with a mass where a length belongs, as it is",
      set({ file: "sheet-stock.csv", row: "ply 10", column: "length" }, kg(5)),
      "sheet-stock.csv",
      "ply 10,2500,",
      "ply 10,5 kg,",
    ],
    [
      "a blank cell at the end",
      set({ file: "hardware.csv", row: "corner 55", column: "rated" }, "90"),
      "hardware.csv",
      "45,25,\n",
      "45,25,90\n",
    ],
    [
      "a row's name",
      rename({ file: "bar-stock.csv", row: "seat 50" }, "seat 60"),
      "bar-stock.csv",
      "\nseat 50",
      "\nseat 60",
    ],
    [
      "a row taken away",
      remove({ file: "bar-stock.csv", row: "angle 50" }),
      "bar-stock.csv",
      "angle 50,2500,0.4,12,counter,50,2,0\n",
      "",
    ],
    [
      "the last row taken away",
      remove({ file: "bar-stock.csv", row: "seat 50" }),
      "bar-stock.csv",
      "\nseat 50,2500,0.5,15,counter,50,2,3",
      "",
    ],
    [
      "a row",
      add({ file: "facings.csv" }, { name: "lam 2", form: "roll", "width (mm)": "610" }),
      "facings.csv",
      "50,yard",
      "50,yard\nlam 2,roll,,610,,,,,",
    ],
  ])("%s of a table", (_, change, table, find, replacement) => {
    expect(changed(change)).toEqual(spoilt(table, find, replacement));
  });

  test("the design read back is that of the edit by hand", () => {
    const byHand = designOf(spoilt(file, "height: 150, corner radius: 20", "height: 140, corner radius: 20"));
    expect(designOf(changed(set("front.window.height", "140")))).toEqual(byHand);
  });

  test("comments at the end of a line and of their own stay", () => {
    const { texts } = applyChange(demo, set("build.edges.pitch", "3-1/2"), remove("journey.threshold"));
    expect(texts[file]).toContain("pitch: 3-1/2 # rivets of a leg stand no further apart than this");
    expect(texts[file]?.length).toBe(
      (demo[file]?.length ?? 0) +
        "3-1/2".length -
        "4".length -
        "  threshold: 5/8 # highest step on the way\n".length,
    );
  });

  test("an only value leaves an empty block", () => {
    const { texts } = applyChange(smallJob, remove("business.tools.riveter"));
    expect(yaml(texts)).toMatchObject({ business: { tools: {} } });
  });
});

describe("a change that cannot be made is refused", () => {
  test.each<[string, Change, RegExp]>([
    ["no such place", set("upper.window.width", "1"), /no such place/],
    [
      "a short place with several meanings",
      set("mass", "1 kg"),
      /one place, it may be contents\.meter\.mass, contents\.battery\.mass/,
    ],
    [
      "a name in a list",
      set("meter.at.x", "10"),
      /"meter\.at" is a list, whose items have numbers from 0; write "meter\.at\.0", "meter\.at\.1", "meter\.at\.2"/,
    ],
    ["a name that is there", add("hardware.corner", "{}"), /there already/],
    ["no such file", set({ file: "kerfs.csv", row: "x", column: "cuts" }, "1"), /no such file/],
    ["a name that stands beside it", rename("contents.meter", "battery"), /beside it already/],
    ["no such row", set({ file: "facings.csv", row: "x", column: "price" }, "1"), /no row "x"/],
    [
      "no such column",
      set({ file: "facings.csv", row: "lam 1", column: "colour" }, "1"),
      /no column "colour"/,
    ],
    ["two lines in a cell", set({ file: "facings.csv", row: "lam 1", column: "price" }, "1\n2"), /one line/],
    [
      "an undo of another text",
      { kind: "edits", edits: [{ file, at: 0, old: "xyz", now: "" }] },
      /changed since/,
    ],
  ])("%s", (_, change, message) => {
    expect(() => changed(change)).toThrow(message);
  });
});

describe("random changes", () => {
  /** Places of every value, block and item of a case file. */
  const placesIn = (content: unknown, above: readonly string[] = []): string[] =>
    Object.entries((content ?? {}) as object).flatMap(([name, value]) => {
      const path = [...above, name];
      return [path.join("."), ...(typeof value === "object" ? placesIn(value, path) : [])];
    });
  /** What a place says, with the word itself of each name on the way. */
  const said = (content: unknown, place: string): unknown =>
    place.split(".").reduce<unknown>((inner, word) => (inner as Record<string, unknown>)[word], content);

  const asWindows = (texts: Readonly<Record<string, string>>) =>
    Object.fromEntries(
      Object.entries(texts).map(([name, text]) => [name, `\ufeff${text.replaceAll("\n", "\r\n")}`]),
    );
  const jobs = {
    demo,
    small: smallJob,
    "demo as Windows writes it": asWindows(demo),
    "small as Windows writes it": asWindows(smallJob),
  };
  const value = fc.constantFrom(
    "7",
    "14-1/2",
    "600 mm",
    "none",
    "a, b",
    'it\'s "new"',
    "[1, 2, 3]",
    "{ by: floor }",
    "true",
    "# no remark",
    "x: y",
    "- z",
    "1 in # long",
  );
  const seed = fc.double({ min: 0, max: 0.999999, noNaN: true });

  describe.each(Object.entries(jobs))("of the %s", (_, texts) => {
    /** A change at a random place of what the case says now. */
    const oneOf = (content: unknown, kind: string, which: number, to: string, name: string): Change => {
      const places = placesIn(content);
      const at = places[Math.floor(which * places.length)] ?? "";
      const above = at.split(".").slice(0, -1);
      if (kind === "set") return set(at, to);
      if (kind === "remove") return remove(at);
      const list = above.length > 0 ? said(content, above.join(".")) : content;
      if (!Array.isArray(list) && kind === "rename") return rename(at, name);
      return add([...above, Array.isArray(list) ? String(list.length) : name].join("."), to);
    };

    test("undone give the same bytes, and leave readable YAML", () => {
      const change = fc.tuple(fc.constantFrom("set", "add", "remove", "rename"), seed, value);
      fc.assert(
        fc.property(fc.array(change, { minLength: 1, maxLength: 4 }), (changes) => {
          let now = texts;
          const undos: Change[] = [];
          for (const [i, [kind, which, to]] of changes.entries()) {
            const content = yaml(now);
            const { texts: after, undo } = applyChange(
              now,
              oneOf(content, kind, which, to, `brand new ${i}`),
            );
            expect(parseDocument(after[file] ?? "").errors).toEqual([]);
            if (kind !== "set") expect(yaml(after)).not.toEqual(content);
            undos.unshift(undo);
            now = after;
          }
          expect(applyChange(now, ...undos).texts).toEqual(texts);
        }),
        { numRuns: 8 },
      );
    });

    test("put what they say where they say, and take one thing away", () => {
      const content = yaml(texts);
      fc.assert(
        fc.property(fc.constantFrom(...placesIn(content)), (at) => {
          const above = at.split(".").slice(0, -1).join(".");
          const held = (whole: unknown): object => (above ? said(whole, above) : whole) as object;
          expect(said(yaml(applyChange(texts, set(at, "seven")).texts), at)).toBe("seven");
          const left = held(yaml(applyChange(texts, remove(at)).texts));
          expect(Object.keys(left)).toHaveLength(Object.keys(held(content)).length - 1);
        }),
        { numRuns: 20 },
      );
    });

    test("of cells and rows of tables undone give the same bytes", () => {
      const tables = Object.keys(texts).filter((name) => name.endsWith(".csv"));
      const cell = fc.record({
        table: fc.constantFrom(...tables),
        row: seed,
        column: seed,
        to: value,
        kind: fc.constantFrom("set", "remove", "add", "rename"),
      });
      fc.assert(
        fc.property(cell, ({ table, row, column, to, kind }) => {
          const lines = (texts[table] ?? "").replace("\ufeff", "").split(/\r?\n/);
          const data = lines.flatMap((line, i) => (line.trim() && !line.startsWith("#") ? [i + 1] : []));
          const [header = 1, ...rows] = data;
          const headers = (lines[header - 1] ?? "").split(",");
          fc.pre(rows.length > 0);
          const line = rows[Math.floor(row * rows.length)] ?? header;
          const name = headers[Math.floor(column * headers.length)] ?? "";
          const one =
            kind === "set"
              ? set({ file: table, row: line, column: name }, to)
              : kind === "remove"
                ? remove({ file: table, row: line })
                : kind === "add"
                  ? add({ file: table }, { [name]: to })
                  : rename({ file: table, row: line }, to);
          const after = applyChange(texts, one);
          const others = (all: Readonly<Record<string, string>>) => ({ ...all, [table]: "" });
          expect(others(after.texts)).toEqual(others(texts));
          expect(
            Math.abs((after.texts[table]?.split("\n").length ?? 0) - (texts[table]?.split("\n").length ?? 0)),
          ).toBe(kind === "remove" || kind === "add" ? 1 : 0);
          expect(applyChange(after.texts, after.undo).texts).toEqual(texts);
        }),
        { numRuns: 40 },
      );
    });
  });
});
