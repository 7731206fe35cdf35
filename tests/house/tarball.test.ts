/** The package as `npm pack` makes it, in an empty folder: commands, jobs and notebooks of one's own, on Node.js alone. */
import { execFileSync } from "node:child_process";
import {
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  writeFileSync,
} from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join, resolve } from "node:path";
import { afterAll, expect, test } from "vitest";

const project = resolve(import.meta.dirname, "../..");
const folder = mkdtempSync(join(tmpdir(), "casewright-tarball-"));
afterAll(() => rmSync(folder, { recursive: true, force: true, maxRetries: 5 }), 600_000);

const npm =
  process.env.npm_execpath ?? join(dirname(process.execPath), "../lib/node_modules/npm/bin/npm-cli.js");

function run(cwd: string, ...args: readonly string[]): string {
  return execFileSync(process.execPath, args, {
    cwd,
    encoding: "utf8",
    stdio: ["ignore", "pipe", "pipe"],
    env: { ...process.env, CASEWRIGHT_JOB: "", NODE_PATH: "" },
  });
}

/** Packs and installs it; false where its dependencies cannot be fetched. */
function installed(shop: string): boolean {
  const packed = run(project, npm, "pack", "-w", "casewright", "--silent", "--pack-destination", folder);
  expect(readdirSync(join(project, "lib")).filter((name) => /^(notebooks|data|starts)$/.test(name))).toEqual(
    [],
  );
  try {
    run(shop, npm, "install", "--prefer-offline", "--no-audit", "--no-fund", join(folder, packed.trim()));
    return true;
  } catch (error) {
    if (process.env.CI === "true") throw error;
    console.warn(
      "SKIPPED: the package's dependencies cannot be fetched, so nothing is tested from the tarball",
    );
    return false;
  }
}

const ownNotebook = {
  nbformat: 4,
  nbformat_minor: 5,
  metadata: {},
  cells: [
    { cell_type: "markdown", id: "title", metadata: {}, source: "# Mine\n\nHow wide is it?" },
    {
      cell_type: "code",
      id: "width",
      metadata: {},
      execution_count: null,
      outputs: [],
      source: [
        'import { Length, openJob } from "casewright";\n',
        "const [section] = openJob().case.sections;\n",
        '"own: " + Length.show(section!.inside.width)',
      ],
    },
  ],
};

test("from the tarball, an empty folder becomes a job and its book", { timeout: 900_000 }, ({ skip }) => {
  const shop = join(folder, "shop");
  mkdirSync(shop);
  if (!installed(shop)) skip("no network");
  const casewright = (...args: readonly string[]): string =>
    run(shop, join(shop, "node_modules/casewright/dist/command/main.js"), ...args);
  expect(existsSync(join(shop, "node_modules/.bin/casewright"))).toBe(true);
  expect(casewright("new", "mine", "--metric", "--currency", "CHF")).toMatch(/npx casewright check mine\n/);
  expect(casewright("check", "mine")).toMatch(/^mine: no problems/);
  // Another job of the same name elsewhere.
  casewright("new", "./elsewhere/mine", "--start", "trunk");
  writeFileSync(join(shop, "mine", "10-own.ipynb"), JSON.stringify(ownNotebook));
  expect(casewright("book", "mine")).toMatch(/built book\/mine in/);
  const page = (...path: readonly string[]): string => readFileSync(join(shop, ...path), "utf8");
  expect(page("book/mine/index.html")).toContain("The recipe");
  expect(page("book/mine/10-own.html")).toContain("own: 600 mm");
  expect(existsSync(join(shop, "elsewhere/book"))).toBe(false);
});
