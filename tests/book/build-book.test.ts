import { existsSync } from "node:fs";
import { mkdir, mkdtemp, readdir, readFile, rename, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, beforeEach, describe, expect, test } from "vitest";
import { bookPages, buildBook, mendSwap, swapFolder } from "../../lib/book/build-book.js";
import { nasty, sampleBook } from "./sample-book.js";

let folder = "";
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), "casewright-test-"));
});
afterAll(() => rm(folder, { recursive: true }));

const pages = bookPages({ ...sampleBook, outDir: "unused" });
const page = (file: string): string => pages.get(file) ?? "";

describe("the pages", () => {
  test("one for the contents, one a notebook, one for each further matter", () => {
    expect([...pages.keys()]).toEqual([
      "index.html",
      "01-stiffness.html",
      "02-buying.html",
      "03-strangers.html",
      "recipe.html",
      "formulas.html",
      "checks.html",
      "recipe.md",
    ]);
  });

  test.each([...pages.keys()].filter((file) => file.endsWith(".html")))(
    "%s runs and loads only the book's own files",
    (file) => {
      const text = page(file);
      const policy = /http-equiv="Content-Security-Policy" content="([^"]+)"/.exec(text)?.[1];
      expect(policy).toContain("default-src &#39;none&#39;; script-src &#39;self&#39;;");
      expect(policy).not.toMatch(/unsafe-eval|script-src[^;]*unsafe-inline|https?:|\*/);
      const scripts = [...text.matchAll(/<script([^>]*)>/g)].map(([, attributes = ""]) => attributes);
      expect(scripts.length).toBeGreaterThan(0);
      expect(
        scripts.filter(
          (attributes) =>
            !/^ (defer src="assets\/[\w.-]+"|type="application\/json" class="cw-spec")$/.test(attributes),
        ),
      ).toEqual([]);
      const loaded = [...text.matchAll(/<(?:img|link|script|iframe)[^>]* (?:src|href)="([^"]*)"/g)].map(
        ([, address = ""]) => address,
      );
      expect(loaded.filter((address) => !/^(assets\/|data:image\/)/.test(address))).toEqual([]);
      expect(text).not.toMatch(/\son\w+="/);
    },
  );

  test("the chart library only where there are charts", () => {
    expect([...pages].filter(([, text]) => text.includes("vega.min.js")).map(([file]) => file)).toEqual([
      "01-stiffness.html",
      "02-buying.html",
    ]);
  });

  test("what failed is said at the top of its chapter and on the first page, and stands in its place", () => {
    const text = page("03-strangers.html");
    expect(text).toContain("<b>2 parts of this chapter failed.</b> Their errors stand in place");
    expect(text.indexOf("2 parts of")).toBeLessThan(text.indexOf("this output cannot be drawn"));
    expect(page("index.html")).toContain("2 parts failed");
    expect(page("01-stiffness.html")).not.toContain("failed");
  });

  test("why an answer cannot be given is a sentence, no failure; what the book lacks stands first", () => {
    const [first] = sampleBook.notebooks;
    if (!first) throw new Error("expected a notebook");
    const words = "There is no log yet.\nWhat would give it: a thermometer inside.";
    const error = { output_type: "error" as const, ename: "Refusal", evalue: words, traceback: [] };
    const cells = first.notebook.cells.map((cell) =>
      cell.cell_type === "code" ? { ...cell, outputs: [error] } : cell,
    );
    const notebooks = [{ ...first, notebook: { ...first.notebook, cells } }];
    const lacking = ["The recipe is left out: no bar fits."];
    const refusing = bookPages({ ...sampleBook, notebooks, lacking, outDir: "unused" });
    const chapter = refusing.get("01-stiffness.html") ?? "";
    expect(chapter).toContain("<p>There is no log yet.</p><p>What would give it: a thermometer inside.</p>");
    expect(chapter).not.toContain("failed");
    expect(refusing.get("index.html")).toContain(
      '<p class="cw-failed">The recipe is left out: no bar fits.</p>',
    );
  });

  test("the page to change the case is a file of the book to which the first page leads", () => {
    const withLive = bookPages({ ...sampleBook, livePage: "<!doctype html>live", outDir: "unused" });
    expect(withLive.get("live.html")).toBe("<!doctype html>live");
    const link = '<a href="live.html">Change this case</a>';
    expect(withLive.get("index.html")).toContain(link);
    expect(page("index.html")).not.toContain(link);
  });

  test("the first page shows the case, what to settle, a line for each chapter, and all that was asked", () => {
    const text = page("index.html");
    expect(text).toContain("<b>NOT RELEASED</b>");
    expect(text).toContain('<a href="02-buying.html#fit-out.fan">It gets too warm.</a>');
    expect(text).toContain('class="cw-solids"');
    expect(text).toContain('<a href="01-stiffness.html">Will thin ply stay stiff?</a>');
    expect(text).toContain(
      "5 questions: 1 does not hold, 1 could not be computed, 1 is not known yet, 1 is close, 1 holds.",
    );
    const asked = text.slice(text.indexOf("Everything that was asked"));
    const order = [...asked.matchAll(/href="(?:01-stiffness|02-buying)\.html#([\w.-]+)"/g)].map(
      ([, id]) => id,
    );
    expect(order).toEqual([
      "fit-out.fan",
      "fit-out.lamp",
      "travel.tip",
      "joints.handles",
      "stiffness.upper.front",
    ]);
    expect(text).toContain('<a href="recipe.md">The recipe as text</a>');
  });

  test("a chapter tells its answer in short, and hides its code behind workings", () => {
    const text = page("01-stiffness.html");
    expect(text.indexOf("In short:")).toBeLessThan(text.indexOf("How far a panel sags"));
    expect(text).toContain("<summary>Workings</summary>");
    expect(text).toMatch(
      /<code>import \{ show \} from &quot;casewright&quot;;<\/code><\/pre><pre tabindex="0"><code>show\(lineChart/,
    );
  });

  test("chapters lead on to each other", () => {
    expect(page("02-buying.html")).toContain('<a href="01-stiffness.html"><small>Before</small>');
    expect(page("02-buying.html")).toContain('<a href="03-strangers.html"><small>Next</small>');
  });

  test("text of strangers is text, their markup is boxed in", () => {
    const text = page("03-strangers.html");
    expect(text).not.toContain("<script>");
    expect(text).not.toContain("\u001b");
    expect(text.match(/<iframe[^>]*>/g)).toEqual([
      expect.stringContaining('sandbox title="output of a cell" srcdoc="&lt;b&gt;'),
    ]);
    expect(text).toContain("this output cannot be drawn");
    expect(text.split(nasty.slice(0, 20)).length).toBe(1);
  });

  test("formulas and checks carry what they are known by", () => {
    expect(page("formulas.html")).toContain("1 formula behind the worked lines");
    expect(page("formulas.html")).toContain("sample.lever");
    expect(page("checks.html")).toContain("1 value, of which 1 agree within their tolerance");
    expect(page("checks.html")).toContain("worked out from the source&#39;s equations");
  });

  test.each([
    ["../escape", 'book: "../escape.html" cannot be a page\'s file name'],
    ["01-stiffness", 'book: two pages named "01-stiffness.html"'],
  ])("a page named %s is refused", (name, message) => {
    const extraPages = [{ name, title: "t", views: [] }];
    expect(() => bookPages({ ...sampleBook, extraPages, outDir: "unused" })).toThrow(message);
  });
});

