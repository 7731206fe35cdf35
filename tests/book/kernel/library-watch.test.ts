/** What must fail loudly when the ground under the kernel shifts. */
import { execFile } from "node:child_process";
import { cp, mkdir, mkdtemp, readFile, rm, symlink, utimes, writeFile } from "node:fs/promises";
import { createRequire } from "node:module";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { afterAll, beforeAll, describe, expect, test, vi } from "vitest";
import { libraryFolder, projectFolder } from "../../../lib/book/index.js";
import { watchLibrary } from "../../../lib/book/kernel/library-watch.js";

// The older compiler takes its time when everything else runs at the same time.
vi.setConfig({ testTimeout: 600_000 });

let folder = "";
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), "casewright-test-"));
});
afterAll(() => rm(folder, { recursive: true }));

/** Runs Node and gives all it printed, and its exit code. */
function node(args: readonly string[], cwd?: string): Promise<{ code: number; text: string }> {
  return new Promise((resolve) => {
    execFile(process.execPath, [...args], { cwd }, (error, stdout, stderr) =>
      resolve({ code: error ? Number(error.code) : 0, text: stdout + stderr }),
    );
  });
}

/** A copy of the kernel beside a tslab of our making. */
async function kernelWith(name: string, version: string, files: Record<string, string>): Promise<string> {
  const home = join(folder, name);
  const compiler = join(home, "node_modules/@tslab/typescript-for-tslab");
  const tslab = join(home, "node_modules/tslab");
  await mkdir(join(tslab, "dist"), { recursive: true });
  await mkdir(compiler, { recursive: true });
  await writeFile(join(home, "package.json"), '{ "type": "module" }');
  await cp(join(libraryFolder(), "book"), join(home, "book"), { recursive: true });
  // All that the kernel's own modules need of the rest of the library.
  for (const file of ["refusal.js", "host/contract.js"])
    await cp(join(libraryFolder(), file), join(home, file));
  const zeromq = dirname(createRequire(join(libraryFolder(), "x.js")).resolve("zeromq/package.json"));
  await symlink(zeromq, join(home, "node_modules/zeromq"), "junction");
  await symlink(dirname(libraryFolder()), join(home, "node_modules/casewright"), "junction");
  await writeFile(join(tslab, "package.json"), JSON.stringify({ version, main: "main.js" }));
  await writeFile(join(tslab, "main.js"), "");
  await writeFile(
    join(compiler, "index.js"),
    files.compiler ??
      "exports.createWatchCompilerHost = () => {}; exports.ModuleResolutionKind = { Bundler: 100 };",
  );
  for (const file of ["converter", "executor", "inspect", "jupyter"]) {
    await writeFile(join(tslab, "dist", `${file}.js`), files[file] ?? "");
  }
  return join(home, "book/kernel/entry.js");
}

describe("the kernel does not start", () => {
  test("without a connection file", async () => {
    const { code, text } = await node([join(libraryFolder(), "book/kernel/entry.js")]);
    expect(text).toContain("kernel: the connection file is missing");
    expect(code).toBe(1);
  });

  test.each([
    ["on another tslab", "1.0.23", {}, 'tslab kernel: needs tslab 1.0.22, found 1.0.23; run "npm ci" again'],
    [
      "when the compiler takes no options",
      "1.0.22",
      { compiler: "" },
      'tslab kernel: the compiler of tslab takes no options; run "npm ci" again',
    ],
    [
      "when parts of tslab are missing",
      "1.0.22",
      { executor: "exports.createExecutor = () => {};", converter: "exports.createConverter = () => {};" },
      "tslab kernel: tslab 1.0.22 lacks isCompleteCode, printQuickInfo, lastWriteDisplayData;",
    ],
  ])("%s", async (name, version, files, message) => {
    const { code, text } = await node([
      await kernelWith(name.replaceAll(" ", "-"), version, files),
      "connection.json",
    ]);
    expect(text).toContain(message);
    expect(code).toBe(1);
  });

  test("when its sockets cannot be opened", async () => {
    const file = join(folder, "connection.json");
    const ports = { shell_port: 1, iopub_port: 2, stdin_port: 3, control_port: 4, hb_port: 5 };
    await writeFile(file, JSON.stringify({ transport: "ipc", ip: "/no/such/folder/k", key: "", ...ports }));
    const { code, text } = await node([join(libraryFolder(), "book/kernel/entry.js"), file]);
    expect(text).toMatch(/No such file or directory|ENOENT/);
    expect(code).toBe(1);
  });
});

describe("a library that is built again", () => {
  test("is noticed once", async () => {
    const record = join(folder, "library/.tsbuildinfo");
    await mkdir(dirname(record), { recursive: true });
    await writeFile(record, "");
    const changed = watchLibrary(join(folder, "library"));
    expect(changed()).toBe(false);
    await utimes(record, new Date(), new Date(Date.now() + 5_000));
    expect([changed(), changed()]).toEqual([true, false]);
  });
});

/** Complaints of the compiler that checks the cells, about declarations of ours. */
async function olderCompilerSays(declarations: string): Promise<string[]> {
  const config = join(folder, "tsconfig.json");
  const options = {
    ...{ strict: true, skipLibCheck: false, noEmit: true, target: "es2022", module: "esnext" },
    ...{ moduleResolution: "node", types: ["node"], lib: ["es2023"], pretty: false },
    typeRoots: [join(projectFolder(), "node_modules/@types")],
  };
  await writeFile(config, JSON.stringify({ compilerOptions: options, files: [declarations] }));
  const compiler = join(projectFolder(), "node_modules/@tslab/typescript-for-tslab/bin/tsc");
  const { text } = await node([compiler, "-p", config], dirname(declarations));
  const complaints = text.split("\n").filter((line) => line.includes("error TS"));
  // Declarations of other packages are theirs; the cells skip them too.
  return complaints.filter((line) => !line.includes("node_modules"));
}

describe("the library's declarations", () => {
  test("can be read by the compiler that checks the cells", async () => {
    expect(await olderCompilerSays(join(libraryFolder(), "index.d.ts"))).toEqual([]);
  });

  test("could not, if a type of a later compiler stood in them", async () => {
    const file = join(folder, "later.d.ts");
    await writeFile(file, "export declare const names: MapIterator<string>;\n");
    expect(await olderCompilerSays(file)).toEqual([
      expect.stringContaining("Cannot find name 'MapIterator'"),
    ]);
  });
});

test("no script calls a bare tsc, which would be the older compiler of tslab", async () => {
  for (const folder of [projectFolder(), join(projectFolder(), "lib")]) {
    const { scripts = {} } = JSON.parse(await readFile(join(folder, "package.json"), "utf8"));
    const bare = Object.entries(scripts).filter(([, script]) =>
      /(^|[\s&|;])(npx )?(tsc|tsserver)(\s|$)/.test(String(script)),
    );
    expect(bare).toEqual([]);
  }
});
