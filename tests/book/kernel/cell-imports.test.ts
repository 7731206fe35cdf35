import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { createRequire } from "node:module";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, describe, expect, test, vi } from "vitest";
import {
  exportedNames,
  type ImportCompiler,
  withFoundImports,
} from "../../../lib/book/kernel/cell-imports.js";
import { errorOf, oneKernel, printed } from "./kernel.js";

const compiler = createRequire(import.meta.url)("@tslab/typescript-for-tslab") as ImportCompiler;
const offered = new Set(["openJob", "mm"]);

describe("an import", () => {
  test.each([
    ['import { openJob, mm } from "casewright";', undefined],
    [
      'import { openJob, sagPoints } from "casewright";',
      'import { openJob, sagPoints } from "casewright/all";',
    ],
    [
      "import { sagPoints as points } from 'casewright'; points",
      "import { sagPoints as points } from 'casewright/all'; points",
    ],
    ['import * as all from "casewright";', 'import * as all from "casewright/all";'],
    ['const all = await import("casewright");', 'const all = await import("casewright/all");'],
    ['type Span = import("casewright").Length;', 'type Span = import("casewright/all").Length;'],
    ['export * from "casewright";', 'export * from "casewright/all";'],
    [
      'import { mine } from "./mine.ts"; import { other } from "../other.ts";',
      'import { mine } from "./mine"; import { other } from "../other";',
    ],
    ['const text = "from casewright and ./mine.ts";', undefined],
  ])("%s", (code, found = code) => {
    expect(withFoundImports(compiler, code, offered).code).toBe(found);
  });

  test("that is being completed stays as it is, and positions after others are kept", () => {
    const code = 'import { sagPoints } from "casewright"; sag';
    expect(withFoundImports(compiler, code, offered, 12).code).toBe(code);
    const found = withFoundImports(compiler, code, offered, code.length);
    expect(found.there(code.length)).toBe(found.code.length);
    expect(found.back(found.code.length)).toBe(code.length);
    expect([found.there(12), found.back(12)]).toEqual([12, 12]);
  });
});

test("a declaration file tells what it exports by name", () => {
  const text = 'export { a, b as c, type D } from "./x.js";\nexport * as e from "./y.js";';
  expect([...exportedNames(compiler, text)]).toEqual(["a", "c", "D", "e"]);
});

describe("a notebook", () => {
  const { run, client } = oneKernel();

  test("written when everything was offered runs, and mixes with one of today", async () => {
    const first = await run('import { openJob, mm } from "casewright"; const job = openJob("soil-lab");');
    expect(errorOf(first.outputs)).toBeUndefined();
    const old = await run(
      'import { panelNamed, rectangleSection, Length, thicknessesToTry } from "casewright";\n' +
        "const wide: Length = rectangleSection({ width: mm(50), depth: mm(9) }).area / mm(9) as Length;\n" +
        'console.log(Length.show(wide), panelNamed(job, "upper.front").id, thicknessesToTry(job, "upper.front").length);',
    );
    expect(errorOf(old.outputs)).toBeUndefined();
    expect(printed(old.outputs)).toMatch(/^50 mm upper\.front \d+\n$/);
  });

  test("keeps whatever it is given, for later cells", async () => {
    const kept = await run(
      `import { beam, chart, inch, kinds, set, showIn, sweep, table } from "casewright";
      const panel = job.panel("upper.front"), openings = panel.openings, section = job.section("upper");
      const spot = section.balance(), things = [job.shelves, job.drawers, job.contents, job.bars] as const;
      const place = "upper.front.display window.width", change = set(place, mm(400)), changed = job.with(change);
      const swept = sweep(job, place, [mm(400)], (one) => one.opening("upper.front.display window").area());
      const drawn = chart(swept), rows = table([{ size: panel.size.width }]), pressure = kinds.Pressure.read("9 GPa");
      const flat = beam.rectangleSection({ width: inch(12), depth: inch(3 / 8) }), worked = beam.rectangleSection;
      const half = panel.size.width.times(0.5), sheet = panel.drawing(), price = job.cost, shown = showIn({});`,
    );
    expect(errorOf(kept.outputs)).toBeUndefined();
    const { outputs } = await run("swept.answers[0]?.show({ unit: 'm2', digits: 3 })");
    // 400 mm x 13.5 in less its corners, (4 - pi) x (1.5 in)^2: 0.13716 - 0.00125.
    expect(printed(outputs)).toBe("0.136 m2\n");
  });

  test("shows a last value with its units", async () => {
    const { outputs } = await run('job.opening("upper.front.display window").size.width');
    expect(printed(outputs)).toBe("18 in\n");
  });

  test("shows a finding that is its last value as a finding", async () => {
    const { outputs } = await run('job.finding("travel.wind")');
    expect(JSON.stringify(outputs)).toContain('"kind":"finding"');
  });

  test("is offered few names between the braces of an import, and all that it has at a dot", async () => {
    const code = 'import {  } from "casewright"';
    const { matches } = await client().complete(code, 9);
    expect(matches.length).toBeLessThanOrEqual(61);
    expect(matches).toContain("openJob");
    const after = 'import { sagPoints } from "casewright"; job.pan';
    expect((await client().complete(after, after.length)).matches).toContain("panel");
  });
});

describe("a folder that changes while cells run", () => {
  const folder = mkdtempSync(join(tmpdir(), "casewright-test-"));
  const { run } = oneKernel({ cwd: folder });
  afterAll(() => rmSync(folder, { recursive: true }));

  test("harms no cell, and a file that comes is found", async () => {
    const importing = 'import { late } from "./late.ts"; late';
    expect(errorOf((await run(importing)).outputs)).toContain("Cannot find module './late'");
    const seen = new Set<string | undefined>();
    writeFileSync(join(folder, "late.ts"), 'export const late = "there";\n');
    await vi.waitFor(
      async () => {
        writeFileSync(join(folder, `other ${seen.size}.ts`), "");
        const { outputs } = await run(importing);
        seen.add(errorOf(outputs)?.replace(/'.*/, ""));
        expect(printed(outputs)).toBe("there\n");
      },
      { timeout: 600_000, interval: 100 },
    );
    expect([...seen].filter((error) => error !== undefined && !error.includes("Cannot find module"))).toEqual(
      [],
    );
  });
});
