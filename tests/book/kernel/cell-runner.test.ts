import { describe, expect, test } from "vitest";
import { errorOf, oneKernel } from "./kernel.js";

describe("a cell fails before it runs", () => {
  const { run } = oneKernel();

  test.each([
    [
      "when a value may be undefined",
      'const found = ["a"].find((x) => x === "b"); console.log("ran"); found.length',
      "TypeScript: 1:65 - 'found' is possibly 'undefined'.",
    ],
    [
      "when a load stands for a length",
      'import { kg, Length } from "casewright";\nconst side: Length = kg(3);',
      /^TypeScript: 2:7 - Type 'UnitNumber<"mass">' is not assignable to type 'Length'/,
    ],
    [
      "when a package whose types stand only in its exports is used wrongly",
      'import type { TopLevelSpec } from "vega-lite"; const s: TopLevelSpec = { data: { values: [] }, mark: "barr", encoding: {} };',
      /Did you mean '"bar"'\?/,
    ],
    [
      "with all complaints of the compiler",
      "const a: string = 1;\nconst b: number = '';",
      /^TypeScript: 1:7 .*\n2:7 /,
    ],
    [
      "when a module does not exist",
      'import { x } from "no-such-package"',
      /Cannot find module 'no-such-package'/,
    ],
  ])("%s", async (_when, code, message) => {
    const { status, outputs } = await run(code);
    expect(status).toBe("error");
    expect(errorOf(outputs)).toMatch(message);
    expect(outputs).toHaveLength(1);
  });

  test("and leaves what was declared before", async () => {
    await run("const kept = 4;");
    await run("const kept: string = 5;");
    expect(await run("kept")).toMatchObject({ status: "ok", outputs: [{ text: "4\n" }] });
  });

  test("not when it uses what the compiler knows of the year 2023", async () => {
    expect(await run("[3, 1].findLast((x) => x > 2)")).toMatchObject({ status: "ok" });
  });
});
