/** The package as `npm pack` makes it, in an empty folder: commands, jobs and notebooks of one's own, on Node.js alone. */
import { execFileSync } from "node:child_process";
import {
  chmodSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
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

function run(cwd: string, env: NodeJS.ProcessEnv, ...args: readonly string[]): string {
  return execFileSync(process.execPath, args, {
    cwd,
    encoding: "utf8",
    stdio: ["ignore", "pipe", "pipe"],
    env: { ...process.env, CASEWRIGHT_JOB: "", NODE_PATH: "", ...env },
  });
}

/** Where the package is installed, once for all tests. */
const shop = join(folder, "shop");
let isThere: boolean | undefined;

/** Packs and installs it; false where its dependencies cannot be fetched. */
function installed(): boolean {
  isThere ??= install();
  return isThere;
}

function install(): boolean {
  mkdirSync(shop);
  const packed = run(project, {}, npm, "pack", "-w", "casewright", "--silent", "--pack-destination", folder);
  expect(readdirSync(join(project, "lib")).filter((name) => /^(notebooks|data|starts)$/.test(name))).toEqual(
    [],
  );
  try {
    run(shop, {}, npm, "install", "--prefer-offline", "--no-audit", "--no-fund", join(folder, packed.trim()));
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
  if (!installed()) skip("no network");
  const casewright = (...args: readonly string[]): string =>
    run(shop, {}, join(shop, "node_modules/casewright/dist/command/main.js"), ...args);
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
  // What the package carries has its own place, also when a case of one's own takes the name.
  casewright("live", "soil-lab");
  const demo = page("book/of-casewright/soil-lab-live.html");
  casewright("new", "soil-lab", "--metric");
  casewright("live", "soil-lab");
  expect(page("book/of-casewright/soil-lab-live.html")).toBe(demo);
  expect(page("book/soil-lab-live.html")).not.toBe(demo);
});

/** Every file of the package, with the time at which it was written. */
function packageFiles(): readonly string[] {
  const within = join(shop, "node_modules/casewright");
  const paths = readdirSync(within, { recursive: true, encoding: "utf8" }).sort();
  return paths.map((path) => `${path} ${statSync(join(within, path)).mtimeMs}`);
}

// A script is a program only where files carry a mode.
test.skipIf(process.platform === "win32")(
  "from the tarball, Jupyter opens notebooks in the builder's folders, never the package's",
  { timeout: 900_000 },
  ({ skip }) => {
    const programs = join(folder, "programs");
    mkdirSync(programs);
    if (!installed()) skip("no network");
    const program = join(programs, "jupyter");
    const noting = `require("node:fs").writeFileSync(${JSON.stringify(join(folder, "opened"))}, JSON.stringify([process.cwd(), process.env.CASEWRIGHT_JOB]));`;
    writeFileSync(program, `#!${process.execPath}\nif (process.argv[3] !== "--version") ${noting}\n`);
    chmodSync(program, 0o755);
    const main = join(shop, "node_modules/casewright/dist/command/main.js");
    const opened = (job: string): readonly string[] => {
      run(shop, { PATH: `${programs}:${process.env.PATH}` }, main, "lab", job);
      return JSON.parse(readFileSync(join(folder, "opened"), "utf8"));
    };
    // A folder named data is no sign of a checkout.
    mkdirSync(join(shop, "data"));
    for (const job of ["yours", "./elsewhere/yours"]) run(shop, {}, main, "new", job);
    const before = packageFiles();
    const ours = readdirSync(join(shop, "node_modules/casewright/notebooks"));
    for (const job of ["yours", "elsewhere/yours"]) {
      expect(opened(`./${job}`)).toEqual([join(shop, job), join(shop, job)]);
      expect(readdirSync(join(shop, job, "notebooks"))).toEqual(ours.filter((name) => /ipynb$/.test(name)));
    }
    expect(opened("soil-lab-draft")[0]).toBe(join(shop, "notebooks/soil-lab-draft"));
    expect(readdirSync(join(shop, "notebooks/soil-lab-draft"))).toEqual(
      ours.filter((name) => /ipynb$/.test(name)),
    );
    expect(packageFiles()).toEqual(before);
    // A copy runs where it stands.
    const copied = JSON.stringify(join(shop, "yours/notebooks/00-ask-your-own-question.ipynb"));
    const kernel = JSON.stringify(join(shop, "node_modules/casewright/dist/book/index.js"));
    const job = JSON.stringify(join(shop, "yours"));
    const script = `import { runNotebook } from ${kernel};
      const { failures } = await runNotebook(${copied}, { env: { ...process.env, CASEWRIGHT_JOB: ${job} }, timeout: 600_000 });
      console.log(JSON.stringify(failures));`;
    expect(run(shop, {}, "--input-type=module", "--eval", script).trim()).toBe("[]");
  },
);
