import { spawn, spawnSync } from "node:child_process";
import { once } from "node:events";
import { chmod, cp, mkdtemp, readFile, rm, writeFile } from "node:fs/promises";
import { type AddressInfo, createServer } from "node:net";
import { tmpdir } from "node:os";
import { delimiter, dirname, join } from "node:path";
import { afterEach, beforeEach, describe, expect, test, vi } from "vitest";
import { kernelSpecFolder, libraryFolder, projectFolder } from "../../lib/book/index.js";
import { findJupyter, lab, labEnvironment } from "../../lib/command/lab.js";

let folder = "";
beforeEach(async () => {
  folder = await mkdtemp(join(tmpdir(), "casewright-test-"));
});
afterEach(async () => {
  vi.restoreAllMocks();
  vi.unstubAllEnvs();
  await rm(folder, { recursive: true });
});

/** Puts a program named jupyter into the folder: it knows some applications, and notes how it was started. */
async function standInJupyter(...apps: string[]): Promise<void> {
  const program = join(folder, "jupyter");
  await writeFile(
    program,
    `#!${process.execPath}
const [app, ...args] = process.argv.slice(2);
if (!${JSON.stringify(apps)}.includes(app)) process.exit(1);
if (args[0] === "--version") process.exit(0);
const { CASEWRIGHT_JOB, JUPYTER_PATH } = process.env;
require("node:fs").writeFileSync(${JSON.stringify(join(folder, "started"))},
  JSON.stringify({ app, args, cwd: process.cwd(), CASEWRIGHT_JOB, JUPYTER_PATH }));
process.exit(7);
`,
  );
  await chmod(program, 0o755);
}

// A script is a program only where files carry a mode.
describe.skipIf(process.platform === "win32")("finding Jupyter", () => {
  test.each([
    [["lab", "notebook"], "lab"],
    [["notebook"], "notebook"],
  ])("where %j are installed gives %s", async (apps, app) => {
    await standInJupyter(...apps);
    expect(await findJupyter({ PATH: folder })).toEqual({ program: "jupyter", args: [app] });
  });

  test("where it has no application for notebooks gives none", async () => {
    await standInJupyter("nbconvert");
    expect(await findJupyter({ PATH: folder })).toBeUndefined();
  });

  test("npm run lab starts it among the notebooks, with the job, the kernel and the options given", async () => {
    await standInJupyter("lab");
    vi.stubEnv("PATH", folder);
    vi.stubEnv("JUPYTER_PATH", "/somewhere");
    expect(await lab(["soil-lab", "--no-browser"])).toBe(7);
    expect(JSON.parse(await readFile(join(folder, "started"), "utf8"))).toEqual({
      app: "lab",
      args: ["--no-browser"],
      cwd: join(projectFolder(), "notebooks"),
      CASEWRIGHT_JOB: "soil-lab",
      JUPYTER_PATH: `${kernelSpecFolder()}${delimiter}/somewhere`,
    });
  });

  test("a job in a folder of the builder's gets copies of the notebooks in it, and keeps what is changed there", async () => {
    await standInJupyter("lab");
    vi.stubEnv("PATH", folder);
    const told = vi.spyOn(console, "log").mockImplementation(() => {});
    const jobs = ["one/my-case", "two/my-case"].map((path) => join(folder, path));
    for (const job of jobs) await cp(join(projectFolder(), "data/soil-lab"), job, { recursive: true });
    const [first = "", second = ""] = jobs;
    const copy = join(first, "notebooks/01-measure-your-stock.ipynb");
    for (const job of [first, second, first]) {
      expect(await lab([job])).toBe(7);
      expect(JSON.parse(await readFile(join(folder, "started"), "utf8"))).toMatchObject({
        cwd: job,
        CASEWRIGHT_JOB: job,
      });
      if (job === first) await writeFile(copy, "changed");
    }
    expect(await readFile(copy, "utf8")).toBe("changed");
    const untouched = join(projectFolder(), "notebooks/01-measure-your-stock.ipynb");
    expect(await readFile(join(second, "notebooks/01-measure-your-stock.ipynb"), "utf8")).toBe(
      await readFile(untouched, "utf8"),
    );
    expect(told.mock.calls.length).toBe(2);
    expect(told.mock.calls[0]?.[0]).toMatch(
      /stand as copies in .*notebooks, for you to change.*\nA notebook that you save in .*my-case becomes/,
    );
  });
});

describe("npm run lab", () => {
  test("says how to get Jupyter where there is none", async () => {
    vi.stubEnv("PATH", folder);
    const said = vi.spyOn(console, "error").mockImplementation(() => {});
    expect(await lab([])).toBe(1);
    expect(said.mock.calls[0]?.[0]).toMatch(
      /No Jupyter[\s\S]*Debian[\s\S]*macOS[\s\S]*Windows[\s\S]*npm start/,
    );
  });

  test("says so when there is no such job", async () => {
    const said = vi.spyOn(console, "error").mockImplementation(() => {});
    expect(await lab(["no-such-job"])).toBe(1);
    expect(said.mock.calls[0]?.[0]).toMatch(/^no job "no-such-job": .*npm run new -- no-such-job/);
  });

  test("adds the Node that runs it to the path, under the name that the path has", () => {
    expect(labEnvironment("my-case", { Path: "elsewhere" })).toEqual({
      Path: `elsewhere${delimiter}${dirname(process.execPath)}`,
      CASEWRIGHT_JOB: "my-case",
      NODE_PATH: join(projectFolder(), "node_modules"),
      JUPYTER_PATH: kernelSpecFolder(),
    });
  });
});

describe("the user's own Jupyter", () => {
  test("serves the project's kernel", async ({ skip }) => {
    if (spawnSync("jupyter", ["notebook", "--version"]).status !== 0) {
      if (process.env.CI === "true")
        throw new Error("jupyter notebook is missing; .ci/run should install it");
      console.warn("jupyter notebook is not installed: npm run lab is not tested with it");
      skip("no jupyter notebook");
    }
    const command = JSON.stringify(new URL(`file://${join(libraryFolder(), "command/lab.js")}`).href);
    const options = [
      "--allow-root",
      "--no-browser",
      `--port=${await freePort()}`,
      "--NotebookApp.token=test",
    ];
    const program = `import { lab } from ${command}; process.exit(await lab(${JSON.stringify(options)}));`;
    const started = spawn(process.execPath, ["--input-type=module", "--eval", program]);
    try {
      const address = await addressIn(started.stderr);
      const answer = await fetch(`${address}api/kernelspecs?token=test`);
      expect(await answer.json()).toMatchObject({
        kernelspecs: { casewright: { spec: { display_name: "TypeScript (Casewright)" } } },
      });
    } finally {
      started.kill();
      await once(started, "close");
    }
  }, 600_000);
});

async function freePort(): Promise<number> {
  const server = createServer().listen(0, "127.0.0.1");
  await once(server, "listening");
  const { port } = server.address() as AddressInfo;
  server.close();
  return port;
}

/** The address that Jupyter prints when it serves. */
async function addressIn(stream: NodeJS.ReadableStream): Promise<string> {
  let text = "";
  for await (const chunk of stream) {
    text += chunk;
    const [address] = /http:\/\/(localhost|127\.0\.0\.1):\d+\//.exec(text) ?? [];
    if (address) return address;
  }
  throw new Error(`Jupyter did not start:\n${text}`);
}