describe("the folder", () => {
  const at = (...names: string[]): string => join(folder, ...names);
  beforeEach(async () => {
    await rm(at("book"), { recursive: true, force: true });
    await mkdir(at("book", "sample"), { recursive: true });
    await writeFile(at("book", "sample", "before.txt"), "before");
  });

  test("is replaced whole, and nothing is left beside it", async () => {
    await buildBook({ ...sampleBook, outDir: at("book", "sample") });
    expect(await readdir(at("book"))).toEqual(["sample"]);
    expect((await readdir(at("book", "sample"))).sort()).toEqual([...pages.keys(), "assets"].sort());
    expect((await readdir(at("book", "sample", "assets"))).sort()).toEqual([
      "book.css",
      "book.js",
      "vega-embed.min.js",
      "vega-lite.min.js",
      "vega.min.js",
    ]);
  });

  test("is made where there was none", async () => {
    await buildBook({ ...sampleBook, outDir: at("book", "deep", "new") });
    expect(existsSync(at("book", "deep", "new", "index.html"))).toBe(true);
  });

  test("stays as it was when building fails", async () => {
    const failing = swapFolder(at("book", "sample"), async (fresh) => {
      await writeFile(join(fresh, "half.txt"), "half");
      throw new Error("the disk is full");
    });
    await expect(failing).rejects.toThrow("the disk is full");
    expect(await readdir(at("book"))).toEqual(["sample"]);
    expect(await readFile(at("book", "sample", "before.txt"), "utf8")).toBe("before");
  });

  test("comes back when a swap was killed between its two moves", async () => {
    const killed = at("book", ".sample-abcdef");
    await mkdir(killed);
    await writeFile(join(killed, "process"), "999999999");
    await rename(at("book", "sample"), join(killed, "old"));
    await mendSwap(at("book", "sample"));
    expect(await readFile(at("book", "sample", "before.txt"), "utf8")).toBe("before");
    expect(await readdir(at("book"))).toEqual(["sample"]);
  });

  test("stays when a killed swap had only begun, and what that left goes", async () => {
    const killed = at("book", ".sample-abcdef");
    await mkdir(join(killed, "new"), { recursive: true });
    await writeFile(join(killed, "process"), "999999999");
    await buildBook({ ...sampleBook, outDir: at("book", "sample") });
    expect(await readdir(at("book"))).toEqual(["sample"]);
  });

  test("leaves a swap alone that still runs, and folders of other books", async () => {
    const names = [".sample-abcdef", ".sample-two-abcdef"];
    for (const name of names) {
      await mkdir(at("book", name));
      await writeFile(at("book", name, "process"), String(process.pid));
    }
    await mendSwap(at("book", "sample"));
    expect((await readdir(at("book"))).sort()).toEqual([...names, "sample"]);
  });

  test("no network address stands in the style or the script", async () => {
    await buildBook({ ...sampleBook, outDir: at("book", "sample") });
    for (const file of ["book.css", "book.js"]) {
      expect(await readFile(at("book", "sample", "assets", file), "utf8")).not.toMatch(
        /https?:\/\/|@import|\beval\b/,
      );
    }
  });
});
