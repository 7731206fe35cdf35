/** The library's host where it runs under Node.js: in the notebook kernel, in a command, in a test. */
import { existsSync, readdirSync, readFileSync, statSync } from "node:fs";
import { createRequire } from "node:module";
import { availableParallelism } from "node:os";
import { basename, dirname, join, resolve } from "node:path";
import { setImmediate } from "node:timers/promises";
import { fileURLToPath } from "node:url";
import { runInThisContext } from "node:vm";
import { parentPort, Worker } from "node:worker_threads";
import {
  type ChartLibrary,
  type ChartRuntime,
  type Display,
  type Host,
  type JobFolders,
  lastValueBundle,
  type VegaModule,
  type WorkerPool,
  type WorkerThread,
  type WriteDisplay,
} from "./contract.js";
import { type Decoded, decode } from "./decode.js";

const { resolve: resolveModule } = createRequire(import.meta.url);

const files: JobFolders = {
  named: () => process.env.CASEWRIGHT_JOB || undefined,
  home: () => {
    const project = folderAbove(["data", "package-lock.json"]);
    return project === undefined ? process.cwd() : join(project, "data");
  },
  inside: (folder, name) => {
    const own = join(folder, name);
    const carried = join(folderAbove(["data", "notebooks"]) ?? folder, "data", name);
    return !existsSync(own) && existsSync(carried) ? carried : own;
  },
  resolve: (path) => resolve(path),
  nameOf: (folder) => basename(folder),
  read: (folder, wanted) => {
    const names = namesIn(folder);
    if (!names) return undefined;
    const texts: Record<string, string> = {};
    const faults: Record<string, string> = {};
    for (const file of wanted.filter((name) => names.includes(name))) {
      const read = readText(join(folder, file));
      if ("text" in read) texts[file] = read.text;
      else faults[file] = read.fault;
    }
    return { names, texts, faults };
  },
};

/** The nearest folder of the library above this file, compiled or not, that holds all these; none beyond its package. */
function folderAbove(
  holds: readonly string[],
  folder: string = dirname(fileURLToPath(import.meta.url)),
): string | undefined {
  if (holds.every((name) => existsSync(join(folder, name)))) return folder;
  const parent = dirname(folder);
  return parent === folder || basename(parent) === "node_modules" ? undefined : folderAbove(holds, parent);
}

/** Names of everything in a folder; undefined where there is none, or none that may be read. */
function namesIn(folder: string): readonly string[] | undefined {
  try {
    return readdirSync(folder);
  } catch {
    return undefined;
  }
}

/** Largest file of a job that is read, in bytes: a hundred times what a shop measures in a year. */
const largest = 10_000_000;

function readText(path: string): Decoded {
  try {
    const found = statSync(path);
    if (found.isDirectory()) return { fault: "a file, this is a folder" };
    if (!found.isFile()) return { fault: "a file, this is a pipe or a device" };
    if (found.size > largest) {
      const size = Math.round(found.size / 1e6);
      return { fault: `a file of at most ${largest / 1e6} MB, this one has ${size} MB` };
    }
    return decode(readFileSync(path));
  } catch (error) {
    const code = error instanceof Error && "code" in error ? error.code : "";
    if (code === "ENOENT" || code === "ELOOP") return { fault: "a file, this is a link that leads nowhere" };
    return { fault: "a file that may be read; its permissions or its disk forbid it" };
  }
}

const display: Display = {
  writer: () => {
    const kernel: { readonly lastWriteDisplayData: WriteDisplay | null } = createRequire(import.meta.url)(
      "tslab/dist/jupyter",
    );
    return kernel.lastWriteDisplayData;
  },
  showLastValues: (bundleOf) => {
    Object.assign(globalThis, { [lastValueBundle]: bundleOf });
  },
  inBook: () => process.env.CASEWRIGHT_BOOK === "1",
};

/** The compiled library: this file's own, or dist when the sources run themselves, as tests do. */
const compiled = new URL(import.meta.url.endsWith(".ts") ? "../dist/" : "../", import.meta.url);

const pool: WorkerPool = {
  spare: () => availableParallelism(),
  start: (module) => {
    const file = new URL(`${module}.js`, compiled);
    return existsSync(file) ? threadOf(new Worker(file, { execArgv: [] })) : undefined;
  },
  serve: (answer) => parentPort?.on("message", (task) => parentPort?.postMessage(answer(task))),
  pause: () => setImmediate(),
};

function threadOf(worker: Worker): WorkerThread {
  return {
    ask: (task) =>
      new Promise((settle, reject) => {
        const answered = (reply: unknown): void => {
          worker.off("error", reject);
          settle(reply);
        };
        worker.once("message", answered);
        worker.once("error", reject);
        worker.postMessage(task);
      }),
    end: async () => {
      await worker.terminate();
    },
  };
}

let library: ChartLibrary | undefined;

const charts: ChartRuntime = {
  files: () =>
    ["vega", "vega-lite", "vega-embed"].map((part) => {
      const name = `${part}.min.js`;
      return { name, path: join(dirname(resolveModule(part)), name) };
    }),
  texts: () => charts.files().map(({ path }) => readFileSync(path, "utf8")),
  library: () => {
    library ??= loadCharts();
    return library;
  },
};

/** Runs the chart library's browser files in this process, so that charts can be made without waiting. */
function loadCharts(): ChartLibrary {
  const [vegaText = "", vegaLiteText = ""] = charts.texts();
  const vega = evaluate<VegaModule>(vegaText, {});
  return { vega, vegaLite: evaluate<ChartLibrary["vegaLite"]>(vegaLiteText, { vega }) };
}

/** Evaluates one file that offers itself in the way of CommonJS. */
function evaluate<Exports>(text: string, needed: Readonly<Record<string, unknown>>): Exports {
  const module: { exports: unknown } = { exports: {} };
  const wrapped: (...parts: unknown[]) => void = runInThisContext(
    `(function (exports, module, require, define) {${text}\n})`,
  );
  wrapped(module.exports, module, (name: string) => needed[name], undefined);
  return module.exports as Exports;
}

/** Node.js. */
export const host: Host = { files, display, pool, charts };
